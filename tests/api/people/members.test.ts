import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { ROLES } from '../../../apps/api/src/platform/access/roles.js';
import { startApi, type TestApi } from '../../support/api-app.js';
import { make } from '../../support/example-requests.js';
import { exampleGarden } from '../../support/gardens.js';
import { asAdmin, inGardenOf, lastMailTo, mailTo, newAddress, problemOf, send, signedUp } from '../../support/people.js';

let api: TestApi;

beforeAll(async () => {
  api = await startApi({ env: { SIGN_UPS_PER_HOUR: '1000', INVITATIONS_PER_DAY: '5' } });
});
afterAll(() => api.stop());

interface MemberBody {
  id: string;
  name: string;
  roles: string[];
  leftAt: string | null;
  version: number;
}

const membersOf = async (http: { get(path: string): PromiseLike<{ body: unknown }> }, query = ''): Promise<MemberBody[]> =>
  ((await http.get(`/v1/members${query}`)).body as { items: MemberBody[] }).items;

describe('a garden of one’s own', () => {
  it('is made by a signed-in person, who becomes its coordinator and gets no key', async () => {
    const person = await signedUp(api);
    const answer = await person.http.post('/v1/gardens', exampleGarden('maritime').garden);
    expect(answer.status).toBe(201);
    const { garden, key } = answer.body as { garden: { id: string }; key: null };
    expect(key).toBeNull();
    const { items } = (await person.http.get('/v1/account/gardens')).body as { items: { gardenId: string; roles: string[] }[] };
    expect(items).toMatchObject([{ gardenId: garden.id, roles: ['coordinator'], archived: false }]);
    const shown = await inGardenOf(person.http, garden.id, 'get', '/v1/members');
    expect(shown.body).toMatchObject({ items: [{ name: person.name, roles: ['coordinator'], leftAt: null }] });
    expect(problemOf(await person.http.get('/v1/members'))).toBe('garden-required');
  });

  it('API6: is made only so often by one person', async () => {
    const person = await signedUp(api);
    const answers = [];
    for (let i = 0; i < 7; i += 1) answers.push(await person.http.post('/v1/gardens', { ...exampleGarden('maritime').garden, name: `Plot ${i}` }));
    expect(answers.map(({ status }) => status)).toEqual([201, 201, 201, 201, 201, 409, 409]);
    expect(problemOf(answers[5] as { body: unknown })).toBe('too-many-gardens');
    expect((await person.http.get('/v1/account/gardens?limit=2')).body).toMatchObject({ items: [{}, {}], next: expect.any(String) });
  });
});

