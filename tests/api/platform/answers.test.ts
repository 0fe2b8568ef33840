import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import { CATALOGUE } from '../../../apps/api/src/platform/problems/catalogue.js';
import { startApi, type TestApi, type TestGarden } from '../../support/api-app.js';

let api: TestApi;
let garden: TestGarden;
beforeAll(async () => {
  api = await startApi({ jobs: true });
  garden = await api.garden();
});
afterAll(() => api.stop());

describe('health', () => {
  test('livez and readyz answer without a key', async () => {
    expect((await api.anyone.get('/livez').expect(200)).body).toEqual({ process: 'ok' });
    expect((await api.anyone.get('/readyz').expect(200)).body).toEqual({
      serving: 'ok',
      database: 'ok',
      migrations: 'ok',
      queue: 'ok',
      disk: 'ok',
      queueAge: 'ok',
      // Nothing listens where this test looks for the report app: told, and no reason to send requests elsewhere.
      report: 'fail',
    });
  });
});

describe('problems', () => {
  test('every problem type leads to its explanation', async () => {
    const { body } = await api.anyone.get('/v1/problems').expect(200);
    expect(body.items).toHaveLength(Object.keys(CATALOGUE).length);
    for (const { type, status } of body.items as { type: string; status: number }[]) expect((await api.anyone.get(type).expect(200)).body.status).toBe(status);
    expect((await api.anyone.get('/v1/problems/no-such').expect(404)).body.type).toBe('/v1/problems/route-unknown');
  });

  test.each([
    ['unknown address', 'get', '/v1/nowhere', {}, undefined, 404, 'route-unknown'],
    ['wrong method', 'delete', '/livez', {}, undefined, 405, 'method-not-allowed'],
    ['OPTIONS', 'options', '/livez', {}, undefined, 405, 'method-not-allowed'],
    ['another form', 'get', '/livez', { Accept: 'application/xml' }, undefined, 406, 'not-acceptable'],
    ['text', 'post', '/v1/nowhere', { 'Content-Type': 'text/plain' }, '{}', 415, 'media-type-unsupported'],
    ['no type', 'patch', '/v1/nowhere', { 'Content-Type': 'application/json' }, '{}', 415, 'media-type-unsupported'],
    ['compressed', 'post', '/v1/nowhere', { 'Content-Type': 'application/json', 'Content-Encoding': 'gzip' }, '{}', 415, 'media-type-unsupported'],
    ['cut off', 'post', '/v1/nowhere', { 'Content-Type': 'application/json' }, '{"a":', 400, 'malformed-json'],
    ['key twice', 'post', '/v1/nowhere', { 'Content-Type': 'application/json' }, '{"a":1,"a":2}', 400, 'malformed-json'],
    ['key twice, escaped', 'post', '/v1/nowhere', { 'Content-Type': 'application/json' }, '{"a":1,"\\u0061":2}', 400, 'malformed-json'],
    ['NUL', 'post', '/v1/nowhere', { 'Content-Type': 'application/json' }, '{"a":"\\u0000"}', 400, 'malformed-json'],
    ['half a pair', 'post', '/v1/nowhere', { 'Content-Type': 'application/json' }, '{"a":"\\ud800"}', 400, 'malformed-json'],
    ['infinite', 'post', '/v1/nowhere', { 'Content-Type': 'application/json' }, '{"a":1e400}', 400, 'malformed-json'],
    ['prototype key', 'post', '/v1/nowhere', { 'Content-Type': 'application/json' }, '{"__proto__":{"x":1}}', 400, 'malformed-json'],
    ['constructor key', 'post', '/v1/nowhere', { 'Content-Type': 'application/json' }, '{"constructor":{"prototype":{}}}', 400, 'malformed-json'],
    ['not UTF-8', 'post', '/v1/nowhere', { 'Content-Type': 'application/json' }, Buffer.from([0x22, 0xff, 0x22]), 400, 'malformed-json'],
    ['33 levels', 'post', '/v1/nowhere', { 'Content-Type': 'application/json' }, '['.repeat(33) + ']'.repeat(33), 400, 'malformed-json'],
    ['800 kB of brackets', 'post', '/v1/nowhere', { 'Content-Type': 'application/json' }, '['.repeat(800_000), 400, 'malformed-json'],
    ['over 1 MiB', 'post', '/v1/nowhere', { 'Content-Type': 'application/json' }, `"${'a'.repeat(1_048_576)}"`, 413, 'body-too-large'],
    [
      '1001 keys',
      'post',
      '/v1/nowhere',
      { 'Content-Type': 'application/json' },
      JSON.stringify(Object.fromEntries(Array.from({ length: 1001 }, (_one, at) => [`k${at}`, 0]))),
      400,
      'malformed-json',
    ],
    ['bad percent', 'get', '/v1/problems/%E0%A4%A', {}, undefined, 400, 'malformed-request'],
  ] as const)('%s is a problem of the catalogue', async (_name, method, path, headers, body, status, key) => {
    const started = performance.now();
    const request = garden.http.request(method, path).set(headers);
    // As a buffer, so that the client does not put the text into JSON once more.
    const answer = await (body === undefined ? request : request.serialize((raw: unknown) => raw as string).send(body as string));
    expect(answer.status).toBe(status);
    expect(answer.headers['content-type']).toBe('application/problem+json; charset=utf-8');
    expect(answer.body).toMatchObject({ type: `/v1/problems/${key}`, status, title: CATALOGUE[key].title });
    expect(answer.body.requestId).toBe(answer.headers['x-request-id']);
    expect(JSON.stringify(answer.body)).not.toMatch(/node_modules|SELECT|\.ts|at \w+ \(/);
    expect(performance.now() - started).toBeLessThan(1000);
  });

  test('a deep body holds nobody up', async () => {
    const body = '['.repeat(800_000);
    const { jsonFault } = await import('../../../apps/api/src/platform/http/json-guard.js');
    const started = performance.now();
    expect(jsonFault(body)).toBe('it is nested deeper than 32 levels');
    expect(performance.now() - started).toBeLessThan(50);
  });

  test('405 names the methods', async () => {
    expect((await api.anyone.request('delete', '/livez')).headers['allow']).toBe('GET, HEAD');
  });

  test('HEAD has the headers of GET and no body', async () => {
    const get = await api.anyone.get('/v1/openapi.json').expect(200);
    const head = await api.anyone.request('head', '/v1/openapi.json').expect(200);
    for (const name of ['content-type', 'content-length', 'cache-control']) expect(head.headers[name]).toBe(get.headers[name]);
    expect(head.text ?? '').toBe('');
  });

  test('the caller may name its request; a forged name is replaced', async () => {
    expect((await api.anyone.get('/livez').set('X-Request-Id', 'abc-1')).headers['x-request-id']).toBe('abc-1');
    expect((await api.anyone.get('/livez').set('X-Request-Id', 'a b"c')).headers['x-request-id']).toMatch(/^[0-9a-f-]{36}$/);
  });

  test('fixed headers on every answer', async () => {
    for (const path of ['/livez', '/v1/nowhere', '/v1/docs']) {
      const { headers } = await api.anyone.get(path);
      expect(headers).toMatchObject({
        'cache-control': 'no-store',
        'x-content-type-options': 'nosniff',
        'referrer-policy': 'no-referrer',
        'x-frame-options': 'DENY',
      });
      expect(headers['content-security-policy']).toContain("default-src 'none'");
      expect(headers['x-powered-by']).toBeUndefined();
    }
  });
});

describe('documentation', () => {
  test('OpenAPI 3.1 without leftovers of 3.0', async () => {
    const { body, text } = await api.anyone.get('/v1/openapi.json').expect(200);
    expect(body.openapi).toBe('3.1.0');
    expect(text).not.toContain('"nullable"');
  });
});
