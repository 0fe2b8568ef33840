import type { Db } from '../../platform/database/database.js';
import { newId } from '../../platform/database/ids.js';

/** Everything that another program can be told of. */
export const EVENT_TYPES = [
  'plan.ready',
  'plan.failed',
  'plan.stale',
  'document.ready',
  'document.failed',
  'build.updated',
  'stock.claimed',
  'stock.released',
  'member.joined',
] as const;
export type EventType = (typeof EVENT_TYPES)[number];

/** Sent by hand to one webhook; nobody subscribes to it. */
export const TEST_EVENT = 'webhook.test';

export interface GardenEvent {
  type: EventType;
  /** What it is about, such as `plan`. The contents are never part of an event: they are fetched, by whoever may. */
  object: string;
  id: string;
  /** Rises whenever the object changes, so that events that arrive in another order can be put right. */
  version: number;
}

/**
 * Notes what happened, in the transaction that does it: both are there, or neither. For each webhook that wants such
 * events a delivery is put down beside it, due at once.
 */
export const emit = async (db: Db, gardenId: string, ...events: readonly GardenEvent[]): Promise<void> => {
  if (events.length === 0) return;
  const types = [...new Set(events.map(({ type }) => type as string))];
  const hooks = await db.webhook.findMany({
    where: { state: 'active', removedAt: null, eventTypes: { hasSome: types } },
    select: { id: true, eventTypes: true },
  });
  const rows = events.map((event) => ({ gardenId, id: newId(), type: event.type, objectType: event.object, objectId: event.id, objectVersion: event.version }));
  await db.hookEvent.createMany({ data: rows });
  const deliveries = rows.flatMap((row) =>
    hooks
      .filter(({ eventTypes }) => eventTypes.includes(row.type))
      .map((hook) => ({ gardenId, id: newId(), webhookId: hook.id, eventId: row.id, nextAttemptAt: new Date() })),
  );
  if (deliveries.length > 0) await db.webhookDelivery.createMany({ data: deliveries });
};