describe('an invitation', () => {
  it('goes out by mail alone and is taken once, under the invited address', async () => {
    const { gardenId } = await api.garden();
    const coordinator = await api.person(gardenId, ['coordinator']);
    const person = await signedUp(api, 'Tansy Ditch');
    const made = await coordinator.http.post('/v1/invitations', { email: person.email.toUpperCase(), roles: ['storekeeper', 'member', 'member'] });
    expect(made.status).toBe(201);
    expect(made.body).toMatchObject({ email: person.email, roles: ['storekeeper', 'member'], state: 'open', invitedById: coordinator.memberId });
    const { code, subject, text } = await lastMailTo(api, person.email);
    expect(subject).toBe('Invitation to Yarrow plot');
    expect(text).toContain('storekeeper, member');
    expect(made.text).not.toContain(code);
    const stranger = await signedUp(api);
    expect(problemOf(await send(stranger.http, '/v1/invitations/redeem', { code }))).toBe('other-address');
    expect((await api.anyone.request('post', '/v1/invitations/redeem').send({ code })).status).toBe(401);
    const both = await Promise.all([1, 2, 3].map(() => send(person.http, '/v1/invitations/redeem', { code })));
    expect(both.map(({ status }) => status).sort()).toEqual([201, 422, 422]);
    const joined = both.find(({ status }) => status === 201)?.body as { memberId: string };
    const { id } = made.body as { id: string };
    expect((await coordinator.http.get(`/v1/invitations/${id}`)).body).toMatchObject({ state: 'accepted', email: null, acceptedMemberId: joined.memberId });
    expect((await inGardenOf(person.http, gardenId, 'get', `/v1/members/${joined.memberId}`)).body).toMatchObject({
      name: 'Tansy Ditch',
      roles: ['storekeeper', 'member'],
    });
    const actions = await asAdmin<{ action: string; member_id: string }>(api, 'SELECT action, member_id FROM audit_entries WHERE garden_id = $1 ORDER BY id', [
      gardenId,
    ]);
    expect(actions.map(({ action }) => action)).toEqual(expect.arrayContaining(['invitation.create', 'member.join']));
    expect(actions.find(({ action }) => action === 'member.join')?.member_id).toBe(joined.memberId);
  });

  it('ends after seven days, when it is taken back, and when a newer one goes to the same address', async () => {
    const { gardenId } = await api.garden();
    const { http } = await api.person(gardenId, ['coordinator']);
    const person = await signedUp(api);
    const invite = async () => {
      const { body } = await http.post('/v1/invitations', { email: person.email, roles: ['member'] });
      return { id: (body as { id: string }).id, expiresAt: (body as { expiresAt: string }).expiresAt, code: (await lastMailTo(api, person.email)).code };
    };
    const [first, second] = [await invite(), await invite()];
    expect(Math.round((Date.parse(first.expiresAt) - Date.now()) / 86_400_000)).toBe(7);
    expect(problemOf(await send(person.http, '/v1/invitations/redeem', { code: first.code }))).toBe('code-of-mail-invalid');
    expect((await http.request('delete', `/v1/invitations/${second.id}`)).status).toBe(204);
    expect(problemOf(await send(person.http, '/v1/invitations/redeem', { code: second.code }))).toBe('code-of-mail-invalid');
    const third = await invite();
    await asAdmin(api, `UPDATE invitations SET expires_at = now() - interval '1 second' WHERE id = $1`, [third.id]);
    expect(problemOf(await send(person.http, '/v1/invitations/redeem', { code: third.code }))).toBe('code-of-mail-invalid');
    expect((await http.get('/v1/invitations')).body).toMatchObject({
      items: [{ state: 'revoked', email: null }, { state: 'revoked' }, { state: 'expired', email: null }],
    });
  });

  it('API6: so many a day for one garden; the refused ones stand in the audit log', async () => {
    const { gardenId } = await api.garden();
    const { http } = await api.person(gardenId, ['coordinator']);
    const answers = [];
    for (let i = 0; i < 8; i += 1) answers.push(await http.post('/v1/invitations', { email: newAddress(), roles: ['member'] }));
    expect(answers.map(({ status }) => status)).toEqual([201, 201, 201, 201, 201, 429, 429, 429]);
    expect(Number(answers[7]?.headers['retry-after'])).toBeGreaterThan(80_000);
    expect(await asAdmin(api, `SELECT count(*)::int AS n FROM audit_entries WHERE garden_id = $1 AND action = 'invitation.refuse'`, [gardenId])).toEqual([
      { n: 3 },
    ]);
  });

  it('API5: is the coordinator’s to make, see and take back', async () => {
    const { gardenId } = await api.garden();
    const coordinator = await api.person(gardenId, ['coordinator']);
    const { id } = (await coordinator.http.post('/v1/invitations', { email: newAddress(), roles: ['member'] })).body as { id: string };
    for (const role of ROLES.filter((one) => one !== 'coordinator')) {
      const { http } = await api.person(gardenId, [role]);
      for (const answer of [
        await http.post('/v1/invitations', { email: newAddress(), roles: ['coordinator'] }),
        await http.get('/v1/invitations'),
        await http.get(`/v1/invitations/${id}`),
        await http.request('delete', `/v1/invitations/${id}`),
      ])
        expect([role, problemOf(answer)]).toEqual([role, 'role-missing']);
    }
    const other = await api.person((await api.garden()).gardenId, ['coordinator']);
    expect((await other.http.get(`/v1/invitations/${id}`)).status).toBe(404);
    expect((await other.http.request('delete', `/v1/invitations/${id}`)).status).toBe(404);
  });
});

