import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import pg from 'pg';
import { POOL } from '../../apps/api/src/platform/database/pool.js';
import { startApi, OPERATOR_TOKEN, REPORT_SECRET, UNLIMITED, type TestApi, type TestGarden } from '../support/api-app.js';
import { killAll, start, type Started } from '../support/api-process.js';
import { ProbeModule } from '../support/platform-probe.js';
import { freshDatabase, type TestDatabase } from '../support/template-database.js';

const NAMED = { name: 'Yarrow', elevationM: 4 };

describe('when all connections are taken', () => {
  let api: TestApi;
  let garden: TestGarden;
  beforeAll(async () => {
    api = await startApi({ env: { DATABASE_POOL: '2' }, extra: [ProbeModule] });
    garden = await api.garden();
  });
  afterAll(() => api.stop());

  it('S34: requests are refused with 503 and a time to come back, nothing is half done, and it recovers by itself', async () => {
    const pool = api.app.get<pg.Pool>(POOL);
    const held = await Promise.all([pool.connect(), pool.connect()]);
    const started = performance.now();
    const [answers, live] = await Promise.all([
      Promise.all([garden.http.get('/v1/probe'), garden.http.post('/v1/probe', NAMED), garden.http.get('/v1/sites')]),
      api.anyone.get('/livez'),
    ]);
    expect(performance.now() - started).toBeLessThan(9_000);
    expect(live.status).toBe(200);
    for (const { status, body, headers } of answers) {
      expect([status, body.type, headers['content-type']]).toEqual([503, '/v1/problems/timed-out', expect.stringContaining('problem+json')]);
      expect(Number(headers['retry-after'])).toBeGreaterThan(0);
    }
    // It is the load, not the database: readiness says so, on a connection of its own.
    expect((await api.anyone.get('/readyz')).body).toMatchObject({ database: 'ok', migrations: 'ok' });
    held.forEach((client) => client.release());
    expect((await garden.http.get('/v1/probe').expect(200)).body.items).toEqual([]);
    await garden.http.post('/v1/probe', NAMED).expect(201);
  }, 30_000);

  it('S34: a statement that takes too long is ended, told as 503, and its connection serves again', async () => {
    const patient = await startApi({ extra: [ProbeModule] });
    const there = await patient.garden();
    const lock = new pg.Client({ connectionString: patient.database.adminUrl });
    await lock.connect();
    await lock.query('BEGIN; LOCK TABLE sites IN ACCESS EXCLUSIVE MODE');
    const pool = patient.app.get<pg.Pool>(POOL);
    pool.on('acquire', (client) => void client.query("SET statement_timeout = '300ms'").catch(() => undefined));
    const { status, body } = await there.http.post('/v1/probe', NAMED);
    await lock.query('ROLLBACK');
    expect([status, body.type]).toEqual([503, '/v1/problems/timed-out']);
    await there.http.post('/v1/probe', NAMED).expect(201);
    await lock.end();
    await patient.stop();
  }, 30_000);
});

describe('when the database takes no changes', () => {
  let api: TestApi;
  let garden: TestGarden;
  let admin: pg.Client;
  beforeAll(async () => {
    api = await startApi({ extra: [ProbeModule] });
    garden = await api.garden();
    admin = new pg.Client({ connectionString: api.database.adminUrl });
    await admin.connect();
  });
  afterAll(async () => {
    await admin.end();
    await api.stop();
  });

  const become = async (mode: 'on' | 'off'): Promise<void> => {
    await admin.query('SET default_transaction_read_only = off');
    await admin.query(`ALTER DATABASE ${api.database.name} SET default_transaction_read_only = ${mode}`);
    await admin.query('SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE datname = current_database() AND pid <> pg_backend_pid()');
    // Whoever asks first may still find the cut connection.
    for (const until = Date.now() + 5_000; (await garden.http.get('/v1/probe')).status !== 200; await sleep(50))
      if (Date.now() > until) throw new Error('cannot be read');
  };

  it('S34: reading goes on, a change is 503 and leaves nothing, and all is well when it takes changes again', async () => {
    const { body: made } = await garden.http.post('/v1/probe', NAMED).expect(201);
    await admin.query("UPDATE api_keys SET last_used_at = now() - interval '1 day'");
    await become('on');
    await garden.http.get(`/v1/probe/${made.id}`).expect(200);
    const refused = await garden.http.post('/v1/probe', { ...NAMED, name: 'never' });
    expect([refused.status, refused.body.type]).toEqual([503, '/v1/problems/read-only']);
    expect(Number(refused.headers['retry-after'])).toBeGreaterThan(0);
    const patched = await garden.http.patch(`/v1/probe/${made.id}`, '"1"', { elevationM: 9 });
    expect([patched.status, patched.body.type]).toEqual([503, '/v1/problems/read-only']);
    expect((await garden.http.get('/v1/probe').expect(200)).body.items.map(({ name }: { name: string }) => name)).toEqual(['Yarrow']);
    await become('off');
    await garden.http.post('/v1/probe', { ...NAMED, name: 'again' }).expect(201);
    expect((await garden.http.get(`/v1/probe/${made.id}`).expect(200)).body.elevationM).toBe(4);
  }, 30_000);
});

