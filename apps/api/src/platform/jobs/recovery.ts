import pg from 'pg';
import type { Logger } from 'pino';
import { toProblem } from '../problems/problem.filter.js';
import { Problem, type ProblemBody } from '../problems/problem.js';
import type { Job, Task } from './jobs.js';

const RUNNERS_LOCK = 72_707_372;
const SWEEP_MS = 30_000;

const UNLOCK = `SELECT graphile_worker.force_unlock_workers(array_agg(DISTINCT locked_by)) FROM graphile_worker.jobs WHERE locked_at IS NOT NULL`;

interface ParkedRow {
  id: string;
  task: string;
  payload: Job;
}

const PARKED = `SELECT j.id::text, t.identifier AS task, j.payload FROM graphile_worker._private_jobs j JOIN graphile_worker._private_tasks t ON t.id = j.task_id
  WHERE j.locked_at IS NULL AND j.attempts >= j.max_attempts ORDER BY j.id LIMIT 50`;

export interface RecoverySettings {
  queueUrl: string;
  /** No task takes longer than this; who holds a job for longer is gone. */
  longestTaskMs: number;
  tasks: ReadonlyMap<string, Task>;
  /** Told of each job that was cut off at its last try, after its task was. */
  ended?: (job: Job, problem: ProblemBody) => Promise<void>;
  log: Logger;
}

/**
 * Takes back the jobs of runners that were killed. The queue itself would keep such a job locked for hours. Taking one
 * from a runner that is only slow does no harm: it can write nothing once another has raised the attempt.
 */
export class JobRecovery {
  private client: pg.Client | null = null;
  private timer: NodeJS.Timeout | null = null;
  private sweeping: Promise<void> = Promise.resolve();

  constructor(private readonly settings: RecoverySettings) {}

  async start(): Promise<void> {
    this.client = await this.connect();
    await this.sweep(true);
    this.timer = setInterval(() => {
      this.sweeping = this.sweeping
        .then(() => this.sweep(false))
        .catch((error: unknown) => this.settings.log.warn({ err: error }, 'jobs could not be looked after'));
    }, SWEEP_MS);
    this.timer.unref();
  }

  async stop(): Promise<void> {
    if (this.timer) clearInterval(this.timer);
    await this.sweeping;
    await this.client?.end().catch(() => undefined);
    this.client = null;
  }

  /** Holds a shared lock as long as this process lives: whoever gets it alone knows that no other runner is there. */
  private async connect(): Promise<pg.Client> {
    const client = new pg.Client({ connectionString: this.settings.queueUrl });
    client.on('error', () => {
      if (this.client === client) this.client = null;
    });
    await client.connect();
    return client;
  }

  private async sweep(first: boolean): Promise<void> {
    const fresh = this.client === null;
    this.client ??= await this.connect();
    if (first || fresh) {
      const { rows } = await this.client.query<{ alone: boolean }>('SELECT pg_try_advisory_lock($1) AS alone', [RUNNERS_LOCK]);
      // Alone at the start: every job that is locked was left by a process that is gone.
      if (rows[0]?.alone && first) await this.client.query(UNLOCK);
      await this.client.query('SELECT pg_advisory_lock_shared($1)', [RUNNERS_LOCK]);
      if (rows[0]?.alone) await this.client.query('SELECT pg_advisory_unlock($1)', [RUNNERS_LOCK]);
    }
    await this.client.query(`${UNLOCK} AND locked_at < now() - $1 * interval '1 millisecond'`, [this.settings.longestTaskMs]);
    await this.endParked(this.client);
  }

  /** Jobs that were killed at their last try: their row learns that it has failed. */
  private async endParked(client: pg.Client): Promise<void> {
    const { rows } = await client.query<ParkedRow>(PARKED);
    for (const { id, task, payload } of rows) {
      const problem = toProblem(new Problem('internal')).toBody();
      await this.settings.tasks.get(task)?.failed(payload, problem);
      await this.settings.ended?.(payload, problem);
      await client.query('SELECT graphile_worker.complete_jobs(ARRAY[$1::bigint])', [id]);
      this.settings.log.error({ task, id: payload.id }, 'job was cut off at its last try');
    }
  }
}
