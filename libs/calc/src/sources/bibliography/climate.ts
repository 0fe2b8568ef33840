import type { BibliographyEntry } from '../bibliography-entry.js';

export const climateSources = {
  'DWD-CLIMAT': {
    title: 'National CLIMAT reports, monthly means 2003-2021 averaged by station. Datenbasis: Deutscher Wetterdienst, Einzelwerte gemittelt',
    publisher: 'Deutscher Wetterdienst, Climate Data Center (GeoNutzV / CC BY 4.0)',
    year: 2021,
    quality: 'published',
  },
} as const satisfies Record<string, BibliographyEntry>;
