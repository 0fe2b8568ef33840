import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import pg from 'pg';
import { makePool } from '../../apps/api/src/platform/database/pool.js';
import { unfitToServe } from '../../apps/api/src/platform/database/roles.js';
import { seedTables } from '../../apps/api/src/platform/database/seed.js';
import { freshDatabase, type TestDatabase } from '../support/template-database.js';
import { A, B, inGarden, plantRows, TENANT_TABLES } from '../support/two-gardens.js';

const DEFINERS = [
  'claim_deliveries',
  'claim_mail',
  'create_garden',
  'end_mail',
  'enqueue_in_turn',
  'enqueue_job',
  'erase_account',
  'find_account',
  'find_account_token',
  'find_credential',
  'find_invitation',
  'find_session',
  'forgive_attempts',
  'gardens_of_account',
  'link_audit_entry',
  'queue_state',
  'take_attempt',
  'take_permits',
  'take_quota',
  'touch_session',
  'use_account_token',
];
/** Tables without a garden, and why. */
const WITHOUT_GARDEN = [
  '_prisma_migrations',
  // Of a person, not of a garden: walled off by account instead (app.account_id).
  'account_events',
  'account_factors',
  'account_sessions',
  'account_tokens',
  'accounts',
  // Counts under hashes; reached through functions only.
  'attempts',
  'climate_stations',
  'gardens',
  // Added to by the application, read by the sender alone.
  'mail_outbox',
  // Hashes and counts; only take_permits reaches it.
  'permit_counts',
  'seed_states',
];
/** What finds a garden is unique over all gardens; it is random and holds nothing. */
const UNIQUE_OVER_ALL = ['api_keys_prefix_key', 'invitations_token_key'];
/** The owner's own functions look in here before a garden is known. */
const OWNER_READS = ['api_keys', 'members', 'invitations'];

let database: TestDatabase;
let owner: pg.Client;
let admin: pg.Client;
let app: pg.Pool;

const column = async (sql: string): Promise<string[]> => (await admin.query<{ name: string }>(sql)).rows.map(({ name }) => name);

const asApp = <T extends pg.QueryResultRow>(garden: string | null, sql: string, values: unknown[] = []): Promise<pg.QueryResult<T>> =>
  inGarden<T>(app, garden, sql, values);

beforeAll(async () => {
  database = await freshDatabase();
  owner = new pg.Client({ connectionString: database.ownerUrl });
  admin = new pg.Client({ connectionString: database.adminUrl });
  await Promise.all([owner.connect(), admin.connect()]);
  app = makePool(database.url, 1);
  await plantRows(app, A);
  await plantRows(app, B);
});
afterAll(async () => {
  await Promise.all([owner.end(), admin.end(), app.end()]);
  await database.drop();
});

const tenantTables = (): Promise<string[]> => column(TENANT_TABLES);

