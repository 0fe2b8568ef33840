import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { REQUEST_EXAMPLES } from '../../apps/api/src/examples/requests.js';
import { PIVOT, type Grant, type OperationId, type PivotRow } from '../../apps/api/src/platform/access/pivot.js';
import { ROLES, type Role } from '../../apps/api/src/platform/access/roles.js';
import { SCOPES } from '../../apps/api/src/platform/access/scopes.js';
import { newId } from '../../apps/api/src/platform/database/ids.js';
import { PublishedDocument } from '../../apps/api/src/platform/http/docs.controller.js';
import { startApi, type TestApi, type TestPerson } from '../support/api-app.js';
import { contractOf, type Contract, type Described, type Json } from '../support/contract.js';
import { addressOf, makeWorld, namesIn, withRealIds, type Ids, type World } from '../support/contract-world.js';
import { firstBuild, make } from '../support/example-requests.js';
import type { HttpClient } from '../support/http-client.js';
import { jpeg } from '../support/pictures.js';

// Every operation of the document, called as every role, by keys, and by the people and keys of a second garden. What must
// come back is read from the table of roles and from nowhere else; an operation without a row, or without a real thing for
// its address, fails here.

const NOT_IN_A_GARDEN = ['public', 'operator', 'account', 'founder'];
/** Pages for people that the document does not list. */
const UNLISTED = ['getDocs'];

let api: TestApi;
let contract: Contract;
let world: World;
/** Rows of one member, shared with nobody. */
let private_: Ids;
let owner: TestPerson;
const people = new Map<Role, TestPerson>();
const strangers = new Map<Role, TestPerson>();
let strangeKey: HttpClient;
let inGarden: Described[] = [];

const rowOf = (id: string): PivotRow => PIVOT[id as OperationId];
const isRead = ({ method }: Described): boolean => method === 'get';

/** One call with everything an operation takes; what it changes is not the point here, who may try is. */
const call = async (http: HttpClient, operation: Described, ids: Ids, body?: unknown) => {
  const query = operation.parameters.filter((one) => one.in === 'query' && one.required).map((one) => [one.name, String(one.example)]);
  const address = addressOf(operation.path, ids) + (query.length > 0 ? `?${String(new URLSearchParams(query))}` : '');
  let request = http
    .request(operation.method, address)
    .set('If-Match', '"1"')
    .set('Idempotency-Key', newId())
    .ok(() => true);
  const [type] = Object.keys(operation.body ?? {});
  const given = body ?? REQUEST_EXAMPLES[operation.id];
  if (type?.includes('json') && given !== undefined) request = request.set('Content-Type', type).send(JSON.stringify(withRealIds(given, ids)));
  else if (type?.startsWith('image/')) request = request.set('Content-Type', 'image/jpeg').send(await jpeg());
  const answer = await request;
  return { status: answer.status, type: (answer.body as Json | undefined)?.['type'], text: answer.text ?? '' };
};

/** An answer without what is different in every answer, ids included. */
const plain = ({ status, text }: { status: number; text: string }): string =>
  `${status} ${text.replaceAll(/[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}/g, 'ID')}`;

const personOf = (role: Role): TestPerson => people.get(role) as TestPerson;

/** A hold on whatever is still free on the pile. */
const claimSomething = async (http: HttpClient, buildId: string): Promise<string> => {
  for (const { tag } of (await http.get('/v1/stock?limit=100')).body.items as { tag: string }[]) {
    const claim = await http.post(`/v1/builds/${buildId}/claims`, { tag });
    if (claim.status === 201) return claim.body.id as string;
  }
  throw new Error('nothing on the pile is free');
};

