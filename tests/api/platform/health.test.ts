import { chmodSync, mkdtempSync, rmSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type pg from 'pg';
import { parseConfig } from '../../../apps/api/src/platform/config/config.js';
import { startEmbedded, type Embedded } from '../../../apps/api/src/platform/database/embedded.js';
import { makeSidePool } from '../../../apps/api/src/platform/database/pool.js';
import { Readiness, type Checks } from '../../../apps/api/src/platform/health/readiness.js';
import { ServingState } from '../../../apps/api/src/platform/health/state.js';
import { Metrics } from '../../../apps/api/src/platform/metrics/metrics.js';
import { REPORT_SECRET } from '../../support/api-app.js';
import { killAll, start, type Started } from '../../support/api-process.js';
import { databaseProxy, type DatabaseProxy } from '../../support/database-proxy.js';
import { freshDatabase } from '../../support/template-database.js';

interface Answer {
  status: number;
  ms: number;
  body: Checks;
}

const ask = async (url: string): Promise<Answer> => {
  const started = performance.now();
  const response = await fetch(url);
  const body = (await response.json()) as Checks;
  return { status: response.status, ms: performance.now() - started, body };
};

describe('with a database of its own that stops and starts', () => {
  const dir = mkdtempSync(join(tmpdir(), 'lathwork-health-'));
  const slow: string[] = [];
  let database: Embedded;
  let proxy: DatabaseProxy;
  let api: Started;

  const startDatabase = async (): Promise<void> => {
    database = await startEmbedded({ dir: join(dir, 'database'), durable: false });
    proxy.pointAt(Number(new URL(database.adminUrl).port));
  };
  beforeAll(async () => {
    // The account that the server runs as under root must be able to enter.
    chmodSync(dir, 0o755);
    proxy = await databaseProxy();
    await startDatabase();
    api = await start({ DATABASE_URL: proxy.through(database.url), DATABASE_OWNER_URL: proxy.through(database.ownerUrl), REPORT_SECRET });
    await ask(`${api.url}/livez`);
  }, 120_000);
  afterAll(async () => {
    killAll();
    proxy.close();
    await database.stop();
    rmSync(dir, { recursive: true, force: true });
  });

  /** Asks both again and again until readyz says this; gives the seconds it took. */
  const until = async (status: number): Promise<number> => {
    const started = performance.now();
    for (;;) {
      const [live, ready] = [await ask(`${api.url}/livez`), await ask(`${api.url}/readyz`)];
      expect([live.status, live.body]).toEqual([200, { process: 'ok' }]);
      for (const { ms } of [live, ready]) if (ms > 100) slow.push(`${Math.round(ms)} ms`);
      if (ready.status === status) return (performance.now() - started) / 1000;
      if (performance.now() - started > 10_000) throw new Error(`readyz still says ${JSON.stringify(ready.body)}`);
      await sleep(50);
    }
  };

  it('A37: the database stops: livez 200, readyz 503 within 5 s; it starts: 200 within 5 s', async () => {
    await until(200);
    for (let round = 0; round < 2; round += 1) {
      await database.stop();
      expect(await until(503)).toBeLessThan(5);
      const { body } = await ask(`${api.url}/readyz`);
      expect(body).toMatchObject({ serving: 'ok', database: 'fail', migrations: 'fail' });
      await startDatabase();
      expect(await until(200)).toBeLessThan(5);
    }
  }, 60_000);

  it('A37: a database that answers nothing at all is seen too, and readyz does not wait for it', async () => {
    await until(200);
    proxy.stall();
    expect(await until(503)).toBeLessThan(5);
    proxy.open();
    expect(await until(200)).toBeLessThan(5);
  }, 60_000);

  it('A37: both answer in less than 100 ms, also while the database is away', () => {
    expect(slow).toEqual([]);
  });

  it('A37: tells names and ok or fail, and nothing else, to anybody', async () => {
    const response = await fetch(`${api.url}/readyz`);
    const text = await response.text();
    for (const [name, said] of Object.entries(JSON.parse(text) as Checks))
      expect([name, said]).toEqual([expect.stringMatching(/^[a-zA-Z]+$/), expect.stringMatching(/^(ok|fail)$/)]);
    expect(text).not.toMatch(/postgres|127\.0\.0\.1|error/i);
  });
});

describe('single checks', () => {
  let pool: pg.Pool;
  let drop: () => Promise<void>;
  const reports: Server[] = [];
  beforeAll(async () => {
    const database = await freshDatabase();
    // As the owner, so that the test can plant a job of any age.
    pool = makeSidePool(database.ownerUrl);
    drop = () => database.drop();
  });
  afterAll(async () => {
    for (const server of reports) server.close();
    await pool.end();
    await drop();
  });

  const readiness = (env: Record<string, string>, state: Partial<ServingState> = {}): Readiness => {
    const config = parseConfig({ REPORT_SECRET, REPORT_URL: 'http://127.0.0.1:9', ...env });
    return new Readiness(pool, config, new Metrics(pool, pool, config), Object.assign(new ServingState(), { queueRunning: true }, state));
  };

  it('everything is well where everything is well', async () => {
    const report = createServer((_request, response) => void response.writeHead(200).end('ready'));
    reports.push(report);
    await new Promise<void>((resolve) => report.listen(0, '127.0.0.1', resolve));
    const { ready, checks } = await readiness({ REPORT_URL: `http://127.0.0.1:${(report.address() as AddressInfo).port}` }).checks();
    expect([ready, new Set(Object.values(checks))]).toEqual([true, new Set(['ok'])]);
  });

  it.each([
    ['serving', {}, { draining: true }],
    ['queue', {}, { queueRunning: false }],
    ['disk', { DISK_FREE_MIN_MB: '1000000' }, {}],
  ] as const)('"%s" fails alone, and then requests belong elsewhere', async (name, env, state) => {
    const { ready, checks } = await readiness(env, state).checks();
    expect([ready, checks[name], checks.database]).toEqual([false, 'fail', 'ok']);
  });

  it('a migration that is missing is told', async () => {
    await pool.query("UPDATE _prisma_migrations SET rolled_back_at = now() WHERE migration_name LIKE '%_tables'");
    const { ready, checks } = await readiness({}).checks();
    await pool.query('UPDATE _prisma_migrations SET rolled_back_at = NULL');
    expect([ready, checks.database, checks.migrations]).toEqual([false, 'ok', 'fail']);
  });

  it('a report app that is away or not ready is told, and keeps nobody from reading and planning', async () => {
    const busy = createServer((_request, response) => void response.writeHead(503).end());
    reports.push(busy);
    await new Promise<void>((resolve) => busy.listen(0, '127.0.0.1', resolve));
    for (const url of ['http://127.0.0.1:9', `http://127.0.0.1:${(busy.address() as AddressInfo).port}`]) {
      const { ready, checks } = await readiness({ REPORT_URL: url }).checks();
      expect([ready, checks.report]).toEqual([true, 'fail']);
    }
  });

  it('S33: a job that has waited too long is told', async () => {
    const age = async (): Promise<string> => (await readiness({ QUEUE_AGE_LIMIT_S: '60' }).checks()).checks.queueAge;
    expect(await age()).toBe('ok');
    await pool.query("SELECT graphile_worker.add_job('waits-long', '{}'::json, run_at => now() - interval '59 seconds')");
    expect(await age()).toBe('ok');
    await pool.query("SELECT graphile_worker.add_job('waits-longer', '{}'::json, run_at => now() - interval '61 seconds')");
    expect(await age()).toBe('fail');
    // One that is meant for later does not wait.
    await pool.query("UPDATE graphile_worker._private_jobs SET run_at = now() + interval '1 hour'");
    expect(await age()).toBe('ok');
  });
});
