import { NoteSchema, TakeOffLineSchema, type Note, type TakeOffLine } from '@lathwork/model';
import { namedSchema, S } from '../../platform/http/response-schema.js';

export const BUILD_STATES = ['unplanned', 'computing', 'failed', 'planned', 'reviewed'] as const;
export type BuildState = (typeof BUILD_STATES)[number];

/** What every member may know of another's build. */
export interface BuildSummary {
  id: string;
  name: string;
  kind: string;
  ownerMemberId: string | null;
  shared: boolean;
  state: BuildState;
  revision: number | null;
  stale: boolean;
}

export const BuildSummarySchema = namedSchema(
  'BuildSummary',
  S.object({
    id: S.id(),
    name: S.text(200),
    kind: S.text(40),
    ownerMemberId: S.orNull(S.id()),
    shared: S.flag(),
    state: S.choice(...BUILD_STATES),
    revision: S.orNull(S.whole(1, 100_000)),
    stale: S.flag(),
  }),
);

const OF_PLAN = { buildId: S.id(), planId: S.id(), revision: S.whole(1, 100_000) };
export interface OfPlan {
  buildId: string;
  planId: string;
  revision: number;
}

/** What the store must find, without what it costs. */
export type Need = Pick<TakeOffLine, 'lineId' | 'group' | 'material' | 'mark' | 'unit' | 'need' | 'wanted' | 'toBuy'> & { tags: string[] };
export interface BuildNeeds extends OfPlan {
  needs: Need[];
}

const line = S.model(TakeOffLineSchema)['properties'] as Record<string, Record<string, unknown>>;
const field = (name: string): Record<string, unknown> => line[name] ?? {};

export const BuildNeedsSchema = namedSchema(
  'BuildNeeds',
  S.object({
    ...OF_PLAN,
    needs: S.list(
      S.object({
        lineId: field('lineId'),
        group: field('group'),
        material: field('material'),
        mark: field('mark'),
        unit: field('unit'),
        need: field('need'),
        wanted: field('wanted'),
        toBuy: field('toBuy'),
        tags: S.list(S.text(20), 200),
      }),
      200,
    ),
  }),
);

export const toNeed = (from: TakeOffLine): Need => ({
  lineId: from.lineId,
  group: from.group,
  material: from.material,
  mark: from.mark,
  unit: from.unit,
  need: from.need,
  wanted: from.wanted,
  toBuy: from.toBuy,
  tags: from.reclaimed.map(({ tag }) => tag),
});

/** What may hurt somebody or bring the shelter down. */
export interface BuildHazards extends OfPlan {
  reviewBlocked: boolean;
  notes: Note[];
}
export const BuildHazardsSchema = namedSchema('BuildHazards', S.object({ ...OF_PLAN, reviewBlocked: S.flag(), notes: S.list(S.model(NoteSchema), 400) }));

/** What it costs, without what it is. */
export interface BuildTotals extends OfPlan {
  currency: string;
  reclaimedMinor: number;
  cashMinor: number;
  inKindMinor: number;
  capMinor: number | null;
  overCapMinor: number;
  unpricedCount: number;
}
const minor = (): Record<string, unknown> => S.whole(0, Number.MAX_SAFE_INTEGER);
const MONEY = { currency: S.text(3), reclaimedMinor: minor(), cashMinor: minor(), inKindMinor: minor() };
export const BuildTotalsSchema = namedSchema(
  'BuildTotals',
  S.object({ ...OF_PLAN, ...MONEY, capMinor: S.orNull(minor()), overCapMinor: minor(), unpricedCount: S.whole(0, 10_000) }),
);

/** Sums over the garden that name nobody. */
export interface GardenTotals {
  builds: Record<`${BuildState}Count`, number>;
  money: { currency: string; reclaimedMinor: number; cashMinor: number; inKindMinor: number; buildCount: number }[];
  hours: { lowH: number; likelyH: number; highH: number };
}
export const GardenTotalsSchema = namedSchema(
  'GardenTotals',
  S.object({
    builds: S.object(Object.fromEntries(BUILD_STATES.map((state) => [`${state}Count`, S.whole(0, 1_000_000)]))),
    money: S.list(S.object({ ...MONEY, buildCount: S.whole(0, 1_000_000) }), 200),
    hours: S.object({ lowH: S.number('h', 0, 1e9), likelyH: S.number('h', 0, 1e9), highH: S.number('h', 0, 1e9) }),
  }),
);