describe('catalogue', () => {
  test('S3: a table without garden_id is on the short list', async () => {
    const all = await column(
      `SELECT relname AS name FROM pg_class WHERE relkind IN ('r', 'p', 'm', 'v', 'f') AND relnamespace = 'public'::regnamespace ORDER BY 1`,
    );
    const tenant = await tenantTables();
    expect(tenant.length).toBeGreaterThanOrEqual(17);
    expect(all.filter((name) => !tenant.includes(name))).toEqual(WITHOUT_GARDEN);
  });

  test('S3: row security is enabled, forced and has both clauses on every tenant table', async () => {
    const { rows } = await admin.query<{ name: string; enabled: boolean; forced: boolean; good: number; open: number }>(
      `
      SELECT c.relname AS name, c.relrowsecurity AS enabled, c.relforcerowsecurity AS forced,
             count(p.*) FILTER (WHERE p.polcmd = '*' AND p.polpermissive AND p.polroles = '{0}'
               AND pg_get_expr(p.polqual, p.polrelid) = pg_get_expr(p.polwithcheck, p.polrelid)
               AND pg_get_expr(p.polqual, p.polrelid) LIKE '%= (NULLIF(current_setting(''app.garden_id''::text, true), ''''::text))::uuid)')::int AS good,
             count(p.*) FILTER (WHERE p.polpermissive AND p.polroles <> ARRAY[(SELECT oid FROM pg_roles WHERE rolname = 'lathwork_owner')] AND p.polname <> 'own_garden')::int AS open
        FROM pg_class c LEFT JOIN pg_policy p ON p.polrelid = c.oid
       WHERE c.relname = ANY($1) AND c.relnamespace = 'public'::regnamespace GROUP BY c.oid ORDER BY 1`,
      [[...(await tenantTables()), 'gardens']],
    );
    expect(rows.length).toBeGreaterThanOrEqual(18);
    for (const row of rows) expect(row).toMatchObject({ enabled: true, forced: true, good: 1, open: 0 });
  });

  test('S5: keys between tenant tables include the garden', async () => {
    const { rows } = await admin.query<{ name: string; mine: string[]; theirs: string[]; target: string }>(`
      SELECT k.conname AS name, t.relname AS target,
             ARRAY(SELECT attname::text FROM unnest(k.conkey) WITH ORDINALITY u(n, o) JOIN pg_attribute a ON a.attrelid = k.conrelid AND a.attnum = u.n ORDER BY o) AS mine,
             ARRAY(SELECT attname::text FROM unnest(k.confkey) WITH ORDINALITY u(n, o) JOIN pg_attribute a ON a.attrelid = k.confrelid AND a.attnum = u.n ORDER BY o) AS theirs
        FROM pg_constraint k JOIN pg_class t ON t.oid = k.confrelid
       WHERE k.contype = 'f' AND k.connamespace = 'public'::regnamespace`);
    const tenant = await tenantTables();
    const between = rows.filter(({ target }) => tenant.includes(target));
    expect(between.length).toBeGreaterThanOrEqual(11);
    for (const { mine, theirs } of between) expect([mine[0], theirs[0]]).toEqual(['garden_id', 'garden_id']);
  });

  test('S5: primary and unique keys begin with the garden', async () => {
    const loose = await column(`
      SELECT i.indexrelid::regclass::text AS name FROM pg_index i JOIN pg_class c ON c.oid = i.indrelid
       WHERE i.indisunique AND c.relnamespace = 'public'::regnamespace
         AND EXISTS (SELECT 1 FROM pg_attribute WHERE attrelid = c.oid AND attname = 'garden_id')
         AND (SELECT attname FROM pg_attribute WHERE attrelid = c.oid AND attnum = i.indkey[0]) <> 'garden_id'`);
    expect(loose).toEqual(UNIQUE_OVER_ALL);
  });

  test('S4: functions with the owner’s rights are those of the list, with a fixed search path, closed to the public', async () => {
    const { rows } = await admin.query<{ name: string; settings: string[]; open: boolean }>(`
      SELECT p.proname AS name, p.proconfig AS settings, EXISTS (SELECT 1 FROM aclexplode(coalesce(p.proacl, acldefault('f', p.proowner))) a WHERE a.grantee = 0) AS open
        FROM pg_proc p JOIN pg_namespace n ON n.oid = p.pronamespace WHERE p.prosecdef AND n.nspname NOT IN ('pg_catalog', 'information_schema') ORDER BY 1`);
    expect(rows.map(({ name }) => name)).toEqual(DEFINERS);
    for (const { settings, open } of rows) expect([settings, open]).toEqual([['search_path=pg_catalog, pg_temp'], false]);
  });

  test('S2: the application role owns nothing and can step over nothing', async () => {
    expect(await unfitToServe({ query: (sql: string) => app.query(sql) })).toBeNull();
    expect(await column(`SELECT relname AS name FROM pg_class WHERE relowner = 'lathwork_app'::regrole`)).toEqual([]);
    const { rows } = await admin.query("SELECT rolsuper, rolbypassrls, rolcreaterole, rolcreatedb FROM pg_roles WHERE rolname = 'lathwork_app'");
    expect(rows[0]).toEqual({ rolsuper: false, rolbypassrls: false, rolcreaterole: false, rolcreatedb: false });
  });

  test('S2: owner, superuser and BYPASSRLS are told apart as unfit to serve', async () => {
    expect(await unfitToServe(owner)).toMatch(/lathwork_owner of DATABASE_URL owns \d+ tables/);
    expect(await unfitToServe(admin)).toMatch(/is a superuser/);
    await admin.query("CREATE ROLE bypass_probe LOGIN BYPASSRLS PASSWORD 'x'");
    const probe = new pg.Client({ connectionString: Object.assign(new URL(database.url), { username: 'bypass_probe', password: 'x' }).href });
    await probe.connect();
    expect(await unfitToServe(probe)).toMatch(/has BYPASSRLS/);
    await probe.end();
    await admin.query('DROP ROLE bypass_probe');
  });

  test('rows are removed from the tables of passing things only, and finished things are never changed', async () => {
    const may = (right: string): Promise<string[]> =>
      column(
        `SELECT relname AS name FROM pg_class WHERE relkind = 'r' AND relnamespace = 'public'::regnamespace AND has_any_column_privilege('lathwork_app', oid, '${right}') ORDER BY 1`,
      );
    expect(
      await column(
        `SELECT relname AS name FROM pg_class WHERE relkind = 'r' AND relnamespace = 'public'::regnamespace AND has_table_privilege('lathwork_app', oid, 'DELETE, TRUNCATE')`,
      ),
    ).toEqual(['idempotency_answers', 'files', 'account_factors', 'member_privates', 'photos']);
    for (const fixed of ['audit_entries', 'plan_results', 'plan_reviews', 'plan_as_builts', 'files', 'climate_stations', '_prisma_migrations'])
      expect(await may('UPDATE')).not.toContain(fixed);
    expect(
      await column(
        `SELECT attname AS name FROM pg_attribute WHERE attrelid = 'plan_revisions'::regclass AND attnum > 0 AND has_column_privilege('lathwork_app', attrelid, attnum, 'UPDATE') ORDER BY 1`,
      ),
    ).toEqual(['attempt', 'finished_at', 'problem', 'started_at', 'state']);
  });
});

