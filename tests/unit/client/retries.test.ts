import { describe, expect, test } from '@jest/globals';
import { ConnectionError } from '@lathwork/client';
import { fakeApi, json, problem, type Fake } from './fake-api.js';

const ID = '0190a000-0000-7000-8000-000000000001';
const BROKEN = new TypeError('fetch failed', { cause: new Error('ECONNRESET') });
const busy = (status: number, headers: Record<string, string> = {}) => problem(status, status === 429 ? 'too-many-requests' : 'unavailable', {}, headers);

const get = ({ api }: Fake) => api.get('/v1/gardens/current');
const create = ({ api }: Fake) => api.post('/v1/plans', { body: { buildId: ID } });
const change = ({ api }: Fake) => api.patch('/v1/sites/{id}', { params: { path: { id: ID }, header: { 'If-Match': '"1"' } }, body: { name: 'North bed' } });
const archive = ({ api }: Fake) => api.post('/v1/sites/{id}/archive', { params: { path: { id: ID }, header: { 'If-Match': '"1"' } } });

describe('what is sent again', () => {
  test.each([
    ['a read after 429', get, () => busy(429, { 'retry-after': '2' }), 2125],
    ['a change after 429: it was not carried out', change, () => busy(429, { 'retry-after': '2' }), 2125],
    ['a read after 503', get, () => busy(503, { 'retry-after': '1' }), 1125],
    ['a creation after 503', create, () => busy(503, { 'retry-after': '1' }), 1125],
    ['a read after 502', get, () => busy(502), 187.5],
    ['a creation after 504', create, () => busy(504), 187.5],
    ['a read without an answer', get, () => BROKEN, 187.5],
    ['a creation without an answer', create, () => BROKEN, 187.5],
    ['a creation whose first attempt is still at work', create, () => problem(409, 'idempotency-running'), 187.5],
  ])('%s', async (_what, ask, first, waitMs) => {
    const fake = fakeApi([first(), json(200, { id: ID })]);
    expect(await ask(fake)).toEqual({ id: ID });
    expect(fake.slept).toEqual([waitMs]);
    expect(fake.sent).toHaveLength(2);
    const [one, two] = fake.sent;
    expect(two?.body).toEqual(one?.body);
    expect(two?.headers.get('idempotency-key')).toBe(one?.headers.get('idempotency-key'));
  });

  test('a Retry-After that is a date counts from the Date of the answer, whatever the clock here says', async () => {
    const headers = { date: 'Wed, 01 Jan 2020 10:00:00 GMT', 'retry-after': 'Wed, 01 Jan 2020 10:00:05 GMT' };
    const fake = fakeApi([busy(429, headers), json(200, {})]);
    await get(fake);
    expect(fake.slept).toEqual([5125]);
  });
});

describe('what is not sent again', () => {
  test.each([
    ['a change after 503: it may have been carried out', change, () => busy(503, { 'retry-after': '1' }), /503/],
    ['a change without an answer', change, () => BROKEN, /no answer after 1 attempt: fetch failed \(ECONNRESET\)/],
    ['an action without a key, without an answer', archive, () => BROKEN, /no answer after 1 attempt/],
    ['a read after 503 that names no time', get, () => busy(503), /503/],
    ['a read after 429 that names an unreadable time', get, () => busy(429, { 'retry-after': 'soon' }), /429/],
    ['a read after 429 that wants more patience than we have', get, () => busy(429, { 'retry-after': '31' }), /429/],
    ['a read after 500', get, () => problem(500, 'internal', {}, { 'retry-after': '1' }), /500/],
    ['a creation that contradicts an earlier one', create, () => problem(409, 'name-taken'), /409/],
    ['a change that meets a running creation of somebody', change, () => problem(409, 'idempotency-running'), /409/],
  ])('%s', async (_what, ask, first, message) => {
    const fake = fakeApi([first()]);
    await expect(ask(fake)).rejects.toThrow(message);
    expect([fake.sent.length, fake.slept]).toEqual([1, []]);
  });
});

describe('bounds', () => {
  test('four attempts with growing waits, then the last failure is told', async () => {
    const fake = fakeApi([BROKEN, BROKEN, BROKEN, BROKEN]);
    const error = await get(fake).catch((e: unknown) => e);
    expect(error).toBeInstanceOf(ConnectionError);
    expect(error).toMatchObject({ attempts: 4, cause: BROKEN });
    expect(fake.slept).toEqual([187.5, 375, 750]);
  });

  test('one attempt when so told', async () => {
    const fake = fakeApi([busy(429, { 'retry-after': '1' })], { retry: { attempts: 1 } });
    await expect(get(fake)).rejects.toMatchObject({ status: 429, retryAfterS: 1 });
  });

  test('no wait is longer than the longest', async () => {
    const fake = fakeApi([BROKEN, BROKEN, BROKEN, json(200, {})], { retry: { firstWaitMs: 1000, longestWaitMs: 1500 } });
    await get(fake);
    expect(fake.slept).toEqual([750, 1125, 1125]);
  });

  test('a caller who gives up is not kept, and gets the own reason back', async () => {
    const leave = new AbortController();
    const reason = new Error('the user went away');
    const fake = fakeApi([
      () => {
        leave.abort(reason);
        return BROKEN;
      },
    ]);
    await expect(fake.api.get('/v1/gardens/current', { signal: leave.signal })).rejects.toBe(reason);
    expect(fake.slept).toEqual([]);
  });

  test('an attempt that takes too long is broken off and counts as no answer', async () => {
    const fake = fakeApi([json(200, {})], {
      retry: { attempts: 1, attemptMs: 20 },
      fetch: (request) => new Promise((_resolve, reject) => request.signal.addEventListener('abort', () => reject(request.signal.reason as Error))),
    });
    await expect(get(fake)).rejects.toThrow(/no answer after 1 attempt/);
  });
});
