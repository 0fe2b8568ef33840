import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { startApi, type TestApi, type TestGarden } from '../support/api-app.js';
import { cold, make } from '../support/example-requests.js';
import { EXAMPLE_GARDENS, exampleGarden } from '../support/gardens.js';

let api: TestApi;
let garden: TestGarden;
const [film] = cold.prices;

beforeAll(async () => {
  api = await startApi();
  garden = await api.garden();
});
afterAll(() => api.stop());

describe('prices', () => {
  it.each(EXAMPLE_GARDENS)('are taken from the %s example as they stand', async (name) => {
    const other = await api.garden();
    for (const price of exampleGarden(name).prices) expect((await make(other.http, '/v1/prices', price)).body).toMatchObject(price);
  });

  it('may lack a day, and are money in whole minor units', async () => {
    expect((await make(garden.http, '/v1/prices', { ...film, readOn: null })).body['readOn']).toBeNull();
    for (const packPrice of [
      { minor: 5.5, currency: 'USD' },
      { minor: -1, currency: 'USD' },
      { minor: 5, currency: 'usd' },
      { minor: '5', currency: 'USD' },
      5,
    ])
      expect((await garden.http.post('/v1/prices', { ...film, packPrice })).status).toBe(400);
  });

  it('take piece sizes with their unit', async () => {
    const { body } = await make(garden.http, '/v1/prices', { ...film, pieceWidthM: '28 ft', pieceLengthM: '100 ft' });
    expect(body).toMatchObject({ asTyped: { '/pieceWidthM': '28 ft', '/pieceLengthM': '100 ft' } });
    expect(body['pieceWidthM']).toBeCloseTo(8.5344, 9);
    expect((await garden.http.post('/v1/prices', { ...film, pieceWidthM: '28' })).status).toBe(400);
  });

  it('tell all faults at once', async () => {
    const answer = await garden.http.post('/v1/prices', {
      material: 'gold',
      unit: 'stone',
      packAmount: 0,
      packPrice: { minor: 1 },
      pieceWidthM: null,
      pieceLengthM: null,
      readOn: '2026-02-30',
      supplier: ' ',
    });
    expect((answer.body as { errors: { pointer: string }[] }).errors.map(({ pointer }) => pointer).sort()).toEqual([
      '/material',
      '/packAmount',
      '/packPrice/currency',
      '/readOn',
      '/supplier',
      '/unit',
    ]);
  });

  it('are changed by version, put away and found by material', async () => {
    const other = await api.garden();
    const { id, etag } = await make(other.http, '/v1/prices', film ?? {});
    const changed = await other.http.patch(`/v1/prices/${id}`, etag, { packPrice: { minor: 612 } });
    expect(changed.body).toMatchObject({ packPrice: { minor: 612, currency: 'USD' }, version: 2 });
    expect((await other.http.patch(`/v1/prices/${id}`, etag, { supplier: 'another' })).status).toBe(412);
    expect(((await other.http.get(`/v1/prices?material=${film?.material}`)).body as { items: unknown[] }).items).toHaveLength(1);
    expect(((await other.http.get('/v1/prices?material=rope')).body as { items: unknown[] }).items).toHaveLength(0);
    expect((await other.http.request('post', `/v1/prices/${id}/archive`).set('If-Match', '"2"')).status).toBe(200);
    expect(((await other.http.get('/v1/prices')).body as { items: unknown[] }).items).toHaveLength(0);
    expect((await garden.http.get(`/v1/prices/${id}`)).status).toBe(404);
  });
});

describe('exchange rates', () => {
  const rate = { from: 'USD', to: 'EUR', rate: 0.92, readOn: '2026-03-01' };

  it('are noted with their day, once a day for a pair', async () => {
    const { id, body } = await make(garden.http, '/v1/exchange-rates', rate);
    expect(body).toMatchObject(rate);
    expect((await garden.http.get(`/v1/exchange-rates/${id}`)).body).toEqual(body);
    expect((await garden.http.post('/v1/exchange-rates', { ...rate, rate: 0.9 })).status).toBe(409);
    await make(garden.http, '/v1/exchange-rates', { ...rate, readOn: '2026-03-02' });
    expect(((await garden.http.get('/v1/exchange-rates')).body as { items: unknown[] }).items).toHaveLength(2);
    expect((await (await api.garden()).http.get(`/v1/exchange-rates/${id}`)).status).toBe(404);
  });

  it('need a day and two currencies', async () => {
    expect((await garden.http.post('/v1/exchange-rates', { ...rate, readOn: null })).status).toBe(400);
    expect((await garden.http.post('/v1/exchange-rates', { ...rate, to: 'USD' })).status).toBe(422);
    expect((await garden.http.post('/v1/exchange-rates', { ...rate, rate: 0 })).status).toBe(400);
  });
});