describe('gardens apart', () => {
  test('S6: without a garden no table gives a row, before and after a transaction of one', async () => {
    const count = async (): Promise<number[]> =>
      Promise.all((await tenantTables()).map(async (table) => Number((await app.query(`SELECT count(*) AS n FROM ${table}`)).rows[0].n)));
    const fresh = makePool(database.url, 1);
    expect((await fresh.query('SELECT count(*)::int AS n FROM sites')).rows[0].n).toBe(0);
    await fresh.end();
    await asApp(A, 'SELECT 1');
    expect(new Set(await count())).toEqual(new Set([0]));
    expect((await app.query('SELECT count(*)::int AS n FROM gardens')).rows[0].n).toBe(0);
  });

  test('S6: a pooled connection does not carry a garden over, not even after an error', async () => {
    await expect(asApp(A, 'SELECT 1/0')).rejects.toThrow('division by zero');
    expect((await app.query("SELECT nullif(current_setting('app.garden_id', true), '') AS garden")).rows[0].garden).toBeNull();
  });

  test('each garden sees its own rows in every table, and none of the other', async () => {
    for (const table of await tenantTables()) {
      const seen = (await asApp<{ garden_id: string }>(A, `SELECT garden_id FROM ${table}`)).rows.map((row) => row.garden_id);
      expect([table, new Set(seen)]).toEqual([table, new Set([A])]);
      expect((await asApp(A, `SELECT 1 FROM ${table} WHERE garden_id = $1`, [B])).rowCount).toBe(0);
    }
    expect((await asApp<{ id: string }>(A, 'SELECT id FROM gardens')).rows).toEqual([{ id: A }]);
  });

  test('the owner of the tables is bound too', async () => {
    for (const table of (await tenantTables()).filter((name) => !OWNER_READS.includes(name)))
      expect([table, (await owner.query(`SELECT count(*)::int AS n FROM ${table}`)).rows[0].n]).toEqual([table, 0]);
  });

  test('a row for another garden is refused, and so is moving one there', async () => {
    await expect(
      asApp(A, `INSERT INTO structures (garden_id, id, name, kind, details) VALUES ($1, gen_random_uuid(), 'x', 'leanTo', '{}')`, [B]),
    ).rejects.toMatchObject({ code: '42501' });
    await expect(asApp(A, 'UPDATE sites SET garden_id = $1', [B])).rejects.toMatchObject({ code: '42501' });
    expect((await asApp(A, 'UPDATE sites SET version = 9 WHERE garden_id = $1', [B])).rowCount).toBe(0);
  });

  test('S5: a row cannot point into another garden', async () => {
    const insert = `INSERT INTO builds (garden_id, id, name, site_id, structure_id, wishes, crew, budget) VALUES ($1, gen_random_uuid(), 'x', $2, $1, '{}', '{}', '{}')`;
    await expect(asApp(A, insert, [A, B])).rejects.toMatchObject({ code: '23503', constraint: 'builds_garden_id_site_id_fkey' });
  });

  test('a job may be queued for the own garden only, by the name of a task', async () => {
    await asApp(A, "SELECT enqueue_job('probe-task', $1, $1)", [A]);
    await expect(asApp(A, "SELECT enqueue_job('probe-task', $1, $1)", [B])).rejects.toMatchObject({ code: '42501' });
    await expect(asApp(null, "SELECT enqueue_job('probe-task', $1, $1)", [A])).rejects.toMatchObject({ code: '42501' });
    await expect(asApp(A, "SELECT enqueue_job('x; drop', $1, $1)", [A])).rejects.toMatchObject({ code: '22023' });
    await expect(asApp(A, 'SELECT * FROM graphile_worker._private_jobs')).rejects.toMatchObject({ code: '42501' });
    const { rows } = await admin.query('SELECT payload FROM graphile_worker._private_jobs');
    expect(rows).toEqual([{ payload: { gardenId: A, id: A } }]);
  });

  test('looking a key up tells no more than is needed to check it', async () => {
    const { rows, fields } = await app.query("SELECT * FROM find_credential('lw_0000000a')");
    expect(rows).toHaveLength(1);
    expect(fields.map(({ name }) => name)).toEqual([
      'garden_id',
      'key_id',
      'sha256',
      'scopes',
      'expires_at',
      'revoked_at',
      'last_used_at',
      'created_by_member_id',
      'maker_roles',
    ]);
    expect((await app.query("SELECT * FROM find_credential('lw_')")).rowCount).toBe(0);
  });

  test('S16: the history can be added to, not changed', async () => {
    for (const sql of ["UPDATE audit_entries SET action = 'x'", 'DELETE FROM audit_entries', 'TRUNCATE audit_entries'])
      await expect(asApp(A, sql)).rejects.toMatchObject({ code: '42501' });
  });
});

