import { randomUUID } from 'node:crypto';
import { Inject, Injectable, type BeforeApplicationShutdown } from '@nestjs/common';
import { Logger as WorkerLogger, run, runMigrations, type JobHelpers, type Runner } from 'graphile-worker';
import pg from 'pg';
import type { Logger } from 'pino';
import { CONFIG, type Config } from '../config/config.js';
import { ADDRESSES, type Addresses } from '../database/addresses.js';
import { isId } from '../database/ids.js';
import { withListeners } from '../database/pool.js';
import { ServingState } from '../health/state.js';
import { origins, type Origin } from '../http/context.js';
import { traceFrom } from '../http/trace.js';
import { LOG } from '../logging/log.js';
import { Metrics, type JobOutcome } from '../metrics/metrics.js';
import { toProblem } from '../problems/problem.filter.js';
import { Problem } from '../problems/problem.js';
import { LateWorker } from './fence.js';
import { JobRecovery } from './recovery.js';
import { Tasks, type Job, type Task } from './jobs.js';
import { JobWatch } from './watch.js';

/** Refusals that another try would meet again. */
const isFinal = (error: unknown): boolean => error instanceof Problem && error.status < 500;

/** The request that asked for a job, as far as the queue knows it; its log lines and its trace go on from there. */
const originOf = (payload: unknown): Origin => {
  const { traceparent, requestId } = (payload ?? {}) as { traceparent?: unknown; requestId?: unknown };
  const known = typeof requestId === 'string' ? requestId : null;
  return { requestId: known ?? randomUUID(), trace: traceFrom(typeof traceparent === 'string' ? traceparent : undefined) };
};

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

/** What the runner works with, so that its constructor stays short. */
@Injectable()
export class RunnerTools {
  constructor(
    readonly tasks: Tasks,
    readonly watch: JobWatch,
    readonly state: ServingState,
    readonly metrics: Metrics,
  ) {}
}

/** Works the queue off. It has a connection of its own, which never serves a request. */
@Injectable()
export class JobRunner implements BeforeApplicationShutdown {
  private runner: Runner | null = null;
  private pool: pg.Pool | null = null;
  private recovery: JobRecovery | null = null;

  constructor(
    private readonly tools: RunnerTools,
    @Inject(CONFIG) private readonly config: Config,
    @Inject(ADDRESSES) private readonly addresses: Addresses,
    @Inject(LOG) private readonly log: Logger,
  ) {}

  async start(): Promise<void> {
    const { tasks, state } = this.tools;
    this.pool = withListeners(new pg.Pool({ connectionString: this.addresses.queueUrl, max: this.config.jobConcurrency + 2 }));
    const list = Object.fromEntries(
      [...tasks.all()].map(([name, task]) => [
        name,
        (payload: unknown, helpers: JobHelpers) => origins.run(originOf(payload), () => this.work(name, task, payload, helpers)),
      ]),
    );
    const logger = new WorkerLogger(
      () => (level, message) => this.log[level === 'warning' ? 'warn' : level === 'error' ? 'error' : 'debug']({ part: 'queue' }, message),
    );
    this.recovery = new JobRecovery({
      ended: (job, problem) => this.tools.watch.failed(job, problem),
      queueUrl: this.addresses.queueUrl,
      longestTaskMs: Math.max(this.config.reportTimeoutMs, this.config.computeTimeoutMs) + 60_000,
      tasks: tasks.all(),
      log: this.log,
    });
    await this.recovery.start();
    this.runner = await run({ pgPool: this.pool, taskList: list, concurrency: this.config.jobConcurrency, noHandleSignals: true, pollInterval: 1000, logger });
    state.queueRunning = true;
    for (const loop of tasks.loops) loop.start();
    this.runner.promise
      .catch((error: unknown) => this.log.error({ err: error }, 'the job runner stopped by itself'))
      .finally(() => {
        state.queueRunning = false;
      });
  }

  private async work(name: string, task: Task, payload: unknown, helpers: JobHelpers): Promise<void> {
    const job = jobOf(payload);
    const { watch } = this.tools;
    const started = performance.now();
    const about = { task: name, id: job.id, try: helpers.job.attempts };
    const ended = (outcome: JobOutcome): void => this.tools.metrics.jobs.observe({ task: name, outcome }, (performance.now() - started) / 1000);
    const watched = watch.watch(job, helpers.abortSignal);
    try {
      await task.run(job, watched.signal, watched.tell);
      await watched.end();
      await watch.done(job, helpers.job.attempts);
      ended('succeeded');
      this.log.info({ ...about, ms: Math.round(performance.now() - started) }, 'job done');
    } catch (error) {
      await watched.end();
      if (error instanceof LateWorker || watched.cancelled.aborted) {
        ended(watched.cancelled.aborted ? 'cancelled' : 'superseded');
        return this.log.warn(about, 'job was taken over or called off: nothing written');
      }
      if (!isFinal(error) && helpers.job.attempts < helpers.job.max_attempts) {
        ended('retried');
        this.log.warn({ ...about, err: error }, 'job failed, will be tried again');
        await watch.again(job);
        throw error;
      }
      ended('failed');
      this.log.error({ ...about, err: error }, 'job failed for good');
      const problem = toProblem(error).toBody();
      await task.failed(job, problem);
      await watch.failed(job, problem);
    }
  }

  /** Before the database closes: running jobs get their time; what does not finish goes back to the queue. */
  async beforeApplicationShutdown(): Promise<void> {
    const runner = this.runner;
    this.runner = null;
    await Promise.all(this.tools.tasks.loops.map((loop) => loop.stop()));
    await runner?.stop().catch(() => undefined);
    await this.recovery?.stop();
    await this.pool?.end();
    this.pool = null;
  }
}
