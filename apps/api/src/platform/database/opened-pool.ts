import { AsyncLocalStorage } from 'node:async_hooks';
import pg from 'pg';

/** How a transaction begins: its mode, and the settings that the policies of the tables read. */
export interface Opening {
  readOnly: boolean;
  settings: Readonly<Record<string, string>>;
}

const openings = new AsyncLocalStorage<Opening>();

/** Runs `fn`, whose next transaction on an opened pool begins in this way. */
export const openingWith = <T>(opening: Opening, fn: () => Promise<T>): Promise<T> => openings.run(opening, fn);

const literal = (text: string): string => pg.escapeLiteral(text);

/** Begin and settings as one message. Every setting lasts for this one transaction. */
export const openingSql = ({ readOnly, settings }: Opening): string => {
  const mode = readOnly ? ' ISOLATION LEVEL REPEATABLE READ READ ONLY' : '';
  const calls = Object.entries(settings).map(([name, value]) => `set_config(${literal(name)}, ${literal(value)}, true)`);
  return `BEGIN${mode}; SELECT ${calls.join(', ')}`;
};

const NOTHING = { rows: [], rowCount: 0, fields: [], command: '', oid: 0 };

type Query = (...args: unknown[]) => unknown;
const textOf = (query: unknown): string => (typeof query === 'string' ? query : ((query as { text?: string } | null)?.text ?? ''));

/** The same connection, whose transaction begins as it was told to. */
const opened = (client: pg.PoolClient, opening: Opening): pg.PoolClient => {
  const query: Query = (...args) => {
    const text = textOf(args[0]);
    if (text === 'BEGIN') return client.query(openingSql(opening)).then(() => NOTHING);
    // Said with BEGIN already, in the same message.
    if (text.startsWith('SET TRANSACTION ISOLATION LEVEL')) return Promise.resolve(NOTHING);
    if (text === 'COMMIT' && opening.readOnly) {
      // Nothing was written, so nothing can be lost: whoever asked need not wait until the server has said so. What comes
      // next on this connection waits its turn behind it. A connection that breaks here is dropped by the pool.
      client.query('COMMIT').catch(() => undefined);
      return Promise.resolve(NOTHING);
    }
    return (client.query as Query).apply(client, args);
  };
  return new Proxy(client, {
    get: (target, name) => {
      if (name === 'query') return query;
      const value: unknown = Reflect.get(target, name);
      return typeof value === 'function' ? (value as Query).bind(target) : value;
    },
  });
};

/**
 * The pool as the database library sees it: a transaction takes two messages less. The library begins, sets its level and
 * is told the settings one after the other; here all three travel as one.
 */
export const openedPool = (pool: pg.Pool): pg.Pool =>
  new Proxy(pool, {
    get: (target, name) => {
      if (name !== 'connect') {
        const value: unknown = Reflect.get(target, name);
        return typeof value === 'function' ? (value as Query).bind(target) : value;
      }
      return async (): Promise<pg.PoolClient> => {
        const opening = openings.getStore();
        if (!opening) throw new Error('a transaction must say whose it is: use Database.inTransaction or readSnapshot');
        return opened(await target.connect(), opening);
      };
    },
  });
