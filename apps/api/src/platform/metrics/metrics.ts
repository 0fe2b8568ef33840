import { Inject, Injectable } from '@nestjs/common';
import type pg from 'pg';
import { collectDefaultMetrics, Counter, Gauge, Histogram, Registry } from 'prom-client';
import { CONFIG, type Config } from '../config/config.js';
import { POOL, SIDE_POOL } from '../database/pool.js';

/** The buckets that the OpenTelemetry HTTP conventions advise, in seconds. */
export const OTEL_BUCKETS = [0.005, 0.01, 0.025, 0.05, 0.075, 0.1, 0.25, 0.5, 0.75, 1, 2.5, 5, 7.5, 10];
const JOB_BUCKETS = [0.1, 0.25, 0.5, 1, 2.5, 5, 10, 30, 60, 120, 300];

const METHODS = new Set(['GET', 'HEAD', 'POST', 'PUT', 'PATCH', 'DELETE', 'OPTIONS']);
const STALE_MS = 5_000;

export type JobOutcome = 'succeeded' | 'failed' | 'retried' | 'cancelled' | 'superseded';

interface QueueRow {
  waiting: number;
  running: number;
  oldest_s: number;
}

/**
 * The numbers of this process, under the names of the OpenTelemetry conventions as Prometheus writes them (dots become
 * underscores, the unit is a suffix). No label ever holds an id, an address or anything else a caller can choose: a
 * route is its template, and what is not among the known methods is `_OTHER`. So the number of series does not grow
 * with use, and no garden can be told from another.
 */
@Injectable()
export class Metrics {
  readonly registry = new Registry();
  private readonly registers = [this.registry];

  readonly requests = new Histogram({
    name: 'http_server_request_duration_seconds',
    help: 'http.server.request.duration: time from the first to the last byte of an answer',
    labelNames: ['http_request_method', 'http_route', 'http_response_status_code'],
    buckets: OTEL_BUCKETS,
    registers: this.registers,
  });

  readonly jobs = new Histogram({
    name: 'lathwork_job_duration_seconds',
    help: 'Time of one try of a job, by task and outcome',
    labelNames: ['task', 'outcome'],
    buckets: JOB_BUCKETS,
    registers: this.registers,
  });

  readonly computes = new Histogram({
    name: 'lathwork_plan_compute_duration_seconds',
    help: 'Time to compute one plan, by outcome',
    labelNames: ['outcome'],
    buckets: JOB_BUCKETS,
    registers: this.registers,
  });

  readonly refusals = new Counter({
    name: 'lathwork_rate_limit_refusals_total',
    help: 'Requests refused because a policy had no permit left',
    labelNames: ['policy'],
    registers: this.registers,
  });

  readonly deprecatedUses = new Counter({
    name: 'lathwork_deprecated_requests_total',
    help: 'Requests to operations that will go away',
    labelNames: ['operation'],
    registers: this.registers,
  });

  readonly checks = new Gauge({
    name: 'lathwork_ready',
    help: '1 when the check of readiness holds, else 0',
    labelNames: ['check'],
    registers: this.registers,
  });

  private queue: { at: number; row: QueueRow | null } = { at: -STALE_MS, row: null };

  constructor(
    @Inject(POOL) pool: pg.Pool,
    @Inject(SIDE_POOL) private readonly side: pg.Pool,
    @Inject(CONFIG) config: Config,
  ) {
    // Watching the collector and the event loop costs a little all the time, so only where somebody looks.
    if (config.metricsToken !== null || config.metricsPort !== null) collectDefaultMetrics({ register: this.registry });
    this.watchPool(pool);
    this.watchQueue();
  }

  request(method: string, route: string | null, status: number, ms: number): void {
    const labels = {
      http_request_method: METHODS.has(method) ? method : '_OTHER',
      http_route: route ?? '',
      http_response_status_code: String(status),
    };
    this.requests.observe(labels, ms / 1000);
  }

  private watchPool(pool: pg.Pool): void {
    const { registers } = this;
    new Gauge({
      name: 'db_client_connection_count',
      help: 'db.client.connection.count: connections of the serving pool',
      labelNames: ['state'],
      registers,
      collect() {
        this.set({ state: 'idle' }, pool.idleCount);
        this.set({ state: 'used' }, pool.totalCount - pool.idleCount);
      },
    });
    new Gauge({
      name: 'db_client_connection_max',
      help: 'db.client.connection.max: most connections of the serving pool',
      registers,
      collect() {
        this.set(pool.options.max);
      },
    });
    new Gauge({
      name: 'db_client_connection_pending_requests',
      help: 'db.client.connection.pending_requests: who waits for a connection',
      registers,
      collect() {
        this.set(pool.waitingCount);
      },
    });
  }

  private watchQueue(): void {
    const { registers } = this;
    const state = (): Promise<QueueRow | null> => this.queueState();
    new Gauge({
      name: 'lathwork_queue_jobs',
      help: 'Jobs of all processes that are due and wait, or run',
      labelNames: ['state'],
      registers,
      async collect() {
        const row = await state();
        this.set({ state: 'waiting' }, row?.waiting ?? NaN);
        this.set({ state: 'running' }, row?.running ?? NaN);
      },
    });
    new Gauge({
      name: 'lathwork_queue_oldest_seconds',
      help: 'How long the job that has waited longest is due',
      registers,
      async collect() {
        this.set((await state())?.oldest_s ?? NaN);
      },
    });
  }

  /** Asked of the database at most every few seconds, however often somebody looks; null when it does not answer. */
  async queueState(): Promise<QueueRow | null> {
    const now = performance.now();
    if (now - this.queue.at >= STALE_MS) {
      this.queue.at = now;
      const asked = this.side.query<QueueRow>('SELECT * FROM queue_state()');
      this.queue.row = await asked.then(
        ({ rows }) => rows[0] ?? null,
        () => null,
      );
    }
    return this.queue.row;
  }
}
