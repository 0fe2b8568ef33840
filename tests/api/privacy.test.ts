import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { SCOPES, type Scope } from '../../apps/api/src/platform/access/scopes.js';
import { DocumentSources } from '../../apps/api/src/domains/documents/document-sources.js';
import { Database } from '../../apps/api/src/platform/database/database.js';
import { PURPOSES } from '../../apps/api/src/domains/privacy/purposes.js';
import { startApi, type TestApi, type TestGarden, type TestPerson } from '../support/api-app.js';
import { cold, firstBuild, make } from '../support/example-requests.js';
import type { HttpClient } from '../support/http-client.js';
import { asAdmin } from '../support/people.js';
import { computeByHand } from '../support/transfer.js';

let api: TestApi;
let garden: TestGarden;
let wren: TestPerson;
let ash: TestPerson;
let coordinator: TestPerson;
let leader: TestPerson;
let visitor: TestPerson;

beforeAll(async () => {
  api = await startApi();
  garden = await api.garden();
  const { gardenId } = garden;
  [wren, ash, coordinator, leader, visitor] = [
    await api.person(gardenId, ['member']),
    await api.person(gardenId, ['member']),
    await api.person(gardenId, ['coordinator']),
    await api.person(gardenId, ['safetyLead']),
    await api.person(gardenId, ['extensionVolunteer']),
  ];
});
afterAll(() => api.stop());

const [LATITUDE, LONGITUDE] = [39.93417, -104.58263];
let number = 0;
const place = (changes: object = {}): object => ({
  ...cold.site,
  latitudeDeg: LATITUDE,
  longitudeDeg: LONGITUDE,
  name: `Plot ${(number += 1)}`,
  shared: true,
  ...changes,
});

const agree = async (http: HttpClient, purpose: string): Promise<void> => {
  const answer = await http.request('post', '/v1/members/me/consents').send({ purpose, wordingVersion: 1 });
  expect([answer.status, answer.body]).toEqual([200, expect.objectContaining({ purpose, given: true })]);
};
const takeBack = async (http: HttpClient, purpose: string): Promise<void> => {
  expect((await http.request('post', '/v1/members/me/consents/withdrawals').send({ purpose })).body).toMatchObject({ purpose, given: false });
};

const EXACT = { latitudeDeg: LATITUDE, longitudeDeg: LONGITUDE, coordinatesExact: true };
const COARSE = { latitudeDeg: 39.93, longitudeDeg: -104.58, coordinatesExact: false, outline: null };

