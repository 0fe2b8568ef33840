import pg from 'pg';

/** Connections of the application role: the only ones that ever serve a request. */
export const POOL = Symbol('pool');

/**
 * Two connections beside it, for what must not stand in line behind requests: permits, readiness and the state of the
 * queue. A full pool then still refuses in good order, and does not look like a database that is away.
 */
export const SIDE_POOL = Symbol('side pool');

/** A connection that the server closed is replaced at the next use; without a listener it would end the process. */
export const withListeners = (pool: pg.Pool): pg.Pool => {
  pool.on('error', () => undefined);
  pool.on('connect', (client) => client.on('error', () => undefined));
  return pool;
};

/** The database is a standby, or was set to take no changes for now. */
export const isReadOnly = (error: unknown): boolean => (error as { code?: unknown } | null)?.code === '25006';

export const makePool = (url: string, max: number): pg.Pool => {
  const pool = new pg.Pool({
    connectionString: url,
    max,
    connectionTimeoutMillis: 5_000,
    statement_timeout: 30_000,
    idle_in_transaction_session_timeout: 60_000,
    // Questions go out without waiting for the answers before them: see pg-adapter.ts.
    pipeline: true,
  } as pg.PoolConfig);
  return withListeners(pool);
};

export const makeSidePool = (url: string): pg.Pool =>
  withListeners(new pg.Pool({ connectionString: url, max: 2, connectionTimeoutMillis: 2_000, statement_timeout: 2_000, query_timeout: 2_000 }));
