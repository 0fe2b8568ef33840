import type { PlanResult } from '@lathwork/model';
import { Injectable } from '@nestjs/common';
import type { Db } from '../../platform/database/database.js';
import type { Step } from '../shared/resource.js';
import type { BuildState, BuildSummary, GardenTotals, OfPlan } from './overview.dto.js';

interface NewestPlan {
  state: string;
  revision: number;
  reviews: { decision: string }[];
  _count: { staleness: number };
}

const NEWEST = {
  orderBy: { revision: 'desc' },
  take: 1,
  select: {
    state: true,
    revision: true,
    reviews: { orderBy: { id: 'desc' }, take: 1, select: { decision: true } },
    _count: { select: { staleness: true } },
  },
} as const;

const stateOf = (plan: NewestPlan | undefined): BuildState => {
  if (!plan) return 'unplanned';
  if (plan.state !== 'ready') return plan.state === 'failed' ? 'failed' : 'computing';
  return plan.reviews[0]?.decision === 'reviewed' ? 'reviewed' : 'planned';
};

interface MoneyRow {
  currency: string;
  reclaimed: bigint;
  cash: bigint;
  in_kind: bigint;
  builds: bigint;
  low_h: number;
  likely_h: number;
  high_h: number;
}

@Injectable()
export class OverviewRepository {
  async summaries(db: Db, step: Step): Promise<BuildSummary[]> {
    const rows = await db.build.findMany({
      where: { archivedAt: null, ...(step.after ? { id: { gt: step.after } } : {}) },
      orderBy: { id: 'asc' },
      take: step.take,
      select: { id: true, name: true, ownerMemberId: true, shared: true, structure: { select: { kind: true } }, plans: NEWEST },
    });
    return rows.map((row) => ({
      id: row.id,
      name: row.name,
      kind: row.structure.kind,
      ownerMemberId: row.ownerMemberId,
      shared: row.shared,
      state: stateOf(row.plans[0]),
      revision: row.plans[0]?.revision ?? null,
      stale: (row.plans[0]?._count.staleness ?? 0) > 0,
    }));
  }

  /** The newest finished plan of a build. */
  async newest(db: Db, buildId: string): Promise<(OfPlan & { result: PlanResult }) | null> {
    const row = await db.planRevision.findFirst({
      where: { buildId, state: 'ready' },
      orderBy: { revision: 'desc' },
      select: { id: true, revision: true, result: { select: { result: true } } },
    });
    return row?.result ? { buildId, planId: row.id, revision: row.revision, result: row.result.result as unknown as PlanResult } : null;
  }

  async buildExists(db: Db, id: string): Promise<boolean> {
    return (await db.build.findFirst({ where: { id }, select: { id: true } })) !== null;
  }

  /** Sums of the newest finished plan of every build, by currency, taken where the plans lie. */
  async totals(db: Db): Promise<Omit<GardenTotals, 'builds'>> {
    const rows = await db.$queryRaw<MoneyRow[]>`
      WITH newest AS (
        SELECT DISTINCT ON (p.build_id) r.result->'budget' AS budget, r.result->'schedule'->'totalHours' AS hours
          FROM plan_revisions p JOIN plan_results r ON r.garden_id = p.garden_id AND r.plan_id = p.id
          JOIN builds b ON b.garden_id = p.garden_id AND b.id = p.build_id
         WHERE p.state = 'ready' AND b.archived_at IS NULL AND b.variant_of_id IS NULL
         ORDER BY p.build_id, p.revision DESC)
      SELECT budget->>'currency' AS currency, sum((budget->>'reclaimedMinor')::bigint)::bigint AS reclaimed, sum((budget->>'cashMinor')::bigint)::bigint AS cash,
             sum((budget->>'inKindMinor')::bigint)::bigint AS in_kind, count(*) AS builds, sum((hours->>'lowH')::float8) AS low_h,
             sum((hours->>'likelyH')::float8) AS likely_h, sum((hours->>'highH')::float8) AS high_h
        FROM newest GROUP BY 1 ORDER BY 1`;
    const sum = (of: (row: MoneyRow) => number): number => rows.reduce((total, row) => total + of(row), 0);
    return {
      money: rows.map((row) => ({
        currency: row.currency,
        reclaimedMinor: Number(row.reclaimed),
        cashMinor: Number(row.cash),
        inKindMinor: Number(row.in_kind),
        buildCount: Number(row.builds),
      })),
      hours: { lowH: sum((row) => row.low_h), likelyH: sum((row) => row.likely_h), highH: sum((row) => row.high_h) },
    };
  }

  async states(db: Db): Promise<BuildState[]> {
    const rows = await db.build.findMany({ where: { archivedAt: null }, select: { plans: NEWEST } });
    return rows.map((row) => stateOf(row.plans[0]));
  }
}
