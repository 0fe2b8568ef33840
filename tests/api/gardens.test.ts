import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import pg from 'pg';
import { startApi, type TestApi } from '../support/api-app.js';
import { make } from '../support/example-requests.js';
import { EXAMPLE_GARDENS, exampleGarden } from '../support/gardens.js';

let api: TestApi;

interface NewGarden {
  garden: { id: string; name: string };
  key: { id: string; name: string; key: string; prefix: string; scopes: string[] };
}

beforeAll(async () => {
  api = await startApi();
});
afterAll(() => api.stop());

describe('making a garden', () => {
  it.each(EXAMPLE_GARDENS)('takes the %s example, and its first key opens it', async (name) => {
    const { garden } = exampleGarden(name);
    const answer = await api.operator.post('/v1/gardens', garden);
    expect(answer.status).toBe(201);
    const made = answer.body as NewGarden;
    expect(made.garden).toMatchObject(garden);
    const current = await api.as(made.key.key).get('/v1/gardens/current');
    expect(current.status).toBe(200);
    expect(current.body).toMatchObject({ ...garden, id: made.garden.id });
  });

  it('names the first key after whoever uses it, or the coordinator', async () => {
    const body = exampleGarden('maritime').garden;
    for (const [keyName, wanted] of [
      [undefined, 'coordinator’s key'],
      ['Sorrel, garden coordinator', 'Sorrel, garden coordinator'],
    ]) {
      const { key } = (await make(api.operator, '/v1/gardens', { ...body, ...(keyName ? { keyName } : {}) })).body as unknown as NewGarden;
      expect(key.name).toBe(wanted);
      expect((await api.as(key.key).get(`/v1/keys/${key.id}`)).body).toMatchObject({ name: wanted });
    }
    for (const keyName of ['', 7, 'x'.repeat(121)]) expect((await api.operator.post('/v1/gardens', { ...body, keyName })).status).toBe(400);
  });

  it('is for the operator alone', async () => {
    const body = exampleGarden('maritime').garden;
    const { http } = await api.garden();
    expect((await api.anyone.post('/v1/gardens', body)).status).toBe(401);
    expect((await http.post('/v1/gardens', body)).status).toBe(403);
    expect((await api.operator.get('/v1/gardens/current')).status).toBe(403);
  });

  it('tells all faults at once', async () => {
    const answer = await api.operator.post('/v1/gardens', { name: '', locale: 'English', currency: 'dollar', unitSystem: 'imperial', id: 'mine' });
    expect((answer.body as { errors: { pointer: string }[] }).errors.map(({ pointer }) => pointer).sort()).toEqual([
      '/currency',
      '/id',
      '/locale',
      '/name',
      '/unitSystem',
    ]);
  });

  it('gives the same garden and key to a repeated request, and keeps the key nowhere in the clear', async () => {
    const body = { ...exampleGarden('maritime').garden, name: 'Once only' };
    const [first, again] = [await api.operator.post('/v1/gardens', body, 'garden-once'), await api.operator.post('/v1/gardens', body, 'garden-once')];
    expect(again.text).toBe(first.text);
    const client = new pg.Client({ connectionString: api.database.adminUrl });
    await client.connect();
    try {
      const { rows: gardens } = await client.query("SELECT count(*)::int AS n FROM gardens WHERE name = 'Once only'");
      expect((gardens as { n: number }[])[0]?.n).toBe(1);
      const secret = (first.body as NewGarden).key.key;
      const { rows } = await client.query(
        'SELECT (SELECT count(*)::int FROM api_keys k WHERE k::text LIKE $1) + (SELECT count(*)::int FROM idempotency_answers a WHERE a::text LIKE $1) + (SELECT count(*)::int FROM audit_entries e WHERE e::text LIKE $1) AS n',
        [`%${secret.slice(12)}%`],
      );
      expect((rows as { n: number }[])[0]?.n).toBe(0);
    } finally {
      await client.end();
    }
  });
});

describe('the garden of a key', () => {
  it('is changed by version', async () => {
    const { http } = await api.garden();
    const etag = (await http.get('/v1/gardens/current')).headers['etag'] as string;
    expect((await http.request('patch', '/v1/gardens/current').set('Content-Type', 'application/merge-patch+json').send('{}')).status).toBe(428);
    expect((await http.patch('/v1/gardens/current', etag, { unitSystem: 'us', currency: 'USD' })).body).toMatchObject({
      unitSystem: 'us',
      currency: 'USD',
      version: 2,
    });
    expect((await http.patch('/v1/gardens/current', etag, { name: 'late' })).status).toBe(412);
    expect((await http.patch('/v1/gardens/current', '"2"', { name: null })).status).toBe(400);
    // What was made as an invented example stays marked as one.
    expect((await http.patch('/v1/gardens/current', '"2"', { invented: false })).status).toBe(400);
  });
});

describe('keys', () => {
  it('are shown once, listed without themselves, and end at once', async () => {
    const { http, gardenId } = await api.garden();
    const { body, id } = await make(http, '/v1/keys', { name: 'Reviewer', scopes: ['plans:read', 'plans:review'] });
    const key = body['key'] as string;
    expect(key).toMatch(/^lw_[0-9A-Za-z]{36}$/);
    expect((await api.as(key).get('/v1/plans')).status).toBe(200);
    expect((await api.as(key).get('/v1/sites')).status).toBe(403);
    const listed = await http.get('/v1/keys');
    expect(listed.text).not.toContain(key);
    expect((listed.body as { items: { id: string }[] }).items.map((one) => one.id)).toContain(id);
    expect((await http.request('delete', `/v1/keys/${id}`)).status).toBe(204);
    expect((await api.as(key).get('/v1/plans')).status).toBe(401);
    expect((await http.get(`/v1/keys/${id}`)).body).toMatchObject({ revokedAt: expect.any(String) });
    const other = await api.garden();
    expect(other.gardenId).not.toBe(gardenId);
    expect((await other.http.request('delete', `/v1/keys/${id}`)).status).toBe(404);
  });

  it('need a scope that exists, and end on their day', async () => {
    const { http } = await api.garden();
    expect((await http.post('/v1/keys', { name: 'x', scopes: ['everything'] })).status).toBe(400);
    expect((await http.post('/v1/keys', { name: 'x', scopes: [] })).status).toBe(400);
    const { body } = await make(http, '/v1/keys', { name: 'old', scopes: ['plans:read'], expiresOn: '2020-01-01' });
    expect((await api.as(body['key'] as string).get('/v1/plans')).status).toBe(401);
    const weak = api.as(await api.keyOf((await api.garden()).gardenId, ['garden:read']));
    expect((await weak.post('/v1/keys', { name: 'x', scopes: ['garden:admin'] })).status).toBe(403);
  });
});
