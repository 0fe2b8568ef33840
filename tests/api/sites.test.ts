import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { startApi, type TestApi, type TestGarden } from '../support/api-app.js';
import { cold, make } from '../support/example-requests.js';
import { seedStations } from '../support/stations.js';

let api: TestApi;
let garden: TestGarden;
let number = 0;

const site = (changes: object = {}): object => ({ ...cold.site, name: `Place ${(number += 1)}`, ...changes });
const pointers = (body: { errors?: { pointer: string }[] }): string[] => (body.errors ?? []).map(({ pointer }) => pointer).sort();

beforeAll(async () => {
  api = await startApi();
  await seedStations(api.database.ownerUrl);
  garden = await api.garden();
});
afterAll(() => api.stop());

describe('making a site', () => {
  it('takes the example as it stands and answers what was kept', async () => {
    const answer = await garden.http.post('/v1/sites', cold.site);
    expect(answer.status).toBe(201);
    expect(answer.body).toMatchObject({ ...cold.site, version: 1, archivedAt: null, asTyped: {} });
    expect(answer.headers['etag']).toBe('"1"');
    expect(answer.headers['location']).toBe(`/v1/sites/${(answer.body as { id: string }).id}`);
  });

  it('takes typed quantities and keeps what was typed', async () => {
    const { body } = await make(
      garden.http,
      '/v1/sites',
      site({ elevationM: '5380 ft', frostDepthM: '3 ft', wind: { ...(cold.site.wind as object), speedMPerS: '105 mph' } }),
    );
    expect(body['elevationM']).toBeCloseTo(1639.824, 3);
    expect(body['frostDepthM']).toBeCloseTo(0.9144, 6);
    expect((body['wind'] as { speedMPerS: number }).speedMPerS).toBeCloseTo(46.9392, 4);
    expect(body['asTyped']).toEqual({ '/elevationM': '5380 ft', '/frostDepthM': '3 ft', '/wind/speedMPerS': '105 mph' });
  });

  it('refuses a typed number without a unit, and says what would do', async () => {
    const answer = await garden.http.post('/v1/sites', site({ elevationM: '1640' }));
    expect(answer.status).toBe(400);
    expect(answer.headers['content-type']).toContain('application/problem+json');
    const [fault] = (answer.body as { errors: Record<string, string>[] }).errors;
    expect(fault).toMatchObject({ pointer: '/elevationM', code: 'no-unit', unit: 'm', allowed: '-430 to 9000 m' });
    expect(fault?.['remedy']).toContain('ft');
  });

  it('tells all faults at once', async () => {
    const answer = await garden.http.post(
      '/v1/sites',
      site({
        elevationM: 'high',
        soilClass: '9',
        exposure: undefined,
        wind: { ...(cold.site.wind as object), speedMPerS: 120, readOn: '2026-02-30' },
        gardenId: 'x',
      }),
    );
    expect(answer.status).toBe(400);
    expect(pointers(answer.body)).toEqual(['/elevationM', '/exposure', '/gardenId', '/soilClass', '/wind/readOn', '/wind/speedMPerS']);
  });

  it('takes ground below the sea and refuses what is on no ground', async () => {
    const deadSea = { latitudeDeg: 31.52, longitudeDeg: 35.48, timeZone: undefined, confirmFar: true };
    expect((await make(garden.http, '/v1/sites', site({ ...deadSea, elevationM: -430 }))).body['elevationM']).toBe(-430);
    expect((await garden.http.post('/v1/sites', site({ ...deadSea, elevationM: -431 }))).status).toBe(400);
  });

  it('finds the time zone of the place, and refuses one that is none', async () => {
    expect((await make(garden.http, '/v1/sites', site({ timeZone: undefined }))).body['timeZone']).toBe('America/Denver');
    expect(pointers((await garden.http.post('/v1/sites', site({ timeZone: 'Mars/Olympus' }))).body)).toEqual(['/timeZone']);
  });

  it('refuses swapped latitude and longitude out of range, and asks where they are far from everywhere', async () => {
    const outOfRange = await garden.http.post('/v1/sites', site({ latitudeDeg: cold.site.longitudeDeg, longitudeDeg: cold.site.latitudeDeg }));
    expect(outOfRange.status).toBe(400);
    expect(pointers(outOfRange.body)).toEqual(['/latitudeDeg']);
    // Stornoway the wrong way round lies in the Indian Ocean.
    const swapped = { latitudeDeg: -6.32, longitudeDeg: 58.21, timeZone: undefined };
    const far = await garden.http.post('/v1/sites', site(swapped));
    expect(far.status).toBe(422);
    expect(far.body).toMatchObject({ type: '/v1/problems/station-far', errors: [{ pointer: '/confirmFar' }] });
    expect((await garden.http.post('/v1/sites', site({ ...swapped, confirmFar: true }))).status).toBe(201);
  });

  it('keeps names apart within a garden only', async () => {
    const named = site();
    await make(garden.http, '/v1/sites', named);
    const again = await garden.http.post('/v1/sites', named);
    expect(again.status).toBe(409);
    expect(again.body).toMatchObject({ type: '/v1/problems/name-taken' });
    expect((await (await api.garden()).http.post('/v1/sites', named)).status).toBe(201);
  });

  it('makes one row of twenty equal requests that arrive together', async () => {
    const other = await api.garden();
    const body = site();
    const answers = await Promise.all(Array.from({ length: 20 }, () => other.http.post('/v1/sites', body, 'same-key')));
    expect([...new Set(answers.map(({ status }) => status))].sort()).toEqual(expect.arrayContaining([201]));
    expect(answers.every(({ status }) => status === 201 || status === 409)).toBe(true);
    expect((await other.http.post('/v1/sites', body, 'same-key')).headers['idempotency-replayed']).toBe('true');
    const { items } = (await other.http.get('/v1/sites')).body as { items: unknown[] };
    expect(items).toHaveLength(1);
    expect((await other.http.post('/v1/sites', site(), 'same-key')).status).toBe(422);
  });
});

