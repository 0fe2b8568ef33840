import { existsSync } from 'node:fs';
import { statfs } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { Inject, Injectable, type BeforeApplicationShutdown, type OnApplicationBootstrap } from '@nestjs/common';
import type pg from 'pg';
import { CONFIG, type Config } from '../config/config.js';
import { pendingMigrations } from '../database/migrate.js';
import { SIDE_POOL } from '../database/pool.js';
import { Metrics } from '../metrics/metrics.js';
import { ServingState } from './state.js';

/** Checks that decide whether requests are sent here. */
const DECIDING = ['serving', 'database', 'migrations', 'queue', 'disk'] as const;
/** Checks that are told, and do not keep requests away: reading and planning go on while printing or a backlog does not. */
const TOLD = ['queueAge', 'report'] as const;

export const CHECKS = [...DECIDING, ...TOLD] as const;
export type CheckName = (typeof CHECKS)[number];
export type Checks = Record<CheckName, 'ok' | 'fail'>;

/** A check looked at so long ago is looked at again before it is told. */
const FRESH_MS = 250;
/** Nobody waits longer than this for a check that is known. */
const PATIENCE_MS = 60;
/** What has not been seen for so long does not count as good. */
const STALE_MS = 4_000;
const LIMIT_MS = 2_000;
const ROUND_MS = 1_000;
const SLOW_ROUND_MS = 10_000;

const within = async <T>(work: Promise<T>, ms: number): Promise<T> => {
  let timer: NodeJS.Timeout | undefined;
  const limit = new Promise<never>((_resolve, reject) => {
    timer = setTimeout(() => reject(new Error('too slow')), ms);
  });
  return Promise.race([work, limit]).finally(() => clearTimeout(timer));
};

/** One or more checks that are found out together, remembered, and looked at again in the background. */
class Probe {
  private good: readonly boolean[] | null = null;
  private at = 0;
  private running: Promise<void> | null = null;

  constructor(
    readonly names: readonly CheckName[],
    private readonly look: () => Promise<readonly boolean[]>,
    private readonly freshMs: number,
    private readonly staleMs: number,
  ) {}

  refresh(): Promise<void> {
    this.running ??= within(this.look(), LIMIT_MS)
      .catch(() => this.names.map(() => false))
      .then((good) => {
        this.good = good;
        this.at = performance.now();
        this.running = null;
      });
    return this.running;
  }

  async tell(): Promise<readonly boolean[]> {
    if (performance.now() - this.at > this.freshMs || this.good === null)
      await within(this.refresh(), this.good === null ? LIMIT_MS : PATIENCE_MS).catch(() => undefined);
    const known = this.good !== null && performance.now() - this.at < this.staleMs;
    return this.names.map((_name, at) => known && (this.good?.[at] ?? false));
  }
}

/**
 * Whether this process can serve. Each check is made in the background too, on connections of its own, so that the
 * answer is there at once: a database that stops or comes back is seen within a second or two.
 */
@Injectable()
export class Readiness implements OnApplicationBootstrap, BeforeApplicationShutdown {
  private readonly probes: readonly Probe[];
  private timers: NodeJS.Timeout[] = [];

  constructor(
    @Inject(SIDE_POOL) private readonly pool: pg.Pool,
    @Inject(CONFIG) private readonly config: Config,
    private readonly metrics: Metrics,
    private readonly state: ServingState,
  ) {
    this.probes = [
      new Probe(['database', 'migrations'], async () => [true, (await pendingMigrations(this.pool)).length === 0], FRESH_MS, STALE_MS),
      new Probe(['queueAge'], () => this.queueIsYoung(), SLOW_ROUND_MS, 3 * SLOW_ROUND_MS),
      new Probe(['disk'], () => this.diskHasRoom(), SLOW_ROUND_MS, 3 * SLOW_ROUND_MS),
      new Probe(['report'], () => this.reportIsReady(), SLOW_ROUND_MS, 3 * SLOW_ROUND_MS),
    ];
  }

  onApplicationBootstrap(): void {
    const [database, ...slow] = this.probes;
    const every = (ms: number, probes: readonly (Probe | undefined)[]): NodeJS.Timeout => {
      for (const probe of probes) void probe?.refresh();
      return setInterval(() => probes.forEach((probe) => void probe?.refresh()), ms).unref();
    };
    this.timers = [every(ROUND_MS, [database]), every(SLOW_ROUND_MS, slow)];
  }

  beforeApplicationShutdown(): void {
    this.timers.forEach((timer) => clearInterval(timer));
  }

  async checks(): Promise<{ ready: boolean; checks: Checks }> {
    const told = await Promise.all(this.probes.map(async (probe) => (await probe.tell()).map((good, at) => [probe.names[at], good] as const)));
    const good = new Map<string | undefined, boolean>([['serving', !this.state.draining], ['queue', this.state.queueRunning], ...told.flat()]);
    const say = (name: CheckName): 'ok' | 'fail' => (good.get(name) ? 'ok' : 'fail');
    const checks = Object.fromEntries(CHECKS.map((name) => [name, say(name)])) as Checks;
    for (const name of CHECKS) this.metrics.checks.set({ check: name }, checks[name] === 'ok' ? 1 : 0);
    return { ready: DECIDING.every((name) => checks[name] === 'ok'), checks };
  }

  private async queueIsYoung(): Promise<readonly boolean[]> {
    const state = await this.metrics.queueState();
    return [state !== null && state.oldest_s * 1000 <= this.config.queueAgeLimitMs];
  }

  /** The folder of the embedded database, or what this process itself writes to. */
  private async diskHasRoom(): Promise<readonly boolean[]> {
    const { database, embeddedDir, diskFreeMinBytes } = this.config;
    const { bavail, bsize } = await statfs(database === null && existsSync(embeddedDir) ? embeddedDir : tmpdir());
    return [bavail * bsize >= diskFreeMinBytes];
  }

  private async reportIsReady(): Promise<readonly boolean[]> {
    const response = await fetch(new URL('/readyz', this.config.reportUrl), { redirect: 'error', signal: AbortSignal.timeout(LIMIT_MS) });
    await response.body?.cancel();
    return [response.ok];
  }
}
