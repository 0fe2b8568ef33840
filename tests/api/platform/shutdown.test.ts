import { randomUUID } from 'node:crypto';
import { connect } from 'node:net';
import { setTimeout as sleep } from 'node:timers/promises';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import pg from 'pg';
import { OPERATOR_TOKEN, REPORT_SECRET, UNLIMITED } from '../../support/api-app.js';
import { killAll, start, type Started } from '../../support/api-process.js';
import { cold } from '../../support/example-requests.js';
import { freshDatabase, type TestDatabase } from '../../support/template-database.js';

let database: TestDatabase;
let env: Record<string, string>;
beforeAll(async () => {
  database = await freshDatabase();
  env = { ...UNLIMITED, DATABASE_URL: database.url, DATABASE_OWNER_URL: database.ownerUrl, REPORT_SECRET, LATHWORK_OPERATOR_TOKEN: OPERATOR_TOKEN };
});
afterAll(async () => {
  killAll();
  await database.drop();
});

const keyOf = async (url: string): Promise<string> => {
  const answer = await fetch(`${url}/v1/gardens`, {
    method: 'POST',
    headers: { Authorization: `Bearer ${OPERATOR_TOKEN}`, 'Content-Type': 'application/json', 'Idempotency-Key': randomUUID() },
    body: JSON.stringify({ name: 'Yarrow plot', locale: 'en', currency: 'EUR', unitSystem: 'metric' }),
  });
  const text = await answer.text();
  const key = /lw_[0-9A-Za-z]{36}/.exec(text)?.[0];
  if (!key) throw new Error(`no key: ${answer.status}`);
  return key;
};

interface InFlight {
  finish: () => void;
  answer: Promise<string>;
}

/** A write whose last byte is still to come: it is in flight until the test lets it go on. */
const inFlight = (port: number, key: string, body: string): InFlight => {
  const socket = connect(port, '127.0.0.1');
  let text = '';
  const answer = new Promise<string>((resolve, reject) => {
    socket.on('data', (chunk: Buffer) => (text += chunk.toString()));
    socket.on('close', () => resolve(text));
    socket.on('error', reject);
  });
  const head = [
    'POST /v1/sites HTTP/1.1',
    'Host: x',
    `Authorization: Bearer ${key}`,
    `Idempotency-Key: ${randomUUID()}`,
    'Content-Type: application/json',
    `Content-Length: ${Buffer.byteLength(body)}`,
    '\r\n',
  ].join('\r\n');
  socket.write(head + body.slice(0, -1));
  return { finish: () => socket.write(body.slice(-1)), answer };
};

const readiness = async (url: string): Promise<{ status: number; serving: string; connection: string | null } | null> => {
  try {
    const response = await fetch(`${url}/readyz`, { signal: AbortSignal.timeout(2000) });
    return { status: response.status, serving: ((await response.json()) as { serving: string }).serving, connection: response.headers.get('connection') };
  } catch {
    return null;
  }
};

describe('the end', () => {
  it('A38: SIGTERM with 200 writes in flight: readyz 503 at once, no reset, each answered and kept, a second signal changes nothing, 0 within 25 s', async () => {
    const api: Started = await start(env);
    const key = await keyOf(api.url);
    const site = (at: number): string => JSON.stringify({ ...cold.site, name: `in flight ${at}` });
    const open = Array.from({ length: 200 }, (_one, at) => inFlight(api.port, key, site(at)));
    await sleep(400);
    expect(await readiness(api.url)).toMatchObject({ status: 200, serving: 'ok' });
    const signalled = performance.now();
    api.child.kill('SIGTERM');
    await sleep(100);
    expect(await readiness(api.url)).toEqual({ status: 503, serving: 'fail', connection: 'close' });
    api.child.kill('SIGTERM');
    // Half of them go on while requests are still taken, half when none is taken any more.
    open.slice(0, 100).forEach(({ finish }) => finish());
    for (const until = Date.now() + 8_000; (await readiness(api.url)) !== null; await sleep(50))
      if (Date.now() > until) throw new Error('still takes requests');
    api.child.kill('SIGINT');
    open.slice(100).forEach(({ finish }) => finish());
    const answers = await Promise.all(open.map(({ answer }) => answer));
    const statuses = answers.map((answer) => /^HTTP\/1\.1 (\d{3})/.exec(answer)?.[1]);
    expect(new Set(statuses)).toEqual(new Set(['201']));
    // Whoever would send more on the same connection is told that it ends.
    for (const answer of answers) expect(answer).toMatch(/\r\nConnection: close\r\n/i);
    expect(await api.exit).toBe(0);
    expect(performance.now() - signalled).toBeLessThan(25_000);
    expect(api.lines.filter((line) => line.includes('"msg":"draining"'))).toHaveLength(1);
    const client = new pg.Client({ connectionString: database.adminUrl });
    await client.connect();
    const { rows } = await client.query<{ n: number }>("SELECT count(*)::int AS n FROM sites WHERE name LIKE 'in flight %'");
    await client.end();
    expect(rows[0]?.n).toBe(200);
  }, 60_000);

  it('A38: a request that never ends does not keep the process: 0 when the time is over', async () => {
    const api = await start({ ...env, SHUTDOWN_GRACE_S: '2', DRAIN_DELAY_S: '0' });
    const stuck = inFlight(api.port, 'x', '{"never": "ends"}');
    stuck.answer.catch(() => undefined);
    await sleep(200);
    const signalled = performance.now();
    api.child.kill('SIGTERM');
    expect(await api.exit).toBe(0);
    expect(performance.now() - signalled).toBeLessThan(4_000);
  }, 30_000);

  it('A38: with no delay and nothing under way it ends at once', async () => {
    const api = await start({ ...env, DRAIN_DELAY_S: '0' });
    api.child.kill('SIGINT');
    expect(await api.exit).toBe(0);
  }, 30_000);
});