describe('members', () => {
  it('API3: are shown by name and role, without mail address or account', async () => {
    const { gardenId } = await api.garden();
    const { http } = await api.person(gardenId, ['member']);
    const [one] = await membersOf(http);
    expect(Object.keys(one as object).sort()).toEqual(['createdAt', 'id', 'leftAt', 'name', 'roles', 'updatedAt', 'version']);
  });

  it('API1: of one’s own garden only; a guest sees themselves only', async () => {
    const { gardenId } = await api.garden();
    const [coordinator, funder] = [await api.person(gardenId, ['coordinator']), await api.person(gardenId, ['funder'])];
    const stranger = await api.person((await api.garden()).gardenId, ['coordinator']);
    expect((await membersOf(funder.http)).map(({ id }) => id)).toEqual([funder.memberId]);
    expect((await funder.http.get(`/v1/members/${coordinator.memberId}`)).status).toBe(404);
    expect((await membersOf(coordinator.http)).map(({ id }) => id)).toEqual([coordinator.memberId, funder.memberId]);
    const etag = (await coordinator.http.get(`/v1/members/${funder.memberId}`)).headers['etag'] as string;
    expect((await stranger.http.patch(`/v1/members/${funder.memberId}`, etag, { roles: ['member'] })).status).toBe(404);
    expect((await stranger.http.request('delete', `/v1/members/${funder.memberId}`)).status).toBe(404);
    const foreign = await inGardenOf(api.as(stranger.token), gardenId, 'get', '/v1/members');
    expect(problemOf(foreign)).toBe('not-a-member');
  });

  it('API5: get their roles from a coordinator; nobody gives themselves one', async () => {
    const { gardenId } = await api.garden();
    const [coordinator, member] = [await api.person(gardenId, ['coordinator']), await api.person(gardenId, ['member'])];
    const etag = (await member.http.get(`/v1/members/${member.memberId}`)).headers['etag'] as string;
    expect(problemOf(await member.http.patch(`/v1/members/${member.memberId}`, etag, { roles: ['coordinator'] }))).toBe('role-missing');
    expect(problemOf(await member.http.get('/v1/keys'))).toBe('role-missing');
    expect((await coordinator.http.patch(`/v1/members/${member.memberId}`, etag, { roles: [] })).status).toBe(400);
    expect((await coordinator.http.patch(`/v1/members/${member.memberId}`, etag, { roles: ['boss'] })).status).toBe(400);
    expect((await coordinator.http.patch(`/v1/members/${member.memberId}`, etag, { roles: ['coordinator'] })).body).toMatchObject({ roles: ['coordinator'] });
    // It holds from the next request on.
    expect((await member.http.get('/v1/keys')).status).toBe(200);
    expect((await coordinator.http.patch(`/v1/members/${member.memberId}`, etag, { roles: ['member'] })).status).toBe(412);
  });

  it('always keep a coordinator, also when two go in the same moment', async () => {
    for (let round = 0; round < 5; round += 1) {
      const { gardenId } = await api.garden();
      const [a, b] = [await api.person(gardenId, ['coordinator']), await api.person(gardenId, ['coordinator', 'member'])];
      const etag = (await a.http.get(`/v1/members/${b.memberId}`)).headers['etag'] as string;
      const answers = await Promise.all([
        a.http.request('delete', `/v1/members/${a.memberId}`),
        b.http.request('delete', `/v1/members/${b.memberId}`),
        a.http.patch(`/v1/members/${b.memberId}`, etag, { roles: ['member'] }),
      ]);
      expect(answers.some(({ status }) => status === 409 || status >= 401)).toBe(true);
      const left = await asAdmin(api, `SELECT count(*)::int AS n FROM members WHERE garden_id = $1 AND left_at IS NULL AND 'coordinator' = ANY (roles)`, [
        gardenId,
      ]);
      expect(left).toEqual([{ n: 1 }]);
    }
    const { gardenId } = await api.garden();
    const last = await api.person(gardenId, ['coordinator']);
    expect(problemOf(await last.http.request('delete', `/v1/members/${last.memberId}`))).toBe('last-coordinator');
    const etag = (await last.http.get(`/v1/members/${last.memberId}`)).headers['etag'] as string;
    expect(problemOf(await last.http.patch(`/v1/members/${last.memberId}`, etag, { roles: ['treasurer'] }))).toBe('last-coordinator');
    expect((await last.http.patch(`/v1/members/${last.memberId}`, etag, { roles: ['treasurer', 'coordinator'] })).status).toBe(200);
  });

  it('leave: what they kept becomes the garden’s, their access ends at once, the history says former member', async () => {
    const { gardenId } = await api.garden();
    const coordinator = await api.person(gardenId, ['coordinator']);
    const member = await api.person(gardenId, ['member']);
    const example = exampleGarden('maritime');
    const site = await make(member.http, '/v1/sites', example.site);
    const build = example.builds[0];
    const structure = await make(member.http, '/v1/structures', { name: build?.name, ...build?.structure });
    const owners = () =>
      asAdmin<{ owner: string | null }>(
        api,
        'SELECT owner_member_id AS owner FROM sites WHERE id = $1 UNION ALL SELECT owner_member_id FROM structures WHERE id = $2',
        [site.id, structure.id],
      );
    expect(await owners()).toEqual([{ owner: member.memberId }, { owner: member.memberId }]);
    expect((await coordinator.http.request('delete', `/v1/members/${member.memberId}`)).status).toBe(204);
    expect(await owners()).toEqual([{ owner: null }, { owner: null }]);
    expect(problemOf(await member.http.get('/v1/sites'))).toBe('not-a-member');
    expect((await membersOf(coordinator.http)).map(({ id }) => id)).toEqual([coordinator.memberId]);
    expect(await membersOf(coordinator.http, '?former=true')).toMatchObject([{}, { id: member.memberId, name: 'former member', leftAt: expect.any(String) }]);
    expect((await coordinator.http.request('delete', `/v1/members/${member.memberId}`)).status).toBe(204);
    const entries = await asAdmin<{ action: string }>(api, `SELECT action FROM audit_entries WHERE garden_id = $1 AND action LIKE 'member.%'`, [gardenId]);
    expect(entries).toEqual([{ action: 'member.remove' }]);
  });

  it('may leave by themselves and come back as the same member', async () => {
    const { gardenId } = await api.garden();
    const coordinator = await api.person(gardenId, ['coordinator']);
    const person = await signedUp(api, 'Tansy Ditch');
    const join = async (roles: string[]): Promise<string> => {
      await coordinator.http.post('/v1/invitations', { email: person.email, roles });
      const { body } = await send(person.http, '/v1/invitations/redeem', { code: (await lastMailTo(api, person.email)).code });
      return (body as { memberId: string }).memberId;
    };
    const first = await join(['member']);
    const someone = await api.person(gardenId, ['member']);
    expect((await inGardenOf(person.http, gardenId, 'delete', `/v1/members/${someone.memberId}`)).status).toBe(404);
    expect((await inGardenOf(person.http, gardenId, 'delete', `/v1/members/${first}`)).status).toBe(204);
    expect((await person.http.get('/v1/account/gardens')).body).toMatchObject({ items: [] });
    expect(await join(['treasurer'])).toBe(first);
    expect((await inGardenOf(person.http, gardenId, 'get', `/v1/members/${first}`)).body).toMatchObject({
      name: 'Tansy Ditch',
      roles: ['treasurer'],
      leftAt: null,
    });
    await coordinator.http.post('/v1/invitations', { email: person.email, roles: ['coordinator'] });
    const again = await send(person.http, '/v1/invitations/redeem', { code: (await mailTo(api, person.email)).at(-1)?.code as string });
    expect(problemOf(again)).toBe('conflict');
  });
});