describe('limits', () => {
  test('a single thing is claimed once at a time', async () => {
    const claim = 'INSERT INTO stock_claims (garden_id, id, stock_item_id, unit_item, build_id) VALUES ($1, gen_random_uuid(), $1, true, $1)';
    await expect(asApp(A, claim, [A])).rejects.toMatchObject({ code: '23P01', constraint: 'stock_claims_one_active' });
    await asApp(A, 'UPDATE stock_claims SET released_at = now() WHERE stock_item_id = $1', [A]);
    // A claim that calls a single thing a lot does not get round it.
    await expect(asApp(A, claim.replace('true', 'false'), [A])).rejects.toMatchObject({ code: '23503' });
    await asApp(A, claim, [A]);
  });

  test('a lot is never shared out beyond its count, also when claims arrive together', async () => {
    const lot = '019a0000-0000-7000-8000-0000000000f1';
    await asApp(
      A,
      "INSERT INTO stock_items (garden_id, id, tag, kind, material, grade, count, unit_item, details) VALUES ($1, $2, 'L1', 'board', 'm', 'B', 10, false, '{}')",
      [A, lot],
    );
    const many = makePool(database.url, 8);
    const claim = async (): Promise<boolean> => {
      const client = await many.connect();
      try {
        await client.query('BEGIN');
        await client.query("SELECT set_config('app.garden_id', $1, true)", [A]);
        await client.query(
          'INSERT INTO stock_claims (garden_id, id, stock_item_id, unit_item, build_id, count) VALUES ($1, gen_random_uuid(), $2, false, $1, 3)',
          [A, lot],
        );
        await client.query('COMMIT');
        return true;
      } catch (error) {
        await client.query('ROLLBACK');
        expect(error).toMatchObject({ code: '23P01', constraint: 'stock_claims_lot_count' });
        return false;
      } finally {
        client.release();
      }
    };
    const done = await Promise.all(Array.from({ length: 8 }, claim));
    await many.end();
    expect(done.filter(Boolean)).toHaveLength(3);
  });

  test.each([
    ['latitude', 'UPDATE sites SET latitude_deg = 91'],
    ['elevation below any ground', 'UPDATE sites SET elevation_m = -431'],
    ['unknown kind', "UPDATE structures SET kind = 'dome'"],
    ['no pieces', 'UPDATE stock_items SET count = 0'],
    ['negative price', 'UPDATE prices SET pack_price_minor = -1'],
    ['ready without an end', "UPDATE plan_revisions SET state = 'ready'"],
    ['ready without a file', "UPDATE documents SET state = 'ready', finished_at = now()"],
  ])('%s is refused', (_name, sql) => expect(asApp(A, sql)).rejects.toMatchObject({ code: '23514' }));

  test('ground below sea level is valid', async () => {
    expect((await asApp(A, 'UPDATE sites SET elevation_m = -28 RETURNING elevation_m')).rows[0]).toEqual({ elevation_m: -28 });
  });
});

describe('weather stations', () => {
  test('are loaded once, with missing months kept missing', async () => {
    const { rows } = await admin.query<{ n: number; missing: number }>(
      `SELECT count(*)::int AS n, count(*) FILTER (WHERE months @> '[{"sunshineH": null}]')::int AS missing FROM climate_stations`,
    );
    expect(rows[0]?.n).toBeGreaterThan(2000);
    expect(rows[0]?.missing).toBeGreaterThan(100);
    expect(await seedTables(database.ownerUrl)).toBe(0);
  });
});