describe('where a site lies', () => {
  it('E2: is told exactly to its owner and to coordinators, and to about a kilometre to everybody else until the owner agrees', async () => {
    const { id, body, etag } = await make(wren.http, '/v1/sites', place());
    expect([body, etag]).toEqual([expect.objectContaining(EXACT), '"1"']);
    const seen = async (http: HttpClient): Promise<unknown> => (await http.get(`/v1/sites/${id}`)).body;
    for (const who of [wren, coordinator]) expect(await seen(who.http)).toMatchObject(EXACT);
    for (const who of [ash, leader, visitor]) expect(await seen(who.http)).toMatchObject(COARSE);
    const { items } = (await ash.http.get('/v1/sites')).body as { items: { id: string }[] };
    expect(items.find((one) => one.id === id)).toMatchObject(COARSE);

    await agree(wren.http, 'exactLocation');
    for (const who of [ash, leader]) expect(await seen(who.http)).toMatchObject(EXACT);
    // A visitor is told more only when that was agreed to as well.
    expect(await seen(visitor.http)).toMatchObject(COARSE);
    await agree(wren.http, 'shareWithExtension');
    expect(await seen(visitor.http)).toMatchObject(EXACT);
    for (const purpose of ['exactLocation', 'shareWithExtension']) await takeBack(wren.http, purpose);
    for (const who of [ash, leader, visitor]) expect(await seen(who.http)).toMatchObject(COARSE);
  });

  it('E2: nothing of an answer gives the exact figures away: neither what was typed, nor the outline, nor the map', async () => {
    const ring = [
      [LONGITUDE, LATITUDE],
      [LONGITUDE + 0.001, LATITUDE],
      [LONGITUDE + 0.001, LATITUDE + 0.001],
      [LONGITUDE, LATITUDE],
    ];
    const { id } = await make(wren.http, '/v1/sites', place({ latitudeDeg: `${LATITUDE} deg`, outline: { type: 'Polygon', coordinates: [ring] } }));
    expect((await wren.http.get(`/v1/sites/${id}`)).text).toContain(String(LATITUDE));
    const exported = async (http: HttpClient): Promise<string> =>
      (
        (
          await http
            .get('/v1/sites.geojson')
            .buffer(true)
            .parse((stream, done) => {
              const chunks: Buffer[] = [];
              stream.on('data', (chunk: Buffer) => chunks.push(chunk)).on('end', () => done(null, Buffer.concat(chunks)));
            })
        ).body as Buffer
      ).toString('utf8');
    expect(await exported(wren.http)).toContain('39.934');
    for (const text of [(await ash.http.get(`/v1/sites/${id}`)).text, (await ash.http.get('/v1/sites')).text, await exported(ash.http)]) {
      expect(text).toContain('39.93');
      expect(text).not.toMatch(/39\.934|39\.935|104\.582|104\.581/);
    }
  });

  it('E2: the two forms have tags of their own, so that no cache mixes them up, and each may be changed under its own', async () => {
    const { id } = await make(garden.http, '/v1/sites', place());
    const coarse = api.as(await api.keyOf(garden.gardenId, ['sites:read', 'sites:write']));
    const [exactly, roughly] = [await garden.http.get(`/v1/sites/${id}`), await coarse.get(`/v1/sites/${id}`)];
    expect([exactly.body, roughly.body]).toEqual([expect.objectContaining(EXACT), expect.objectContaining(COARSE)]);
    expect([exactly.headers['etag'], roughly.headers['etag']]).toEqual(['"1"', '"1-coarse"']);
    expect((await garden.http.get(`/v1/sites/${id}`).set('If-None-Match', '"1-coarse"')).status).toBe(200);
    expect((await coarse.get(`/v1/sites/${id}`).set('If-None-Match', '"1-coarse"')).status).toBe(304);
    // A change by who sees it roughly leaves the exact place as it is.
    const changed = await coarse.patch(`/v1/sites/${id}`, '"1-coarse"', { exposure: 'B' });
    expect([changed.status, changed.body]).toEqual([200, expect.objectContaining({ ...COARSE, exposure: 'B' })]);
    expect((await garden.http.get(`/v1/sites/${id}`)).body).toMatchObject({ ...EXACT, exposure: 'B' });
  });

  it('E2: a key tells it exactly only with the scope, and never more than whoever made the key may see', async () => {
    const { id } = await make(wren.http, '/v1/sites', place());
    const without = SCOPES.filter((scope) => scope !== 'sites:exact');
    expect((await api.as(await api.keyOf(garden.gardenId, without)).get(`/v1/sites/${id}`)).body).toMatchObject(COARSE);
    expect((await garden.http.get(`/v1/sites/${id}`)).body).toMatchObject(EXACT);
    const scopes: Scope[] = ['sites:read', 'sites:exact'];
    const made = await coordinator.http.post('/v1/keys', { name: 'a map', scopes });
    expect(made.status).toBe(201);
    const map = api.as((made.body as { key: string }).key);
    expect((await map.get(`/v1/sites/${id}`)).body).toMatchObject(EXACT);
    await asAdmin(api, `UPDATE members SET roles = ARRAY['safetyLead'] WHERE id = $1`, [coordinator.memberId]);
    expect((await map.get(`/v1/sites/${id}`)).body).toMatchObject(COARSE);
    await asAdmin(api, `UPDATE members SET roles = ARRAY['coordinator'] WHERE id = $1`, [coordinator.memberId]);
  });
});

