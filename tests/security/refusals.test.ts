import { connect, type AddressInfo } from 'node:net';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { REQUEST_EXAMPLES } from '../../apps/api/src/examples/requests.js';
import { makeKey } from '../../apps/api/src/platform/access/key.js';
import { newId } from '../../apps/api/src/platform/database/ids.js';
import { CATALOGUE, type ProblemKey } from '../../apps/api/src/platform/problems/catalogue.js';
import { startApi, type TestApi, type TestGarden, type TestPerson } from '../support/api-app.js';
import { makeExample, type ExampleIds } from '../support/example-requests.js';
import type { HttpClient } from '../support/http-client.js';
import { ProbeModule } from '../support/platform-probe.js';

// Every way to be refused that can be provoked from outside looks the same, leads to its page, and tells nothing of the inside.

interface Heard {
  status: number;
  type: string;
  body: Record<string, unknown>;
  text: string;
  requestId: string;
}

let api: TestApi;
let garden: TestGarden;
let other: TestGarden;
let ids: ExampleIds;
let person: TestPerson;
let member: TestPerson;
let site: { path: string; etag: string };

beforeAll(async () => {
  api = await startApi({ extra: [ProbeModule], env: { RATE_COSTLY: '4' } });
  [garden, other] = [await api.garden(), await api.garden()];
  ids = await makeExample(garden.http);
  person = await api.person(garden.gardenId, ['coordinator']);
  member = await api.person(garden.gardenId, ['funder']);
  const path = `/v1/sites/${ids.siteId}`;
  site = { path, etag: String((await garden.http.get(path)).headers['etag']) };
}, 120_000);
afterAll(() => api.stop());

type Answer = PromiseLike<{ status: number; headers: Record<string, string>; text: string }>;

const heardOf = async (answer: Answer): Promise<Heard> => {
  const { status, headers, text } = await answer;
  return {
    status,
    type: headers['content-type'] ?? '',
    text,
    body: JSON.parse(text || '{}') as Record<string, unknown>,
    requestId: headers['x-request-id'] ?? '',
  };
};

interface Sent {
  headers?: Record<string, string>;
  body?: string;
}

const send = (http: HttpClient, method: 'get' | 'post' | 'put' | 'patch' | 'delete', path: string, { headers = {}, body }: Sent = {}): Promise<Heard> => {
  const request = http
    .request(method, path)
    .set(headers)
    .ok(() => true);
  return heardOf(
    (body === undefined
      ? request
      : request
          .set('Content-Type', headers['Content-Type'] ?? 'application/json')
          .serialize((text: unknown) => text as string)
          .send(body)) as unknown as Answer,
  );
};

/** Bytes as they stand, for what no client would send. */
const raw = (text: string): Promise<Heard> =>
  new Promise((resolve, reject) => {
    const socket = connect((api.server.address() as AddressInfo).port, '127.0.0.1', () => socket.write(text));
    let got = '';
    socket.on('data', (bytes: Buffer) => (got += bytes.toString('utf8')));
    socket.on('error', reject);
    socket.on('close', () => {
      const [head = '', body = ''] = got.split('\r\n\r\n');
      const [first = '', ...lines] = head.split('\r\n');
      const headers = Object.fromEntries(lines.map((line) => [line.split(': ')[0]?.toLowerCase() ?? '', line.split(': ').slice(1).join(': ')]));
      resolve(heardOf(Promise.resolve({ status: Number(first.split(' ')[1]), headers, text: body })));
    });
  });

const post = (path: string, body: unknown, headers: Record<string, string> = {}): Promise<Heard> =>
  send(garden.http, 'post', path, { headers, body: typeof body === 'string' ? body : JSON.stringify(body) });
const inGarden = (http: HttpClient, gardenId: string, path: string): Promise<Heard> => send(http, 'get', path, { headers: { 'Lathwork-Garden': gardenId } });

const merge = { 'Content-Type': 'application/merge-patch+json' };
const example = (id: string): Record<string, unknown> => REQUEST_EXAMPLES[id] as Record<string, unknown>;