/** What a member makes for themselves, by the names of the world. */
const makePrivate = async (http: HttpClient): Promise<Ids> => {
  const { structure, wishes, crew, budget } = firstBuild();
  const site = await make(http, '/v1/sites', { ...(REQUEST_EXAMPLES['createSite'] as Json), name: 'Nobody else’s plot' });
  const shelter = await make(http, '/v1/structures', { name: 'Nobody else’s shelter', ...structure });
  const build = await make(http, '/v1/builds', { name: 'Nobody else’s', siteId: site.id, structureId: shelter.id, wishes, crew, budget });
  const plan = await http.post('/v1/plans', { buildId: build.id }).set('Prefer', 'wait=30');
  const document = await http.post('/v1/documents', { ...(REQUEST_EXAMPLES['createDocument'] as Json), planId: plan.body.id });
  const spending = await make(http, '/v1/spending', { purpose: 'tape', amount: { minor: 100, currency: 'USD' } });
  const photo = await http
    .request('post', `/v1/builds/${build.id}/photos?showsPeople=false`)
    .set('Content-Type', 'image/jpeg')
    .send(await jpeg());
  return {
    site: site.id,
    structure: shelter.id,
    build: build.id,
    plan: plan.body.id as string,
    document: document.body.id as string,
    spending: spending.id,
    buildPhoto: photo.body.id as string,
    // The job that makes a plan has the plan's id.
    job: plan.body.id as string,
    claim: await claimSomething(http, build.id),
  };
};

beforeAll(async () => {
  const many = '1000000';
  api = await startApi({
    jobs: true,
    env: { RATE_PER_ADDRESS: many, RATE_PER_CREDENTIAL: many, RATE_PER_GARDEN: many, RATE_COSTLY: many, JOBS_WAITING: '1000' },
  });
  contract = contractOf(api.get(PublishedDocument).text);
  world = await makeWorld(api, contract.of);
  const gardenId = world.ids['garden'] ?? '';
  owner = await api.person(gardenId, ['member']);
  private_ = { ...world.ids, ...(await makePrivate(owner.http)) };
  for (const role of ROLES) people.set(role, await api.person(gardenId, [role]));
  const other = await api.garden();
  strangeKey = other.http;
  for (const role of ROLES) strangers.set(role, await api.person(other.gardenId, [role]));
  // Reading comes before changing, and what takes things away comes last.
  const rank = ({ method }: Described): number => ['get', 'post', 'patch', 'delete'].indexOf(method);
  inGarden = contract.operations.filter(({ id }) => !NOT_IN_A_GARDEN.includes(rowOf(id).access)).sort((a, b) => rank(a) - rank(b));
}, 120_000);
afterAll(() => api.stop());

describe('S9: the table of roles', () => {
  it('has a row for every operation of the document, and none besides', () => {
    expect(Object.keys(PIVOT).sort()).toEqual([...contract.operations.map(({ id }) => id), ...UNLISTED].sort());
    expect(inGarden.length).toBeGreaterThan(70);
  });

  it('stands in the document beside every operation: the scope of a key, the roles and how far they reach', () => {
    for (const { id, path, method } of inGarden) {
      const described = contract.document.paths[path]?.[method] as Json;
      const { access, roles } = rowOf(id);
      const reaching = Object.fromEntries(Object.entries(roles).filter(([, grant]) => grant !== 'deny'));
      expect([id, described['x-scope'] ?? 'person', described['x-roles']]).toEqual([id, access, reaching]);
    }
  });

  it('has a real thing in the tests for every address', () => {
    expect(inGarden.filter(({ path }) => namesIn(path) === null).map(({ path }) => path)).toEqual([]);
  });

  it('denies every role but the coordinator something, and opens to all what is the same for all', () => {
    for (const role of ROLES.filter((one) => one !== 'coordinator')) expect(inGarden.some(({ id }) => rowOf(id).roles[role] === 'deny')).toBe(true);
    const forAll = inGarden.filter(({ id }) => Object.values(rowOf(id).roles).every((grant) => grant === 'all')).map(({ id }) => id);
    expect(forAll.sort()).toEqual(['getClimateStation', 'getGarden', 'listClimateStations'].sort());
  });
});

