import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import pg from 'pg';
import { startApi, type TestApi, type TestGarden } from '../support/api-app.js';
import { cold, make } from '../support/example-requests.js';

// Run as it is and again in other zones by tests/contract/time-zones.test.ts.
let api: TestApi;
let garden: TestGarden;
beforeAll(async () => {
  api = await startApi();
  garden = await api.garden();
});
afterAll(() => api.stop());

const [price = {}] = cold.prices as object[];
const RFC_3339_UTC = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}\.\d{3}Z$/;

describe('days and moments through the whole API', () => {
  it('A21: a day comes back as it was sent, and stands so in the database', async () => {
    const admin = new pg.Client({ connectionString: api.database.adminUrl });
    await admin.connect();
    for (const readOn of ['2028-02-29', '2026-03-08', '2026-11-01', '1986-01-01', '9999-12-31', '1000-01-01']) {
      const { id, body } = await make(garden.http, '/v1/prices', { ...price, readOn });
      expect(body['readOn']).toBe(readOn);
      expect((await garden.http.get(`/v1/prices/${id}`)).body.readOn).toBe(readOn);
      const { rows } = await admin.query<{ day: string }>('SELECT read_on::text AS day FROM prices WHERE id = $1', [id]);
      expect(rows[0]?.day).toBe(readOn);
    }
    await admin.end();
    for (const readOn of ['2027-02-29', '10000-01-01', '2026-03-08T12:00:00Z', 20260308])
      expect((await garden.http.post('/v1/prices', { ...price, readOn })).status).toBe(400);
  });

  it('A21: a moment is given in UTC with its Z, and is the moment it happened', async () => {
    const before = Date.now();
    const { body } = await make(garden.http, '/v1/prices', price);
    const after = Date.now();
    for (const key of ['createdAt', 'updatedAt']) {
      expect(body[key]).toMatch(RFC_3339_UTC);
      expect(Date.parse(String(body[key]))).toBeGreaterThanOrEqual(before - 1000);
      expect(Date.parse(String(body[key]))).toBeLessThanOrEqual(after + 1000);
    }
  });

  it('A21: a local time goes by the IANA zone of the site, and no other word is taken for a zone', async () => {
    const { body } = await make(garden.http, '/v1/sites', { ...cold.site, name: 'Zoned', timeZone: null });
    expect(body['timeZone']).toBe('America/Denver');
    expect((await garden.http.post('/v1/sites', { ...cold.site, name: 'Elsewhere', timeZone: 'MST+7 or so' })).body.errors).toEqual([
      expect.objectContaining({ pointer: '/timeZone', code: 'not-a-zone' }),
    ]);
  });
});
