import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { startApi, type TestApi, type TestGarden } from '../support/api-app.js';
import { denverMeans, stornowayMeans } from '../support/climates.js';
import { seedStations } from '../support/stations.js';

let api: TestApi;
let garden: TestGarden;

interface Near {
  items: { stationId: string; distanceM: number; heightDifferenceM: number | null }[];
}

const at = (stationId: string, stationLatitudeDeg: number, stationLongitudeDeg: number) => ({
  ...denverMeans,
  stationId,
  stationLatitudeDeg,
  stationLongitudeDeg,
});

beforeAll(async () => {
  api = await startApi();
  await seedStations(api.database.ownerUrl, [
    denverMeans,
    stornowayMeans,
    at('FIJI', -17.75, 177.45),
    at('WEST', 0, -179.9),
    at('POLE', -90, 0),
    at('F1', 50.0664, -5.7147),
    at('F2', 58.644, -3.0701),
  ]);
  garden = await api.garden(['sites:read']);
});
afterAll(() => api.stop());

const near = async (place: string, more = ''): Promise<Near['items']> =>
  ((await garden.http.get(`/v1/climate/stations?near=${place}${more}`)).body as Near).items;

describe('the nearest stations', () => {
  it('come nearest first, with distance and height difference', async () => {
    const [first, second] = await near('39.93,-104.58', '&limit=2&elevationM=1640');
    expect(first?.stationId).toBe(denverMeans.stationId);
    expect(first?.heightDifferenceM).toBeCloseTo(1640 - denverMeans.stationElevationM, 6);
    expect(first?.distanceM).toBeLessThan(second?.distanceM ?? 0);
  });

  it('are measured on the ellipsoid: one degree of latitude at the equator is 110 574 m', async () => {
    // Meridian arc of WGS84 from 0 to 1 degree: 110 574.389 m (G. B. Karney's GeodSolve, also NIMA TR8350.2).
    const items = await near('1,-179.9', '&limit=1');
    expect(items[0]?.stationId).toBe('WEST');
    expect(Math.abs((items[0]?.distanceM ?? 0) - 110_574)).toBeLessThanOrEqual(1);
  });

  it('are found across the date line and at the pole', async () => {
    const items = await near('0,179.9', '&limit=1');
    expect(items[0]?.stationId).toBe('WEST');
    // 0.2 degrees of the equator, 111 319.49 m each.
    expect(Math.abs((items[0]?.distanceM ?? 0) - 22_264)).toBeLessThanOrEqual(1);
    expect((await near('-89.9,123', '&limit=1'))[0]?.stationId).toBe('POLE');
    expect((await near('0,180', '&limit=7')).map(({ distanceM }) => distanceM)).toEqual((await near('0,-180', '&limit=7')).map(({ distanceM }) => distanceM));
  });

  it.each(['91,0', '0,181', '10', 'abc', '1;2', '1,2,3', '1e400,0', ''])('are not looked for near %p', async (place) => {
    const answer = await garden.http.get(`/v1/climate/stations?near=${encodeURIComponent(place)}`);
    expect(answer.status).toBe(400);
    expect(answer.body).toMatchObject({ errors: [{ pointer: '/near', in: 'query' }] });
  });

  it.each(['0', '51', '-1', 'x'])('are limited sensibly: %p is refused', async (limit) => {
    expect((await garden.http.get(`/v1/climate/stations?near=1,2&limit=${limit}`)).status).toBe(400);
  });
});

describe('one station', () => {
  it('shows its months with their gaps', async () => {
    const answer = await garden.http.get(`/v1/climate/stations/${denverMeans.stationId}`);
    const { distanceM: _distance, ...station } = denverMeans;
    expect(answer.body).toEqual(station);
    expect((await garden.http.get(`/v1/climate/stations/${denverMeans.stationId}`).set('If-None-Match', answer.headers['etag'] as string)).status).toBe(304);
  });

  it('is not found when there is none', async () => {
    expect((await garden.http.get('/v1/climate/stations/nowhere')).status).toBe(404);
    expect((await garden.http.get(`/v1/climate/stations/${'x'.repeat(60)}`)).status).toBe(404);
  });
});

describe('the table that the server is set up with', () => {
  it('has a station near each example garden', async () => {
    const fresh = await startApi();
    try {
      const { http } = await fresh.garden(['sites:read']);
      for (const place of ['39.93,-104.58', '58.21,-6.32', '-46.4,168.3']) {
        const { items } = (await http.get(`/v1/climate/stations?near=${place}&limit=1`)).body as Near;
        expect(items[0]?.distanceM).toBeLessThan(60_000);
      }
    } finally {
      await fresh.stop();
    }
  });
});