describe('consent', () => {
  it('E2: is given for one purpose at a time, in words that are kept, and nothing is agreed to beforehand', async () => {
    const person = await api.person(garden.gardenId, ['member']);
    const before = (await person.http.get('/v1/members/me/consents')).body as {
      items: { purpose: string; given: boolean; since: null; wording: { text: string } }[];
    };
    expect(before.items.map(({ purpose }) => purpose)).toEqual([...PURPOSES]);
    expect(before.items.every(({ given, since }) => !given && since === null)).toBe(true);
    await agree(person.http, 'photoRelease');
    await agree(person.http, 'photoRelease');
    await takeBack(person.http, 'photoRelease');
    await takeBack(person.http, 'photoRelease');
    const history = (await person.http.get('/v1/members/me/consents/history')).body as { items: { given: boolean; wording: object; at: string }[] };
    const words = before.items.find(({ purpose }) => purpose === 'photoRelease')?.wording;
    expect(history.items.map(({ given, wording }) => [given, wording])).toEqual([
      [true, words],
      [false, words],
    ]);
    expect(history.items.every(({ at }) => Date.parse(at) > Date.now() - 60_000)).toBe(true);
  });

  it('E2: other words than those of today are not agreed to, and unknown purposes are refused', async () => {
    const old = await wren.http.request('post', '/v1/members/me/consents').send({ purpose: 'nameOnPrint', wordingVersion: 2 });
    expect(old.body).toMatchObject({ status: 400, errors: [{ pointer: '/wordingVersion', code: 'not-the-words-of-today' }] });
    expect((await wren.http.request('post', '/v1/members/me/consents').send({ purpose: 'everything', wordingVersion: 1 })).status).toBe(400);
  });

  it('E2: is a person’s own: no key agrees, and no member for another', async () => {
    expect((await garden.http.request('post', '/v1/members/me/consents').send({ purpose: 'nameOnPrint', wordingVersion: 1 })).body).toMatchObject({
      status: 403,
      type: '/v1/problems/person-only',
    });
    const [{ count }] = (await asAdmin<{ count: number }>(api, 'SELECT count(*)::int AS count FROM consents WHERE member_id = $1', [ash.memberId])) as [
      { count: number },
    ];
    expect(count).toBe(0);
  });

  it('E2: the history of consents can be added to and not changed', async () => {
    const rights = await asAdmin<{ right: string; has: boolean }>(
      api,
      `SELECT r AS right, has_any_column_privilege('lathwork_app', 'consents', r) AS has FROM unnest(ARRAY['SELECT', 'INSERT', 'UPDATE']) AS r
        UNION ALL SELECT 'DELETE', has_table_privilege('lathwork_app', 'consents', 'DELETE')`,
    );
    expect(Object.fromEntries(rights.map(({ right, has }) => [right, has]))).toEqual({ SELECT: true, INSERT: true, UPDATE: false, DELETE: false });
  });
});

