import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { Database } from '../../apps/api/src/platform/database/database.js';
import { startApi, type TestApi, type TestGarden } from '../support/api-app.js';
import { cold, firstBuild, make } from '../support/example-requests.js';
import { EXAMPLE_GARDENS, exampleGarden } from '../support/gardens.js';
import { seedStations } from '../support/stations.js';

let api: TestApi;
let garden: TestGarden;
let builds: string[];
let number = 0;

type Item = (typeof cold.stock)[number];

const thing = (changes: Partial<Record<keyof Item, unknown>> = {}): Record<string, unknown> => ({
  tag: `T-${(number += 1)}`,
  kind: 'door',
  material: 'door',
  grade: 'B',
  hazards: [],
  count: 1,
  widthMm: 812,
  heightMm: 2032,
  thicknessMm: 35,
  lengthMm: null,
  usableLengthMm: null,
  volumeL: null,
  ageY: null,
  replacement: null,
  ...changes,
});

const buildsOf = async (of: TestGarden, how: number): Promise<string[]> => {
  const { structure, wishes, crew, budget } = firstBuild();
  const site = await make(of.http, '/v1/sites', cold.site);
  const shelter = await make(of.http, '/v1/structures', structure);
  const ids: string[] = [];
  for (let i = 0; i < how; i += 1)
    ids.push((await make(of.http, '/v1/builds', { name: `Build ${i}`, siteId: site.id, structureId: shelter.id, wishes, crew, budget })).id);
  return ids;
};

beforeAll(async () => {
  api = await startApi();
  await seedStations(api.database.ownerUrl);
  garden = await api.garden();
  builds = await buildsOf(garden, 4);
});
afterAll(() => api.stop());

const claim = (buildId: string, tag: unknown, count?: number) =>
  garden.http.post(`/v1/builds/${buildId}/claims`, { tag, ...(count === undefined ? {} : { count }) });
const freeOf = async (id: string): Promise<number> => ((await garden.http.get(`/v1/stock/${id}`)).body as { freeCount: number }).freeCount;

describe('taking things in', () => {
  it.each(EXAMPLE_GARDENS)('takes the whole pile of the %s example together', async (name) => {
    const other = await api.garden();
    const { stock } = exampleGarden(name);
    const { body } = await make(other.http, '/v1/stock/intakes', { items: stock });
    const items = body['items'] as Record<string, unknown>[];
    expect(items.map(({ tag }) => tag)).toEqual(stock.map(({ tag }) => tag));
    for (const [i, item] of items.entries()) expect(item).toMatchObject({ ...stock[i], freeCount: stock[i]?.count });
  });

  it('takes all or nothing, and names the faulty one', async () => {
    const other = await api.garden();
    const answer = await other.http.post('/v1/stock/intakes', { items: [thing(), thing({ widthMm: '32' }), thing({ grade: 'D', hazards: ['lead'] })] });
    expect(answer.status).toBe(400);
    expect((answer.body as { errors: { pointer: string }[] }).errors.map(({ pointer }) => pointer).sort()).toEqual([
      '/items/1/widthMm',
      '/items/2/grade',
      '/items/2/hazards',
    ]);
    const twice = thing();
    expect((await other.http.post('/v1/stock/intakes', { items: [thing(), twice, twice] })).status).toBe(409);
    expect(((await other.http.get('/v1/stock')).body as { items: unknown[] }).items).toEqual([]);
    expect((await other.http.post('/v1/stock/intakes', { items: Array.from({ length: 201 }, () => thing()) })).status).toBe(400);
  });

  it('reads sizes as they are called out at the pile', async () => {
    const { body } = await make(garden.http, '/v1/stock', thing({ widthMm: '32 in', heightMm: `6' 8"`, thicknessMm: '1 3/8 in', volumeL: '55 gal' }));
    expect(body['widthMm']).toBeCloseTo(812.8, 6);
    expect(body['heightMm']).toBeCloseTo(2032, 6);
    expect(body['thicknessMm']).toBeCloseTo(34.925, 6);
    // 231 cubic inches to the US gallon.
    expect(body['volumeL']).toBeCloseTo(208.1976, 3);
    expect(body['asTyped']).toEqual({ '/widthMm': '32 in', '/heightMm': `6' 8"`, '/thicknessMm': '1 3/8 in', '/volumeL': '55 gal' });
  });
});

