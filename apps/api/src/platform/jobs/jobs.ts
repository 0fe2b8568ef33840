import { Injectable } from '@nestjs/common';
import type { Db } from '../database/database.js';
import { originOrNull } from '../http/context.js';
import { traceparentOf } from '../http/trace.js';
import { Problem, type ProblemBody } from '../problems/problem.js';
import { insertJob } from './job-rows.js';

/** A job takes seconds; asking much sooner helps nobody. */
const RETRY_FULL_S = '10';

/** A job carries ids only: what it works on is read when it runs. */
export interface Job {
  gardenId: string;
  id: string;
}

/** Tells how far a try has come: 0 to 99, and a word for what it is at. Never waits, and loses figures rather than time. */
export type TellProgress = (attempt: number, progress: number, stage: string) => void;

export interface Task {
  /** Does the work. Throwing means: try again later, up to three times in all. The signal comes when it was called off. */
  run(job: Job, signal: AbortSignal, tell: TellProgress): Promise<void>;
  /** Called after the last try: writes the problem to the task's own row. */
  failed(job: Job, problem: ProblemBody): Promise<void>;
  /** The same in the open transaction of whoever calls the job off; without it `failed` is called after that transaction. */
  cancel?(db: Db, job: Job, problem: ProblemBody): Promise<void>;
}

/** Something that goes on beside the queue as long as the runner runs. */
export interface Loop {
  start(): void;
  stop(): Promise<void>;
}

/** Which tasks exist. Domains register theirs while the application starts; the runner works them off. */
@Injectable()
export class Tasks {
  private readonly known = new Map<string, Task>();
  readonly loops: Loop[] = [];

  register(name: string, task: Task): void {
    if (this.known.has(name)) throw new Error(`the task ${name} is registered twice`);
    this.known.set(name, task);
  }

  all(): ReadonlyMap<string, Task> {
    return this.known;
  }
}

/** How many costly jobs one garden may have at work, and how many in line behind them. */
export interface JobQuota {
  running: number;
  waiting: number;
}

/** What the job keeps of the request that asks for it, for the log and the trace. */
const originSettings = () => {
  const origin = originOrNull();
  return { traceparent: origin ? traceparentOf(origin.trace) : '', requestId: origin?.requestId ?? '' };
};

/** Queues a job inside the transaction that made its row: both are there, or neither. */
export const enqueue = async (db: Db, task: string, job: Job): Promise<void> => {
  const { traceparent, requestId } = originSettings();
  await insertJob(db, task, job);
  await db.$executeRaw`SELECT set_config('app.traceparent', ${traceparent}, true), set_config('app.request_id', ${requestId}, true),
    enqueue_job(${task}, ${job.gardenId}::uuid, ${job.id}::uuid)`;
};

/** The same for a costly job: the garden has so many turns and so many places in line, and whoever comes after that is told to wait. */
export const enqueueInTurn = async (db: Db, task: string, job: Job, { running, waiting }: JobQuota): Promise<void> => {
  const { traceparent, requestId } = originSettings();
  await insertJob(db, task, job);
  const [row] = await db.$queryRaw<{ queued: boolean }[]>`
    SELECT set_config('app.traceparent', ${traceparent}, true), set_config('app.request_id', ${requestId}, true),
      enqueue_in_turn(${task}, ${job.gardenId}::uuid, ${job.id}::uuid, ${running}::integer, ${waiting}::integer) AS queued`;
  if (!row?.queued) throw new Problem('jobs-full', { running, waiting }, [], { 'Retry-After': RETRY_FULL_S }, { 'violated-policies': ['jobs'] });
};
