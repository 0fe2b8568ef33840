import { randomInt } from 'node:crypto';
import { Inject, Injectable, type OnModuleInit } from '@nestjs/common';
import type { Logger } from 'pino';
import { OPERATOR, type Actor } from '../../platform/access/actor.js';
import { audit } from '../../platform/database/audit.js';
import { Database, type Db } from '../../platform/database/database.js';
import { Tasks, type Loop } from '../../platform/jobs/jobs.js';
import { LOG } from '../../platform/logging/log.js';
import { Outbound, OutboundError } from '../../platform/outbound/outbound.js';
import type { Attempt, Claim, DeliveryRecord, Outcome } from './deliveries.repository.js';
import { nextTryAt } from './schedule.js';
import { LARGEST_PAYLOAD_BYTES, payloadOf, signedHeaders } from './signing.js';
import { WebhookTools } from './webhooks.service.js';

const LOOK_MS = 500;
const AT_ONCE = 16;
/** Longer than any try: who holds a delivery for longer is gone. */
const HELD_MS = 60_000;

interface Ready {
  delivery: DeliveryRecord;
  url: string;
  secrets: string[];
}

const outcomeOf = (status: number): Outcome => {
  if (status >= 200 && status < 300) return 'delivered';
  if (status === 410) return 'gone';
  return status >= 300 && status < 400 ? 'redirected' : 'refused';
};

/** The server itself, at work in a garden. */
const server = (gardenId: string): Actor => ({ ...OPERATOR, gardenId });

/**
 * Sends what is due, beside the job queue. Several may run at once, in several processes: each delivery is held by one
 * of them, and a sender that was too slow can write nothing any more. A crash between sending and noting sends twice,
 * under one id.
 */
@Injectable()
export class Deliverer implements OnModuleInit, Loop {
  private timer: NodeJS.Timeout | null = null;
  private readonly sending = new Set<Promise<void>>();

  constructor(
    private readonly database: Database,
    private readonly tools: WebhookTools,
    private readonly outbound: Outbound,
    private readonly tasks: Tasks,
    @Inject(LOG) private readonly log: Logger,
  ) {}

  onModuleInit(): void {
    this.tasks.loops.push(this);
  }

  start(): void {
    const look = (): void => {
      void this.begin(new Date())
        .catch((error: unknown) => this.log.warn({ err: error }, 'deliveries could not be looked after'))
        .finally(() => {
          if (this.timer) this.timer = setTimeout(look, LOOK_MS).unref();
        });
    };
    this.timer = setTimeout(look, 0).unref();
  }

  async stop(): Promise<void> {
    if (this.timer) clearTimeout(this.timer);
    this.timer = null;
    await Promise.all(this.sending);
  }

  /** One round at a moment: takes what is due, sends it, and tells how many tries that were. */
  async tick(now: Date): Promise<number> {
    const begun = await this.begin(now);
    await Promise.all(this.sending);
    return begun;
  }

  /** Takes as much as there is room for; a slow receiver holds up nobody but itself. */
  private async begin(now: Date): Promise<number> {
    const room = AT_ONCE - this.sending.size;
    if (room <= 0) return 0;
    const claims = await this.tools.deliveries.claim(now, new Date(now.getTime() + HELD_MS), room);
    for (const claim of claims) {
      const work: Promise<void> = this.deliver(claim, now)
        .catch((error: unknown) => this.log.error({ err: error, deliveryId: claim.id }, 'delivery could not be tried'))
        .finally(() => this.sending.delete(work));
      this.sending.add(work);
    }
    return claims.length;
  }