const PROVOCATIONS: readonly (readonly [what: string, problem: ProblemKey, provoke: () => Promise<Heard>])[] = [
  ['an address that is not there', 'route-unknown', () => send(api.anyone, 'get', '/v1/nowhere')],
  ['an address that is not there, with a key', 'route-unknown', () => send(garden.http, 'post', '/v1/nowhere', { body: '{}' })],
  ['a way out of the folder', 'route-unknown', () => send(api.anyone, 'get', '/v1/..%2f..%2f..%2fetc%2fpasswd')],
  ['a problem that is none', 'route-unknown', () => send(api.anyone, 'get', '/v1/problems/constructor')],
  ['a page of a domain that is none', 'route-unknown', () => send(api.anyone, 'get', '/v1/docs/__proto__', { headers: { Accept: '*/*' } })],
  ['a wrong method', 'method-not-allowed', () => send(garden.http, 'put', '/v1/sites', { body: '{}' })],
  ['a form that is not offered', 'not-acceptable', () => send(garden.http, 'get', '/v1/sites', { headers: { Accept: 'text/csv' } })],
  ['a body of another kind', 'media-type-unsupported', () => post('/v1/sites', 'name=a', { 'Content-Type': 'application/x-www-form-urlencoded' })],
  ['a compressed body', 'media-type-unsupported', () => post('/v1/sites', '{}', { 'Content-Encoding': 'gzip' })],
  ['half a body', 'malformed-json', () => post('/v1/sites', '{"name": "a"')],
  ['a body that is no JSON', 'malformed-json', () => post('/v1/sites', 'SELECT 1')],
  ['a key twice', 'malformed-json', () => post('/v1/sites', '{"name":"a","name":"b"}')],
  ['a key that changes objects', 'malformed-json', () => post('/v1/sites', '{"__proto__":{"a":1}}')],
  ['a body of 2 MB', 'body-too-large', () => post('/v1/sites', `{"name":"${'x'.repeat(2_000_000)}"}`)],
  ['fields that do not fit', 'validation-failed', () => post('/v1/sites', { name: 7, latitudeDeg: 'north' })],
  ['a field that nobody knows', 'validation-failed', () => post('/v1/sites', { ...example('createSite'), admin: true })],
  ['a number out of its range', 'validation-failed', () => post('/v1/sites', { ...example('createSite'), latitudeDeg: 91 })],
  ['a wrong limit', 'validation-failed', () => send(garden.http, 'get', '/v1/sites?limit=0')],
  ['a filter that nobody knows', 'validation-failed', () => send(garden.http, 'get', '/v1/sites?order=name')],
  ['a broken percent sign', 'malformed-request', () => send(garden.http, 'get', '/v1/sites/%E0%A4%A')],
  ['an id that is none', 'malformed-id', () => send(garden.http, 'get', "/v1/sites/1'%20OR%20'1'='1")],
  ['an id with a NUL', 'malformed-id', () => send(garden.http, 'get', '/v1/sites/a%00b')],
  ['an id that never was', 'not-found', () => send(garden.http, 'get', `/v1/sites/${newId()}`)],
  ['an id of another garden', 'not-found', () => send(other.http, 'get', site.path)],
  ['a cursor of one’s own making', 'cursor-invalid', () => send(garden.http, 'get', '/v1/sites?cursor=abc.def')],
  ['nobody', 'unauthenticated', () => send(api.anyone, 'get', '/v1/sites')],
  ['a key that never was', 'unauthenticated', () => send(api.as(makeKey().key), 'get', '/v1/sites')],
  ['a key with a slip', 'unauthenticated', () => send(api.as(`${garden.key.slice(0, -1)}!`), 'get', '/v1/sites')],
  ['a key without the scope', 'scope-missing', async () => send(api.as(await api.keyOf(garden.gardenId, ['stock:read'])), 'get', '/v1/sites')],
  ['the operator in a garden', 'garden-only', () => send(api.operator, 'get', '/v1/sites')],
  ['a person without a garden', 'garden-required', () => send(api.as(person.token), 'get', '/v1/sites')],
  ['a person in somebody else’s garden', 'not-a-member', () => inGarden(api.as(person.token), other.gardenId, '/v1/sites')],
  ['a role that may not', 'role-missing', () => send(member.http, 'get', '/v1/keys')],
  ['a key where a person decides', 'person-only', () => post('/v1/members/me/consents', example('giveConsent'))],
  ['a wrong password', 'sign-in-failed', () => post('/v1/sessions', { email: 'nobody@example.org', password: 'wrong horse battery', as: 'token' })],
  ['a code that never was', 'code-of-mail-invalid', () => post('/v1/accounts/confirm', { code: 'a'.repeat(43), password: 'five barrows under a bridge' })],
  ['a change without a version', 'if-match-required', () => send(garden.http, 'patch', site.path, { headers: merge, body: '{"name":"a"}' })],
  [
    'a change of an old version',
    'version-stale',
    () => send(garden.http, 'patch', site.path, { headers: { ...merge, 'If-Match': '"99"' }, body: '{"name":"a"}' }),
  ],
  ['an unusable key of a repeat', 'idempotency-key-invalid', () => post('/v1/sites', example('createSite'), { 'Idempotency-Key': 'x'.repeat(300) })],
  [
    'one key for two bodies',
    'idempotency-conflict',
    async () => {
      const key = { 'Idempotency-Key': newId() };
      await post('/v1/prices', example('createPrice'), key);
      return post('/v1/prices', { ...example('createPrice'), supplier: 'another yard' }, key);
    },
  ],
  ['a tag that is taken', 'name-taken', () => post('/v1/stock', { ...example('createStockItem'), tag: Object.keys(ids.stockIds)[0] })],
  [
    'a thing that is claimed',
    'stock-claimed',
    async () => {
      const { body } = await garden.http.get(`/v1/builds/${ids.buildId}/claims`);
      return post(`/v1/builds/${ids.buildId}/claims`, { tag: (body as { items: { tag: string }[] }).items[0]?.tag });
    },
  ],
  [
    'a place far from everything',
    'station-far',
    () => post('/v1/sites', { ...example('createSite'), latitudeDeg: -48.9, longitudeDeg: -123.4, timeZone: 'Etc/UTC' }),
  ],
  ['an address that leads inside', 'url-refused', () => post('/v1/webhooks', { ...example('createWebhook'), url: 'https://127.0.0.1/' })],
  [
    'too many costly requests',
    'rate-limited',
    async () => {
      for (let times = 0; times < 4; times += 1) await post('/v1/plans', { buildId: newId() });
      return post('/v1/plans', { buildId: newId() });
    },
  ],
  ['a fault of the server', 'internal', () => send(garden.http, 'get', '/v1/probe/breaks')],
  ['what is no HTTP', 'malformed-request', () => raw('HELLO\r\n\r\n')],
  ['a header that is none', 'malformed-request', () => raw('GET /livez HTTP/1.1\r\nHost: x\r\nbad header\r\n\r\n')],
  ['two lengths of one body', 'malformed-request', () => raw('POST /v1/sites HTTP/1.1\r\nHost: x\r\nContent-Length: 2\r\nContent-Length: 3\r\n\r\n{}')],
  ['headers without an end', 'headers-too-large', () => raw(`GET /livez HTTP/1.1\r\nHost: x\r\nX-Long: ${'a'.repeat(40_000)}\r\n\r\n`)],
];

