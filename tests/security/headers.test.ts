import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { PublishedDocument } from '../../apps/api/src/platform/http/docs.controller.js';
import { newId } from '../../apps/api/src/platform/database/ids.js';
import { startApi, type TestApi, type TestGarden, type TestPerson } from '../support/api-app.js';
import { contractOf, type Contract, type Described } from '../support/contract.js';
import { makeExample, type ExampleIds } from '../support/example-requests.js';
import type { HttpClient } from '../support/http-client.js';

let api: TestApi;
let garden: TestGarden;
let person: TestPerson;
let ids: ExampleIds;
let contract: Contract;

beforeAll(async () => {
  api = await startApi();
  garden = await api.garden();
  person = await api.person(garden.gardenId, ['coordinator']);
  ids = await makeExample(garden.http);
  contract = contractOf(api.get(PublishedDocument).text);
});
afterAll(() => api.stop());

/** Of every answer, to the letter. */
const FIXED = {
  'cache-control': 'no-store',
  'content-security-policy': "default-src 'none'; frame-ancestors 'none'; base-uri 'none'; form-action 'none'",
  'cross-origin-resource-policy': 'same-origin',
  'referrer-policy': 'no-referrer',
  'strict-transport-security': 'max-age=31536000; includeSubDomains',
  'x-content-type-options': 'nosniff',
  'x-frame-options': 'DENY',
} as const;
/** The page for people needs its one style sheet, which stands in the page itself. */
const DOCS_CSP = "default-src 'none'; style-src 'unsafe-inline'; frame-ancestors 'none'; base-uri 'none'; form-action 'none'";

const REAL: Readonly<Record<string, () => string>> = {
  '/v1/sites/{id}': () => ids.siteId,
  '/v1/structures/{id}': () => ids.structureId,
  '/v1/builds/{id}': () => ids.buildId,
  '/v1/builds/{buildId}': () => ids.buildId,
  '/v1/stock/{id}': () => Object.values(ids.stockIds)[0] ?? '',
  '/v1/prices/{id}': () => ids.priceIds[0] ?? '',
  '/v1/problems/{key}': () => 'not-found',
};

/** The address with real ids where there are some, else with ids of nothing. */
const addressOf = (path: string): string => path.replaceAll(/\{\w+\}/g, (name, at: number) => REAL[path.slice(0, at + name.length)]?.() ?? newId());

const ask = async (http: HttpClient, { method, path }: Described) =>
  http
    .request(method, addressOf(path))
    .set('Origin', 'https://evil.example')
    .set('Referer', 'https://evil.example/page')
    .ok(() => true)
    .timeout({ response: 10_000 });

const corsIn = (headers: Record<string, string>): string[] =>
  Object.keys(headers).filter((name) => name.startsWith('access-control-') || name === 'timing-allow-origin');

describe('the headers of every route', () => {
  it('S28: are the fixed list, asked by nobody, a key and a person from a foreign page; nothing is reflected', async () => {
    expect(contract.operations.length).toBeGreaterThan(80);
    for (const http of [api.anyone, garden.http, person.http])
      for (const operation of contract.operations) {
        // What would end the asker's own session is asked last, by nobody.
        if (http === person.http && operation.method === 'delete') continue;
        const { headers, status } = await ask(http, operation);
        const all = headers as Record<string, string>;
        const shown = Object.fromEntries(Object.keys(FIXED).map((name) => [name, all[name]]));
        expect([operation.id, status, shown]).toEqual([operation.id, status, FIXED]);
        expect([operation.id, corsIn(all), JSON.stringify(all).includes('evil.example')]).toEqual([operation.id, [], false]);
        expect([operation.id, all['x-powered-by'], all['server']]).toEqual([operation.id, undefined, undefined]);
        expect(all['x-request-id']).toMatch(/^[\w.-]{1,64}$/);
      }
  }, 180_000);

  it('S28: OPTIONS grants nothing: no foreign page may send anything but what any page may', async () => {
    for (const path of new Set(contract.operations.map((one) => one.path))) {
      const answer = await api.anyone
        .request('options', addressOf(path))
        .set('Origin', 'https://evil.example')
        .set('Access-Control-Request-Method', 'POST')
        .set('Access-Control-Request-Headers', 'authorization, content-type')
        .ok(() => true);
      expect([path, answer.status, corsIn(answer.headers as Record<string, string>)]).toEqual([path, 405, []]);
      expect(answer.headers['allow']).toMatch(/^[A-Z]+(, [A-Z]+)*$/);
      expect(answer.headers).toMatchObject(FIXED);
    }
  });

  it('S28: TRACE and other methods are refused with the same headers', async () => {
    const { port } = api.server.address() as { port: number };
    const { request } = await import('node:http');
    for (const method of ['TRACE', 'PROPFIND', 'PUT']) {
      const { status, headers, body } = await new Promise<{ status: number; headers: Record<string, unknown>; body: string }>((resolve, reject) => {
        const sent = request({ port, method, path: '/v1/sites', headers: { 'X-Canary': 'canary-in-a-trace' } }, (answer) => {
          let text = '';
          answer.on('data', (chunk: Buffer) => (text += chunk.toString()));
          answer.on('end', () => resolve({ status: answer.statusCode ?? 0, headers: answer.headers, body: text }));
        });
        sent.on('error', reject);
        sent.end();
      });
      expect([method, status]).toEqual([method, 405]);
      expect(headers).toMatchObject(FIXED);
      expect(body).not.toContain('canary-in-a-trace');
    }
  });

  it('S28: what is broken or unknown has them too: 400, 404, 413, 415', async () => {
    const answers = await Promise.all([
      garden.http.get('/v1/sites/%zz').ok(() => true),
      api.anyone.get('/nothing/here').ok(() => true),
      garden.http
        .request('post', '/v1/sites')
        .set('Content-Type', 'text/plain')
        .send('x')
        .ok(() => true),
      garden.http
        .request('post', '/v1/sites')
        .set('Content-Type', 'application/json')
        .send('{')
        .ok(() => true),
      garden.http
        .request('post', '/v1/sites')
        .set('Content-Type', 'application/json')
        .send(`"${'x'.repeat(1_100_000)}"`)
        .ok(() => true),
    ]);
    expect(answers.map(({ status }) => status)).toEqual([400, 404, 415, 400, 413]);
    for (const { headers } of answers) expect(headers).toMatchObject(FIXED);
  });

  it('S28: the page for people may show its own style sheet and run, load and send nothing', async () => {
    const { headers } = await api.anyone.get('/v1/docs');
    expect(headers).toMatchObject({ ...FIXED, 'content-security-policy': DOCS_CSP });
  });

  it('S28: a header that is sent never makes a header that is answered', async () => {
    const { headers } = await api.anyone
      .get('/v1/problems')
      .set('X-Request-Id', 'a b<script>')
      .set('X-Forwarded-Host', 'evil.example')
      .set('X-Http-Method-Override', 'DELETE');
    expect(headers['x-request-id']).not.toContain('script');
    expect(JSON.stringify(headers)).not.toContain('evil.example');
  });
});
