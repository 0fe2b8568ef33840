import { AsyncLocalStorage } from 'node:async_hooks';
import type { Duplex } from 'node:stream';
import pg from 'pg';
import { StatementNames } from './pg-statements.js';

/**
 * What one transaction is opened with. `reads`: one moment for all its reads, and nothing can be written. `once`: there is
 * one question, and the end of the transaction travels with it.
 */
export interface Opening {
  gardenId: string;
  accountId: string;
  ownMemberId: string;
  writesShared: 'on' | 'off';
  reads: boolean;
  once: boolean;
}

type Slot = { opening: Opening | null };
type Query = pg.QueryConfig<unknown[]> & { text: string };

const openings = new AsyncLocalStorage<Slot>();

/** Runs `work`, which opens exactly one transaction; that one begins with these settings. */
export const openedWith = <T>(opening: Opening, work: () => Promise<T>): Promise<T> => openings.run({ opening }, work);

const BEGIN = { reads: 'BEGIN ISOLATION LEVEL REPEATABLE READ READ ONLY', writes: 'BEGIN' } as const;

// Every setting is set every time, so that nothing of an earlier transaction can be left. They end with the transaction.
const SETTINGS = {
  name: 'open-garden',
  text: `SELECT set_config('app.garden_id', $1, true) AS garden, set_config('app.account_id', $2, true), set_config('app.own_member_id', $3, true), set_config('app.writes_shared', $4, true)`,
} as const;

const NOTHING = { rows: [], fields: [], rowCount: 0, command: '', oid: 0 } as unknown as pg.QueryResult;

/** The socket of a connection. Between cork and uncork what is written waits, and then goes out as one. */
const socketOf = (client: pg.PoolClient): Duplex => (client as unknown as { connection: { stream: Duplex } }).connection.stream;

/**
 * One transaction of one garden on one connection, for Prisma's adapter. BEGIN and the settings wait for the first
 * question and go out with it, in one piece and in this order, so the server answers it inside the transaction and with row
 * security in force. If one of the two fails, nothing of what came after is handed out.
 */
class GardenConnection {
  private opened: Promise<void> | null = null;
  private ended: Promise<unknown> | null = null;

  constructor(
    private readonly client: pg.PoolClient,
    private readonly opening: Opening,
    private readonly names: StatementNames,
  ) {}

  on(event: 'error', listener: (error: Error) => void): void {
    this.client.on(event, listener);
  }

  removeListener(event: 'error', listener: (error: Error) => void): void {
    this.client.removeListener(event, listener);
  }

  query(query: Query): Promise<pg.QueryResult> {
    const { text } = query;
    if (text === 'BEGIN') return Promise.resolve(NOTHING);
    if (text === 'COMMIT') return this.commit();
    if (text === 'ROLLBACK') return this.opened ? this.end('ROLLBACK') : Promise.resolve(NOTHING);
    if (this.ended) return Promise.reject(new Error('the transaction has ended'));
    return this.opened ? this.ask(query) : this.first(query);
  }

  /** The connection goes back when the server has ended the transaction, and is thrown away when it has not. */
  release(error?: Error | boolean): void {
    if (!this.opened) this.client.release(error);
    else if (!this.ended) this.client.release(true);
    else
      this.ended.then(
        () => this.client.release(error),
        () => this.client.release(true),
      );
  }

  private first(query: Query): Promise<pg.QueryResult> {
    const socket = socketOf(this.client);
    socket.cork();
    try {
      this.opened = this.open();
      const asked = this.ask(query);
      if (this.opening.once) this.end('COMMIT').catch(() => undefined);
      return asked;
    } finally {
      socket.uncork();
    }
  }

  private async open(): Promise<void> {
    const { gardenId, accountId, ownMemberId, writesShared, reads } = this.opening;
    const begun = this.client.query(reads ? BEGIN.reads : BEGIN.writes);
    const set = this.client.query<{ garden: string }>({ ...SETTINGS, values: [gardenId, accountId, ownMemberId, writesShared] });
    const [, { rows }] = await Promise.all([begun, set]);
    if (rows[0]?.garden !== gardenId) throw new Error('the transaction did not open for its garden');
  }

  private ask(query: Query): Promise<pg.QueryResult> {
    return this.after(this.client.query({ ...query, name: this.names.of(query.text) } as pg.QueryConfig));
  }

  private async after(asked: Promise<pg.QueryResult>): Promise<pg.QueryResult> {
    // The answer is looked at only when the opening has succeeded; until then its failure is nobody's.
    asked.catch(() => undefined);
    await this.opened;
    return asked;
  }

  /** What only read has its answer already: the end is not waited for. A change is there when the server says so. */
  private async commit(): Promise<pg.QueryResult> {
    if (!this.opened || this.ended) return NOTHING;
    const committed = this.end('COMMIT');
    if (this.opening.reads) {
      committed.catch(() => undefined);
      return NOTHING;
    }
    const result = await committed;
    // The server ends a transaction in which something had failed with ROLLBACK, and calls that no error.
    if (result.command !== 'COMMIT') throw new Error('the transaction was rolled back by the server');
    return result;
  }

  private end(how: 'COMMIT' | 'ROLLBACK'): Promise<pg.QueryResult> {
    // Of two ends the second only says that there is no transaction any more, and is not sent.
    this.ended ??= this.after(this.client.query(how));
    return this.ended as Promise<pg.QueryResult>;
  }
}

/**
 * What Prisma takes for its pool. It opens transactions for `openedWith` and does nothing else: a query outside of one is
 * refused before it reaches the database.
 */
export class GardenPool extends pg.Pool {
  private readonly names = new StatementNames();

  constructor(private readonly connections: pg.Pool) {
    // This pool never makes a connection of its own.
    super({ ...connections.options, max: 0 });
  }

  override connect(): Promise<pg.PoolClient>;
  override connect(callback: (err: Error | undefined, client: pg.PoolClient | undefined, done: (release?: unknown) => void) => void): void;
  override async connect(): Promise<pg.PoolClient> {
    const slot = openings.getStore();
    const opening = slot?.opening;
    if (!slot || !opening) throw new Error('a transaction belongs to a garden: open it through Database');
    slot.opening = null;
    return (await this.open(opening)) as unknown as pg.PoolClient;
  }

  /** One question in a transaction of its own that can only read, without the machinery of models around it. */
  async askOnce<T extends pg.QueryResultRow>(opening: Opening, query: Query): Promise<T[]> {
    const garden = await this.open({ ...opening, reads: true, once: true });
    try {
      return (await garden.query(query)).rows as T[];
    } finally {
      garden.release();
    }
  }

  override query(): never {
    throw new Error('nothing is asked outside of a transaction: open one through Database');
  }

  private async open(opening: Opening): Promise<GardenConnection> {
    return new GardenConnection(await this.connections.connect(), opening, this.names);
  }
}
