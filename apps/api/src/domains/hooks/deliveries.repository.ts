import { Inject, Injectable } from '@nestjs/common';
import type pg from 'pg';
import type { Db } from '../../platform/database/database.js';
import { newId } from '../../platform/database/ids.js';
import { POOL } from '../../platform/database/pool.js';
import type { HookEvent, WebhookDelivery } from '../../platform/database/generated/client.js';
import type { Step } from '../shared/resource.js';
import type { EventRecord } from './signing.js';

export const DELIVERY_STATES = ['waiting', 'delivered', 'failed', 'cancelled'] as const;
export type DeliveryState = (typeof DELIVERY_STATES)[number];

export const OUTCOMES = ['delivered', 'refused', 'redirected', 'gone', 'addressRefused', 'unresolved', 'unreachable', 'insecure', 'timedOut'] as const;
export type Outcome = (typeof OUTCOMES)[number];

export interface Attempt {
  at: string;
  outcome: Outcome;
  status: number | null;
  tookS: number;
}

export interface DeliveryRecord {
  id: string;
  webhookId: string;
  event: EventRecord;
  state: DeliveryState;
  attempts: Attempt[];
  nextAttemptAt: string | null;
  createdAt: string;
  finishedAt: string | null;
}

/** A delivery that one sender holds. */
export interface Claim {
  gardenId: string;
  id: string;
  claimCount: number;
}

const toModel = (row: WebhookDelivery & { event: HookEvent }): DeliveryRecord => ({
  id: row.id,
  webhookId: row.webhookId,
  event: {
    id: row.event.id,
    type: row.event.type,
    at: row.event.at.toISOString(),
    objectType: row.event.objectType,
    objectId: row.event.objectId,
    objectVersion: row.event.objectVersion,
  },
  state: row.state as DeliveryState,
  attempts: row.attempts as unknown as Attempt[],
  nextAttemptAt: row.nextAttemptAt?.toISOString() ?? null,
  createdAt: row.createdAt.toISOString(),
  finishedAt: row.finishedAt?.toISOString() ?? null,
});

@Injectable()
export class DeliveriesRepository {
  constructor(@Inject(POOL) private readonly pool: pg.Pool) {}

  /** Takes what is due in any garden. Only ids come out of it; all else is read inside the garden. */
  async claim(at: Date, until: Date, atMost: number): Promise<Claim[]> {
    const { rows } = await this.pool.query<{ garden_id: string; id: string; claim_count: number }>({
      name: 'claim-deliveries',
      text: 'SELECT * FROM claim_deliveries($1, $2, $3)',
      values: [at, until, atMost],
    });
    return rows.map((row) => ({ gardenId: row.garden_id, id: row.id, claimCount: row.claim_count }));
  }

  async insertEvent(db: Db, gardenId: string, event: { type: string; objectType: string; objectId: string; objectVersion: number }): Promise<string> {
    const id = newId();
    await db.hookEvent.createMany({ data: [{ gardenId, id, ...event }] });
    return id;
  }

  async insert(db: Db, gardenId: string, webhookId: string, eventId: string): Promise<DeliveryRecord> {
    const data = { gardenId, id: newId(), webhookId, eventId, nextAttemptAt: new Date() };
    return toModel(await db.webhookDelivery.create({ data, include: { event: true } }));
  }

  async find(db: Db, id: string, webhookId?: string): Promise<DeliveryRecord | null> {
    const row = await db.webhookDelivery.findFirst({ where: { id, ...(webhookId ? { webhookId } : {}) }, include: { event: true } });
    return row && toModel(row);
  }

  async list(db: Db, webhookId: string, filter: { state: DeliveryState | null }, step: Step): Promise<DeliveryRecord[]> {
    const rows = await db.webhookDelivery.findMany({
      where: { webhookId, ...(filter.state ? { state: filter.state } : {}), ...(step.after ? { id: { lt: step.after } } : {}) },
      orderBy: { id: 'desc' },
      take: step.take,
      include: { event: true },
    });
    return rows.map(toModel);
  }

  /** Writes what came of a try, if this sender still holds it. */
  async end(
    db: Db,
    claim: Claim,
    attempts: readonly Attempt[],
    next: { state: DeliveryState; nextAttemptAt: Date | null; finishedAt: Date | null },
  ): Promise<boolean> {
    const { count } = await db.webhookDelivery.updateMany({
      where: { id: claim.id, claimCount: claim.claimCount, state: 'waiting' },
      data: { ...next, attempts: attempts as unknown as object[], claimedUntil: null },
    });
    return count === 1;
  }

  /** What waits is due now, unless a sender has it in hand already. */
  async hasten(db: Db, id: string): Promise<void> {
    await db.webhookDelivery.updateMany({ where: { id, state: 'waiting', claimedUntil: null }, data: { nextAttemptAt: new Date() } });
  }

  /** Nothing more is sent to a webhook that is switched off or gone. */
  async cancelAll(db: Db, webhookId: string): Promise<void> {
    const data = { state: 'cancelled', nextAttemptAt: null, claimedUntil: null, finishedAt: new Date() };
    await db.webhookDelivery.updateMany({ where: { webhookId, state: 'waiting' }, data });
  }
}
