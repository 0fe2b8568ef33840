import { Inject, Injectable, type OnApplicationShutdown } from '@nestjs/common';
import { PrismaPg } from '@prisma/adapter-pg';
import type pg from 'pg';
import { NIL_ID } from '../access/actor.js';
import type { Role } from '../access/roles.js';
import { PrismaClient, type Prisma } from './generated/client.js';
import { POOL } from './pool.js';

/** The open transaction of one garden. Repositories take it first and hold none of their own. */
export type Db = Prisma.TransactionClient;

export type { Prisma } from './generated/client.js';

/** What row security must know of whoever asks. A job has a garden and nothing else. */
export interface Tenant {
  gardenId: string;
  accountId?: string | null;
  memberId?: string | null;
  roles?: readonly Role[];
  reach?: 'all' | 'own';
}

/** The settings that the policies read. Each is set every time, so that nothing of an earlier transaction can be left. */
const settingsOf = ({ gardenId, accountId, memberId, roles, reach }: Tenant) => ({
  garden: gardenId,
  account: accountId ?? '',
  // Nobody's id rather than none: reaching only own rows without being a member reaches nothing.
  ownMember: reach === 'own' ? (memberId ?? NIL_ID) : '',
  writesShared: roles?.includes('coordinator') ? 'on' : 'off',
});

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
      const { garden, account, ownMember, writesShared } = settingsOf(actor);
      await db.$executeRaw`SELECT set_config('app.garden_id', ${garden}, true), set_config('app.account_id', ${account}, true),
        set_config('app.own_member_id', ${ownMember}, true), set_config('app.writes_shared', ${writesShared}, true)`;
      return fn(db);
    }, LIMITS);
  }

  /** All reads inside see the garden at one moment, and nothing can be written. */
  readSnapshot<T>(actor: Tenant, fn: (db: Db) => Promise<T>): Promise<T> {
    return this.client.$transaction(
      async (db) => {
        const { garden, account, ownMember, writesShared } = settingsOf(actor);
        await db.$executeRaw`SELECT set_config('app.garden_id', ${garden}, true), set_config('app.account_id', ${account}, true),
          set_config('app.own_member_id', ${ownMember}, true), set_config('app.writes_shared', ${writesShared}, true), set_config('transaction_read_only', 'on', true)`;
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
