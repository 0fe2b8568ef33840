import { namedSchema, S } from '../../platform/http/response-schema.js';
import { LISTS, type ListName } from './garden-file.js';
import type { MovedId } from './id-mapping.js';

export interface Dropped {
  what: string;
  itemsCount: number;
  why: string;
}

export interface Renamed {
  what: 'site' | 'structure' | 'stockItem';
  from: string;
  to: string;
}

export interface ImportReport {
  gardenId: string;
  gardenWasEmpty: boolean;
  taken: { what: ListName; itemsCount: number }[];
  dropped: Dropped[];
  renamed: Renamed[];
  ids: MovedId[];
}

const COUNT = S.whole(0, 1_000_000);

export const ImportReportSchema = namedSchema(
  'ImportReport',
  S.object({
    gardenId: S.id(),
    gardenWasEmpty: { ...S.flag(), description: 'An empty garden also takes over name, language, currency and units' },
    taken: S.list(S.object({ what: S.choice(...LISTS), itemsCount: COUNT }), LISTS.length),
    dropped: { ...S.list(S.object({ what: S.text(80), itemsCount: COUNT, why: S.text(300) }), 40), description: 'What did not come along, and why' },
    renamed: {
      ...S.list(S.object({ what: S.choice('site', 'structure', 'stockItem'), from: S.text(200), to: S.text(200) }), 60_000),
      description: 'Names that were taken already',
    },
    ids: { ...S.list(S.object({ what: S.choice('garden', ...LISTS), from: S.text(36), to: S.id() }), 200_000), description: 'What has which id now' },
  }),
);
