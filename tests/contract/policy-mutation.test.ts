import { afterAll, beforeAll, expect, test } from '@jest/globals';
import pg from 'pg';
import { makePool } from '../../apps/api/src/platform/database/pool.js';
import { freshDatabase, type TestDatabase } from '../support/template-database.js';
import { A, B, inGarden, plantRows, TENANT_TABLES } from '../support/two-gardens.js';

// A wall that was never seen to be missing may not be there. Each table's wall is taken down in turn, in each way that it
// could be; the probe of that table must notice, and must be content again once the wall stands.

let database: TestDatabase;
let admin: pg.Client;
let app: pg.Pool;
let owner: pg.Pool;
let tables: string[] = [];

beforeAll(async () => {
  database = await freshDatabase();
  admin = new pg.Client({ connectionString: database.adminUrl });
  await admin.connect();
  app = makePool(database.url, 1);
  owner = makePool(database.ownerUrl, 1);
  await plantRows(app, A);
  await plantRows(app, B);
  tables = (await admin.query<{ name: string }>(TENANT_TABLES)).rows.map(({ name }) => name);
});
afterAll(async () => {
  await Promise.all([admin.end(), app.end(), owner.end()]);
  await database.drop();
});

/** The owner's own functions look in here before a garden is known. */
const OWNER_READS = ['api_keys', 'members', 'invitations'];

/** Written by the database itself: no statement of the application can add to it, with or without a policy. */
const READ_ONLY = ['audit_links'];

type Leak = 'own row hidden' | 'other row seen' | 'other row taken in' | 'owner sees other row';

const seen = async (pool: pg.Pool, table: string, garden: string): Promise<boolean> =>
  (await inGarden(pool, A, `SELECT 1 FROM ${table} WHERE garden_id = $1`, [garden])).rowCount !== 0;

/** A row of another garden must be refused by the policy itself. One that gets as far as a key or a check got past it. */
const takesIn = async (table: string): Promise<boolean> => {
  const foreign = `INSERT INTO ${table} SELECT (jsonb_populate_record(t, jsonb_build_object('garden_id', $1::text))).* FROM ${table} t WHERE garden_id = $2 LIMIT 1`;
  // A row for the probe is there even when the policy hides all rows: it is made of nothing but its garden.
  const bare = `INSERT INTO ${table} SELECT (jsonb_populate_record(null::${table}, jsonb_build_object('garden_id', $1::text))).*`;
  const own = await seen(app, table, A);
  try {
    await inGarden(app, A, own ? foreign : bare, own ? [B, A] : [B], 'ROLLBACK');
    return true;
  } catch (error) {
    // A wall of another table, met by a trigger on the way, is not this one.
    const refusal = READ_ONLY.includes(table) ? /permission denied for table/ : new RegExp(`new row violates row-level security policy.* for table "${table}"`);
    return !refusal.test((error as Error).message);
  }
};

/** What is wrong with the wall of one table, as the application and as the owner of the table see it in garden A. */
const probe = async (table: string): Promise<Leak[]> => {
  const leaks: [Leak, boolean][] = [
    ['own row hidden', !(await seen(app, table, A))],
    ['other row seen', await seen(app, table, B)],
    ['other row taken in', await takesIn(table)],
    // The owner finds keys by their prefix, before a garden is known (find_credential).
    ['owner sees other row', !OWNER_READS.includes(table) && (await seen(owner, table, B))],
  ];
  return leaks.flatMap(([leak, isThere]) => (isThere ? [leak] : []));
};

const MINE = "garden_id = nullif(current_setting('app.garden_id', true), '')::uuid";

/** Ways to lose the wall: what does it, what puts it back, and what the probe must say. */
const MUTATIONS: [string, (table: string) => string, (table: string) => string, (table: string) => Leak[]][] = [
  [
    'row security switched off',
    (table) => `ALTER TABLE ${table} DISABLE ROW LEVEL SECURITY`,
    (table) => `ALTER TABLE ${table} ENABLE ROW LEVEL SECURITY`,
    (table) => ['other row seen', 'other row taken in', ...(OWNER_READS.includes(table) ? [] : (['owner sees other row'] as const))],
  ],
  [
    'every row readable',
    (table) => `ALTER POLICY own_garden ON ${table} USING (true)`,
    (table) => `ALTER POLICY own_garden ON ${table} USING (${MINE})`,
    (table) => ['other row seen', ...(OWNER_READS.includes(table) ? [] : (['owner sees other row'] as const))],
  ],
  [
    'every row writable',
    (table) => `ALTER POLICY own_garden ON ${table} WITH CHECK (true)`,
    (table) => `ALTER POLICY own_garden ON ${table} WITH CHECK (${MINE})`,
    () => ['other row taken in'],
  ],
  [
    'a second policy that lets everything through',
    (table) => `CREATE POLICY loose ON ${table} USING (true)`,
    (table) => `DROP POLICY loose ON ${table}`,
    (table) => ['other row seen', 'other row taken in', ...(OWNER_READS.includes(table) ? [] : (['owner sees other row'] as const))],
  ],
  [
    'the policy dropped',
    (table) => `DROP POLICY own_garden ON ${table}`,
    (table) => `CREATE POLICY own_garden ON ${table} USING (${MINE}) WITH CHECK (${MINE})`,
    () => ['own row hidden'],
  ],
  [
    'the owner let through',
    (table) => `ALTER TABLE ${table} NO FORCE ROW LEVEL SECURITY`,
    (table) => `ALTER TABLE ${table} FORCE ROW LEVEL SECURITY`,
    (table) => (OWNER_READS.includes(table) ? [] : ['owner sees other row']),
  ],
];

test('S8: all walls stand to begin with', async () => {
  expect(tables.length).toBeGreaterThanOrEqual(17);
  for (const table of tables) expect([table, await probe(table)]).toEqual([table, []]);
});

test.each(MUTATIONS)('S8: %s: the probe of every table notices', async (_name, lose, restore, wanted) => {
  for (const table of tables) {
    await admin.query(lose(table));
    const leaks = await probe(table).finally(() => admin.query(restore(table)));
    expect([table, leaks]).toEqual([table, wanted(table).filter((leak) => leak !== 'other row taken in' || !READ_ONLY.includes(table))]);
    expect([table, await probe(table)]).toEqual([table, []]);
  }
});

test('what was put back is what the migrations made', async () => {
  const untouched = await freshDatabase();
  const policies = async (url: string): Promise<unknown[]> => {
    const client = new pg.Client({ connectionString: url });
    await client.connect();
    const { rows } = await client.query(`
      SELECT c.relname, c.relrowsecurity, c.relforcerowsecurity, p.polname, p.polcmd, p.polpermissive,
             pg_get_expr(p.polqual, p.polrelid) AS qual, pg_get_expr(p.polwithcheck, p.polrelid) AS check
        FROM pg_class c JOIN pg_policy p ON p.polrelid = c.oid ORDER BY 1, 4`);
    await client.end();
    return rows;
  };
  const [mutated, fresh] = [await policies(database.adminUrl), await policies(untouched.adminUrl)];
  await untouched.drop();
  expect(fresh.length).toBeGreaterThanOrEqual(18);
  expect(mutated).toEqual(fresh);
});
