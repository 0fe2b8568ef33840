import pg from 'pg';

export const OWNER_ROLE = 'lathwork_owner';
export const APP_ROLE = 'lathwork_app';

const withClient = async <T>(url: string, work: (client: pg.Client) => Promise<T>): Promise<T> => {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    return await work(client);
  } finally {
    await client.end();
  }
};

/** Makes the two roles of an embedded server, or sets their passwords to those of its folder. */
export const ensureRoles = (adminUrl: string, passwords: { owner: string; app: string }): Promise<void> =>
  withClient(adminUrl, async (client) => {
    await client.query('SELECT pg_advisory_lock(72707370)');
    for (const [role, password] of [
      [OWNER_ROLE, passwords.owner],
      [APP_ROLE, passwords.app],
    ] as const) {
      const { rowCount } = await client.query('SELECT 1 FROM pg_roles WHERE rolname = $1', [role]);
      const verb = rowCount ? 'ALTER' : 'CREATE';
      // The owner may make databases, so that a migration can be tried out in a shadow database.
      const mayMake = role === OWNER_ROLE ? 'CREATEDB' : 'NOCREATEDB';
      await client.query(
        `${verb} ROLE ${client.escapeIdentifier(role)} LOGIN NOSUPERUSER NOBYPASSRLS NOCREATEROLE ${mayMake} PASSWORD ${client.escapeLiteral(password)}`,
      );
    }
  });

export const ensureDatabase = (adminUrl: string, name: string): Promise<void> =>
  withClient(adminUrl, async (client) => {
    const { rowCount } = await client.query('SELECT 1 FROM pg_database WHERE datname = $1', [name]);
    if (rowCount) return;
    try {
      await client.query(`CREATE DATABASE ${client.escapeIdentifier(name)} OWNER ${client.escapeIdentifier(OWNER_ROLE)}`);
    } catch (error) {
      if ((error as { code?: string }).code !== '42P04') throw error;
    }
  });

/** Why this connection must not serve people, or null. Row-level security is a wall only for a role that cannot step over it. */
export const unfitToServe = async (client: { query: (sql: string) => Promise<{ rows: unknown[] }> }): Promise<string | null> => {
  const { rows } = await client.query(`
    SELECT r.rolname AS role, r.rolsuper AS super, r.rolbypassrls AS bypass,
           (SELECT count(*)::int FROM pg_class c JOIN pg_namespace n ON n.oid = c.relnamespace
             WHERE pg_has_role(current_user, c.relowner, 'MEMBER') AND n.nspname NOT IN ('pg_catalog', 'information_schema', 'pg_toast')) AS owned,
           (SELECT pg_has_role(current_user, d.datdba, 'MEMBER') FROM pg_database d WHERE d.datname = current_database()) AS owns_database
      FROM pg_roles r WHERE r.rolname = current_user`);
  const row = rows[0] as { role: string; super: boolean; bypass: boolean; owned: number; owns_database: boolean } | undefined;
  if (!row) return 'the role of DATABASE_URL is not known to the server';
  if (row.super) return `the role ${row.role} of DATABASE_URL is a superuser`;
  if (row.bypass) return `the role ${row.role} of DATABASE_URL has BYPASSRLS`;
  if (row.owned > 0) return `the role ${row.role} of DATABASE_URL owns ${row.owned} tables or indexes, itself or through another role`;
  // In an empty database there is no table yet that an owner could be known by.
  return row.owns_database ? `the role ${row.role} of DATABASE_URL owns the database, itself or through another role` : null;
};