describe('API5: every operation as every role', () => {
  it.each(ROLES)(
    'denied to a %s where the table says so',
    async (role) => {
      for (const operation of inGarden.filter(({ id }) => rowOf(id).roles[role] === 'deny')) {
        const { status, type } = await call(personOf(role).http, operation, world.ids);
        expect([operation.id, status, type]).toEqual([operation.id, 403, '/v1/problems/role-missing']);
      }
    },
    120_000,
  );

  it.each(ROLES)(
    'open to a %s for reading where the table says so',
    async (role) => {
      const reads = inGarden.filter((operation) => isRead(operation) && rowOf(operation.id).roles[role] === 'all');
      const answers: unknown[] = [];
      for (const operation of reads) {
        const { status, type } = await call(personOf(role).http, operation, private_);
        if (status !== 200 && type !== '/v1/problems/document-not-ready') answers.push([operation.id, status, type]);
      }
      expect(answers).toEqual([]);
    },
    120_000,
  );

  it('denied to a key without the scope, whatever other scopes it has; open to a key with that scope alone', async () => {
    const gardenId = world.ids['garden'] ?? '';
    for (const scope of SCOPES) {
      const all = inGarden.filter(({ id }) => rowOf(id).access === scope);
      const others = api.as(
        await api.keyOf(
          gardenId,
          SCOPES.filter((one) => one !== scope),
        ),
      );
      const alone = api.as(await api.keyOf(gardenId, [scope]));
      for (const operation of all) {
        const without = await call(others, operation, world.ids);
        expect([operation.id, without.status, without.type]).toEqual([operation.id, 403, '/v1/problems/scope-missing']);
        if (!isRead(operation)) continue;
        const { status } = await call(alone, operation, world.ids);
        expect([operation.id, status < 400 || status === 409]).toEqual([operation.id, true]);
      }
    }
  }, 120_000);

  it('denied to every key where only a person decides', async () => {
    const persons = inGarden.filter(({ id }) => rowOf(id).access === 'person');
    expect(persons.length).toBeGreaterThan(0);
    for (const operation of persons) expect((await call(world.http, operation, world.ids)).type).toBe('/v1/problems/person-only');
  });

  it('denied to nobody, to a made-up key, to an ended session, and to the operator', async () => {
    const ended = await api.person(world.ids['garden'] ?? '', ['coordinator']);
    await ended.http.request('delete', '/v1/sessions/current').expect(204);
    const made = `lw_${'a'.repeat(36)}`;
    for (const operation of inGarden) {
      for (const http of [api.anyone, api.as(made), ended.http]) {
        const { status, type } = await call(http, operation, world.ids);
        expect([operation.id, status, type]).toEqual([operation.id, 401, '/v1/problems/unauthenticated']);
      }
      expect([operation.id, (await call(api.operator, operation, world.ids)).type]).toEqual([operation.id, '/v1/problems/garden-only']);
    }
  }, 120_000);
});

describe('API1: a row of another member', () => {
  /** Things that a member owned alone, by their names in the world. */
  const OWNED = ['site', 'structure', 'build', 'plan', 'document', 'spending', 'buildPhoto', 'job', 'claim'];
  const about = (grant: Grant, role: Role): Described[] =>
    inGarden.filter(({ id, path }) => rowOf(id).roles[role] === grant && (namesIn(path) ?? []).some((name) => OWNED.includes(name)));

  it.each(ROLES)(
    'does not exist for a %s who reaches only own rows, and answers as an unknown id does',
    async (role) => {
      const operations = about('own', role);
      for (const operation of operations) {
        const unknown = Object.fromEntries(Object.entries(private_).map(([name, id]) => [name, OWNED.includes(name) ? newId() : id]));
        const theirs = await call(personOf(role).http, operation, private_);
        const nobodys = await call(personOf(role).http, operation, unknown);
        expect([operation.id, theirs.status]).toEqual([operation.id, 404]);
        expect([operation.id, plain(theirs)]).toEqual([operation.id, plain(nobodys)]);
      }
      if (role === 'member' || role === 'extensionVolunteer') expect(operations.length).toBeGreaterThan(10);
    },
    120_000,
  );

  it('is there for its owner', async () => {
    const answers: unknown[] = [];
    for (const operation of about('own', 'member').filter(isRead)) {
      const { status, type } = await call(owner.http, operation, private_);
      if (status !== 200 && type !== '/v1/problems/document-not-ready') answers.push([operation.id, status, type]);
    }
    expect(answers).toEqual([]);
  }, 60_000);

  it('is in no list of another member', async () => {
    const ids = OWNED.map((name) => private_[name] ?? '');
    for (const operation of inGarden.filter((one) => isRead(one) && rowOf(one.id).roles.member === 'own' && namesIn(one.path)?.length === 0)) {
      const { text } = await call(personOf('member').http, operation, world.ids);
      expect([operation.id, ids.filter((id) => text.includes(id))]).toEqual([operation.id, []]);
    }
  });
});