describe('reading sites', () => {
  it('answers for a site of another garden exactly as for one that never was', async () => {
    const { id } = await make(garden.http, '/v1/sites', site());
    const other = await api.garden();
    const unknownId = '01900000-0000-7000-8000-000000000000';
    const strip = (body: Record<string, unknown>): object => ({ ...body, requestId: null });
    const foreign = await other.http.get(`/v1/sites/${id}`);
    const unknown = await other.http.get(`/v1/sites/${unknownId}`);
    expect(foreign.status).toBe(404);
    expect(strip(foreign.body as Record<string, unknown>)).toEqual(strip(unknown.body as Record<string, unknown>));
    expect((await other.http.patch(`/v1/sites/${id}`, '"1"', { name: 'mine' })).status).toBe(404);
    expect((await garden.http.get('/v1/sites/ABC')).status).toBe(400);
  });

  it('walks a list by cursor: each site once, also when others are made meanwhile', async () => {
    const other = await api.garden();
    const made: string[] = [];
    for (let i = 0; i < 7; i += 1) made.push((await make(other.http, '/v1/sites', site())).id);
    const seen: string[] = [];
    let path: string | null = '/v1/sites?limit=3';
    while (path !== null) {
      const { body } = await other.http.get(path);
      const { items, next } = body as { items: { id: string }[]; next: string | null };
      seen.push(...items.map(({ id }) => id));
      if (seen.length === 3) await make(other.http, '/v1/sites', site());
      path = next === null ? null : `/v1/sites?limit=3&cursor=${encodeURIComponent(next)}`;
    }
    expect(seen.slice(0, 7)).toEqual(made);
    expect(new Set(seen).size).toBe(8);
  });

  it('answers 304 to whoever has it already', async () => {
    const { id, etag } = await make(garden.http, '/v1/sites', site());
    const answer = await garden.http.get(`/v1/sites/${id}`).set('If-None-Match', etag);
    expect(answer.status).toBe(304);
    expect(answer.text).toBe('');
  });
});