  private async deliver(claim: Claim, now: Date): Promise<void> {
    const ready = await this.prepare(claim, now);
    if (!ready) return;
    const { delivery } = ready;
    const body = JSON.stringify(payloadOf(claim.gardenId, delivery.event));
    if (Buffer.byteLength(body) > LARGEST_PAYLOAD_BYTES) throw new Error('the payload of an event is too large');
    const started = performance.now();
    const { outcome, status } = await this.send(ready.url, signedHeaders(delivery.event.id, now, body, ready.secrets), body);
    const tookS = Math.round(performance.now() - started) / 1000;
    await this.note(claim, delivery, { at: now.toISOString(), outcome, status, tookS });
    const done = outcome === 'delivered';
    // The address is the garden's own matter and may hold a secret: it is not logged.
    this.log[done ? 'info' : 'warn'](
      { deliveryId: claim.id, try: delivery.attempts.length + 1, outcome, status },
      done ? 'event delivered' : 'event not delivered',
    );
  }

  private prepare(claim: Claim, now: Date): Promise<Ready | null> {
    const { webhooks, deliveries, secrets } = this.tools;
    return this.database.inTransaction(claim, async (db) => {
      const delivery = await deliveries.find(db, claim.id);
      const webhook = delivery && (await webhooks.find(db, delivery.webhookId));
      const sealed = webhook && (await webhooks.secretsOf(db, webhook.id));
      if (!delivery || delivery.state !== 'waiting') return null;
      if (webhook?.state !== 'active' || !sealed) {
        // Put down while the webhook was being switched off.
        await deliveries.end(db, claim, delivery.attempts, { state: 'cancelled', nextAttemptAt: null, finishedAt: now });
        return null;
      }
      return { delivery, url: webhook.url, secrets: secrets.signing(webhook.id, sealed, now) };
    });
  }

  private async send(url: string, headers: Record<string, string>, body: string): Promise<{ outcome: Outcome; status: number | null }> {
    try {
      const { status } = await this.outbound.post(url, headers, body);
      return { outcome: outcomeOf(status), status };
    } catch (error) {
      if (!(error instanceof OutboundError)) throw error;
      return { outcome: error.failure === 'refused' ? 'addressRefused' : error.failure, status: null };
    }
  }

  private async note(claim: Claim, delivery: DeliveryRecord, attempt: Attempt): Promise<void> {
    const { deliveries, webhooks } = this.tools;
    const attempts = [...delivery.attempts, attempt];
    const endedAt = new Date(Date.parse(attempt.at) + attempt.tookS * 1000);
    const isOver = attempt.outcome === 'delivered' || attempt.outcome === 'gone';
    const next = isOver ? null : nextTryAt(attempts.length, endedAt, randomInt(0, 1001) / 1000);
    const state = attempt.outcome === 'delivered' ? 'delivered' : next ? 'waiting' : 'failed';
    await this.database.inTransaction(claim, async (db) => {
      await webhooks.hold(db, delivery.webhookId);
      if (!(await deliveries.end(db, claim, attempts, { state, nextAttemptAt: next, finishedAt: next ? null : endedAt }))) return;
      if (state === 'delivered') await webhooks.note(db, delivery.webhookId, { failingSince: null });
      if (attempt.outcome === 'gone') await this.disable(db, claim.gardenId, delivery.webhookId);
      else if (state === 'failed') await this.markFailing(db, claim.gardenId, delivery.webhookId, endedAt);
    });
  }

  private async disable(db: Db, gardenId: string, webhookId: string): Promise<void> {
    if (!(await this.tools.webhooks.note(db, webhookId, { state: 'disabled' }))) return;
    await this.tools.deliveries.cancelAll(db, webhookId);
    await audit(db, server(gardenId), { action: 'webhook.gone', objectType: 'webhook', objectId: webhookId });
  }

  private async markFailing(db: Db, gardenId: string, webhookId: string, at: Date): Promise<void> {
    if (!(await this.tools.webhooks.note(db, webhookId, { failingSince: at }))) return;
    await audit(db, server(gardenId), { action: 'webhook.failing', objectType: 'webhook', objectId: webhookId });
    this.log.error({ webhookId }, 'a webhook is failing: no try of three days was answered well');
  }
}
