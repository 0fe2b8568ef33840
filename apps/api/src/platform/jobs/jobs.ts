import { Injectable } from '@nestjs/common';
import type { Db } from '../database/database.js';
import type { ProblemBody } from '../problems/problem.js';

/** A job carries ids only: what it works on is read when it runs. */
export interface Job {
  gardenId: string;
  id: string;
}

export interface Task {
  /** Does the work. Throwing means: try again later, up to three times in all. */
  run(job: Job, signal: AbortSignal): Promise<void>;
  /** Called after the last try: writes the problem to the task's own row. */
  failed(job: Job, problem: ProblemBody): Promise<void>;
}

/** Which tasks exist. Domains register theirs while the application starts; the runner works them off. */
@Injectable()
export class Tasks {
  private readonly known = new Map<string, Task>();

  register(name: string, task: Task): void {
    if (this.known.has(name)) throw new Error(`the task ${name} is registered twice`);
    this.known.set(name, task);
  }

  all(): ReadonlyMap<string, Task> {
    return this.known;
  }
}

/** Queues a job inside the transaction that made its row: both are there, or neither. */
export const enqueue = async (db: Db, task: string, job: Job): Promise<void> => {
  await db.$executeRaw`SELECT enqueue_job(${task}, ${job.gardenId}::uuid, ${job.id}::uuid)`;
};
