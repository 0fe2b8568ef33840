import { createHmac, randomBytes } from 'node:crypto';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { expect, it } from '@jest/globals';
import { Webhook } from 'standardwebhooks';
import { OUTCOMES } from '../../apps/api/src/domains/hooks/deliveries.repository.js';
import { JITTER_FRAC, WAITS_MS } from '../../apps/api/src/domains/hooks/schedule.js';
import { makeSecret, signedHeaders } from '../../apps/api/src/domains/hooks/signing.js';
import { EVENT_TYPES, TEST_EVENT } from '../../apps/api/src/domains/shared/events.js';

const page = readFileSync('docs/api/webhooks.md', 'utf8');

it('A31: the example of the page about webhooks accepts what the server sends, and nothing else', async () => {
  const code = /<!-- example: verify -->\n```js\n([\s\S]*?)```/.exec(page)?.[1];
  if (!code) throw new Error('the page has no example');
  const dir = mkdtempSync(join(process.cwd(), '.data', 'example-'));
  try {
    writeFileSync(join(dir, 'verify.mjs'), code);
    const { eventOf } = (await import(pathToFileURL(join(dir, 'verify.mjs')).href)) as {
      eventOf: (secret: string, headers: Record<string, string>, body: string) => unknown;
    };
    const secret = `whsec_${randomBytes(32).toString('base64')}`;
    const body = JSON.stringify({ type: 'plan.ready' });
    const headers = signedHeaders('an-id', new Date(), body, [secret]);
    expect(eventOf(secret, headers, body)).toEqual({ type: 'plan.ready' });
    expect(() => eventOf(secret, headers, `${body} `)).toThrow();
    expect(() => eventOf(`whsec_${randomBytes(32).toString('base64')}`, headers, body)).toThrow();
  } finally {
    rmSync(dir, { recursive: true });
  }
});

it('A31: a signature can be checked by the words of the page alone', () => {
  const key = randomBytes(32);
  const at = new Date('2026-03-15T09:00:00Z');
  const body = '{"type":"plan.ready"}';
  const headers = signedHeaders('an-id', at, body, [`whsec_${key.toString('base64')}`]);
  const expected = createHmac('sha256', key)
    .update(`an-id.${at.getTime() / 1000}.${body}`)
    .digest('base64');
  expect(headers['webhook-signature']).toBe(`v1,${expected}`);
});

it('A31: the page names every type of event, and no other', () => {
  const table = page.slice(page.indexOf('| type |'), page.indexOf('## What comes'));
  expect([...table.matchAll(/`([a-z]+\.[a-z]+)`/g)].map(([, type]) => type)).toEqual([...EVENT_TYPES]);
});

it('A31: the page names the test event, every outcome and the times of the tries', () => {
  for (const word of [TEST_EVENT, ...OUTCOMES]) expect(page).toContain(`\`${word}\``);
  const named = (ms: number): string => (ms < 60_000 ? `${ms / 1000} s` : ms < 3_600_000 ? `${ms / 60_000} min` : `${ms / 3_600_000} h`);
  const waits = WAITS_MS.slice(1).map(named);
  expect(page).toContain(`after ${waits.slice(0, -1).join(', ')} and ${waits.at(-1)}, each up to a fifth longer`);
  expect([WAITS_MS.length, JITTER_FRAC]).toEqual([10, 1 / 5]);
});

it.each([
  ['changed', (headers: Record<string, string>) => ({ ...headers, 'webhook-id': 'another' })],
  ['of another time', (headers: Record<string, string>) => ({ ...headers, 'webhook-timestamp': String(Number(headers['webhook-timestamp']) + 1) })],
  [
    'of another version',
    (headers: Record<string, string>) => ({ ...headers, 'webhook-signature': (headers['webhook-signature'] ?? '').replace('v1,', 'v2,') }),
  ],
])('A31: the reference library refuses headers that are %s', (_how, change) => {
  const secret = makeSecret();
  const headers = signedHeaders('an-id', new Date(), '{}', [secret]);
  expect(new Webhook(secret).verify('{}', headers)).toEqual({});
  expect(() => new Webhook(secret).verify('{}', change(headers))).toThrow();
});
