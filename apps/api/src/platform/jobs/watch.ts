import { Inject, Injectable } from '@nestjs/common';
import type { Logger } from 'pino';
import { Database } from '../database/database.js';
import { LOG } from '../logging/log.js';
import type { ProblemBody } from '../problems/problem.js';
import { JobFeed } from './feed.js';
import { failJob, noteProgress, requeueJob, succeedJob } from './job-rows.js';
import type { Job, TellProgress } from './jobs.js';

interface Said {
  attempt: number;
  progress: number;
  stage: string;
}

/** One try of one job, as the runner watches it. */
export interface Watched {
  /** Comes when the runner stops or the job is called off. */
  signal: AbortSignal;
  cancelled: AbortSignal;
  tell: TellProgress;
  /** Ends the watch once nothing of it is being written any more. */
  end(): Promise<void>;
}

/** Keeps the rows of jobs beside what the runner does: progress, further tries, and the ends of tasks that know no fence. */
@Injectable()
export class JobWatch {
  constructor(
    private readonly database: Database,
    private readonly feed: JobFeed,
    @Inject(LOG) private readonly log: Logger,
  ) {}

  watch(job: Job, stopping: AbortSignal | undefined): Watched {
    const cancelled = new AbortController();
    const off = this.feed.onChange(job.id, (state) => {
      if (state === 'cancelled') cancelled.abort();
    });
    let next: Said | null = null;
    let writing: Promise<void> | null = null;
    // One write at a time; what is said meanwhile waits, and only the newest of it is written.
    const write = async (): Promise<void> => {
      for (let said = next; said; said = next) {
        next = null;
        const { attempt, progress, stage } = said;
        await this.database.inTransaction(job, (db) => noteProgress(db, job.id, attempt, { progress, stage }));
      }
    };
    return {
      signal: stopping ? AbortSignal.any([stopping, cancelled.signal]) : cancelled.signal,
      cancelled: cancelled.signal,
      tell: (attempt, progress, stage) => {
        next = { attempt, progress, stage };
        writing ??= write()
          .catch((error: unknown) => this.log.warn({ err: error, id: job.id }, 'progress could not be written'))
          .finally(() => {
            writing = null;
          });
      },
      end: async () => {
        off();
        next = null;
        await writing;
      },
    };
  }

  again(job: Job): Promise<void> {
    return this.database.inTransaction(job, (db) => requeueJob(db, job.id));
  }

  /** For a task that has no fenced row: the fence has ended the job otherwise, and then this changes nothing. */
  async done(job: Job, tries: number): Promise<void> {
    await this.database.inTransaction(job, async (db) => {
      const row = await db.job.findFirst({ where: { id: job.id, attempt: 0, finishedAt: null }, select: { id: true } });
      if (!row) return;
      await db.job.updateMany({ where: { id: job.id, attempt: 0, finishedAt: null }, data: { attempt: tries, startedAt: new Date() } });
      await succeedJob(db, job.id);
    });
  }

  async failed(job: Job, problem: ProblemBody): Promise<void> {
    await this.database.inTransaction(job, (db) => failJob(db, job.id, problem));
  }
}
