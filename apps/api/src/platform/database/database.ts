import { Inject, Injectable, type OnApplicationShutdown } from '@nestjs/common';
import { PrismaPg } from '@prisma/adapter-pg';
import type pg from 'pg';
import { NIL_ID } from '../access/actor.js';
import type { Role } from '../access/roles.js';
import { Prisma, PrismaClient } from './generated/client.js';
import { GardenPool, openedWith, type Opening } from './pg-adapter.js';
import { POOL } from './pool.js';

/** The open transaction of one garden. Repositories take it first and hold none of their own. */
export type Db = Prisma.TransactionClient;

/** What a repository needs to ask in SQL of its own: an open transaction, or the one question of `readOnce`. */
export interface Asker {
  $queryRaw<R = unknown>(query: TemplateStringsArray, ...values: unknown[]): Promise<R>;
}

export type { Prisma } from './generated/client.js';

/** What row security must know of whoever asks. A job has a garden and nothing else. */
export interface Tenant {
  gardenId: string;
  accountId?: string | null;
  memberId?: string | null;
  roles?: readonly Role[];
  reach?: 'all' | 'own';
}

/** The settings that the policies read. */
const openingOf = ({ gardenId, accountId, memberId, roles, reach }: Tenant, kind: 'changes' | 'reads' | 'reads once'): Opening => ({
  gardenId,
  accountId: accountId ?? '',
  // Nobody's id rather than none: reaching only own rows without being a member reaches nothing.
  ownMemberId: reach === 'own' ? (memberId ?? NIL_ID) : '',
  writesShared: roles?.includes('coordinator') ? 'on' : 'off',
  reads: kind !== 'changes',
  once: kind === 'reads once',
});

const LIMITS = { maxWait: 5_000, timeout: 30_000 } as const;

@Injectable()
export class Database implements OnApplicationShutdown {
  private readonly client: PrismaClient;
  private readonly gardens: GardenPool;

  constructor(@Inject(POOL) private readonly pool: pg.Pool) {
    this.gardens = new GardenPool(pool);
    // The adapter has a copy of the same types of its own, a version apart.
    this.client = new PrismaClient({ adapter: new PrismaPg(this.gardens as unknown as ConstructorParameters<typeof PrismaPg>[0]) });
  }

  /** Everything inside succeeds together or leaves no trace. Rows of other gardens do not exist in there. */
  inTransaction<T>(actor: Tenant, fn: (db: Db) => Promise<T>): Promise<T> {
    return openedWith(openingOf(actor, 'changes'), () => this.client.$transaction(fn, LIMITS));
  }

  /** All reads inside see the garden at one moment, and nothing can be written. */
  readSnapshot<T>(actor: Tenant, fn: (db: Db) => Promise<T>): Promise<T> {
    return openedWith(openingOf(actor, 'reads'), () => this.client.$transaction(fn, LIMITS));
  }

  /** As `readSnapshot`, for one single question: asked, answered and over in one round trip. A second one is refused. */
  readOnce<T>(actor: Tenant, fn: (db: Asker) => Promise<T>): Promise<T> {
    let asked = false;
    const $queryRaw = async <R>(query: TemplateStringsArray, ...values: unknown[]): Promise<R> => {
      if (asked) throw new Error('this transaction is over after its one question');
      asked = true;
      const { text, values: parameters } = Prisma.sql(query, ...values);
      return (await this.gardens.askOnce(openingOf(actor, 'reads once'), { text, values: parameters })) as R;
    };
    return fn({ $queryRaw });
  }

  async onApplicationShutdown(): Promise<void> {
    await this.client.$disconnect();
    if (!this.pool.ended) await this.pool.end();
  }
}