const FAKETIME = '/usr/lib/x86_64-linux-gnu/faketime/libfaketime.so.1';
const withFaketime = existsSync(FAKETIME) ? describe : describe.skip;
if (!existsSync(FAKETIME)) process.stdout.write('no clock to set: faketime is not installed, so the jump of the clock is not tested\n');

withFaketime('when the clock of the process is set', () => {
  const dir = mkdtempSync(join(tmpdir(), 'lathwork-clock-'));
  const clock = join(dir, 'clock');
  const set = (offset: string): void => writeFileSync(clock, `${offset}\n`);
  let database: TestDatabase;
  let api: Started;
  beforeAll(async () => {
    set('+0');
    database = await freshDatabase();
    api = await start({
      ...UNLIMITED,
      RATE_PER_CREDENTIAL: '60',
      DATABASE_URL: database.url,
      DATABASE_OWNER_URL: database.ownerUrl,
      REPORT_SECRET,
      LATHWORK_OPERATOR_TOKEN: OPERATOR_TOKEN,
      DRAIN_DELAY_S: '0',
      LD_PRELOAD: FAKETIME,
      FAKETIME_TIMESTAMP_FILE: clock,
      FAKETIME_NO_CACHE: '1',
      FAKETIME_DONT_FAKE_MONOTONIC: '1',
    });
  }, 90_000);
  afterAll(async () => {
    killAll();
    await database.drop();
    rmSync(dir, { recursive: true, force: true });
  });

  it('S34: two hours forward and back: keys, limits, readiness and the end go on as if nothing had been', async () => {
    const made = await fetch(`${api.url}/v1/gardens`, {
      method: 'POST',
      headers: { Authorization: `Bearer ${OPERATOR_TOKEN}`, 'Content-Type': 'application/json', 'Idempotency-Key': 'clock' },
      body: JSON.stringify({ name: 'Yarrow plot', locale: 'en', currency: 'EUR', unitSystem: 'metric' }),
    });
    const key = /lw_[0-9A-Za-z]{36}/.exec(await made.text())?.[0] ?? '';
    const read = async (): Promise<Response> => fetch(`${api.url}/v1/sites`, { headers: { Authorization: `Bearer ${key}` } });
    const hourOf = (response: Response): number => new Date(response.headers.get('date') ?? '').getTime() / 3_600_000;
    for (let at = 0; at < 20; at += 1) expect((await read()).status).toBe(200);
    const before = hourOf(await read());
    for (const [offset, hours] of [
      ['+2h', 2],
      ['-2h', -2],
    ] as const) {
      set(offset);
      await sleep(1_100);
      // The clock was really set, or this would prove nothing.
      const response = await read();
      expect(Math.round(hourOf(response) - before)).toBe(hours);
      expect(response.status).toBe(200);
      expect((await fetch(`${api.url}/readyz`)).status).toBe(200);
      for (let at = 0; at < 15; at += 1) expect((await read()).status).toBe(200);
    }
    // 20 + 1 + 2 x 16 = 53 of 60 are used: the count was neither lost nor doubled.
    for (let at = 0; at < 7; at += 1) expect((await read()).status).toBe(200);
    const refused = await read();
    expect(refused.status).toBe(429);
    expect(Number(refused.headers.get('retry-after'))).toBeLessThanOrEqual(63);
    api.child.kill('SIGTERM');
    expect(await api.exit).toBe(0);
  }, 60_000);
});
