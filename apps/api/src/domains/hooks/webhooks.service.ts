import { Injectable } from '@nestjs/common';
import type { Request } from 'express';
import type { Actor } from '../../platform/access/actor.js';
import { audit } from '../../platform/database/audit.js';
import { Database, type Db } from '../../platform/database/database.js';
import { newId } from '../../platform/database/ids.js';
import { assertMatch, etagOf } from '../../platform/http/etag.js';
import { afterOf, toPage, type Page, type PageQuery } from '../../platform/http/page.js';
import type { Reply } from '../../platform/http/reply.js';
import { Idempotency } from '../../platform/idempotency/idempotency.js';
import { Outbound } from '../../platform/outbound/outbound.js';
import { fail } from '../../platform/problems/problem.js';
import { must, mustBeNewest, patched, shown } from '../shared/change.js';
import { DeliveriesRepository } from './deliveries.repository.js';
import { makeSecret, ROTATION_MS } from './signing.js';
import { toFields, toRequest, toResponse, WebhookDto, type WebhookResponse } from './webhooks.dto.js';
import { WebhookSecrets } from './webhook-secrets.js';
import { WebhooksRepository, type WebhookFields, type WebhookRecord } from './webhooks.repository.js';

const WHAT = 'webhook';
const MOST = 20;

/** What webhooks are kept with. */
@Injectable()
export class WebhookTools {
  constructor(
    readonly webhooks: WebhooksRepository,
    readonly deliveries: DeliveriesRepository,
    readonly secrets: WebhookSecrets,
  ) {}
}

@Injectable()
export class WebhooksService {
  constructor(
    private readonly database: Database,
    private readonly idempotency: Idempotency,
    private readonly tools: WebhookTools,
    private readonly outbound: Outbound,
  ) {}

  create(actor: Actor, request: Request, body: WebhookDto): Promise<Reply> {
    const { webhooks, secrets } = this.tools;
    return this.idempotency.creating(actor, request, async (db) => {
      const fields = this.checked(toFields(body));
      if ((await webhooks.countAlone(db, actor.gardenId)) >= MOST) fail('too-many-webhooks', { limit: MOST });
      const [id, secret] = [newId(), makeSecret()];
      const record = await webhooks.insert(db, { gardenId: actor.gardenId, id, createdById: actor.principalId }, fields, secrets.seal(id, secret));
      await audit(db, actor, { action: 'webhook.create', objectType: WHAT, objectId: id, after: fields });
      return { status: 201, body: { ...toResponse(record), secret }, location: `/v1/webhooks/${id}`, etag: etagOf(record), secret: true };
    });
  }

  async list(actor: Actor, query: PageQuery): Promise<Page<WebhookResponse>> {
    const step = { after: afterOf(query), take: query.limit + 1 };
    const records = await this.database.readSnapshot(actor, (db) => this.tools.webhooks.list(db, step));
    return toPage(records.map(toResponse), query.limit, (record) => record.id, query);
  }

  async find(actor: Actor, id: string): Promise<Reply> {
    return shown(toResponse(await this.database.readSnapshot(actor, (db) => this.mustFind(db, id))));
  }

  change(actor: Actor, id: string, ifMatch: string | undefined, patch: unknown): Promise<Reply> {
    return this.database.inTransaction(actor, async (db) => {
      const was = await this.mustFind(db, id);
      assertMatch(ifMatch, was);
      const fields = this.checked(toFields(patched(WebhookDto, toRequest(was), {}, patch).dto));
      const now = mustBeNewest(await this.tools.webhooks.update(db, was, fields));
      if (now.state === 'disabled') await this.tools.deliveries.cancelAll(db, id);
      await audit(db, actor, { action: 'webhook.update', objectType: WHAT, objectId: id, before: toFields(toRequest(was)), after: fields });
      return shown(toResponse(now));
    });
  }

  /** For a day both secrets sign, so that the receiver can change over without missing anything. */
  rotate(actor: Actor, request: Request, id: string): Promise<Reply> {
    const { webhooks, secrets } = this.tools;
    return this.idempotency.creating(actor, request, async (db) => {
      const was = await this.mustFind(db, id);
      const sealed = must(await webhooks.secretsOf(db, id), WHAT);
      const secret = makeSecret();
      const former = { sealed: sealed.current, until: new Date(Date.now() + ROTATION_MS) };
      const now = mustBeNewest(await webhooks.rotate(db, was, secrets.seal(id, secret), former));
      await audit(db, actor, { action: 'webhook.rotate', objectType: WHAT, objectId: id });
      return { status: 201, body: { ...toResponse(now), secret }, location: `/v1/webhooks/${id}`, etag: etagOf(now), secret: true };
    });
  }

  async remove(actor: Actor, id: string): Promise<void> {
    await this.database.inTransaction(actor, async (db) => {
      const was = await this.mustFind(db, id);
      if (!(await this.tools.webhooks.remove(db, id))) return;
      await this.tools.deliveries.cancelAll(db, id);
      await audit(db, actor, { action: 'webhook.remove', objectType: WHAT, objectId: id, before: toFields(toRequest(was)) });
    });
  }

  private async mustFind(db: Db, id: string): Promise<WebhookRecord> {
    return must(await this.tools.webhooks.find(db, id), WHAT);
  }

  private checked(fields: WebhookFields): WebhookFields {
    if (fields.eventTypes.length === 0)
      fail('validation-failed', { count: 1 }, [{ pointer: '/eventTypes', code: 'wrong-length', detail: 'At least one type of event is wanted.' }]);
    const objection = this.outbound.objection(fields.url);
    return objection === null ? fields : fail('url-refused', { reason: objection }, [{ pointer: '/url', code: 'url-refused', detail: objection }]);
  }
}
