import { createHash, randomUUID } from 'node:crypto';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import pg from 'pg';

/** The lock that Prisma's own command takes: the two never run at once. */
const PRISMA_LOCK = 72_707_369;

export const prismaDir = join(fileURLToPath(new URL('../../../../../', import.meta.url)), 'prisma');

interface Migration {
  name: string;
  sql: string;
  checksum: string;
}

const migrationsOf = (dir: string): Migration[] =>
  readdirSync(join(dir, 'migrations'))
    .filter((name) => existsSync(join(dir, 'migrations', name, 'migration.sql')))
    .sort()
    .map((name) => {
      const sql = readFileSync(join(dir, 'migrations', name, 'migration.sql'), 'utf8');
      return { name, sql, checksum: createHash('sha256').update(sql).digest('hex') };
    });

const RECORDS = `CREATE TABLE IF NOT EXISTS _prisma_migrations (id VARCHAR(36) PRIMARY KEY NOT NULL, checksum VARCHAR(64) NOT NULL,
  finished_at TIMESTAMPTZ, migration_name VARCHAR(255) NOT NULL, logs TEXT, rolled_back_at TIMESTAMPTZ,
  started_at TIMESTAMPTZ NOT NULL DEFAULT now(), applied_steps_count INTEGER NOT NULL DEFAULT 0)`;

interface RecordRow {
  migration_name: string;
  checksum: string;
  finished_at: Date | null;
}

const recorded = async (client: Pick<pg.Client, 'query'>): Promise<Map<string, RecordRow>> => {
  const { rows } = await client.query<RecordRow>('SELECT migration_name, checksum, finished_at FROM _prisma_migrations WHERE rolled_back_at IS NULL');
  return new Map(rows.map((row) => [row.migration_name, row]));
};

const apply = async (client: pg.Client, { name, sql, checksum }: Migration): Promise<void> => {
  await client.query('BEGIN');
  try {
    await client.query(sql);
    await client.query(
      `INSERT INTO _prisma_migrations (id, checksum, migration_name, started_at, finished_at, applied_steps_count) VALUES ($1, $2, $3, now(), clock_timestamp(), 1)`,
      [randomUUID(), checksum, name],
    );
    await client.query('COMMIT');
  } catch (error) {
    await client.query('ROLLBACK');
    throw new Error(`migration ${name} failed and was undone: ${(error as Error).message}`, { cause: error });
  }
};

const applyAll = async (client: pg.Client, dir: string): Promise<string[]> => {
  await client.query(RECORDS);
  const done = await recorded(client);
  const applied: string[] = [];
  for (const migration of migrationsOf(dir)) {
    const row = done.get(migration.name);
    if (row && row.finished_at === null) throw new Error(`migration ${migration.name} failed earlier and waits to be resolved`);
    if (row && row.checksum !== migration.checksum) throw new Error(`migration ${migration.name} was edited after it was applied`);
    if (row) continue;
    await apply(client, migration);
    applied.push(migration.name);
  }
  return applied;
};

/**
 * Applies prisma/migrations in order and records them as Prisma does, then gives the application role exactly the
 * rights of prisma/grants.sql. Runs as the owner, under a lock, so that two starting processes do it one after the other.
 */
export const migrate = async (ownerUrl: string, appRole: string, dir = prismaDir): Promise<string[]> => {
  const client = new pg.Client({ connectionString: ownerUrl });
  await client.connect();
  try {
    await client.query('SELECT pg_advisory_lock($1)', [PRISMA_LOCK]);
    const applied = await applyAll(client, dir);
    await client.query("SELECT set_config('lathwork.app_role', $1, false)", [appRole]);
    await client.query(readFileSync(join(dir, 'grants.sql'), 'utf8'));
    return applied;
  } finally {
    await client.end();
  }
};

let known: string[] | null = null;

/** Migrations of this code that the database does not have. */
export const pendingMigrations = async (client: Pick<pg.Client, 'query'>): Promise<string[]> => {
  known ??= migrationsOf(prismaDir).map(({ name }) => name);
  const done = await recorded(client);
  return known.filter((name) => !done.get(name)?.finished_at);
};
