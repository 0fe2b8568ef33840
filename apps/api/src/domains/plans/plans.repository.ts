import { createHash } from 'node:crypto';
import type { PlanInputs, PlanResult } from '@lathwork/model';
import { Injectable } from '@nestjs/common';
import type { Asker, Db } from '../../platform/database/database.js';
import type { PlanRevision } from '../../platform/database/generated/client.js';
import type { ProblemBody } from '../../platform/problems/problem.js';
import { dateToDay, dayToDate, type Step } from '../shared/resource.js';
import { planSql, plansSql, resultSql, type PlanRow, type ResultRow } from './plan-rows.repository.js';

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

/** A new revision, with nothing beside it yet. */
const toNew = (row: Omit<PlanRevision, 'inputs'>): PlanRecord => ({
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
  stale: [],
  reviews: [],
  asBuiltCount: 0,
});

const toPlan = (row: PlanRow): PlanRecord => ({
  id: row.id,
  buildId: row.build_id,
  revision: row.revision,
  state: row.state as PlanState,
  asOf: row.as_of,
  inputsSha256: row.inputs_sha256,
  attempt: row.attempt,
  problem: row.problem as ProblemBody | null,
  createdById: row.created_by_id,
  createdAt: row.created_at.toISOString(),
  startedAt: row.started_at?.toISOString() ?? null,
  finishedAt: row.finished_at?.toISOString() ?? null,
  stale: row.stale ?? [],
  reviews: row.reviews ?? [],
  asBuiltCount: row.as_built_count,
});

/** A finished plan as the text that is stored. */
export interface ResultText {
  state: PlanState;
  text: string | null;
  schemaVersion: number | null;
  engineVersion: string | null;
}

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
      omit: { inputs: true },
    });
    return toNew(row);
  }

  async find(db: Asker, id: string): Promise<PlanRecord | null> {
    return (await this.findReviewable(db, id))?.plan ?? null;
  }

  /** The plan, and whether its result lets it be reviewed; null while there is no result. */
  async findReviewable(db: Asker, id: string): Promise<{ plan: PlanRecord; reviewBlocked: boolean | null } | null> {
    const [row] = await db.$queryRaw<(PlanRow & { review_blocked: boolean | null })[]>`${planSql(id)}`;
    return row ? { plan: toPlan(row), reviewBlocked: row.review_blocked } : null;
  }

  async state(db: Db, id: string): Promise<PlanState | null> {
    const row = await db.planRevision.findFirst({ where: { id }, select: { state: true } });
    return row && (row.state as PlanState);
  }

  async list(db: Asker, buildId: string | null, step: Step): Promise<PlanRecord[]> {
    return (await db.$queryRaw<PlanRow[]>`${plansSql(buildId, step)}`).map(toPlan);
  }

  async inputs(db: Db, id: string): Promise<PlanInputs | null> {
    const row = await db.planRevision.findFirst({ where: { id }, select: { inputs: true } });
    return row && (row.inputs as unknown as PlanInputs);
  }

  async result(db: Db, id: string): Promise<PlanResult | null> {
    const row = await db.planResult.findFirst({ where: { planId: id }, select: { result: true } });
    return row && (row.result as unknown as PlanResult);
  }

  /** The result as the text that is stored, with the state that says whether there is one. */
  async resultText(db: Asker, id: string): Promise<ResultText | null> {
    const [row] = await db.$queryRaw<ResultRow[]>`${resultSql(id)}`;
    return row ? { state: row.state as PlanState, text: row.text, schemaVersion: row.schema_version, engineVersion: row.engine_version } : null;
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