describe('keys of members', () => {
  it('S15: hold only scopes that open something for their maker, and no key makes a stronger one', async () => {
    const { gardenId } = await api.garden();
    const coordinator = await api.person(gardenId, ['coordinator']);
    const made = await coordinator.http.post('/v1/keys', { name: 'Feed', scopes: ['garden:admin', 'members:read', 'sites:read'] });
    expect(made.status).toBe(201);
    const key = api.as((made.body as { key: string }).key);
    expect(problemOf(await key.post('/v1/keys', { name: 'x', scopes: ['sites:write'] }))).toBe('scope-beyond-own');
    const child = await key.post('/v1/keys', { name: 'child', scopes: ['sites:read'] });
    expect(child.status).toBe(201);
    const rows = await asAdmin<{ maker: string }>(api, 'SELECT created_by_member_id AS maker FROM api_keys WHERE garden_id = $1 AND name IN ($2, $3)', [
      gardenId,
      'Feed',
      'child',
    ]);
    expect(rows).toEqual([{ maker: coordinator.memberId }, { maker: coordinator.memberId }]);
  });

  it('S15: open no more than their maker’s roles of today, and end when the maker leaves', async () => {
    const { gardenId } = await api.garden();
    const [first, second] = [await api.person(gardenId, ['coordinator']), await api.person(gardenId, ['coordinator', 'treasurer'])];
    const made = await second.http.post('/v1/keys', { name: 'Feed', scopes: ['garden:read', 'members:write', 'sites:read', 'prices:read'] });
    const key = api.as((made.body as { key: string }).key);
    expect((await key.get('/v1/invitations')).status).toBe(200);
    const etag = (await first.http.get(`/v1/members/${second.memberId}`)).headers['etag'] as string;
    await first.http.patch(`/v1/members/${second.memberId}`, etag, { roles: ['treasurer'] });
    expect(problemOf(await key.get('/v1/invitations'))).toBe('role-missing');
    expect(problemOf(await key.get('/v1/sites'))).toBe('role-missing');
    expect((await key.get('/v1/prices')).status).toBe(200);
    await first.http.request('delete', `/v1/members/${second.memberId}`);
    expect((await key.get('/v1/prices')).status).toBe(401);
  });
});
