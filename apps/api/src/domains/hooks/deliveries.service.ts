import { Injectable } from '@nestjs/common';
import type { Request } from 'express';
import type { Actor } from '../../platform/access/actor.js';
import { audit } from '../../platform/database/audit.js';
import { Database, type Db } from '../../platform/database/database.js';
import { etagOfParts } from '../../platform/http/etag.js';
import { afterOf, toPage, type Page } from '../../platform/http/page.js';
import { found, type Answer, type Reply } from '../../platform/http/reply.js';
import { Idempotency } from '../../platform/idempotency/idempotency.js';
import { fail } from '../../platform/problems/problem.js';
import { must } from '../shared/change.js';
import { TEST_EVENT } from '../shared/events.js';
import { DeliveriesRepository, type DeliveryRecord } from './deliveries.repository.js';
import { toDeliveryResponse, type DeliveryListQuery, type DeliveryResponse } from './webhooks.dto.js';
import { WebhooksRepository, type WebhookRecord } from './webhooks.repository.js';

const WHAT = 'delivery';

const etagOf = (delivery: DeliveryRecord): string => etagOfParts(delivery.id, delivery.state, delivery.attempts.length);

const accepted = (delivery: DeliveryRecord): Answer => ({
  status: 202,
  body: toDeliveryResponse(delivery),
  location: `/v1/webhooks/${delivery.webhookId}/deliveries/${delivery.id}`,
  etag: etagOf(delivery),
});

@Injectable()
export class DeliveriesService {
  constructor(
    private readonly database: Database,
    private readonly idempotency: Idempotency,
    private readonly webhooks: WebhooksRepository,
    private readonly deliveries: DeliveriesRepository,
  ) {}

  async list(actor: Actor, webhookId: string, query: DeliveryListQuery): Promise<Page<DeliveryResponse>> {
    const step = { after: afterOf(query), take: query.limit + 1 };
    const rows = await this.database.readSnapshot(actor, async (db) => {
      must(await this.webhooks.find(db, webhookId), 'webhook');
      return this.deliveries.list(db, webhookId, { state: query.state ?? null }, step);
    });
    return toPage(rows.map(toDeliveryResponse), query.limit, (row) => row.id, query);
  }

  async find(actor: Actor, webhookId: string, id: string): Promise<Reply> {
    const delivery = await this.database.readSnapshot(actor, async (db) => {
      must(await this.webhooks.find(db, webhookId), 'webhook');
      return must(await this.deliveries.find(db, id, webhookId), WHAT);
    });
    return found(toDeliveryResponse(delivery), etagOf(delivery));
  }

  /** Sends an event that says nothing but that the way is open. */
  test(actor: Actor, request: Request, webhookId: string): Promise<Reply> {
    return this.idempotency.creating(actor, request, async (db) => {
      const webhook = await this.mustBeActive(db, webhookId);
      const event = { type: TEST_EVENT, objectType: 'webhook', objectId: webhook.id, objectVersion: webhook.version };
      const eventId = await this.deliveries.insertEvent(db, actor.gardenId, event);
      return accepted(await this.deliveries.insert(db, actor.gardenId, webhookId, eventId));
    });
  }

  /** The same event under the same id once more: a receiver that has it already knows it again. What still waits is tried at once. */
  redeliver(actor: Actor, request: Request, webhookId: string, id: string): Promise<Reply> {
    return this.idempotency.creating(actor, request, async (db) => {
      await this.mustBeActive(db, webhookId);
      const was = must(await this.deliveries.find(db, id, webhookId), WHAT);
      await audit(db, actor, { action: 'webhook.redeliver', objectType: 'webhook', objectId: webhookId, after: { eventId: was.event.id } });
      if (was.state !== 'waiting') return accepted(await this.deliveries.insert(db, actor.gardenId, webhookId, was.event.id));
      await this.deliveries.hasten(db, id);
      return accepted(must(await this.deliveries.find(db, id, webhookId), WHAT));
    });
  }

  private async mustBeActive(db: Db, webhookId: string): Promise<WebhookRecord> {
    const webhook = must(await this.webhooks.find(db, webhookId), 'webhook');
    return webhook.state === 'active' ? webhook : fail('webhook-disabled');
  }
}
