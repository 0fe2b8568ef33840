import { connect } from 'node:net';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { REQUEST_EXAMPLES } from '../../apps/api/src/examples/requests.js';
import { PIVOT, type OperationId } from '../../apps/api/src/platform/access/pivot.js';
import { ROLES, type Role } from '../../apps/api/src/platform/access/roles.js';
import { newId } from '../../apps/api/src/platform/database/ids.js';
import { PublishedDocument } from '../../apps/api/src/platform/http/docs.controller.js';
import { startApi, UNLIMITED, type TestApi, type TestPerson } from '../support/api-app.js';
import { contractOf, isJson, type Contract, type Described, type Json } from '../support/contract.js';
import { addressOf, makeWorld, namesIn, withRealIds, type World } from '../support/contract-world.js';
import { MERGE_PATCH } from '../support/http-client.js';

// The risks of the ten that are tried over every operation at once. The others have files of their own: one row (API1) and one
// function (API5) in roles, signing in (API2) and flows (API6) in authentication, other servers (API7) in outbound.

let api: TestApi;
let contract: Contract;
let world: World;
const people = new Map<Role, TestPerson>();

beforeAll(async () => {
  api = await startApi({ jobs: true, env: UNLIMITED });
  contract = contractOf(api.get(PublishedDocument).text);
  world = await makeWorld(api, contract.of);
  for (const role of ROLES) people.set(role, await api.person(world.ids['garden'] ?? '', [role]));
}, 120_000);
afterAll(() => api.stop());

const inGarden = (): Described[] =>
  contract.operations.filter(
    ({ id, path }) => !['public', 'operator', 'account', 'founder', 'person'].includes(PIVOT[id as OperationId].access) && namesIn(path),
  );

const schemaOf = (operation: Described): Json | undefined => {
  const [media] = Object.values(operation.body ?? {});
  const reference = media?.schema?.['$ref'];
  return typeof reference === 'string' ? (contract.document.components['schemas']?.[reference.split('/').at(-1) ?? ''] as Json) : media?.schema;
};

describe('API3: properties that are not the caller’s to set', () => {
  const OURS: Json = {
    id: newId(),
    gardenId: newId(),
    tenantId: newId(),
    version: 99,
    createdAt: '2020-01-01T00:00:00Z',
    updatedAt: '2020-01-01T00:00:00Z',
    archivedAt: null,
    ownerMemberId: newId(),
    createdById: newId(),
    requestedById: newId(),
    decidedById: newId(),
    accountId: newId(),
    role: 'coordinator',
    priceApproved: true,
    reviewBlocked: false,
    passwordPhc: 'x',
  };

  it('are refused by name, one and all, by every operation that takes a body', async () => {
    const takers = inGarden().filter((operation) => {
      const [type] = Object.keys(operation.body ?? {});
      return type?.includes('json') && isJson(REQUEST_EXAMPLES[operation.id]);
    });
    expect(takers.length).toBeGreaterThan(15);
    for (const operation of takers) {
      const known = Object.keys((schemaOf(operation)?.['properties'] as Json | undefined) ?? {});
      const foreign = Object.fromEntries(Object.entries(OURS).filter(([name]) => !known.includes(name)));
      const body = { ...(withRealIds(REQUEST_EXAMPLES[operation.id], world.ids) as Json), ...foreign };
      const [type = MERGE_PATCH] = Object.keys(operation.body ?? {});
      // A patch is looked at only when it names the version that is there.
      const now = operation.method === 'patch' ? ((await world.http.get(addressOf(operation.path, world.ids))).headers['etag'] as string) : '"1"';
      const answer = await world.http
        .request(operation.method, addressOf(operation.path, world.ids))
        .set('Content-Type', type)
        .set('If-Match', now)
        .ok(() => true)
        .send(JSON.stringify(body));
      const told = ((answer.body as { errors?: { pointer: string }[] }).errors ?? []).map(({ pointer }) => pointer);
      expect([operation.id, answer.status]).toEqual([operation.id, 400]);
      expect([operation.id, Object.keys(foreign).filter((name) => !told.includes(`/${name}`))]).toEqual([operation.id, []]);
    }
  }, 60_000);

  it.each(ROLES)(
    'are shown to a %s as the document says and no more',
    async (role) => {
      const reads = inGarden().filter((operation) => operation.method === 'get' && PIVOT[operation.id as OperationId].roles[role] !== 'deny');
      for (const operation of reads) {
        const media = operation.responses['200']?.content?.['application/json'];
        if (!media?.schema) continue;
        const query = operation.parameters.filter((one) => one.in === 'query' && one.required).map((one) => [one.name, String(one.example)]);
        const address = `${addressOf(operation.path, world.ids)}?${String(new URLSearchParams(query))}`;
        const answer = await (people.get(role) as TestPerson).http.get(address).ok(() => true);
        if (answer.status !== 200) continue;
        const check = contract.check(media.schema);
        expect([operation.id, check(answer.body), check.errors?.[0]]).toEqual([operation.id, true, undefined]);
      }
    },
    60_000,
  );
});