describe('private details', () => {
  const WORDS = {
    phone: '+44 20 7946 0123',
    address: '7 Thistle Lane',
    healthNotes: 'carries an inhaler',
    needNotes: 'short of money in winter',
    photoWish: 'askFirst',
  };
  const mine = async (person: TestPerson, patch: object = WORDS): Promise<void> => {
    const { headers } = await person.http.get('/v1/members/me/private-details');
    expect((await person.http.patch('/v1/members/me/private-details', headers['etag'] as string, patch)).status).toBe(200);
  };

  it('E2: are seen by the member alone, whoever else asks', async () => {
    await mine(wren);
    expect((await wren.http.get('/v1/members/me/private-details')).body).toEqual({ version: 1, ...WORDS });
    expect((await ash.http.get('/v1/members/me/private-details')).body).toMatchObject({ version: 0, phone: null });
    for (const who of [ash, coordinator, leader, visitor]) {
      const answer = await who.http.get(`/v1/members/${wren.memberId}/shared-details`);
      expect(answer.body).toEqual({ memberId: wren.memberId, phone: null, healthNotes: null, photoWish: 'askFirst', photoRelease: false });
      expect((await who.http.get(`/v1/members/${wren.memberId}`)).text).not.toMatch(/7946|Thistle|inhaler|money/);
    }
    expect((await garden.http.get(`/v1/members/${wren.memberId}/shared-details`)).status).toBe(403);
  });

  it('E2: a health need goes to the safety lead with consent, to nobody else, and the reading is noted; taken back it is gone at once', async () => {
    await mine(wren);
    const health = async (who: TestPerson): Promise<unknown> =>
      ((await who.http.get(`/v1/members/${wren.memberId}/shared-details`)).body as { healthNotes: unknown }).healthNotes;
    await agree(wren.http, 'healthToLeader');
    expect(await health(leader)).toBe(WORDS.healthNotes);
    for (const who of [ash, coordinator, visitor]) expect(await health(who)).toBeNull();
    const noted = await asAdmin(api, `SELECT 1 FROM audit_entries WHERE action = 'member.health-notes-read' AND object_id = $1 AND member_id = $2`, [
      wren.memberId,
      leader.memberId,
    ]);
    expect(noted).toHaveLength(1);
    await takeBack(wren.http, 'healthToLeader');
    expect(await health(leader)).toBeNull();
  });

  it('E2: a phone number is shared with the members by consent, and with visitors by a second one', async () => {
    await mine(ash);
    const phone = async (who: TestPerson): Promise<unknown> =>
      ((await who.http.get(`/v1/members/${ash.memberId}/shared-details`)).body as { phone: unknown }).phone;
    expect(await phone(wren)).toBeNull();
    await agree(ash.http, 'contactSharing');
    expect([await phone(wren), await phone(visitor)]).toEqual([WORDS.phone, null]);
    await agree(ash.http, 'shareWithExtension');
    expect(await phone(visitor)).toBe(WORDS.phone);
  });

  it('E2: lie sealed: a copy of the database tells nothing, and a row moved to another member does not open', async () => {
    await mine(wren);
    const rows = await asAdmin<{ text: string }>(
      api,
      `SELECT encode(details_sealed, 'escape') || encode(health_sealed, 'escape') AS text FROM member_privates`,
    );
    expect(rows.length).toBeGreaterThan(0);
    for (const { text } of rows) expect(text).not.toMatch(/7946|Thistle|inhaler|money/);
    const thief = await api.person(garden.gardenId, ['member']);
    await asAdmin(
      api,
      `INSERT INTO member_privates (garden_id, member_id, details_sealed) SELECT garden_id, $2, details_sealed FROM member_privates WHERE member_id = $1`,
      [wren.memberId, thief.memberId],
    );
    expect((await thief.http.get('/v1/members/me/private-details')).status).toBe(500);
    await asAdmin(api, 'DELETE FROM member_privates WHERE member_id = $1', [thief.memberId]);
  });

  it('E2: are gone when the member takes them away, and when the member leaves', async () => {
    const person = await api.person(garden.gardenId, ['member']);
    const kept = async (): Promise<number> => (await asAdmin(api, 'SELECT 1 FROM member_privates WHERE member_id = $1', [person.memberId])).length;
    await mine(person);
    expect((await person.http.request('delete', '/v1/members/me/private-details')).status).toBe(204);
    expect(await kept()).toBe(0);
    await mine(person);
    expect(await kept()).toBe(1);
    expect((await person.http.request('delete', `/v1/members/${person.memberId}`)).status).toBe(204);
    expect(await kept()).toBe(0);
  });
});

