import type { BibliographyEntry } from '../bibliography-entry.js';

export const materialsSources = {
  'PS20-20': { title: 'Voluntary Product Standard PS 20-20, American Softwood Lumber Standard', publisher: 'National Institute of Standards and Technology', year: 2020, quality: 'published' },
} as const satisfies Record<string, BibliographyEntry>;
