import type { Source } from '@lathwork/model';

/** One entry of the bibliography; the key it stands under is its id. */
export type BibliographyEntry = Omit<Source, 'sourceId'>;
