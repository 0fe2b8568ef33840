import { Inject, Injectable, type OnApplicationShutdown } from '@nestjs/common';
import { PrismaPg } from '@prisma/adapter-pg';
import type pg from 'pg';
import { NIL_ID } from '../access/actor.js';
import type { Role } from '../access/roles.js';
import { PrismaClient, type Prisma } from './generated/client.js';
import { openedPool, openingWith } from './opened-pool.js';
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
const settingsOf = ({ gardenId, accountId, memberId, roles, reach }: Tenant): Record<string, string> => ({
  'app.garden_id': gardenId,
  'app.account_id': accountId ?? '',
  // Nobody's id rather than none: reaching only own rows without being a member reaches nothing.
  'app.own_member_id': reach === 'own' ? (memberId ?? NIL_ID) : '',
  'app.writes_shared': roles?.includes('coordinator') ? 'on' : 'off',
});

const LIMITS = { maxWait: 5_000, timeout: 30_000 } as const;

@Injectable()
export class Database implements OnApplicationShutdown {
  private readonly client: PrismaClient;

  constructor(@Inject(POOL) private readonly pool: pg.Pool) {
    // The adapter has a copy of the same types of its own, a version apart.
    this.client = new PrismaClient({ adapter: new PrismaPg(openedPool(pool) as unknown as ConstructorParameters<typeof PrismaPg>[0]) });
  }

  /** Everything inside succeeds together or leaves no trace. Rows of other gardens do not exist in there. */
  inTransaction<T>(actor: Tenant, fn: (db: Db) => Promise<T>): Promise<T> {
    return openingWith({ readOnly: false, settings: settingsOf(actor) }, () => this.client.$transaction(fn, LIMITS));
  }

  /** All reads inside see the garden at one moment, and nothing can be written. */
  readSnapshot<T>(actor: Tenant, fn: (db: Db) => Promise<T>): Promise<T> {
    return openingWith({ readOnly: true, settings: settingsOf(actor) }, () => this.client.$transaction(fn, LIMITS));
  }

  async onApplicationShutdown(): Promise<void> {
    await this.client.$disconnect();
    if (!this.pool.ended) await this.pool.end();
  }
}
