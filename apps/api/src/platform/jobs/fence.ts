import type { Db, Prisma } from '../database/database.js';
import { failJob, startJob, succeedJob } from './job-rows.js';

/** Tables whose rows are worked on by jobs: each has an attempt number and an end. */
export type Fenced = 'planRevision' | 'document' | 'gardenExport';

interface Data {
  planRevision: Prisma.PlanRevisionUncheckedUpdateManyInput;
  document: Prisma.DocumentUncheckedUpdateManyInput;
  gardenExport: Prisma.GardenExportUncheckedUpdateManyInput;
}

/** Another worker took the row over, or it is finished: whatever this one made must not be written. */
export class LateWorker extends Error {
  constructor() {
    super('another worker holds this row now');
  }
}

interface Delegate {
  updateMany(args: { where: { id: string; attempt?: number; finishedAt: null }; data: object }): Promise<{ count: number }>;
  findFirst(args: { where: { id: string }; select: { attempt: true } }): Promise<{ attempt: number } | null>;
}

const delegate = (db: Db, table: Fenced): Delegate => db[table] as unknown as Delegate;

/**
 * Takes a row for one try and returns its attempt number, or null when it is finished or not there. A worker that
 * still holds an older number can write nothing from here on.
 */
export const claimAttempt = async <T extends Fenced>(db: Db, table: T, id: string, data: Data[T] = {}): Promise<number | null> => {
  const { count } = await delegate(db, table).updateMany({
    where: { id, finishedAt: null },
    data: { startedAt: new Date(), ...data, attempt: { increment: 1 } },
  });
  if (count === 0) return null;
  // The update holds the row until the transaction ends, so nobody can have raised the number since.
  const attempt = (await delegate(db, table).findFirst({ where: { id }, select: { attempt: true } }))?.attempt ?? null;
  if (attempt !== null) await startJob(db, id, attempt);
  return attempt;
};

/** Ends a row if this attempt still holds it; else throws LateWorker, which undoes the whole transaction. */
export const finish = async <T extends Fenced>(db: Db, table: T, id: string, attempt: number, data: Data[T]): Promise<void> => {
  const { count } = await delegate(db, table).updateMany({ where: { id, attempt, finishedAt: null }, data: { finishedAt: new Date(), ...data } });
  if (count !== 1) throw new LateWorker();
  const problem: unknown = (data as { problem?: unknown }).problem;
  await (typeof problem === 'object' && problem !== null ? failJob(db, id, problem) : succeedJob(db, id));
};

/**
 * Ends a row as failed after the last try or because it was called off, whoever held it; tells whether it did. A row
 * that is finished stays as it is. The job beside the row ends with it.
 */
export const giveUp = async (db: Db, table: Fenced, id: string, problem: object): Promise<boolean> => {
  const { count } = await delegate(db, table).updateMany({
    where: { id, finishedAt: null },
    data: { state: 'failed', problem, finishedAt: new Date(), attempt: { increment: 1 } },
  });
  if (count > 0) await failJob(db, id, problem);
  return count > 0;
};
