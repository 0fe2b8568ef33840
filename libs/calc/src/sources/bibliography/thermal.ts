import type { BibliographyEntry } from '../bibliography-entry.js';

export const thermalSources = {
  'ASHRAE-F17-1': { title: 'ASHRAE Handbook of Fundamentals, chapter 1: Psychrometrics', publisher: 'ASHRAE', year: 2017, quality: 'published' },
} as const satisfies Record<string, BibliographyEntry>;