describe('API1: a row of another garden', () => {
  it('does not exist for any of its people and keys, and answers as an unknown id does', async () => {
    const withIds = inGarden.filter(({ path }) => (namesIn(path) ?? []).some((name) => !['station', 'problem'].includes(name)));
    expect(withIds.length).toBeGreaterThan(40);
    const unknown = Object.fromEntries(Object.entries(world.ids).map(([name, id]) => [name, /^[0-9a-f-]{36}$/.test(id) ? newId() : id]));
    for (const operation of withIds) {
      const callers: [string, HttpClient][] = [
        ...(rowOf(operation.id).access === 'person' ? [] : ([['key', strangeKey]] as [string, HttpClient][])),
        ...ROLES.filter((role) => rowOf(operation.id).roles[role] !== 'deny').map((role): [string, HttpClient] => [
          role,
          (strangers.get(role) as TestPerson).http,
        ]),
      ];
      for (const [who, http] of callers) {
        const theirs = await call(http, operation, world.ids);
        expect([operation.id, who, theirs.status]).toEqual([operation.id, who, 404]);
        expect([operation.id, who, plain(theirs)]).toEqual([operation.id, who, plain(await call(http, operation, unknown))]);
      }
    }
  }, 180_000);

  it('cannot be named in a body', async () => {
    const creating = inGarden.filter(({ id, path }) => namesIn(path)?.length === 0 && /019a1c3e-0000-7000/.test(JSON.stringify(REQUEST_EXAMPLES[id] ?? {})));
    expect(creating.map(({ id }) => id)).toEqual(expect.arrayContaining(['createBuild', 'createPlan', 'createDocument', 'createSpendRequest']));
    const unknown = Object.fromEntries(Object.entries(world.ids).map(([name]) => [name, newId()]));
    for (const operation of creating) {
      const theirs = await call(strangeKey, operation, world.ids);
      expect([operation.id, [400, 404].includes(theirs.status)]).toEqual([operation.id, true]);
      expect([operation.id, plain(theirs)]).toEqual([operation.id, plain(await call(strangeKey, operation, unknown))]);
    }
  });

  it('is in none of its lists', async () => {
    const ids = Object.entries(world.ids).flatMap(([name, id]) => (['station', 'problem'].includes(name) ? [] : [id]));
    for (const operation of inGarden.filter((one) => isRead(one) && namesIn(one.path)?.length === 0)) {
      const { text } = await call(strangeKey, operation, world.ids);
      expect([operation.id, ids.filter((id) => text.includes(id))]).toEqual([operation.id, []]);
    }
  });

  it('A18: is not reached by a cursor, nor by a changed one', async () => {
    const { next } = (await world.http.get('/v1/stock?limit=1')).body as { next: string };
    expect(typeof next).toBe('string');
    expect((await strangeKey.get(`/v1/stock?limit=1&cursor=${next}`)).body.type).toBe('/v1/problems/cursor-invalid');
    expect((await world.http.get(`/v1/prices?limit=1&cursor=${next}`)).body.type).toBe('/v1/problems/cursor-invalid');
    const bytes = Buffer.from(next, 'base64url');
    for (let at = 0; at < bytes.length; at += 1)
      for (const flip of [1, 2, 4, 128]) {
        const other = Buffer.from(bytes);
        other.writeUInt8(other.readUInt8(at) ^ flip, at);
        expect((await world.http.get(`/v1/stock?limit=1&cursor=${other.toString('base64url')}`)).status).toBe(400);
      }
  }, 60_000);

  it('is not entered by naming it: a member of one garden is nobody in the other', async () => {
    for (const operation of inGarden) {
      const outsider = api.as(personOf('coordinator').token);
      const answer = await outsider
        .request(operation.method, addressOf(operation.path, world.ids))
        .set('Lathwork-Garden', newId())
        .ok(() => true);
      expect([operation.id, (answer.body as Json)['type']]).toEqual([operation.id, '/v1/problems/not-a-member']);
    }
  }, 60_000);
});

describe('API5: changes that the table allows', () => {
  it.each(ROLES)(
    'are not refused to a %s for who they are',
    async (role) => {
      const refusals: unknown[] = [];
      // One's own membership ends last of all.
      const changes = inGarden.filter((operation) => !isRead(operation) && rowOf(operation.id).roles[role] === 'all' && operation.id !== 'removeMember');
      for (const operation of changes) {
        const { status, type } = await call(personOf(role).http, operation, world.ids);
        if (status === 401 || status >= 500 || type === '/v1/problems/role-missing') refusals.push([operation.id, status, type]);
      }
      expect(refusals).toEqual([]);
    },
    120_000,
  );
});
