import { Inject, Injectable, type OnApplicationShutdown } from '@nestjs/common';
import { PrismaPg } from '@prisma/adapter-pg';
import type pg from 'pg';
import { PrismaClient, type Prisma } from './generated/client.js';
import { POOL } from './pool.js';

/** The open transaction of one garden. Repositories take it first and hold none of their own. */
export type Db = Prisma.TransactionClient;

export type { Prisma } from './generated/client.js';

/** Only the garden matters here: a job has one too, without a key. */
export interface Tenant {
  gardenId: string;
}

const LIMITS = { maxWait: 5_000, timeout: 30_000 } as const;

@Injectable()
export class Database implements OnApplicationShutdown {
  private readonly client: PrismaClient;

  constructor(@Inject(POOL) private readonly pool: pg.Pool) {
    // The adapter has a copy of the same types of its own, a version apart.
    this.client = new PrismaClient({ adapter: new PrismaPg(pool as unknown as ConstructorParameters<typeof PrismaPg>[0]) });
  }

  /** Everything inside succeeds together or leaves no trace. Rows of other gardens do not exist in there. */
  inTransaction<T>(actor: Tenant, fn: (db: Db) => Promise<T>): Promise<T> {
    return this.client.$transaction(async (db) => {
      await db.$executeRaw`SELECT set_config('app.garden_id', ${actor.gardenId}, true)`;
      return fn(db);
    }, LIMITS);
  }

  /** All reads inside see the garden at one moment, and nothing can be written. */
  readSnapshot<T>(actor: Tenant, fn: (db: Db) => Promise<T>): Promise<T> {
    return this.client.$transaction(
      async (db) => {
        await db.$executeRaw`SELECT set_config('app.garden_id', ${actor.gardenId}, true), set_config('transaction_read_only', 'on', true)`;
        return fn(db);
      },
      { ...LIMITS, isolationLevel: 'RepeatableRead' },
    );
  }

  async onApplicationShutdown(): Promise<void> {
    await this.client.$disconnect();
    if (!this.pool.ended) await this.pool.end();
  }
}
