import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import pg from 'pg';
import { Database, type Db } from '../../apps/api/src/platform/database/database.js';
import { POOL } from '../../apps/api/src/platform/database/pool.js';
import { startApi, UNLIMITED, type TestApi, type TestGarden } from '../support/api-app.js';
import { cold, make } from '../support/example-requests.js';

// Twenty gardens on three connections, in no order: reading, writing, breaking, timing out, being cut off. Every row that
// comes back carries the mark of its garden; one mark of another garden is one too many.

const GARDENS = 20;
const TRANSACTIONS = 9_000;
const REQUESTS = 1_000;
const AT_ONCE = 24;

let api: TestApi;
let gardens: TestGarden[];
let database: Database;
let pool: pg.Pool;

const markOf = (garden: TestGarden): string => `Mark ${garden.gardenId}`;

beforeAll(async () => {
  api = await startApi({ env: { ...UNLIMITED, DATABASE_POOL: '3' } });
  database = api.get(Database);
  pool = api.app.get<pg.Pool>(POOL);
  gardens = [];
  for (let i = 0; i < GARDENS; i += 1) {
    const garden = await api.garden();
    await make(garden.http, '/v1/sites', { ...cold.site, name: markOf(garden) });
    gardens.push(garden);
  }
}, 120_000);
afterAll(() => api.stop());

/** A small generator of its own, so that a bad run can be run again. */
const dice = (seed: number) => (): number => {
  seed = (Math.imul(seed, 1_664_525) + 1_013_904_223) >>> 0;
  return seed / 4_294_967_296;
};

const inTurns = async (count: number, work: (at: number) => Promise<void>): Promise<void> => {
  let next = 0;
  const worker = async (): Promise<void> => {
    while (next < count) await work(next++);
  };
  await Promise.all(Array.from({ length: AT_ONCE }, worker));
};

type Step = (garden: TestGarden, wrong: string[]) => Promise<void>;

const marks = async (db: Db): Promise<string[]> => (await db.site.findMany({ select: { name: true } })).map(({ name }) => name);
const see = (garden: TestGarden, wrong: string[], names: readonly string[]): void => {
  if (names.length !== 1 || names[0] !== markOf(garden)) wrong.push(`${garden.gardenId} saw ${names.join(', ') || 'nothing'}`);
};

const broken: Record<string, number> = {};
const breaks = async (name: string, work: Promise<unknown>): Promise<void> => {
  await work.then(
    () => Promise.reject(new Error(`${name} did not break`)),
    () => (broken[name] = (broken[name] ?? 0) + 1),
  );
};

/** What one transaction may do, each as likely as it is listed often. */
const STEPS: readonly Step[] = [
  ...Array.from({ length: 8 }, (): Step => async (garden, wrong) => see(garden, wrong, await database.readSnapshot(garden.actor, marks))),
  ...Array.from(
    { length: 4 },
    (): Step => async (garden, wrong) =>
      see(
        garden,
        wrong,
        await database.inTransaction(garden.actor, async (db) => {
          await db.site.updateMany({ data: { elevationM: { increment: 0.001 } } });
          return marks(db);
        }),
      ),
  ),
  // Ended by the code, by the database, by the clock, and by writing where only reading is allowed.
  (garden) =>
    breaks(
      'thrown',
      database.inTransaction(garden.actor, async (db) => Promise.reject(new Error(String((await marks(db)).length)))),
    ),
  (garden) =>
    breaks(
      'sql',
      database.inTransaction(garden.actor, (db) => db.$queryRaw`SELECT 1/0`),
    ),
  (garden) =>
    breaks(
      'timeout',
      database.inTransaction(garden.actor, async (db) => (await db.$executeRaw`SET LOCAL statement_timeout = 5`, db.$queryRaw`SELECT pg_sleep(1)`)),
    ),
  (garden) =>
    breaks(
      'read only',
      database.readSnapshot(garden.actor, (db) => db.site.updateMany({ data: { elevationM: 1 } })),
    ),
];

describe('S7: twenty gardens on three connections', () => {
  it('S7: in ten thousand transactions and requests no garden sees a row of another, and no connection is lost', async () => {
    const roll = dice(20_260_101);
    const wrong: string[] = [];
    const any = <T>(list: readonly T[]): T => list[Math.floor(roll() * list.length)] as T;
    await inTurns(TRANSACTIONS, () => any(STEPS)(any(gardens), wrong));
    let cut = 0;
    const { port } = api.server.address() as { port: number };
    await inTurns(REQUESTS, async () => {
      const garden = any(gardens);
      const stop = roll() < 0.2 ? AbortSignal.timeout(1 + Math.floor(roll() * 8)) : null;
      const answer = await fetch(`http://127.0.0.1:${port}/v1/sites`, { headers: { authorization: `Bearer ${garden.key}` }, signal: stop })
        .then(async (one) => ({ status: one.status, body: (await one.json()) as { items: { name: string }[] } }))
        .catch(() => null);
      if (answer === null) cut += 1;
      else if (answer.status === 200)
        see(
          garden,
          wrong,
          answer.body.items.map(({ name }) => name),
        );
      else wrong.push(`${garden.gardenId} got ${answer.status}`);
    });
    expect(wrong).toEqual([]);
    expect(cut).toBeGreaterThan(20);
    for (const name of ['thrown', 'sql', 'timeout', 'read only']) expect([name, (broken[name] ?? 0) > 200]).toEqual([name, true]);
    expect([pool.waitingCount, pool.totalCount <= 3, pool.idleCount === pool.totalCount]).toEqual([0, true, true]);
  }, 180_000);

  it('S7: connections that the server cuts off under way are replaced, and bring nothing along', async () => {
    const admin = new pg.Client({ connectionString: api.database.adminUrl });
    await admin.connect();
    const wrong: string[] = [];
    let failed = 0;
    await Promise.all([
      inTurns(600, async (at) => {
        const garden = gardens[at % GARDENS] as TestGarden;
        await database.readSnapshot(garden.actor, marks).then(
          (names) => see(garden, wrong, names),
          () => (failed += 1),
        );
      }),
      (async () => {
        for (let i = 0; i < 10; i += 1) {
          await admin.query(
            "SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE usename = 'lathwork_app' AND datname = current_database() ORDER BY random() LIMIT 1",
          );
          await new Promise((resolve) => setTimeout(resolve, 30));
        }
      })(),
    ]);
    await admin.end();
    expect(wrong).toEqual([]);
    expect(failed).toBeLessThan(300);
    for (const garden of gardens) expect(await database.readSnapshot(garden.actor, marks)).toEqual([markOf(garden)]);
  }, 60_000);

  it('S6: what a connection keeps between two transactions names no garden', async () => {
    const { rows } = await pool.query(
      "SELECT nullif(current_setting('app.garden_id', true), '') AS garden, nullif(current_setting('app.own_member_id', true), '') AS member",
    );
    expect(rows).toEqual([{ garden: null, member: null }]);
    expect((await pool.query('SELECT 1 FROM sites')).rowCount).toBe(0);
  });
});