describe('who gave a thing', () => {
  const GIFT = { name: 'Marjoram Oldfield', wishesToBeNamed: false, value: { minor: 12_300, currency: 'USD' } };
  const [thing] = cold.stock;

  it('E5: is known to coordinator, treasurer and storekeeper, and in no answer to anybody else', async () => {
    const keeper = await api.person(garden.gardenId, ['storekeeper']);
    const { id, body } = await make(keeper.http, '/v1/stock', { ...thing, tag: 'GIFT-1', donor: GIFT });
    expect(body['donor']).toEqual(GIFT);
    const seen = async (http: HttpClient): Promise<[unknown, string, string]> => {
      const one = await http.get(`/v1/stock/${id}`);
      return [
        (one.body as { donor: unknown }).donor,
        one.headers['etag'] as string,
        one.text + (await http.get('/v1/stock')).text + (await http.get('/v1/stock.csv')).text,
      ];
    };
    for (const who of [keeper, coordinator]) expect((await seen(who.http)).slice(0, 2)).toEqual([GIFT, '"1"']);
    const reader = api.as(await api.keyOf(garden.gardenId, ['stock:read']));
    for (const http of [wren.http, leader.http, reader]) {
      const [donor, etag, text] = await seen(http);
      expect([donor, etag]).toEqual([null, '"1-plain"']);
      expect(text).not.toMatch(/Oldfield|12300/);
    }
  });

  it('E5: is changed and taken away by the storekeeper, and stays while other things change', async () => {
    const keeper = await api.person(garden.gardenId, ['storekeeper']);
    const { id, etag } = await make(keeper.http, '/v1/stock', { ...thing, tag: 'GIFT-2', donor: GIFT });
    const graded = await keeper.http.patch(`/v1/stock/${id}`, etag, { grade: 'B' });
    expect(graded.body).toMatchObject({ grade: 'B', donor: GIFT });
    const named = await keeper.http.patch(`/v1/stock/${id}`, '"2"', { donor: { wishesToBeNamed: true } });
    expect(named.body).toMatchObject({ donor: { ...GIFT, wishesToBeNamed: true } });
    expect((await keeper.http.patch(`/v1/stock/${id}`, '"3"', { donor: null })).body).toMatchObject({ donor: null });
  });

  it('E5: lies sealed in the database', async () => {
    const rows = await asAdmin<{ text: string }>(api, 'SELECT details::text AS text FROM stock_items');
    expect(rows.some(({ text }) => text.includes('donorSealed'))).toBe(true);
    for (const { text } of rows) expect(text).not.toMatch(/Oldfield|Marjoram/);
  });
});

describe('a name on paper', () => {
  it('E2: stands there with consent only; without it the garden has drawn the plan', async () => {
    const person = await api.person(garden.gardenId, ['member']);
    const site = await make(person.http, '/v1/sites', place());
    const { structure, wishes, crew, budget } = firstBuild();
    const shelter = await make(person.http, '/v1/structures', { name: 'On paper', ...structure });
    const build = await make(person.http, '/v1/builds', { name: 'On paper', siteId: site.id, structureId: shelter.id, wishes, crew, budget });
    const { id: planId } = (await person.http.post('/v1/plans', { buildId: build.id })).body as { id: string };
    await computeByHand(api, [planId]);
    const options = { kind: 'planBook', language: 'en', paper: 'a4', units: 'metric' } as const;
    const drawnBy = async (): Promise<string> =>
      (await api.get(Database).readSnapshot({ gardenId: garden.gardenId }, (db) => api.get(DocumentSources).requestFor(db, planId, options))).names.drawnBy;
    expect(await drawnBy()).toBe('Yarrow plot');
    await agree(person.http, 'nameOnPrint');
    expect(await drawnBy()).toBe(`Person ${person.memberId.slice(-4)}`);
    await takeBack(person.http, 'nameOnPrint');
    expect(await drawnBy()).toBe('Yarrow plot');
  });
});
