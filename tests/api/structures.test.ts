import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { Database } from '../../apps/api/src/platform/database/database.js';
import { startApi, type TestApi, type TestGarden } from '../support/api-app.js';
import { cold, firstBuild, make } from '../support/example-requests.js';
import { EXAMPLE_GARDENS, exampleGarden } from '../support/gardens.js';

let api: TestApi;
let garden: TestGarden;

const shelter = firstBuild().structure;
const pointers = (body: { errors?: { pointer: string }[] }): string[] => (body.errors ?? []).map(({ pointer }) => pointer).sort();

beforeAll(async () => {
  api = await startApi();
  garden = await api.garden();
});
afterAll(() => api.stop());

describe('making a structure', () => {
  it.each(EXAMPLE_GARDENS)('takes every structure of the %s example as it stands', async (name) => {
    const other = await api.garden();
    for (const build of exampleGarden(name).builds) {
      const { id, body } = await make(other.http, '/v1/structures', build.structure);
      expect(body).toMatchObject(build.structure);
      expect((await other.http.get(`/v1/structures/${id}`)).body).toEqual(body);
    }
  });

  it('reads feet and inches, also deep inside and in lists', async () => {
    const [first] = shelter.openings;
    const typed = {
      ...shelter,
      widthM: '10 ft',
      eaveM: `6' 6"`,
      bowsAtM: [0, '80 in', '4.064 m', '20 ft'],
      openings: [{ ...first, widthM: `2' 10"` }],
      cover: { ...shelter.cover, thicknessMm: '6 mil' },
    };
    const { body } = await make(garden.http, '/v1/structures', typed);
    expect(body['widthM']).toBeCloseTo(3.048, 9);
    expect(body['eaveM']).toBeCloseTo(1.9812, 9);
    const bows = body['bowsAtM'] as number[];
    expect(bows[1]).toBeCloseTo(2.032, 9);
    expect(bows[3]).toBeCloseTo(6.096, 9);
    expect((body['openings'] as { widthM: number }[])[0]?.widthM).toBeCloseTo(0.8636, 9);
    expect((body['cover'] as { thicknessMm: number }).thicknessMm).toBeCloseTo(0.1524, 9);
    expect(body['asTyped']).toEqual({
      '/widthM': '10 ft',
      '/eaveM': `6' 6"`,
      '/bowsAtM/1': '80 in',
      '/bowsAtM/2': '4.064 m',
      '/bowsAtM/3': '20 ft',
      '/openings/0/widthM': `2' 10"`,
      '/cover/thicknessMm': '6 mil',
    });
  });

  it('refuses lengths without a unit wherever they stand, all at once', async () => {
    const [first, ...others] = shelter.openings;
    const answer = await garden.http.post('/v1/structures', {
      ...shelter,
      widthM: '10',
      bowsAtM: [0, '2.03'],
      openings: [{ ...first, heightM: '2.08' }, ...others],
      tube: { ...shelter.tube, outsideMm: '35' },
    });
    expect(answer.status).toBe(400);
    expect(pointers(answer.body)).toEqual(['/bowsAtM', '/openings/0/heightM', '/tube/outsideMm', '/widthM']);
    expect((answer.body as { errors: { code: string }[] }).errors.every(({ code }) => code === 'no-unit')).toBe(true);
  });

  it('asks back what is probably a slip: 5\' 14" is read as 6\' 2" only after it was confirmed', async () => {
    const answer = await garden.http.post('/v1/structures', { ...shelter, eaveM: `5' 14"` });
    expect(answer.status).toBe(400);
    expect(answer.body).toMatchObject({ errors: [{ pointer: '/eaveM', code: 'confirm-reading', remedy: expect.stringContaining('6\u2032-2\u2033') }] });
    expect((await make(garden.http, '/v1/structures', { ...shelter, eaveM: '6\u2032-2\u2033' })).body['eaveM']).toBeCloseTo(1.8796, 9);
  });

  it.each([
    ['a width of nothing', { widthM: 0 }, ['/widthM'], 'out-of-range'],
    ['a negative length', { lengthM: -6 }, ['/lengthM'], 'out-of-range'],
    ['ten thousand barrels', { waterStores: [{ stockTag: null, volumeL: 200, count: 10_000, colour: 'dark' }] }, ['/waterStores/0/count'], 'out-of-range'],
    ['a film of 0.1 inch', { cover: { ...shelter.cover, thicknessMm: '0.1 in' } }, ['/cover/thicknessMm'], 'out-of-range'],
    ['no openings at all, not even an empty list', { openings: undefined }, ['/openings'], 'required'],
    ['an object where a list is wanted', { openings: {} }, ['/openings'], 'wrong-type'],
    ['a list where an object is wanted', { tube: [] }, ['/tube'], 'wrong-type'],
    ['text in place of an opening', { openings: ['door'] }, ['/openings/0'], 'wrong-type'],
    ['more openings than a wall can bear', { openings: Array.from({ length: 41 }, () => shelter.openings[0]) }, ['/openings'], 'wrong-length'],
    ['"unknown" where a size must be known', { widthM: 'unknown' }, ['/widthM'], 'not-a-number'],
  ])('refuses %s', async (_what, changes, expected, code) => {
    const answer = await garden.http.post('/v1/structures', { ...shelter, ...changes });
    expect(answer.status).toBe(400);
    expect(pointers(answer.body)).toEqual(expected);
    expect((answer.body as { errors: { code: string }[] }).errors[0]?.code).toBe(code);
  });

  it('takes "unknown" where a size may be unknown', async () => {
    const { body } = await make(garden.http, '/v1/structures', { ...shelter, frameMassKg: 'unknown', tube: { ...shelter.tube, wallMm: 'unknown' } });
    expect(body).toMatchObject({ frameMassKg: 'unknown', tube: { wallMm: 'unknown' } });
  });

  it('refuses what no drawing could show', async () => {
    const answer = await garden.http.post('/v1/structures', { ...shelter, eaveM: 3, ridgeM: 2.5, bowsAtM: [0, 4, 2, 9] });
    expect(answer.status).toBe(422);
    expect(answer.body).toMatchObject({ type: '/v1/problems/inputs-contradict' });
    expect((answer.body as { errors: { code: string }[] }).errors.map(({ code }) => code)).toEqual(['eave-not-below-ridge', 'not-rising', 'beyond-the-end']);
  });

  it('shows hostile and rare names as they are', async () => {
    const name = `<script>alert(1)</script> Ñ ß 🌱 \u202Eright to left ${'x'.repeat(60)}`;
    expect((await make(garden.http, '/v1/structures', { ...shelter, name })).body['name']).toBe(name);
    for (const bad of ['a\u0000b', 'a\ud800b']) {
      const answer = await garden.http
        .request('post', '/v1/structures')
        .set('Content-Type', 'application/json')
        .send(JSON.stringify({ ...shelter, name: bad }));
      expect(answer.status).toBe(400);
    }
  });
});

