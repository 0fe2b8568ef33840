import type { BibliographyEntry } from '../bibliography-entry.js';

export const loadsSources = {
  'ASCE7-16': { title: 'ASCE/SEI 7-16 Minimum Design Loads and Associated Criteria for Buildings and Other Structures', publisher: 'American Society of Civil Engineers', year: 2016, supersededBy: 'ASCE/SEI 7-22', quality: 'published' },
} as const satisfies Record<string, BibliographyEntry>;
