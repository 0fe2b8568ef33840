import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { startApi, type TestApi, type TestGarden } from '../support/api-app.js';
import { cold, firstBuild, make } from '../support/example-requests.js';
import { seedStations } from '../support/stations.js';

let api: TestApi;
let garden: TestGarden;
let siteId: string;
let structureId: string;

const { structure, wishes, crew, budget } = firstBuild();
const build = (changes: object = {}): object => ({ name: 'Chicory plot', siteId, structureId, wishes, crew, budget, ...changes });
const faults = (body: unknown): [string, string][] =>
  (body as { errors: { pointer: string; code: string }[] }).errors.map(({ pointer, code }) => [pointer, code]);

beforeAll(async () => {
  api = await startApi();
  await seedStations(api.database.ownerUrl);
  garden = await api.garden();
  siteId = (await make(garden.http, '/v1/sites', cold.site)).id;
  structureId = (await make(garden.http, '/v1/structures', structure)).id;
});
afterAll(() => api.stop());

describe('builds', () => {
  it('bring a site, a structure, wishes, a crew and a budget together', async () => {
    const { body, id } = await make(garden.http, '/v1/builds', build());
    expect(body).toMatchObject({ ...build(), variantOf: null, variantLabel: null, asTyped: {} });
    expect((await garden.http.get(`/v1/builds/${id}`)).body).toEqual(body);
    expect((await (await api.garden()).http.get(`/v1/builds/${id}`)).status).toBe(404);
  });

  it('take a temperature in degrees of either kind, and refuse one without', async () => {
    const { body } = await make(garden.http, '/v1/builds', build({ wishes: { ...wishes, nightTargetC: '28 degF' } }));
    expect((body['wishes'] as { nightTargetC: number }).nightTargetC).toBeCloseTo(-2.2222, 3);
    expect(body['asTyped']).toEqual({ '/wishes/nightTargetC': '28 degF' });
    expect(faults((await garden.http.post('/v1/builds', build({ wishes: { ...wishes, nightTargetC: '28' } }))).body)).toEqual([
      ['/wishes/nightTargetC', 'no-unit'],
    ]);
  });

  it('may have a cap of nothing, or none', async () => {
    for (const capMinor of [0, null])
      expect((await make(garden.http, '/v1/builds', build({ budget: { ...budget, capMinor } }))).body['budget']).toMatchObject({ capMinor });
  });

  it('point to nothing that is missing, put away or of another garden', async () => {
    const other = await api.garden();
    const foreign = (await make(other.http, '/v1/sites', cold.site)).id;
    const away = await make(garden.http, '/v1/structures', structure);
    await garden.http.request('post', `/v1/structures/${away.id}/archive`).set('If-Match', away.etag);
    const answer = await garden.http.post('/v1/builds', build({ siteId: foreign, structureId: away.id, variantOf: '01900000-0000-7000-8000-000000000000' }));
    expect(answer.status).toBe(400);
    expect(faults(answer.body)).toEqual([
      ['/siteId', 'not-found'],
      ['/structureId', 'archived'],
      ['/variantOf', 'not-found'],
    ]);
  });

  it('stand side by side with their variants', async () => {
    const original = await make(garden.http, '/v1/builds', build());
    const double = await make(garden.http, '/v1/builds', build({ name: 'Chicory plot, two films', variantOf: original.id, variantLabel: 'two films' }));
    const { items } = (await garden.http.get(`/v1/builds?variantOf=${original.id}`)).body as { items: { id: string; variantLabel: string }[] };
    expect(items.map(({ id, variantLabel }) => [id, variantLabel])).toEqual([[double.id, 'two films']]);
    expect(faults((await garden.http.patch(`/v1/builds/${original.id}`, original.etag, { variantOf: original.id })).body)).toEqual([
      ['/variantOf', 'not-found'],
    ]);
  });

  it('are patched and checked as a whole', async () => {
    const { id, etag } = await make(garden.http, '/v1/builds', build());
    const changed = await garden.http.patch(`/v1/builds/${id}`, etag, { crew: { people: 3 }, budget: { capMinor: 0 } });
    expect(changed.body).toMatchObject({ crew: { ...crew, people: 3 }, budget: { ...budget, capMinor: 0 }, version: 2 });
    const bad = await garden.http.patch(`/v1/builds/${id}`, '"2"', { crew: { people: 0 }, wishes: { crops: ['banana'] }, budget: { contingencyFrac: 0.7 } });
    expect(
      faults(bad.body)
        .map(([pointer]) => pointer)
        .sort(),
    ).toEqual(['/budget/contingencyFrac', '/crew/people', '/wishes/crops']);
    expect((await garden.http.patch(`/v1/builds/${id}`, etag, { name: 'late' })).status).toBe(412);
  });
});
