import { Injectable } from '@nestjs/common';
import type { Db } from '../../platform/database/database.js';
import type { SpendRequest } from '../../platform/database/generated/client.js';
import type { Step } from '../shared/resource.js';

export const SPEND_STATES = ['submitted', 'approved', 'refused', 'withdrawn'] as const;
export type SpendState = (typeof SPEND_STATES)[number];

export interface SpendFields {
  buildId: string | null;
  planId: string | null;
  purpose: string;
  amount: { minor: number; currency: string };
}

export interface SpendRecord extends SpendFields {
  id: string;
  state: SpendState;
  requestedById: string;
  decidedById: string | null;
  decidedAt: string | null;
  remark: string | null;
  version: number;
  createdAt: string;
}

/** What each role may approve alone; null: nobody has set a limit. */
export interface Limits {
  currency: string;
  coordinatorMinor: number | null;
  treasurerMinor: number | null;
}

const toModel = (row: SpendRequest): SpendRecord => ({
  id: row.id,
  buildId: row.buildId,
  planId: row.planId,
  purpose: row.purpose,
  amount: { minor: Number(row.amountMinor), currency: row.currency },
  state: row.state as SpendState,
  requestedById: row.requestedById,
  decidedById: row.decidedById,
  decidedAt: row.decidedAt?.toISOString() ?? null,
  remark: row.remark,
  version: row.version,
  createdAt: row.createdAt.toISOString(),
});

@Injectable()
export class SpendingRepository {
  async insert(
    db: Db,
    by: { gardenId: string; requestedById: string; ownerMemberId: string | null },
    id: string,
    { amount, ...fields }: SpendFields,
  ): Promise<SpendRecord> {
    return toModel(await db.spendRequest.create({ data: { ...by, id, ...fields, amountMinor: BigInt(amount.minor), currency: amount.currency } }));
  }

  async find(db: Db, id: string): Promise<SpendRecord | null> {
    const row = await db.spendRequest.findFirst({ where: { id } });
    return row && toModel(row);
  }

  async list(db: Db, filter: { state: string | null; buildId: string | null }, step: Step): Promise<SpendRecord[]> {
    const rows = await db.spendRequest.findMany({
      where: {
        ...(filter.state ? { state: filter.state } : {}),
        ...(filter.buildId ? { buildId: filter.buildId } : {}),
        ...(step.after ? { id: { gt: step.after } } : {}),
      },
      orderBy: { id: 'asc' },
      take: step.take,
    });
    return rows.map(toModel);
  }

  /** Ends a request that still waits, if nobody has touched it since; null tells that somebody has. */
  async end(
    db: Db,
    was: SpendRecord,
    to: { state: SpendState; decidedById: string | null; decidedAt: Date | null; remark: string | null },
  ): Promise<SpendRecord | null> {
    const [row] = await db.spendRequest.updateManyAndReturn({
      where: { id: was.id, version: was.version, state: 'submitted' },
      data: { ...to, version: { increment: 1 } },
    });
    return row ? toModel(row) : null;
  }

  async limits(db: Db): Promise<Limits | null> {
    const row = await db.garden.findFirst({ select: { currency: true, coordinatorLimitMinor: true, treasurerLimitMinor: true } });
    const minor = (value: bigint | null): number | null => (value === null ? null : Number(value));
    return row && { currency: row.currency, coordinatorMinor: minor(row.coordinatorLimitMinor), treasurerMinor: minor(row.treasurerLimitMinor) };
  }
}
