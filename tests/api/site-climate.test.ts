import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { computeClimate } from '@lathwork/calc';
import type { PlanInputs } from '@lathwork/model';
import { startApi, type TestApi, type TestGarden } from '../support/api-app.js';
import { cold, make, makeExample } from '../support/example-requests.js';

let api: TestApi;
let garden: TestGarden;

beforeAll(async () => {
  api = await startApi();
  garden = await api.garden();
});
afterAll(() => api.stop());

const TREE = { bearingDeg: 180, distanceM: '20 ft', widthM: 8, heightM: 12 };

describe('the climate at a site', () => {
  it('is what a plan of that site is computed with, with its station, its notes and its sources', async () => {
    const ids = await makeExample(garden.http);
    const { body, status } = await garden.http.get(`/v1/sites/${ids.siteId}/climate`);
    expect(status).toBe(200);
    const plan = await garden.http.post('/v1/plans', { buildId: ids.buildId });
    const inputs = (await garden.http.get(`/v1/plans/${plan.body.id}/inputs`)).body as PlanInputs;
    const { result, notes } = computeClimate({ site: inputs.site, climate: inputs.climate });
    expect(body.climate).toEqual(JSON.parse(JSON.stringify(result)));
    expect(body.notes).toEqual(JSON.parse(JSON.stringify(notes)));
    expect(body.station).toMatchObject({ stationId: inputs.climate.stationId, kind: inputs.climate.kind, credit: expect.stringMatching(/\S/) });
    expect(body.sources.length).toBeGreaterThan(5);
    for (const source of body.sources) expect(source).toMatchObject({ title: expect.any(String), quality: expect.any(String) });
  });

  it('counts hours of sun behind obstacles, says whether they were measured, and keeps what was typed', async () => {
    const site = await make(garden.http, '/v1/sites', { ...cold.site, name: 'Behind the trees' });
    const sun = async (): Promise<{ basis: string; months: unknown[] }> => {
      const { climate } = (await garden.http.get(`/v1/sites/${site.id}/climate`)).body as { climate: { sunHoursBasis: string; sunHours: unknown[] } };
      return { basis: climate.sunHoursBasis, months: climate.sunHours };
    };
    const free = await sun();
    expect([free.basis, free.months.length]).toEqual(['freeHorizon', 12]);
    const patched = await garden.http.patch(`/v1/sites/${site.id}`, site.etag, { obstacles: [TREE] });
    expect(patched.body.obstacles).toEqual([{ ...TREE, distanceM: 6.096 }]);
    expect(patched.body.asTyped).toMatchObject({ '/obstacles/0/distanceM': '20 ft' });
    const shaded = await sun();
    expect(shaded.basis).toBe('obstacles');
    expect(shaded.months).not.toEqual(free.months);
    const removed = await garden.http.patch(`/v1/sites/${site.id}`, '"2"', { obstacles: null });
    expect(removed.body.obstacles).toBeUndefined();
  });

  it('says all faults of an obstacle with its place', async () => {
    const { body } = await garden.http.post('/v1/sites', {
      ...cold.site,
      name: 'x',
      obstacles: [{ ...TREE, bearingDeg: 361, heightM: -1 }, { bearingDeg: 1 }],
    });
    expect(body.errors.map((one: { pointer: string }) => one.pointer)).toEqual(
      expect.arrayContaining(['/obstacles/0/bearingDeg', '/obstacles/0/heightM', '/obstacles/1/distanceM']),
    );
  });

  it('does not exist for another garden', async () => {
    const site = await make(garden.http, '/v1/sites', { ...cold.site, name: 'Ours' });
    const other = await api.garden();
    expect((await other.http.get(`/v1/sites/${site.id}/climate`)).status).toBe(404);
  });
});