describe('finding things', () => {
  it('filters by kind, grade and whether any is free', async () => {
    const other = await api.garden();
    const [buildId] = await buildsOf(other, 1);
    const door = await make(other.http, '/v1/stock', thing({ grade: 'A' }));
    const taken = await make(other.http, '/v1/stock', thing({ grade: 'A' }));
    const lot = await make(other.http, '/v1/stock', thing({ kind: 'board', material: 'board.38x89', count: 5 }));
    await make(other.http, `/v1/builds/${buildId}/claims`, { tag: taken.body['tag'] });
    await make(other.http, `/v1/builds/${buildId}/claims`, { tag: lot.body['tag'], count: 3 });
    const ids = async (query: string): Promise<string[]> =>
      ((await other.http.get(`/v1/stock?${query}`)).body as { items: { id: string }[] }).items.map(({ id }) => id);
    expect(await ids('kind=door')).toEqual([door.id, taken.id]);
    expect(await ids('grade=B')).toEqual([lot.id]);
    expect(await ids('free=true')).toEqual([door.id, lot.id]);
    expect(await ids('free=false')).toEqual([taken.id]);
    expect(await ids('kind=door&free=true&grade=A')).toEqual([door.id]);
    expect((await other.http.get('/v1/stock?kind=castle&free=maybe')).status).toBe(400);
  });

  it('does not take the cursor of one filter for another', async () => {
    const other = await api.garden();
    for (let i = 0; i < 3; i += 1) await make(other.http, '/v1/stock', thing());
    const { next } = (await other.http.get('/v1/stock?kind=door&limit=2')).body as { next: string };
    expect((await other.http.get(`/v1/stock?kind=door&limit=2&cursor=${encodeURIComponent(next)}`)).status).toBe(200);
    expect((await other.http.get(`/v1/stock?kind=window&limit=2&cursor=${encodeURIComponent(next)}`)).status).toBe(400);
  });
});

describe('claiming a single thing', () => {
  it('gives one door to exactly one of twenty that ask at once', async () => {
    const { body } = await make(garden.http, '/v1/stock', thing());
    const answers = await Promise.all(Array.from({ length: 20 }, (_none, i) => claim(builds[i % builds.length] ?? '', body['tag'])));
    expect(answers.filter(({ status }) => status === 201)).toHaveLength(1);
    expect(answers.filter(({ status }) => status === 409)).toHaveLength(19);
    const rows = await api
      .get(Database)
      .readSnapshot(garden.actor, (db) => db.stockClaim.count({ where: { stockItemId: body['id'] as string, releasedAt: null } }));
    expect(rows).toBe(1);
  });

  it('tells who holds it, since when, and what else of its kind is near its size', async () => {
    const wanted = await make(garden.http, '/v1/stock', thing({ kind: 'window', material: 'window', widthMm: 600, heightMm: 900 }));
    const far = await make(garden.http, '/v1/stock', thing({ kind: 'window', material: 'window', widthMm: 1500, heightMm: 1200 }));
    const near = await make(garden.http, '/v1/stock', thing({ kind: 'window', material: 'window', widthMm: 610, heightMm: 900 }));
    await make(garden.http, '/v1/stock', thing({ kind: 'window', material: 'window', widthMm: 600, heightMm: 900, grade: 'X' }));
    const held = await claim(builds[0] ?? '', wanted.body['tag']);
    const refused = await claim(builds[1] ?? '', wanted.body['tag']);
    expect(refused.status).toBe(409);
    expect(refused.body).toMatchObject({
      type: '/v1/problems/stock-claimed',
      holders: [{ buildId: builds[0], count: 1, since: (held.body as { createdAt: string }).createdAt }],
    });
    const { alternatives } = refused.body as { alternatives: { tag: string }[] };
    expect(alternatives.map(({ tag }) => tag)).toEqual([near.body['tag'], far.body['tag']]);
  });

  it('can be claimed again after it was given back', async () => {
    const { body, id } = await make(garden.http, '/v1/stock', thing());
    const held = (await claim(builds[0] ?? '', body['tag'])).body as { id: string };
    expect(await freeOf(id)).toBe(0);
    expect((await garden.http.request('delete', `/v1/builds/${builds[1]}/claims/${held.id}`)).status).toBe(404);
    expect((await garden.http.request('delete', `/v1/builds/${builds[0]}/claims/${held.id}`)).status).toBe(204);
    expect((await garden.http.request('delete', `/v1/builds/${builds[0]}/claims/${held.id}`)).status).toBe(404);
    expect(await freeOf(id)).toBe(1);
    expect((await claim(builds[1] ?? '', body['tag'])).status).toBe(201);
  });

  it('is refused for what is not for building, is not there, or is put away', async () => {
    const bad = await make(garden.http, '/v1/stock', thing({ grade: 'X' }));
    expect((await claim(builds[0] ?? '', bad.body['tag'])).status).toBe(409);
    expect((await claim(builds[0] ?? '', 'no-such-tag')).status).toBe(404);
    expect((await claim('01900000-0000-7000-8000-000000000000', bad.body['tag'])).status).toBe(404);
    const other = await api.garden();
    expect((await other.http.post(`/v1/builds/${builds[0]}/claims`, { tag: bad.body['tag'] })).status).toBe(404);
  });
});

