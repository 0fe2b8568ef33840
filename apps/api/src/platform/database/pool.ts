import pg from 'pg';

/** Connections of the application role: the only ones that ever serve a request. */
export const POOL = Symbol('pool');

/** A connection that the server closed is replaced at the next use; without a listener it would end the process. */
export const withListeners = (pool: pg.Pool): pg.Pool => {
  pool.on('error', () => undefined);
  pool.on('connect', (client) => client.on('error', () => undefined));
  return pool;
};

export const makePool = (url: string, max: number): pg.Pool => {
  const pool = new pg.Pool({
    connectionString: url,
    max,
    connectionTimeoutMillis: 5_000,
    statement_timeout: 30_000,
    idle_in_transaction_session_timeout: 60_000,
  });
  return withListeners(pool);
};
