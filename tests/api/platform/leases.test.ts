import { setTimeout as sleep } from 'node:timers/promises';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import pg from 'pg';
import { makeSidePool } from '../../../apps/api/src/platform/database/pool.js';
import { Leases } from '../../../apps/api/src/platform/limits/leases.js';
import { PermitStore, type Grant, type Wish } from '../../../apps/api/src/platform/limits/permit-store.js';
import type { Policy, Verdict } from '../../../apps/api/src/platform/limits/policies.js';
import { makeLog } from '../../../apps/api/src/platform/logging/log.js';
import { freshDatabase, type TestDatabase } from '../../support/template-database.js';

const log = makeLog('silent');
let database: TestDatabase;
const pools: pg.Pool[] = [];
beforeAll(async () => {
  database = await freshDatabase();
});
afterAll(async () => {
  await Promise.all(pools.map((pool) => pool.end()));
  await database.drop();
});

/** What one process has: a connection of its own, leases of its own. */
const aProcess = () => {
  const pool = makeSidePool(database.url);
  pools.push(pool);
  let trips = 0;
  const counted = { query: (config: pg.QueryConfig) => ((trips += 1), pool.query(config)) } as unknown as pg.Pool;
  const leases = new Leases(new PermitStore(counted), log);
  return { leases, trips: () => trips };
};
const policy = (quota: number, windowMs: number): Policy => ({ name: 'credential', quota, windowMs });

describe('leases', () => {
  it('S29: no window of any beginning sees more than the quota, with two processes that ask without pause', async () => {
    const rule = policy(60, 1_000);
    const uses: number[] = [];
    const until = performance.now() + 4_000;
    const hammer = async ({ leases }: ReturnType<typeof aProcess>): Promise<void> => {
      while (performance.now() < until) {
        const { allowed } = await leases.take(rule, 'busy');
        if (allowed) uses.push(performance.now());
        await sleep(1);
      }
    };
    const [one, two] = [aProcess(), aProcess()];
    await Promise.all([one, one, two, two].map(hammer));
    const busiest = Math.max(...uses.map((from) => uses.filter((at) => at >= from && at < from + rule.windowMs).length));
    expect(busiest).toBeLessThanOrEqual(rule.quota);
    // Not by giving nothing: 4 windows at the full quota, less what the slices and the leases hold back.
    expect(uses.length).toBeGreaterThanOrEqual(Math.floor(4 * rule.quota * 0.9));
  });

  it('S29: two processes give out the quota between them, to within 5 %', async () => {
    const rule = policy(1_000, 60_000);
    const [one, two] = [aProcess(), aProcess()];
    let given = 0;
    for (let round = 0; round < 40; round += 1) {
      const verdicts = await Promise.all([one, two].flatMap(({ leases }) => Array.from({ length: 20 }, () => leases.take(rule, 'both'))));
      given += verdicts.filter(({ allowed }) => allowed).length;
      await sleep(1);
    }
    expect(given).toBeLessThanOrEqual(1_000);
    expect(given).toBeGreaterThanOrEqual(950);
  });

  it('a busy caller costs a round trip for many requests, and a flood of refused ones none', async () => {
    const { leases, trips } = aProcess();
    const rule = policy(5_000, 60_000);
    for (let at = 0; at < 2_000; at += 1) expect((await leases.take(rule, 'reader')).allowed).toBe(true);
    expect(trips()).toBeLessThanOrEqual(80);
    const small = policy(3, 60_000);
    for (let at = 0; at < 3; at += 1) expect((await leases.take(small, 'flood')).allowed).toBe(true);
    const before = trips();
    const verdicts = await Promise.all(Array.from({ length: 500 }, () => leases.take(small, 'flood')));
    expect(verdicts.some(({ allowed }) => allowed)).toBe(false);
    expect(trips() - before).toBeLessThanOrEqual(1);
  });

  it('those who come at once share one question, and none gets the permit of another', async () => {
    const { leases, trips } = aProcess();
    const verdicts = await Promise.all(Array.from({ length: 100 }, () => leases.take(policy(40, 60_000), 'crowd')));
    expect(verdicts.filter(({ allowed }) => allowed)).toHaveLength(40);
    expect(new Set(verdicts.filter(({ allowed }) => allowed).map(({ remaining }) => remaining)).size).toBeGreaterThan(1);
    expect(trips()).toBeLessThanOrEqual(4);
  });

  it('permits that a process leased and did not use are not lost', async () => {
    const [one, two] = [aProcess(), aProcess()];
    const rule = policy(500, 2_000);
    // A burst makes the next lease large; then nothing more comes.
    for (let at = 0; at < 30; at += 1) await one.leases.take(rule, 'bursts');
    await sleep(50);
    await one.leases.take(rule, 'bursts');
    let given = 31;
    for (let at = 0; at < 500; at += 1) given += (await two.leases.take(rule, 'bursts')).allowed ? 1 : 0;
    expect(given).toBeGreaterThanOrEqual(475);
    expect(given).toBeLessThanOrEqual(500);
  });
});

describe('when the shared count does not answer', () => {
  class BrokenStore {
    asked = 0;
    broken = true;
    take({ quota, wanted }: Wish): Promise<Grant> {
      this.asked += 1;
      if (this.broken) return Promise.reject(new Error('not now'));
      return Promise.resolve({ granted: wanted, remaining: quota - wanted, slice: 1, returnsMs: 0 });
    }
  }

  it('S34: the process counts alone, within the same quota, and asks again only after a pause', async () => {
    const store = new BrokenStore();
    const leases = new Leases(store as unknown as PermitStore, log);
    const rule = policy(10, 60_000);
    const verdicts: Verdict[] = [];
    for (let at = 0; at < 15; at += 1) verdicts.push(await leases.take(rule, 'alone'));
    expect(verdicts.map(({ allowed }) => allowed)).toEqual(Array.from({ length: 15 }, (_one, at) => at < 10));
    expect(Math.min(...verdicts.map(({ remaining }) => remaining))).toBe(0);
    expect(store.asked).toBe(1);
    store.broken = false;
    await sleep(1_050);
    expect((await leases.take(rule, 'another')).allowed).toBe(true);
    expect(store.asked).toBe(2);
  });
});
