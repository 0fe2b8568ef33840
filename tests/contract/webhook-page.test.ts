import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { Webhook } from 'standardwebhooks';
import { OUTCOMES } from '../../apps/api/src/domains/hooks/deliveries.repository.js';
import { JITTER_FRAC, WAITS_MS } from '../../apps/api/src/domains/hooks/schedule.js';
import { makeSecret, payloadOf, signedHeaders } from '../../apps/api/src/domains/hooks/signing.js';
import { EVENT_TYPES, TEST_EVENT } from '../../apps/api/src/domains/shared/events.js';

type EventOf = (secret: string, headers: Record<string, string>, body: string, nowS?: number) => unknown;

const page = readFileSync('docs/api/webhooks.md', 'utf8');
const folder = mkdtempSync(join(tmpdir(), 'lathwork-page-'));
let eventOf: EventOf;

beforeAll(async () => {
  const code = /```js\n([\s\S]*?)```/.exec(page)?.[1] ?? '';
  const file = join(folder, 'example.mjs');
  writeFileSync(file, code);
  ({ eventOf } = (await import(file)) as { eventOf: EventOf });
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('the page about webhooks', () => {
  const at = new Date('2026-03-15T09:30:00Z');
  const nowS = at.getTime() / 1000;
  const event = payloadOf('5a9c9f0e-0000-4000-8000-000000000001', {
    id: '5a9c9f0e-0000-4000-8000-000000000002',
    type: 'plan.ready',
    at: at.toISOString(),
    objectType: 'plan',
    objectId: '5a9c9f0e-0000-4000-8000-000000000003',
    objectVersion: 2,
  });
  const body = JSON.stringify(event);

  it('A31: its example takes what the reference library signed, and what the server sends', () => {
    const secret = makeSecret();
    const signature = new Webhook(secret).sign(event.id, at, body);
    const theirs = { 'webhook-id': event.id, 'webhook-timestamp': String(nowS), 'webhook-signature': signature };
    expect(eventOf(secret, theirs, body, nowS)).toEqual(event);
    const former = makeSecret();
    const ours = signedHeaders(event.id, at, body, [secret, former]);
    for (const one of [secret, former]) expect(eventOf(one, ours, body, nowS + 299)).toEqual(event);
  });

  it('A31: its example refuses what was changed, is old, or was signed by another', () => {
    const secret = makeSecret();
    const headers = signedHeaders(event.id, at, body, [secret]);
    const { 'webhook-signature': signature = '' } = headers;
    const wrong: [string, Record<string, string>, string, number][] = [
      [makeSecret(), headers, body, nowS],
      [secret, headers, body.replace('plan.ready', 'plan.stale'), nowS],
      [secret, { ...headers, 'webhook-id': 'another' }, body, nowS],
      [secret, { ...headers, 'webhook-timestamp': String(nowS + 1) }, body, nowS],
      [secret, { ...headers, 'webhook-timestamp': 'soon' }, body, nowS],
      [secret, { ...headers, 'webhook-signature': signature.replace('v1,', 'v2,') }, body, nowS],
      [secret, { ...headers, 'webhook-signature': 'v1,' }, body, nowS],
      [secret, {}, body, nowS],
      [secret, headers, body, nowS + 301],
      [secret, headers, body, nowS - 301],
    ];
    for (const [key, sent, text, now] of wrong) expect([sent, now, eventOf(key, sent, text, now)]).toEqual([sent, now, null]);
  });

  it('A31: names every type, every outcome and every wait', () => {
    for (const word of [...EVENT_TYPES, TEST_EVENT, ...OUTCOMES]) expect(page).toContain(`\`${word}\``);
    const names = (ms: number): string => (ms < 60_000 ? `${ms / 1000} s` : ms < 3_600_000 ? `${ms / 60_000} min` : `${ms / 3_600_000} h`);
    const [last, ...others] = WAITS_MS.slice(1).map(names).reverse();
    expect(page).toContain(`after ${others.reverse().join(', ')} and ${last}, each up to a fifth later; ten tries`);
    expect([WAITS_MS.length, JITTER_FRAC]).toEqual([10, 1 / 5]);
  });
});
