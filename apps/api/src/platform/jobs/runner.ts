import { Inject, Injectable, type BeforeApplicationShutdown } from '@nestjs/common';
import { Logger as WorkerLogger, run, runMigrations, type JobHelpers, type Runner } from 'graphile-worker';
import pg from 'pg';
import type { Logger } from 'pino';
import { CONFIG, type Config } from '../config/config.js';
import { ADDRESSES, type Addresses } from '../database/addresses.js';
import { isId } from '../database/ids.js';
import { withListeners } from '../database/pool.js';
import { ServingState } from '../health/state.js';
import { LOG } from '../logging/log.js';
import { toProblem } from '../problems/problem.filter.js';
import { Problem } from '../problems/problem.js';
import { LateWorker } from './fence.js';
import { JobRecovery } from './recovery.js';
import { Tasks, type Job, type Task } from './jobs.js';

/** Refusals that another try would meet again. */
const isFinal = (error: unknown): boolean => error instanceof Problem && error.status < 500;

const jobOf = (payload: unknown): Job => {
  const { gardenId, id } = (payload ?? {}) as Partial<Job>;
  if (!isId(gardenId) || !isId(id)) throw new Error('a job without its ids');
  return { gardenId, id };
};

/** Makes or updates the queue's own tables, as the role that owns them. */
export const migrateQueue = async (queueUrl: string): Promise<void> => {
  const quiet = new WorkerLogger(() => () => undefined);
  await runMigrations({ connectionString: queueUrl, logger: quiet });
};

/** Works the queue off. It has a connection of its own, which never serves a request. */
@Injectable()
export class JobRunner implements BeforeApplicationShutdown {
  private runner: Runner | null = null;
  private pool: pg.Pool | null = null;
  private recovery: JobRecovery | null = null;

  constructor(
    private readonly tasks: Tasks,
    @Inject(CONFIG) private readonly config: Config,
    @Inject(ADDRESSES) private readonly addresses: Addresses,
    @Inject(LOG) private readonly log: Logger,
    private readonly state: ServingState,
  ) {}

  async start(): Promise<void> {
    this.pool = withListeners(new pg.Pool({ connectionString: this.addresses.queueUrl, max: this.config.jobConcurrency + 2 }));
    const list = Object.fromEntries(
      [...this.tasks.all()].map(([name, task]) => [name, (payload: unknown, helpers: JobHelpers) => this.work(name, task, payload, helpers)]),
    );
    const logger = new WorkerLogger(
      () => (level, message) => this.log[level === 'warning' ? 'warn' : level === 'error' ? 'error' : 'debug']({ part: 'queue' }, message),
    );
    this.recovery = new JobRecovery({
      queueUrl: this.addresses.queueUrl,
      longestTaskMs: Math.max(this.config.reportTimeoutMs, this.config.computeTimeoutMs) + 60_000,
      tasks: this.tasks.all(),
      log: this.log,
    });
    await this.recovery.start();
    this.runner = await run({ pgPool: this.pool, taskList: list, concurrency: this.config.jobConcurrency, noHandleSignals: true, pollInterval: 1000, logger });
    this.state.queueRunning = true;
    this.runner.promise
      .catch((error: unknown) => this.log.error({ err: error }, 'the job runner stopped by itself'))
      .finally(() => {
        this.state.queueRunning = false;
      });
  }

  private async work(name: string, task: Task, payload: unknown, helpers: JobHelpers): Promise<void> {
    const job = jobOf(payload);
    const started = performance.now();
    const about = { task: name, id: job.id, try: helpers.job.attempts };
    try {
      await task.run(job, helpers.abortSignal ?? new AbortController().signal);
      this.log.info({ ...about, ms: Math.round(performance.now() - started) }, 'job done');
    } catch (error) {
      if (error instanceof LateWorker) return this.log.warn(about, 'job was taken over: nothing written');
      if (!isFinal(error) && helpers.job.attempts < helpers.job.max_attempts) {
        this.log.warn({ ...about, err: error }, 'job failed, will be tried again');
        throw error;
      }
      this.log.error({ ...about, err: error }, 'job failed for good');
      await task.failed(job, toProblem(error).toBody());
    }
  }

  /** Before the database closes: running jobs get their time; what does not finish goes back to the queue. */
  async beforeApplicationShutdown(): Promise<void> {
    const runner = this.runner;
    this.runner = null;
    await runner?.stop().catch(() => undefined);
    await this.recovery?.stop();
    await this.pool?.end();
    this.pool = null;
  }
}
