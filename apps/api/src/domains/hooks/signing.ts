import { randomBytes } from 'node:crypto';
import { Webhook } from 'standardwebhooks';

/** For how long after a rotation the former secret still signs too. */
export const ROTATION_MS = 24 * 3_600_000;
export const LARGEST_PAYLOAD_BYTES = 20_000;

/** A new secret: 32 random bytes, shown once. */
export const makeSecret = (): string => `whsec_${randomBytes(32).toString('base64')}`;

export interface EventRecord {
  id: string;
  type: string;
  at: string;
  objectType: string;
  objectId: string;
  objectVersion: number;
}

export interface EventPayload {
  id: string;
  type: string;
  timestamp: string;
  gardenId: string;
  data: { object: string; id: string; version: number };
}

/** What is sent: which thing changed, and to which version. The thing itself is fetched by whoever may see it. */
export const payloadOf = (gardenId: string, event: EventRecord): EventPayload => ({
  id: event.id,
  type: event.type,
  timestamp: event.at,
  gardenId,
  data: { object: event.objectType, id: event.objectId, version: event.objectVersion },
});

/** The headers of Standard Webhooks. The id is the event's, so it is the same in every try; each secret signs once. */
export const signedHeaders = (eventId: string, at: Date, body: string, secrets: readonly string[]): Record<string, string> => ({
  'Content-Type': 'application/json',
  'User-Agent': 'Lathwork-Webhooks/1',
  'webhook-id': eventId,
  'webhook-timestamp': String(Math.floor(at.getTime() / 1000)),
  'webhook-signature': secrets.map((secret) => new Webhook(secret).sign(eventId, at, body)).join(' '),
});
