import { contextOrNull } from '../http/context.js';
import type { Db } from '../database/database.js';

/** The job that everybody may watch, beside the row that it makes. It has that row's id. */
export const JOB_STATES = ['queued', 'running', 'succeeded', 'failed', 'cancelled'] as const;
export type JobState = (typeof JOB_STATES)[number];

/** The type of the problem that a job ends with when somebody called it off. */
export const CANCELLED = '/v1/problems/job-cancelled';

const open = (id: string) => ({ id, finishedAt: null });

export const insertJob = async (db: Db, kind: string, job: { gardenId: string; id: string }): Promise<void> => {
  const createdById = contextOrNull()?.actor?.principalId ?? null;
  // Without reading it back: who may queue a job need not be one who may see it.
  await db.job.createMany({ data: [{ gardenId: job.gardenId, id: job.id, kind, createdById }], skipDuplicates: true });
};

export const startJob = async (db: Db, id: string, attempt: number): Promise<void> => {
  await db.job.updateMany({ where: open(id), data: { state: 'running', attempt, startedAt: new Date() } });
};

/** How far a try has come. Says nothing when the try was taken over, or less than was said before. */
export const noteProgress = async (db: Db, id: string, attempt: number, at: { progress: number; stage: string }): Promise<void> => {
  const progress = Math.min(99, Math.max(0, Math.floor(at.progress)));
  const held = { id, attempt, state: 'running', finishedAt: null };
  const { count } = await db.job.updateMany({ where: { ...held, progress: { lte: progress } }, data: { progress, stage: at.stage } });
  // A second try begins again; it shows where it is, and the figure stays until it is passed.
  if (count === 0) await db.job.updateMany({ where: { ...held, progress: { gt: progress } }, data: { stage: at.stage } });
};

/** A try failed and another will follow. */
export const requeueJob = async (db: Db, id: string): Promise<void> => {
  await db.job.updateMany({ where: { ...open(id), state: 'running' }, data: { state: 'queued', stage: 'waitingForNextTry' } });
};

export const succeedJob = async (db: Db, id: string): Promise<void> => {
  await db.job.updateMany({ where: open(id), data: { state: 'succeeded', progress: 100, stage: 'done', finishedAt: new Date() } });
};

/** Ends a job that did not get there: as cancelled when that is its problem, else as failed. */
export const failJob = async (db: Db, id: string, problem: object): Promise<void> => {
  const state = (problem as { type?: unknown }).type === CANCELLED ? 'cancelled' : 'failed';
  await db.job.updateMany({ where: open(id), data: { state, problem, finishedAt: new Date() } });
};
