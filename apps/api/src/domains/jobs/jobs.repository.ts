import { Injectable } from '@nestjs/common';
import type { Db } from '../../platform/database/database.js';
import type { Job, JobEvent } from '../../platform/database/generated/client.js';
import type { JobState } from '../../platform/jobs/job-rows.js';
import type { ProblemBody } from '../../platform/problems/problem.js';
import type { Step } from '../shared/resource.js';

export interface JobRecord {
  id: string;
  kind: string;
  state: JobState;
  progress: number;
  stage: string | null;
  attempt: number;
  problem: ProblemBody | null;
  /** Number of its newest event. */
  eventCount: number;
  createdById: string | null;
  createdAt: string;
  startedAt: string | null;
  finishedAt: string | null;
}

export interface JobEventRecord {
  number: number;
  state: JobState;
  progress: number;
  stage: string | null;
  attempt: number;
  at: string;
}

const toModel = (row: Job): JobRecord => ({
  id: row.id,
  kind: row.kind,
  state: row.state as JobState,
  progress: row.progress,
  stage: row.stage,
  attempt: row.attempt,
  problem: row.problem as unknown as ProblemBody | null,
  eventCount: row.eventCount,
  createdById: row.createdById,
  createdAt: row.createdAt.toISOString(),
  startedAt: row.startedAt?.toISOString() ?? null,
  finishedAt: row.finishedAt?.toISOString() ?? null,
});

const toEvent = (row: JobEvent): JobEventRecord => ({
  number: row.number,
  state: row.state as JobState,
  progress: row.progress,
  stage: row.stage,
  attempt: row.attempt,
  at: row.at.toISOString(),
});

@Injectable()
export class JobsRepository {
  async find(db: Db, id: string): Promise<JobRecord | null> {
    const row = await db.job.findFirst({ where: { id } });
    return row && toModel(row);
  }

  async list(db: Db, filter: { state: JobState | null }, step: Step): Promise<JobRecord[]> {
    const rows = await db.job.findMany({
      where: { ...(filter.state ? { state: filter.state } : {}), ...(step.after ? { id: { gt: step.after } } : {}) },
      orderBy: { id: 'asc' },
      take: step.take,
    });
    return rows.map(toModel);
  }

  /** Of several that call one job off only the first does it. The rows themselves are taken in the order in which workers take them. */
  async cancelAlone(db: Db, id: string): Promise<void> {
    await db.$executeRaw`SELECT pg_advisory_xact_lock(hashtextextended(${`cancelling of ${id}`}, 13))`;
  }

  async eventsAfter(db: Db, jobId: string, number: number, take: number): Promise<JobEventRecord[]> {
    const rows = await db.jobEvent.findMany({ where: { jobId, number: { gt: number } }, orderBy: { number: 'asc' }, take });
    return rows.map(toEvent);
  }
}
