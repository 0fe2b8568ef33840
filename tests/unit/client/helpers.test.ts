import { describe, expect, test } from '@jest/globals';
import { FailedError, NotReadyError, type Plan } from '@lathwork/client';
import { fakeApi, json, problem } from './fake-api.js';

const ID = '0190a000-0000-7000-8000-000000000001';
const state = (name: string, more: object = {}) => ({ id: ID, state: name, problem: null, ...more });

describe('waiting', () => {
  test('a plan is asked for with Prefer, then read until it is ready, with growing pauses', async () => {
    const turns = [json(202, state('computing')), json(200, state('computing')), json(200, state('computing')), json(200, state('ready', { revision: 3 }))];
    const { api, sent, slept } = fakeApi(turns);
    const seen: string[] = [];
    const plan = await api.makePlan({ buildId: ID }, { stream: false, onState: (now) => seen.push(now.state) });
    expect(plan).toMatchObject({ state: 'ready', revision: 3 });
    expect(seen).toEqual(['computing', 'computing', 'computing', 'ready']);
    expect(sent[0]).toMatchObject({ method: 'POST', path: '/v1/plans', body: { buildId: ID } });
    expect([sent[0]?.headers.get('prefer'), sent[0]?.headers.get('idempotency-key')]).toEqual(['wait=10', 'key-1']);
    expect(sent.slice(1).map((one) => one.path)).toEqual(Array(3).fill(`/v1/plans/${ID}`));
    expect(slept).toEqual([100, 150, 225]);
  });

  test('what is known to be ready is not asked for again', async () => {
    const { api, sent } = fakeApi([]);
    expect(await api.waitForPlan(state('ready') as unknown as Plan)).toMatchObject({ state: 'ready' });
    expect(sent).toEqual([]);
  });

  test('a plan that failed throws, with its problem', async () => {
    const why = { type: '/v1/problems/plan-failed', title: 'The plan could not be computed', detail: 'The frame has no bows.' };
    const { api } = fakeApi([json(200, state('failed', { problem: why }))]);
    const error = await api.waitForPlan(ID).catch((e: unknown) => e);
    expect(error).toBeInstanceOf(FailedError);
    expect(error).toMatchObject({
      what: 'plan',
      id: ID,
      problem: why,
      message: `the plan ${ID} failed: The plan could not be computed. The frame has no bows.`,
    });
  });

  test('a document that takes too long throws at the limit and not later', async () => {
    const { api, slept } = fakeApi(Array.from({ length: 20 }, () => json(200, state('rendering'))));
    const error = await api.waitForDocument(ID, { limitMs: 5000, stream: false }).catch((e: unknown) => e);
    expect(error).toBeInstanceOf(NotReadyError);
    expect(error).toMatchObject({ what: 'document', id: ID, waitedMs: 5000 });
    expect(slept.reduce((a, b) => a + b, 0)).toBe(5000);
    expect(Math.max(...slept)).toBeLessThanOrEqual(2000);
  });

  test('a document is made and its bytes come as they are', async () => {
    const bytes = new Uint8Array([0x25, 0x50, 0x44, 0x46, 0x2d, 0, 255]);
    const { api, sent } = fakeApi([
      json(202, state('queued')),
      problem(404, 'not-found'),
      json(200, state('ready')),
      new Response(bytes, { status: 200, headers: { 'content-type': 'application/pdf' } }),
    ]);
    const document = await api.makeDocument({ planId: ID, kind: 'planBook', language: 'en', paper: 'a4', units: 'metric' });
    expect(await api.documentFile(document.id)).toEqual(bytes);
    expect(sent.at(-1)?.path).toBe(`/v1/documents/${ID}/file`);
  });

  test('a caller who gives up ends the wait', async () => {
    const leave = AbortSignal.abort(new Error('enough'));
    const { api } = fakeApi([json(200, state('computing'))]);
    await expect(api.waitForPlan(state('computing') as unknown as Plan, { signal: leave })).rejects.toThrow('enough');
  });
});