describe('claiming of a lot', () => {
  it('never gives out more than there is, however many ask', async () => {
    const { body, id } = await make(garden.http, '/v1/stock', thing({ kind: 'board', material: 'board.38x89', count: 10 }));
    const answers = await Promise.all(Array.from({ length: 20 }, (_none, i) => claim(builds[i % builds.length] ?? '', body['tag'], 3)));
    expect(answers.filter(({ status }) => status === 201)).toHaveLength(3);
    expect(answers.filter(({ status }) => status === 409).every((answer) => (answer.body as { type: string }).type === '/v1/problems/stock-short')).toBe(true);
    expect(await freeOf(id)).toBe(1);
    // Without a count: all that is left.
    expect((await claim(builds[0] ?? '', body['tag'])).body).toMatchObject({ count: 1 });
    expect(await freeOf(id)).toBe(0);
    expect((await claim(builds[0] ?? '', body['tag'])).status).toBe(409);
  });
});

describe('changing a thing', () => {
  it('cannot make a lot smaller than what is promised, nor put away what is held', async () => {
    const { body, id, etag } = await make(garden.http, '/v1/stock', thing({ kind: 'board', material: 'board.38x89', count: 10 }));
    await claim(builds[0] ?? '', body['tag'], 6);
    expect((await garden.http.patch(`/v1/stock/${id}`, etag, { count: 5 })).status).toBe(409);
    expect((await garden.http.patch(`/v1/stock/${id}`, etag, { count: 6 })).body).toMatchObject({ count: 6, freeCount: 0 });
    expect((await garden.http.request('post', `/v1/stock/${id}/archive`).set('If-Match', '"2"')).status).toBe(409);
  });

  it('gives a rejected thing back from the build that held it', async () => {
    const { body, id, etag } = await make(garden.http, '/v1/stock', thing());
    await claim(builds[2] ?? '', body['tag']);
    const changed = await garden.http.patch(`/v1/stock/${id}`, etag, { grade: 'X', hazards: ['mould'] });
    expect(changed.body).toMatchObject({ grade: 'X', hazards: ['mould'], freeCount: 1 });
    const held = (await garden.http.get(`/v1/builds/${builds[2]}/claims`)).body as { items: { tag: string }[] };
    expect(held.items.some(({ tag }) => tag === body['tag'])).toBe(false);
  });

  it('keeps tags apart', async () => {
    const one = await make(garden.http, '/v1/stock', thing());
    const two = await make(garden.http, '/v1/stock', thing());
    expect((await garden.http.patch(`/v1/stock/${two.id}`, two.etag, { tag: one.body['tag'] })).status).toBe(409);
  });
});
