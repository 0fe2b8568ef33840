import { PartialType } from '@nestjs/swagger';
import { PageQuery } from '../../platform/http/page.js';
import { namedSchema, S } from '../../platform/http/response-schema.js';
import { ChoiceField, ChoicesField, Shape, TextField } from '../shared/fields.js';
import { EVENT_TYPES } from '../shared/events.js';
import { ChoiceQuery } from '../shared/queries.dto.js';
import { DELIVERY_STATES, OUTCOMES, type Attempt, type DeliveryRecord, type DeliveryState } from './deliveries.repository.js';
import type { WebhookFields, WebhookRecord, WebhookState } from './webhooks.repository.js';

@Shape('WebhookRequest', 'An address that is told of events by a signed POST.')
export class WebhookDto {
  @TextField(2000, { description: 'An https address with a public name' }) url!: string;
  @ChoicesField(EVENT_TYPES, 20, { minItems: 1, description: 'Which events are sent; at least one' }) eventTypes!: string[];
  @TextField(200, { optional: true, description: 'What the address is for' }) description?: string | null;
  @ChoiceField(['active', 'disabled'], { optional: true, description: 'Active when left out' }) state?: WebhookState | null;
}

@Shape('WebhookPatch', 'Merge patch (RFC 7396): only the fields to change; the result is checked as a whole.')
export class WebhookPatchDto extends PartialType(WebhookDto) {}

export class DeliveryListQuery extends PageQuery {
  @ChoiceQuery(DELIVERY_STATES, 'Only deliveries in this state') state?: DeliveryState;
}

export interface WebhookResponse extends WebhookFields {
  id: string;
  failingSince: string | null;
  formerSecretUntil: string | null;
  version: number;
  createdAt: string;
  updatedAt: string;
}

export interface DeliveryResponse {
  id: string;
  webhookId: string;
  eventId: string;
  type: string;
  object: { type: string; id: string; version: number };
  state: DeliveryState;
  attempts: Attempt[];
  nextAttemptAt: string | null;
  createdAt: string;
  finishedAt: string | null;
}

const WEBHOOK = {
  id: S.id(),
  url: S.text(2000),
  description: S.orNull(S.text(200)),
  eventTypes: S.list(S.text(60), 50),
  state: S.choice('active', 'disabled'),
  failingSince: S.orNull({ ...S.moment(), description: 'Since when deliveries end without success' }),
  formerSecretUntil: S.orNull({ ...S.moment(), description: 'Until then the former secret signs too' }),
  version: S.whole(1, 2_147_483_647),
  createdAt: S.moment(),
  updatedAt: S.moment(),
};

export const WebhookSchema = namedSchema('Webhook', S.object(WEBHOOK));

export const NewWebhookSchema = namedSchema(
  'NewWebhook',
  S.object({ ...WEBHOOK, secret: { ...S.text(80), description: 'Shown this once: signs what is sent (Standard Webhooks)' } }),
);

export const DeliverySchema = namedSchema(
  'WebhookDelivery',
  S.object({
    id: S.id(),
    webhookId: S.id(),
    eventId: S.id(),
    type: S.text(60),
    object: S.object({ type: S.text(60), id: S.id(), version: S.whole(1, 2_147_483_647) }),
    state: S.choice(...DELIVERY_STATES),
    attempts: S.list(S.object({ at: S.moment(), outcome: S.choice(...OUTCOMES), status: S.orNull(S.whole(100, 999)), tookS: S.number('s', 0, 60) }), 20),
    nextAttemptAt: S.orNull(S.moment()),
    createdAt: S.moment(),
    finishedAt: S.orNull(S.moment()),
  }),
);

export const toFields = (dto: WebhookDto): WebhookFields => ({
  url: dto.url,
  description: dto.description ?? null,
  eventTypes: [...new Set(dto.eventTypes)],
  state: dto.state ?? 'active',
});

export const toRequest = (record: WebhookRecord): WebhookDto => ({
  url: record.url,
  eventTypes: record.eventTypes,
  description: record.description,
  state: record.state,
});

export const toResponse = (record: WebhookRecord): WebhookResponse => ({
  id: record.id,
  url: record.url,
  description: record.description,
  eventTypes: record.eventTypes,
  state: record.state,
  failingSince: record.failingSince,
  formerSecretUntil: record.formerSecretUntil,
  version: record.version,
  createdAt: record.createdAt,
  updatedAt: record.updatedAt,
});

export const toDeliveryResponse = (delivery: DeliveryRecord): DeliveryResponse => ({
  id: delivery.id,
  webhookId: delivery.webhookId,
  eventId: delivery.event.id,
  type: delivery.event.type,
  object: { type: delivery.event.objectType, id: delivery.event.objectId, version: delivery.event.objectVersion },
  state: delivery.state,
  attempts: delivery.attempts.map(({ at, outcome, status, tookS }) => ({ at, outcome, status, tookS })),
  nextAttemptAt: delivery.nextAttemptAt,
  createdAt: delivery.createdAt,
  finishedAt: delivery.finishedAt,
});