/** What only the inside knows: where code and files lie, how the database is asked and what it says. */
const INSIDE =
  /\bat [\w.<>]+ \(|node_modules|\.[cm]?[jt]sx?:\d|\/(home|root|usr|var|opt|tmp|app|dist|src|etc)\/|\b(SELECT|INSERT INTO|UPDATE|DELETE FROM|UNION)\b|prisma|postgres|\bpg_|\brelation\b|\bcolumn\b|constraint|row-level|\bE(CONN|ACCES|NOENT)\w*|[A-Z]\w*Error\b|division by zero|stack/;

describe('refusals', () => {
  it.each(PROVOCATIONS)('A9: %s is refused as %s, in the one form, and tells nothing of the inside', async (_what, key, provoke) => {
    const { status, type, body, text, requestId } = await provoke();
    const about = CATALOGUE[key];
    expect([status, body['type'], type]).toEqual([about.status, `/v1/problems/${key}`, 'application/problem+json; charset=utf-8']);
    expect(body).toMatchObject({ status, title: about.title, remedy: about.remedy, requestId });
    expect(String(body['detail'])).toMatch(/^[^{}?]{5,}[.]$/);
    expect(requestId).toMatch(/^[0-9a-f-]{36}$/);
    expect(text).not.toMatch(INSIDE);
    const page = await api.anyone.get(String(body['type'])).set('Accept', 'application/json');
    expect([page.status, (page.body as { status?: number }).status]).toEqual([200, status]);
  });

  it('A9: what is no HTTP is told so on a connection that has served before, too', async () => {
    const { port } = api.server.address() as AddressInfo;
    const got = await new Promise<string>((resolve) => {
      const socket = connect(port, '127.0.0.1', () => socket.write('GET /livez HTTP/1.1\r\nHost: x\r\n\r\n'));
      let heard = '';
      let asked = false;
      socket.on('data', (bytes: Buffer) => {
        heard += bytes.toString('utf8');
        if (asked) return;
        asked = true;
        setTimeout(() => socket.write('HELLO\r\n\r\n'), 50);
      });
      socket.on('close', () => resolve(heard));
    });
    expect(got.match(/HTTP\/1\.1 \d+/g)).toEqual(['HTTP/1.1 200', 'HTTP/1.1 400']);
    expect(got).toContain('"type":"/v1/problems/malformed-request"');
  });

  it('A9: are provoked in every way that an API is refused in', () => {
    expect(PROVOCATIONS.length).toBeGreaterThanOrEqual(25);
    const statuses = new Set(PROVOCATIONS.map(([, key]) => CATALOGUE[key].status));
    expect([...statuses].sort()).toEqual([400, 401, 403, 404, 405, 406, 409, 412, 413, 415, 422, 428, 429, 431, 500]);
  });

  it('A9: the look for the inside finds it', () => {
    const leaks = [
      'Error: no\n    at PlansService.create (/home/app/apps/api/dist/plans.js:12:3)',
      'relation "sites" does not exist',
      'SELECT * FROM sites',
      'new row violates row-level security policy',
      'PrismaClientKnownRequestError',
      'connect ECONNREFUSED 127.0.0.1:5432',
    ];
    expect(leaks.filter((text) => !INSIDE.test(text))).toEqual([]);
  });
});
