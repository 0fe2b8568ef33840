import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import pg from 'pg';
import { newId } from '../../apps/api/src/platform/database/ids.js';
import { makePool } from '../../apps/api/src/platform/database/pool.js';
import { freshDatabase, type TestDatabase } from '../support/template-database.js';
import { A, plantRows } from '../support/two-gardens.js';

// The walls between the members of one garden, as the walls between gardens are tried: each is taken down in turn, and the
// probe of that very wall must notice. One member owns everything; another one looks, adds and changes.

const OTHER = newId();
type What = 'read' | 'add' | 'change' | 'remove';

interface Wall {
  table: string;
  policy: string;
  command: 'r' | 'a' | 'w' | 'd' | '*';
  using: string | null;
  check: string | null;
}

const KIND: Readonly<Record<Wall['command'], What>> = { r: 'read', a: 'add', w: 'change', d: 'remove', '*': 'read' };
/** A column of each table that the application may change. */
const CHANGEABLE: Readonly<Record<string, string>> = { jobs: 'stage', stock_claims: 'released_at' };

let database: TestDatabase;
let admin: pg.Client;
let app: pg.Pool;
let walls: Wall[] = [];

/** What the other member sees, adds or changes, undone afterwards. */
const asOther = async <T>(work: (client: pg.PoolClient) => Promise<T>): Promise<T> => {
  const client = await app.connect();
  try {
    await client.query('BEGIN');
    await client.query(
      "SELECT set_config('app.garden_id', $1, true), set_config('app.own_member_id', $2, true), set_config('app.writes_shared', 'off', true)",
      [A, OTHER],
    );
    return await work(client);
  } finally {
    await client.query('ROLLBACK');
    client.release();
  }
};

const PROBES: Readonly<Record<What, (table: string) => Promise<boolean>>> = {
  read: (table) => asOther(async (client) => (await client.query(`SELECT 1 FROM ${table}`)).rowCount !== 0),
  change: (table) =>
    asOther(async (client) => {
      const column = CHANGEABLE[table] ?? 'version';
      return (await client.query(`UPDATE ${table} SET ${column} = ${column}`)).rowCount !== 0;
    }),
  remove: (table) => asOther(async (client) => (await client.query(`DELETE FROM ${table}`)).rowCount !== 0),
  add: (table) =>
    asOther(async (client) => {
      const { rows } = await admin.query<{ row: object }>(`SELECT to_jsonb(t) AS row FROM ${table} t WHERE garden_id = $1 LIMIT 1`, [A]);
      try {
        await client.query(`INSERT INTO ${table} SELECT (jsonb_populate_record(null::${table}, $1::jsonb)).*`, [
          JSON.stringify({ ...rows[0]?.row, id: newId(), name: 'x', revision: 9 }),
        ]);
        return true;
      } catch (error) {
        // A row that gets as far as a key or a check got past the wall.
        return !/new row violates row-level security policy/.test((error as Error).message);
      }
    }),
};

const share = (shared: boolean): Promise<unknown> =>
  Promise.all(['sites', 'structures', 'builds'].map((table) => admin.query(`UPDATE ${table} SET shared = $1`, [shared])));

/** Whether the other member gets through. A shared row may be read, so only what may be done to it is tried there. */
const getsThrough = async ({ table, command }: Wall): Promise<boolean> => {
  const what = KIND[command];
  await share(what !== 'read');
  return PROBES[what](table);
};

beforeAll(async () => {
  database = await freshDatabase();
  admin = new pg.Client({ connectionString: database.adminUrl });
  await admin.connect();
  app = makePool(database.url, 1);
  await plantRows(app, A);
  for (const table of ['sites', 'structures', 'builds', 'spend_requests']) await admin.query(`UPDATE ${table} SET owner_member_id = $1`, [A]);
  const { rows } = await admin.query<Wall>(`
    SELECT c.relname AS table, p.polname AS policy, p.polcmd::text AS command, pg_get_expr(p.polqual, p.polrelid) AS using, pg_get_expr(p.polwithcheck, p.polrelid) AS check
      FROM pg_policy p JOIN pg_class c ON c.oid = p.polrelid WHERE NOT p.polpermissive ORDER BY 1, 2`);
  walls = rows;
});
afterAll(async () => {
  await Promise.all([admin.end(), app.end()]);
  await database.drop();
});

const restore = ({ table, policy, command, using, check }: Wall): string => {
  const verb = { r: 'SELECT', a: 'INSERT', w: 'UPDATE', d: 'DELETE', '*': 'ALL' }[command];
  return `CREATE POLICY ${policy} ON ${table} AS RESTRICTIVE FOR ${verb}${using ? ` USING (${using})` : ''}${check ? ` WITH CHECK (${check})` : ''}`;
};

describe('S8: members apart', () => {
  test('every wall stands to begin with', async () => {
    expect(walls.length).toBeGreaterThan(18);
    for (const wall of walls) expect([wall.table, wall.policy, await getsThrough(wall)]).toEqual([wall.table, wall.policy, false]);
  });

  test('a wall that is taken down is missed by its own probe', async () => {
    for (const wall of walls) {
      await admin.query(`DROP POLICY ${wall.policy} ON ${wall.table}`);
      const through = await getsThrough(wall).finally(() => admin.query(restore(wall)));
      expect([wall.table, wall.policy, through]).toEqual([wall.table, wall.policy, true]);
      expect([wall.table, wall.policy, await getsThrough(wall)]).toEqual([wall.table, wall.policy, false]);
    }
  }, 60_000);

  test('a wall that lets everything through is missed too', async () => {
    for (const wall of walls) {
      const loose = wall.check && !wall.using ? 'WITH CHECK (true)' : `USING (true)${wall.check ? ' WITH CHECK (true)' : ''}`;
      await admin.query(`ALTER POLICY ${wall.policy} ON ${wall.table} ${loose}`);
      const through = await getsThrough(wall).finally(async () => {
        await admin.query(`DROP POLICY ${wall.policy} ON ${wall.table}`);
        await admin.query(restore(wall));
      });
      expect([wall.table, wall.policy, through]).toEqual([wall.table, wall.policy, true]);
    }
  }, 60_000);
});