describe('changing a site', () => {
  it('wants the version that is changed, and changes nothing for an old one', async () => {
    const { id, etag } = await make(garden.http, '/v1/sites', site());
    const blind = await garden.http.request('patch', `/v1/sites/${id}`).set('Content-Type', 'application/merge-patch+json').send('{"shadedFrac":0.3}');
    expect(blind.status).toBe(428);
    const changed = await garden.http.patch(`/v1/sites/${id}`, etag, { shadedFrac: '30 %' });
    expect(changed.status).toBe(200);
    expect(changed.body).toMatchObject({ shadedFrac: 0.3, version: 2, asTyped: { '/shadedFrac': '30 %' } });
    const late = await garden.http.patch(`/v1/sites/${id}`, etag, { shadedFrac: 0.9 });
    expect(late.status).toBe(412);
    expect((await garden.http.get(`/v1/sites/${id}`)).body).toMatchObject({ shadedFrac: 0.3, version: 2 });
  });

  it('lets exactly one of twenty writers of the same version win', async () => {
    const { id, etag } = await make(garden.http, '/v1/sites', site());
    const answers = await Promise.all(Array.from({ length: 20 }, (_none, i) => garden.http.patch(`/v1/sites/${id}`, etag, { shadedFrac: i / 100 })));
    expect(answers.filter(({ status }) => status === 200)).toHaveLength(1);
    expect(answers.filter(({ status }) => status === 412)).toHaveLength(19);
    expect((await garden.http.get(`/v1/sites/${id}`)).body).toMatchObject({ version: 2 });
  });

  it('checks the whole after the patch, and merges what lies inside', async () => {
    const { id, etag } = await make(garden.http, '/v1/sites', site());
    const bad = await garden.http.patch(`/v1/sites/${id}`, etag, { exposure: null, wind: { speedMPerS: '200' }, nonsense: 1 });
    expect(bad.status).toBe(400);
    expect(pointers(bad.body)).toEqual(['/exposure', '/nonsense', '/wind/speedMPerS']);
    const good = await garden.http.patch(`/v1/sites/${id}`, etag, { wind: { speedMPerS: '40 m/s' }, snow: 'unknown' });
    expect(good.body).toMatchObject({ wind: { ...(cold.site.wind as object), speedMPerS: 40 }, snow: 'unknown', asTyped: { '/wind/speedMPerS': '40 m/s' } });
  });

  it('drops what was typed when the number is another one', async () => {
    const { id, etag } = await make(garden.http, '/v1/sites', site({ elevationM: '5380 ft', frostDepthM: '3 ft' }));
    const changed = await garden.http.patch(`/v1/sites/${id}`, etag, { elevationM: 1600 });
    expect((changed.body as { asTyped: object }).asTyped).toEqual({ '/frostDepthM': '3 ft' });
  });

  it('takes a merge patch only', async () => {
    const { id, etag } = await make(garden.http, '/v1/sites', site());
    expect((await garden.http.request('patch', `/v1/sites/${id}`).set('If-Match', etag).send({ shadedFrac: 0.1 })).status).toBe(415);
  });

  it('puts away and brings back, without losing anything', async () => {
    const { id, etag } = await make(garden.http, '/v1/sites', site());
    const post = (what: string, tag: string) => garden.http.request('post', `/v1/sites/${id}/${what}`).set('If-Match', tag);
    const archived = await post('archive', etag);
    expect(archived.status).toBe(200);
    expect((archived.body as { archivedAt: string | null }).archivedAt).not.toBeNull();
    const listed = (await garden.http.get('/v1/sites?limit=100')).body as { items: { id: string }[] };
    expect(listed.items.some((item) => item.id === id)).toBe(false);
    const all = (await garden.http.get('/v1/sites?limit=100&archived=true')).body as { items: { id: string }[] };
    expect(all.items.some((item) => item.id === id)).toBe(true);
    expect((await garden.http.patch(`/v1/sites/${id}`, '"2"', { shadedFrac: 0 })).status).toBe(409);
    const restored = await post('restore', archived.headers['etag'] as string);
    expect(restored.body).toMatchObject({ archivedAt: null, version: 3 });
    expect((await post('archive', '"1"')).status).toBe(412);
  });

  it('needs the scope to write', async () => {
    const reader = api.as(await api.keyOf(garden.gardenId, ['sites:read']));
    const answer = await reader.post('/v1/sites', site());
    expect(answer.status).toBe(403);
    expect(answer.body).toMatchObject({ type: '/v1/problems/scope-missing' });
  });
});
