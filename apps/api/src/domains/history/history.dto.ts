import { PageQuery } from '../../platform/http/page.js';
import { namedSchema, S } from '../../platform/http/response-schema.js';
import { ChoiceQuery, IdQuery, WholeQuery } from '../shared/queries.dto.js';
import type { Difference } from './differences.js';
import type { HistoryEntry } from './history.repository.js';

/** As it is answered: the record itself, field by field. */
export type HistoryEntryResponse = HistoryEntry;

export const OBJECT_TYPES = [
  'garden',
  'key',
  'member',
  'invitation',
  'site',
  'structure',
  'stockItem',
  'claim',
  'price',
  'exchangeRate',
  'build',
  'plan',
  'document',
] as const;

export class HistoryQuery extends PageQuery {
  @ChoiceQuery(OBJECT_TYPES, 'Only what happened to things of this kind') objectType?: string;
  @IdQuery('Only what happened to this thing') objectId?: string;
}

export class BuildHistoryQuery {
  @WholeQuery(1, 100_000, 'The earlier revision of the plan') fromRevision!: number;
  @WholeQuery(1, 100_000, 'The later revision') toRevision!: number;
}

export const HistoryEntrySchema = namedSchema(
  'HistoryEntry',
  S.object({
    id: S.id(),
    at: S.moment(),
    by: S.orNull(S.text(200)),
    memberId: S.orNull(S.id()),
    keyId: S.orNull(S.id()),
    action: S.text(80),
    objectType: S.text(80),
    objectId: S.id(),
  }),
);

export interface RevisionSummary {
  planId: string;
  revision: number;
  createdAt: string;
  by: string | null;
}

export interface BuildHistoryResponse {
  from: RevisionSummary;
  to: RevisionSummary;
  changes: Difference[];
  /** True when there are more changes than are shown. */
  more: boolean;
  entries: HistoryEntry[];
}

const RevisionSchema = S.object({ planId: S.id(), revision: S.whole(1, 100_000), createdAt: S.moment(), by: S.orNull(S.text(200)) });

export const CHANGES_MAX = 500;

export const BuildHistorySchema = namedSchema(
  'BuildHistory',
  S.object({
    from: RevisionSchema,
    to: RevisionSchema,
    changes: S.list(
      S.object({
        pointer: { ...S.text(500), description: 'JSON Pointer into the inputs of the plan; members of a list are named by their id or tag' },
        before: { description: 'The value of the earlier revision; null where there was none' },
        after: { description: 'The value of the later revision; null where there is none' },
      }),
      CHANGES_MAX,
    ),
    more: S.flag(),
    entries: S.list(HistoryEntrySchema, 1000),
  }),
);
