import { Injectable } from '@nestjs/common';
import type { Db } from '../../platform/database/database.js';
import type { Webhook } from '../../platform/database/generated/client.js';
import type { Step } from '../shared/resource.js';

export type WebhookState = 'active' | 'disabled';

export interface WebhookFields {
  url: string;
  description: string | null;
  eventTypes: string[];
  state: WebhookState;
}

export interface WebhookRecord extends WebhookFields {
  id: string;
  failingSince: string | null;
  formerSecretUntil: string | null;
  version: number;
  createdAt: string;
  updatedAt: string;
}

/** The secrets as they are kept: sealed. */
export interface SealedSecrets {
  current: Uint8Array;
  former: { sealed: Uint8Array; until: Date } | null;
}

const toModel = (row: Webhook): WebhookRecord => ({
  id: row.id,
  url: row.url,
  description: row.description,
  eventTypes: row.eventTypes,
  state: row.state as WebhookState,
  failingSince: row.failingSince?.toISOString() ?? null,
  formerSecretUntil: row.formerSecretUntil?.toISOString() ?? null,
  version: row.version,
  createdAt: row.createdAt.toISOString(),
  updatedAt: row.updatedAt.toISOString(),
});

const bytes = (sealed: Uint8Array): Uint8Array<ArrayBuffer> => new Uint8Array(sealed);

@Injectable()
export class WebhooksRepository {
  async insert(db: Db, at: { gardenId: string; id: string; createdById: string }, fields: WebhookFields, sealed: Uint8Array): Promise<WebhookRecord> {
    return toModel(await db.webhook.create({ data: { ...at, ...fields, secretSealed: bytes(sealed) } }));
  }

  async find(db: Db, id: string): Promise<WebhookRecord | null> {
    const row = await db.webhook.findFirst({ where: { id, removedAt: null } });
    return row && toModel(row);
  }

  async secretsOf(db: Db, id: string): Promise<SealedSecrets | null> {
    const row = await db.webhook.findFirst({
      where: { id, removedAt: null },
      select: { secretSealed: true, formerSecretSealed: true, formerSecretUntil: true },
    });
    if (!row?.secretSealed) return null;
    const { formerSecretSealed: sealed, formerSecretUntil: until } = row;
    return { current: row.secretSealed, former: sealed && until ? { sealed, until } : null };
  }

  /** Two that count the webhooks of a garden do it one after the other. */
  async countAlone(db: Db, gardenId: string): Promise<number> {
    await db.$executeRaw`SELECT pg_advisory_xact_lock(hashtextextended(${`webhooks of ${gardenId}`}, 12))`;
    return db.webhook.count({ where: { removedAt: null } });
  }

  async list(db: Db, step: Step): Promise<WebhookRecord[]> {
    const rows = await db.webhook.findMany({
      where: { removedAt: null, ...(step.after ? { id: { gt: step.after } } : {}) },
      orderBy: { id: 'asc' },
      take: step.take,
    });
    return rows.map(toModel);
  }

  /** Null when somebody else changed it meanwhile. What is changed by hand begins anew: it is not failing until it fails. */
  update(db: Db, was: WebhookRecord, fields: WebhookFields): Promise<WebhookRecord | null> {
    return this.write(db, was, { ...fields, failingSince: null });
  }

  rotate(db: Db, was: WebhookRecord, sealed: Uint8Array, former: { sealed: Uint8Array; until: Date }): Promise<WebhookRecord | null> {
    return this.write(db, was, { secretSealed: bytes(sealed), formerSecretSealed: bytes(former.sealed), formerSecretUntil: former.until });
  }

  /** The row stays for the log; the secrets go. */
  async remove(db: Db, id: string): Promise<boolean> {
    const data = { removedAt: new Date(), state: 'disabled', secretSealed: null, formerSecretSealed: null, formerSecretUntil: null, version: { increment: 1 } };
    const { count } = await db.webhook.updateMany({ where: { id, removedAt: null }, data });
    return count > 0;
  }

  /** Whoever changes a webhook and its deliveries takes the webhook first, so that no two wait for each other. */
  async hold(db: Db, id: string): Promise<void> {
    await db.$executeRaw`SELECT 1 FROM webhooks WHERE id = ${id}::uuid FOR NO KEY UPDATE`;
  }

  /** What the deliverer learned. Tells whether that was new. */
  async note(db: Db, id: string, learned: { state: 'disabled' } | { failingSince: Date | null }): Promise<boolean> {
    const fresh = 'state' in learned ? { state: 'active' } : learned.failingSince ? { failingSince: null } : { failingSince: { not: null } };
    const { count } = await db.webhook.updateMany({
      where: { id, removedAt: null, ...fresh },
      data: { ...learned, version: { increment: 1 }, updatedAt: new Date() },
    });
    return count > 0;
  }

  private async write(db: Db, was: WebhookRecord, data: object): Promise<WebhookRecord | null> {
    const { count } = await db.webhook.updateMany({
      where: { id: was.id, version: was.version, removedAt: null },
      data: { ...data, version: { increment: 1 }, updatedAt: new Date() },
    });
    return count === 0 ? null : this.find(db, was.id);
  }
}
