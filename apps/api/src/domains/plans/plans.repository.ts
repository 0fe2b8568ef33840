import { createHash } from 'node:crypto';
import type { PlanInputs, PlanResult } from '@lathwork/model';
import { Injectable } from '@nestjs/common';
import type { Db } from '../../platform/database/database.js';
import type { PlanRevision } from '../../platform/database/generated/client.js';
import type { ProblemBody } from '../../platform/problems/problem.js';
import { dateToDay, dayToDate, type Step } from '../shared/resource.js';

export type PlanState = 'computing' | 'ready' | 'failed';

export interface PlanRecord {
  id: string;
  buildId: string;
  revision: number;
  state: PlanState;
  asOf: string;
  inputsSha256: string;
  attempt: number;
  problem: ProblemBody | null;
  createdById: string | null;
  createdAt: string;
  startedAt: string | null;
  finishedAt: string | null;
  stale: { reason: string; subject: string | null; since: string }[];
  reviews: ReviewRecord[];
  asBuiltCount: number;
}

export interface ReviewRecord {
  id: string;
  decision: 'reviewed' | 'changesWanted';
  reviewer: string;
  comment: string | null;
  createdAt: string;
}

export interface AsBuiltFields {
  observedOn: string;
  measures: { subject: string; lengthM: number | null; pulledToN: number | null; remark: string | null }[];
  remark: string | null;
  asTyped: Record<string, string>;
}
export type AsBuiltRecord = AsBuiltFields & { id: string; createdAt: string };

interface ReviewRow {
  id: string;
  decision: string;
  reviewer: string;
  comment: string | null;
  createdAt: Date;
}

const toReview = (row: ReviewRow): ReviewRecord => ({
  id: row.id,
  decision: row.decision as ReviewRecord['decision'],
  reviewer: row.reviewer,
  comment: row.comment,
  createdAt: row.createdAt.toISOString(),
});

interface Beside {
  staleness: { reason: string; subject: string | null; createdAt: Date }[];
  reviews: ReviewRow[];
  _count: { asBuilts: number };
}

// The inputs and the result are large and asked for on their own.
const BESIDE = {
  omit: { inputs: true },
  include: { staleness: { orderBy: { id: 'asc' }, take: 50 }, reviews: { orderBy: { id: 'asc' }, take: 50 }, _count: { select: { asBuilts: true } } },
} as const;

const toModel = (row: Omit<PlanRevision, 'inputs'> & Beside): PlanRecord => ({
  id: row.id,
  buildId: row.buildId,
  revision: row.revision,
  state: row.state as PlanState,
  asOf: dateToDay(row.asOf),
  inputsSha256: row.inputsSha256,
  attempt: row.attempt,
  problem: row.problem as unknown as ProblemBody | null,
  createdById: row.createdById,
  createdAt: row.createdAt.toISOString(),
  startedAt: row.startedAt?.toISOString() ?? null,
  finishedAt: row.finishedAt?.toISOString() ?? null,
  stale: row.staleness.map(({ reason, subject, createdAt }) => ({ reason, subject, since: createdAt.toISOString() })),
  reviews: row.reviews.map(toReview),
  asBuiltCount: row._count.asBuilts,
});

@Injectable()
export class PlansRepository {
  /** The number of the next revision. The caller holds the garden alone, so that two requests do not get the same one. */
  async nextRevision(db: Db, buildId: string): Promise<number> {
    const { _max } = await db.planRevision.aggregate({ where: { buildId }, _max: { revision: true } });
    return (_max.revision ?? 0) + 1;
  }

  async insert(db: Db, principalId: string, inputs: PlanInputs): Promise<PlanRecord> {
    const row = await db.planRevision.create({
      data: {
        gardenId: inputs.gardenId,
        id: inputs.planId,
        buildId: inputs.buildId,
        revision: inputs.revision,
        asOf: dayToDate(inputs.asOf),
        inputs: inputs as object,
        inputsSha256: createHash('sha256').update(JSON.stringify(inputs)).digest('hex'),
        seed: BigInt(inputs.seed),
        createdById: principalId,
      },
      ...BESIDE,
    });
    return toModel(row);
  }

  async find(db: Db, id: string): Promise<PlanRecord | null> {
    const row = await db.planRevision.findFirst({ where: { id }, ...BESIDE });
    return row && toModel(row);
  }

  async state(db: Db, id: string): Promise<PlanState | null> {
    const row = await db.planRevision.findFirst({ where: { id }, select: { state: true } });
    return row && (row.state as PlanState);
  }

  async list(db: Db, buildId: string | null, step: Step): Promise<PlanRecord[]> {
    const rows = await db.planRevision.findMany({
      where: { ...(buildId ? { buildId } : {}), ...(step.after ? { id: { gt: step.after } } : {}) },
      orderBy: { id: 'asc' },
      take: step.take,
      ...BESIDE,
    });
    return rows.map(toModel);
  }

  async inputs(db: Db, id: string): Promise<PlanInputs | null> {
    const row = await db.planRevision.findFirst({ where: { id }, select: { inputs: true } });
    return row && (row.inputs as unknown as PlanInputs);
  }

  async result(db: Db, id: string): Promise<PlanResult | null> {
    const row = await db.planResult.findFirst({ where: { planId: id }, select: { result: true } });
    return row && (row.result as unknown as PlanResult);
  }

  async insertResult(db: Db, at: { gardenId: string; id: string }, attempt: number, computed: { result: PlanResult; timingsMs: object }): Promise<void> {
    const { result, timingsMs } = computed;
    await db.planResult.create({
      data: {
        gardenId: at.gardenId,
        planId: at.id,
        schemaVersion: result.schemaVersion,
        engineVersion: result.engineVersion,
        result: result as object,
        timings: timingsMs,
        attempt,
      },
      select: { planId: true },
    });
  }

  async insertReview(
    db: Db,
    gardenId: string,
    id: string,
    planId: string,
    principalId: string,
    review: Pick<ReviewRecord, 'decision' | 'reviewer' | 'comment'>,
  ): Promise<ReviewRecord> {
    return toReview(await db.planReview.create({ data: { gardenId, id, planId, createdById: principalId, ...review } }));
  }

  async insertAsBuilt(db: Db, gardenId: string, id: string, planId: string, principalId: string, asBuilt: AsBuiltFields): Promise<AsBuiltRecord> {
    const { observedOn, ...details } = asBuilt;
    const row = await db.planAsBuilt.create({
      data: { gardenId, id, planId, createdById: principalId, observedOn: dayToDate(observedOn), details: details as object },
    });
    return { ...asBuilt, id: row.id, createdAt: row.createdAt.toISOString() };
  }

  async listAsBuilt(db: Db, planId: string, step: Step): Promise<AsBuiltRecord[]> {
    const rows = await db.planAsBuilt.findMany({
      where: { planId, ...(step.after ? { id: { gt: step.after } } : {}) },
      orderBy: { id: 'asc' },
      take: step.take,
    });
    return rows.map((row) => ({
      ...(row.details as unknown as Omit<AsBuiltFields, 'observedOn'>),
      observedOn: dateToDay(row.observedOn),
      id: row.id,
      createdAt: row.createdAt.toISOString(),
    }));
  }
}