describe('API4: more than anybody needs', () => {
  const post = (body: string) =>
    world.http
      .request('post', '/v1/sites')
      .set('Content-Type', 'application/json')
      .ok(() => true)
      .send(body);

  it.each([
    ['a body one byte too long', () => `"${'x'.repeat(1_048_575)}"`, 413],
    ['800 kB of nested lists', () => '['.repeat(400_000) + ']'.repeat(400_000), 400],
    ['an object nested 60,000 deep', () => '{"a":'.repeat(60_000) + '1' + '}'.repeat(60_000), 400],
    ['an object of two thousand keys', () => `{${Array.from({ length: 2_000 }, (_, i) => `"k${i}":1`).join(',')}}`, 400],
    ['a number beyond all numbers', () => '{"latitudeDeg": 1e400}', 400],
    [
      'an outline of a million places',
      () => JSON.stringify({ outline: { type: 'Polygon', coordinates: [Array.from({ length: 60_000 }, () => [1, 2])] } }),
      400,
    ],
  ])('%s is refused, soon', async (_name, body, status) => {
    const text = body();
    const started = performance.now();
    const answer = await post(text);
    expect([answer.status, answer.headers['content-type']]).toEqual([status, expect.stringContaining('problem+json')]);
    // Far from any limit of speed: a parser that looks at each character twice for each level takes minutes.
    expect(performance.now() - started).toBeLessThan(5_000);
  });

  it.each(['1000000000', '-1', '0', '1e9', '0x10', ' 5', '%00'])('a limit of %s is refused', async (limit) => {
    expect((await world.http.get(`/v1/stock?limit=${limit}`)).status).toBe(400);
  });

  it('a request whose headers never end is dropped, and others are answered meanwhile', async () => {
    const { port } = api.server.address() as { port: number };
    expect(api.server.headersTimeout).toBeLessThanOrEqual(60_000);
    expect(api.server.requestTimeout).toBeGreaterThan(0);
    const slow = Array.from({ length: 20 }, () => connect(port, '127.0.0.1').on('error', () => undefined));
    for (const socket of slow) socket.write('GET /v1/sites HTTP/1.1\r\nHost: x\r\nX-Slow: ');
    expect((await world.http.get('/v1/sites')).status).toBe(200);
    for (const socket of slow) socket.destroy();
  });
});

describe('API8: what is left open by mistake', () => {
  it('nothing answers to TRACE, to addresses that frameworks open, or to files', async () => {
    for (const path of [
      '/',
      '/debug',
      '/metrics',
      '/admin',
      '/api',
      '/swagger',
      '/api-json',
      '/.env',
      '/.git/config',
      '/v1/../package.json',
      '/v1/%2e%2e/package.json',
    ])
      expect([path, (await api.anyone.get(path).ok(() => true)).status]).toEqual([path, 404]);
    const { port } = api.server.address() as { port: number };
    const trace = await new Promise<string>((resolve) => {
      const socket = connect(port, '127.0.0.1', () =>
        socket.write('TRACE /v1/sites HTTP/1.1\r\nHost: x\r\nAuthorization: Bearer seen\r\nConnection: close\r\n\r\n'),
      );
      let text = '';
      socket.on('data', (chunk) => (text += String(chunk))).on('close', () => resolve(text));
    });
    expect(trace).toMatch(/^HTTP\/1\.1 405 /);
    expect(trace).not.toContain('Bearer seen');
  });

  it('the server does not say what it is made of', async () => {
    const { headers } = await api.anyone.get('/livez');
    expect(headers['x-powered-by']).toBeUndefined();
    expect(headers['server']).toBeUndefined();
  });
});

describe('API9: what exists', () => {
  it('every operation of the document answers, and nothing private stands in the pages about it', async () => {
    for (const page of ['/v1/openapi.json', '/v1/docs', '/v1/problems']) {
      const { text, status } = await api.anyone.get(page);
      expect(status).toBe(200);
      for (const id of Object.values(world.ids).filter((one) => /^[0-9a-f-]{36}$/.test(one))) expect(text).not.toContain(id);
      expect(text).not.toMatch(/lws?_[0-9A-Za-z]{36}/);
    }
  });

  it('an address under another version does not exist', async () => {
    for (const path of ['/v0/sites', '/v2/sites', '/sites']) expect((await world.http.get(path)).status).toBe(404);
  });
});
