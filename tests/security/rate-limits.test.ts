import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { OPERATOR_TOKEN, REPORT_SECRET, UNLIMITED } from '../support/api-app.js';
import { killAll, start, type Started } from '../support/api-process.js';
import { freshDatabase, type TestDatabase } from '../support/template-database.js';

const QUOTA = 1_000;

let database: TestDatabase;
let both: [Started, Started];
beforeAll(async () => {
  database = await freshDatabase();
  const env = {
    ...UNLIMITED,
    RATE_PER_CREDENTIAL: String(QUOTA),
    DATABASE_URL: database.url,
    DATABASE_OWNER_URL: database.ownerUrl,
    REPORT_SECRET,
    LATHWORK_OPERATOR_TOKEN: OPERATOR_TOKEN,
    DATABASE_POOL: '4',
    LOG_LEVEL: 'error',
  };
  both = [await start({ ...env, LOG_LEVEL: 'info' }), await start({ ...env, LOG_LEVEL: 'info' })];
}, 120_000);
afterAll(async () => {
  killAll();
  await database.drop();
});

const newKey = async (): Promise<string> => {
  const answer = await fetch(`${both[0].url}/v1/gardens`, {
    method: 'POST',
    headers: { Authorization: `Bearer ${OPERATOR_TOKEN}`, 'Content-Type': 'application/json', 'Idempotency-Key': randomUUID() },
    body: JSON.stringify({ name: 'Yarrow plot', locale: 'en', currency: 'EUR', unitSystem: 'metric' }),
  });
  return /lw_[0-9A-Za-z]{36}/.exec(await answer.text())?.[0] ?? '';
};

interface Told {
  status: number;
  left: number;
  retryAfter: number | null;
}

const ask = async (url: string, key: string): Promise<Told> => {
  const response = await fetch(`${url}/v1/sites?limit=1`, { headers: { Authorization: `Bearer ${key}` } });
  await response.arrayBuffer();
  const left = Number(/"credential";r=(-?\d+)/.exec(response.headers.get('ratelimit') ?? '')?.[1]);
  const retryAfter = response.headers.get('retry-after');
  return { status: response.status, left, retryAfter: retryAfter === null ? null : Number(retryAfter) };
};

/** Asks with so many at once, round about the processes in the given order, until nothing has been given for a while. */
const useUp = async (key: string, targets: readonly string[]): Promise<Told[]> => {
  const told: Told[] = [];
  let refusedInARow = 0;
  const worker = async (url: string): Promise<void> => {
    while (refusedInARow < 60 && told.length < 3 * QUOTA) {
      const one = await ask(url, key);
      told.push(one);
      refusedInARow = one.status === 429 ? refusedInARow + 1 : 0;
    }
  };
  await Promise.all(targets.map(worker));
  return told;
};

describe('one key against two processes', () => {
  it.each([
    ['evenly', (one: string, two: string) => [one, one, one, one, two, two, two, two]],
    ['unevenly', (one: string, two: string) => [one, one, one, one, one, one, one, two]],
  ] as const)(
    'S29: %s: together they let through the quota to within 5 %%, and never more',
    async (_how, targets) => {
      const key = await newKey();
      const started = performance.now();
      const told = await useUp(key, targets(both[0].url, both[1].url));
      // Within one window, or the figure would mean nothing.
      expect(performance.now() - started).toBeLessThan(55_000);
      const statuses = new Set(told.map(({ status }) => status));
      expect([...statuses].sort()).toEqual([200, 429]);
      const through = told.filter(({ status }) => status === 200).length;
      expect(through).toBeLessThanOrEqual(QUOTA);
      expect(through).toBeGreaterThanOrEqual(QUOTA * 0.95);
      for (const { left, status, retryAfter } of told) {
        expect(left).toBeGreaterThanOrEqual(0);
        if (status === 429) expect(retryAfter).toBeGreaterThanOrEqual(1);
      }
    },
    70_000,
  );

  it('API4: one key that is refused does not slow another down', async () => {
    const [flooding, quiet] = [await newKey(), await newKey()];
    await useUp(flooding, [both[0].url, both[1].url, both[0].url, both[1].url]);
    let going = true;
    const flood = Promise.all(
      [both[0].url, both[1].url].map(async (url) => {
        while (going) expect((await ask(url, flooding)).status).toBe(429);
      }),
    );
    for (let at = 0; at < 50; at += 1) expect((await ask(both[at % 2 ? 0 : 1].url, quiet)).status).toBe(200);
    going = false;
    await flood;
  }, 70_000);
});
