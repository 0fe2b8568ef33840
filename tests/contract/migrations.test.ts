import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from '@jest/globals';
import pg from 'pg';
import { migrate, pendingMigrations, prismaDir } from '../../apps/api/src/platform/database/migrate.js';
import { APP_ROLE } from '../../apps/api/src/platform/database/roles.js';
import { freshDatabase, type TestDatabase } from '../support/template-database.js';

let database: TestDatabase;
let owner: pg.Client;
beforeAll(async () => {
  database = await freshDatabase();
  owner = new pg.Client({ connectionString: database.ownerUrl });
  await owner.connect();
});
afterAll(async () => {
  await owner.end();
  await database.drop();
});

const prisma = (...args: string[]) =>
  spawnSync(process.execPath, ['tools/prisma.mjs', ...args], {
    encoding: 'utf8',
    env: { ...process.env, NODE_OPTIONS: '', DATABASE_OWNER_URL: database.ownerUrl },
  });
const diffTo = (schema: string) => prisma('migrate', 'diff', '--from-migrations', 'prisma/migrations', '--to-schema', schema, '--exit-code');

test('migrations and schema say the same', () => {
  const { status, stdout, stderr } = diffTo('prisma/schema.prisma');
  expect([status, stdout, stderr]).toEqual([0, expect.stringContaining('No difference detected'), expect.anything()]);
});

test('a planted difference is found', () => {
  const dir = mkdtempSync(join(tmpdir(), 'lathwork-drift-'));
  const changed = join(dir, 'schema.prisma');
  writeFileSync(changed, readFileSync('prisma/schema.prisma', 'utf8').replace(/^( +reviewer +)String/m, '$1Int'));
  const { status } = diffTo(changed);
  rmSync(dir, { recursive: true });
  expect(status).toBe(2);
});

test('what start-up recorded is what Prisma itself would have', () => {
  const { status, stdout } = prisma('migrate', 'status');
  expect([status, stdout]).toEqual([0, expect.stringContaining('Database schema is up to date')]);
});

test('every migration is recorded once, with the checksum of its file', async () => {
  const { rows } = await owner.query('SELECT migration_name AS name, checksum FROM _prisma_migrations ORDER BY 1');
  const files = readdirSync('prisma/migrations', { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => name)
    .sort();
  expect(rows).toEqual(
    files.map((name) => ({
      name,
      checksum: createHash('sha256')
        .update(readFileSync(`prisma/migrations/${name}/migration.sql`))
        .digest('hex'),
    })),
  );
  expect(await pendingMigrations(owner)).toEqual([]);
});

test('a second start has nothing to do; two at once do it one after the other', async () => {
  expect(await Promise.all([migrate(database.ownerUrl, APP_ROLE), migrate(database.ownerUrl, APP_ROLE)])).toEqual([[], []]);
});

test('a failing migration is undone as a whole, an edited one is refused', async () => {
  const dir = mkdtempSync(join(tmpdir(), 'lathwork-migrations-'));
  cpSync(prismaDir, dir, { recursive: true });
  const name = '20990101000000_probe';
  cpSync(join(dir, 'migrations/20260101000100_limits'), join(dir, 'migrations', name), { recursive: true });
  writeFileSync(join(dir, 'migrations', name, 'migration.sql'), 'CREATE TABLE probe (id int); SELECT 1/0;');
  await expect(migrate(database.ownerUrl, APP_ROLE, dir)).rejects.toThrow(`migration ${name} failed and was undone: division by zero`);
  expect((await owner.query("SELECT to_regclass('probe') AS t")).rows[0].t).toBeNull();
  rmSync(join(dir, 'migrations', name), { recursive: true });
  writeFileSync(join(dir, 'migrations/20260101000100_limits/migration.sql'), '-- changed');
  await expect(migrate(database.ownerUrl, APP_ROLE, dir)).rejects.toThrow('20260101000100_limits was edited after it was applied');
  rmSync(dir, { recursive: true });
});

test('no SQL file holds a password', () => {
  const files = [
    ...readdirSync('prisma/migrations', { recursive: true, encoding: 'utf8' })
      .filter((file) => file.endsWith('.sql'))
      .map((file) => `prisma/migrations/${file}`),
    'prisma/grants.sql',
  ];
  expect(files.length).toBeGreaterThanOrEqual(5);
  for (const file of files) expect(readFileSync(file, 'utf8')).not.toMatch(/\bPASSWORD\s+'/i);
});