describe('lists', () => {
  const pages = () => [
    json(200, { items: [{ id: 'a' }, { id: 'b' }], next: 'c1' }),
    json(200, { items: [], next: 'c2' }),
    json(200, { items: [{ id: 'c' }], next: null }),
  ];

  test('items of all pages in order, each page with the filters and the cursor of the last', async () => {
    const { api, sent } = fakeApi(pages());
    const ids: string[] = [];
    for await (const item of api.items('/v1/stock', { params: { query: { limit: 2, kind: 'door' } } })) ids.push(item.id);
    expect(ids).toEqual(['a', 'b', 'c']);
    expect(sent.map((one) => one.query)).toEqual(['?limit=2&kind=door', '?limit=2&kind=door&cursor=c1', '?limit=2&kind=door&cursor=c2']);
  });

  test('a walk that stops early asks for no more', async () => {
    const { api, sent } = fakeApi(pages());
    for await (const page of api.pages('/v1/stock')) {
      expect(page.items.map((item) => item.id)).toEqual(['a', 'b']);
      break;
    }
    expect(sent).toHaveLength(1);
  });

  test('a list of a record keeps its path parameters on every page', async () => {
    const { api, sent } = fakeApi(pages());
    for await (const _page of api.pages('/v1/builds/{buildId}/claims', { params: { path: { buildId: ID } } }));
    expect(new Set(sent.map((one) => one.path))).toEqual(new Set([`/v1/builds/${ID}/claims`]));
  });

  test('a cursor that does not move is an error, not an endless walk', async () => {
    const stuck = () => json(200, { items: [], next: 'same' });
    const { api, sent } = fakeApi([stuck(), stuck(), stuck()]);
    const walk = async () => {
      for await (const _item of api.items('/v1/stock'));
    };
    await expect(walk()).rejects.toThrow('same cursor twice');
    expect(sent).toHaveLength(2);
  });
});

describe('changing a record', () => {
  const site = (name: string, version: number) => json(200, { id: ID, name, version }, { etag: `"${version}"` });
  const stale = () => problem(412, 'version-stale');

  test('it is read, then patched with its ETag as a merge patch', async () => {
    const { api, sent } = fakeApi([site('Old', 4), site('New', 5)]);
    expect(await api.update('/v1/sites/{id}', { id: ID }, { name: 'New' })).toMatchObject({ name: 'New', version: 5 });
    expect(sent[1]).toMatchObject({ method: 'PATCH', path: `/v1/sites/${ID}`, body: { name: 'New' } });
    expect([sent[1]?.headers.get('if-match'), sent[1]?.headers.get('content-type')]).toEqual(['"4"', 'application/merge-patch+json']);
  });

  test('a function is asked once more with the newer record', async () => {
    const { api, sent } = fakeApi([site('A', 1), stale(), site('B', 2), site('B, shaded', 3)]);
    const now = await api.update('/v1/sites/{id}', { id: ID }, (was) => ({ name: `${was.name}, shaded` }));
    expect(now).toMatchObject({ name: 'B, shaded' });
    expect(sent.filter((one) => one.method === 'PATCH').map((one) => [one.headers.get('if-match'), one.body])).toEqual([
      ['"1"', { name: 'A, shaded' }],
      ['"2"', { name: 'B, shaded' }],
    ]);
  });

  test('a function is asked twice at most', async () => {
    const { api, sent } = fakeApi([site('A', 1), stale(), site('B', 2), stale()]);
    await expect(api.update('/v1/sites/{id}', { id: ID }, (was) => ({ name: was.name }))).rejects.toMatchObject({ status: 412 });
    expect(sent).toHaveLength(4);
  });

  test('a fixed change is not sent over what it has not seen', async () => {
    const { api, sent } = fakeApi([site('A', 1), stale()]);
    await expect(api.update('/v1/sites/{id}', { id: ID }, { name: 'B' })).rejects.toMatchObject({ key: 'version-stale' });
    expect(sent).toHaveLength(2);
  });

  test('other refusals are not tried again', async () => {
    const { api, sent } = fakeApi([site('A', 1), problem(422, 'validation-failed')]);
    await expect(api.update('/v1/sites/{id}', { id: ID }, () => ({ name: '' }))).rejects.toMatchObject({ status: 422 });
    expect(sent).toHaveLength(2);
  });

  test('a record without an id, and the ETag alone', async () => {
    const { api, sent } = fakeApi([json(200, { name: 'G' }, { etag: '"7"' }), json(200, { name: 'H' }), json(200, {}, { etag: '"9"' }), json(200, {})]);
    await api.update('/v1/gardens/current', {}, { name: 'H' });
    expect(sent[1]).toMatchObject({ method: 'PATCH', path: '/v1/gardens/current' });
    expect(await api.etag('/v1/sites/{id}', { id: ID })).toBe('"9"');
    await expect(api.etag('/v1/sites/{id}', { id: ID })).rejects.toThrow('no ETag');
  });
});