describe('changing a structure', () => {
  it('replaces a list whole and takes null for what is not there', async () => {
    const { id, etag } = await make(garden.http, '/v1/structures', shelter);
    const changed = await garden.http.patch(`/v1/structures/${id}`, etag, { openings: [], measuredRaftersM: null, cover: { shadeFrac: 0.3 } });
    expect(changed.status).toBe(200);
    expect(changed.body).toMatchObject({ openings: [], measuredRaftersM: null, cover: { ...shelter.cover, shadeFrac: 0.3 } });
    const again = await garden.http.patch(`/v1/structures/${id}`, changed.headers['etag'] as string, {
      openings: [],
      measuredRaftersM: null,
      cover: { shadeFrac: 0.3 },
    });
    const { version: _v, updatedAt: _u, ...first } = changed.body as Record<string, unknown>;
    expect(again.body).toMatchObject(first);
  });

  it('does not exist for another garden', async () => {
    const { id } = await make(garden.http, '/v1/structures', shelter);
    expect((await (await api.garden()).http.get(`/v1/structures/${id}`)).status).toBe(404);
  });

  it('leaves a trace of every change, which cannot be changed itself', async () => {
    const other = await api.garden();
    const { id, etag } = await make(other.http, '/v1/structures', { name: cold.site.name, ...shelter });
    await other.http.patch(`/v1/structures/${id}`, etag, { floorMoist: false });
    const entries = await api.get(Database).readSnapshot(other.actor, (db) => db.auditEntry.findMany({ where: { objectId: id }, orderBy: { id: 'asc' } }));
    expect(entries.map(({ action }) => action)).toEqual(['structure.create', 'structure.update']);
    expect(entries.every(({ keyId }) => keyId === other.actor.keyId)).toBe(true);
    const rewrite = api.get(Database).inTransaction(other.actor, (db) => db.auditEntry.updateMany({ where: { objectId: id }, data: { action: 'nothing' } }));
    await expect(rewrite).rejects.toThrow(/permission denied/);
  });
});
