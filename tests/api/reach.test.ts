import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { startApi, type TestApi, type TestGarden, type TestPerson } from '../support/api-app.js';
import { cold, firstBuild, make } from '../support/example-requests.js';

let api: TestApi;
let garden: TestGarden;
let wren: TestPerson;
let ash: TestPerson;
let coordinator: TestPerson;
let funder: TestPerson;

beforeAll(async () => {
  api = await startApi();
  garden = await api.garden();
  wren = await api.person(garden.gardenId, ['member']);
  ash = await api.person(garden.gardenId, ['member']);
  coordinator = await api.person(garden.gardenId, ['coordinator']);
  funder = await api.person(garden.gardenId, ['funder']);
});
afterAll(() => api.stop());

const shelter = () => ({ ...firstBuild().structure, name: `Shelter ${Math.random()}` });

describe('a row belongs to whoever made it', () => {
  it('is seen by its owner and by the coordinator, and does not exist for another member', async () => {
    const { id, body } = await make(wren.http, '/v1/structures', shelter());
    expect(body).toMatchObject({ ownerMemberId: wren.memberId, shared: false });
    expect((await wren.http.get(`/v1/structures/${id}`)).status).toBe(200);
    expect((await coordinator.http.get(`/v1/structures/${id}`)).status).toBe(200);
    expect((await ash.http.get(`/v1/structures/${id}`)).body).toMatchObject({ type: '/v1/problems/not-found' });
    expect((await ash.http.get('/v1/structures')).body.items).toEqual([]);
  });

  it('is changed by its owner alone until it is shared; then by a coordinator, who can neither share nor hide it', async () => {
    const { id, etag } = await make(wren.http, '/v1/structures', shelter());
    expect((await coordinator.http.patch(`/v1/structures/${id}`, etag, { lengthM: 7 })).status).toBe(404);
    const shared = await wren.http.patch(`/v1/structures/${id}`, etag, { shared: true });
    expect(shared.body).toMatchObject({ shared: true, version: 2 });
    expect((await ash.http.get(`/v1/structures/${id}`)).status).toBe(200);
    expect((await ash.http.patch(`/v1/structures/${id}`, '"2"', { lengthM: 7 })).status).toBe(412);
    expect((await coordinator.http.patch(`/v1/structures/${id}`, '"2"', { shared: false })).body.errors).toEqual([
      expect.objectContaining({ pointer: '/shared', code: 'not-yours' }),
    ]);
    expect((await coordinator.http.patch(`/v1/structures/${id}`, '"2"', { floorMoist: false })).body).toMatchObject({
      version: 3,
      ownerMemberId: wren.memberId,
    });
  });

  it("is the garden's own when a key made it: every member sees it, a coordinator changes it", async () => {
    const { id, etag, body } = await make(garden.http, '/v1/sites', { ...cold.site, name: 'Common ground' });
    expect(body).toMatchObject({ ownerMemberId: null });
    expect((await ash.http.get(`/v1/sites/${id}`)).status).toBe(200);
    expect((await ash.http.patch(`/v1/sites/${id}`, etag, { name: 'Mine' })).status).toBe(412);
    expect((await coordinator.http.patch(`/v1/sites/${id}`, etag, { name: 'Ours' })).status).toBe(200);
  });
});

describe('a person', () => {
  it('must say which garden, be a member of it, and have a role that may', async () => {
    expect((await api.as(wren.token).get('/v1/sites')).body).toMatchObject({ status: 400, type: '/v1/problems/garden-required' });
    const other = await api.garden();
    expect((await api.as(wren.token).get('/v1/sites').set('Lathwork-Garden', other.gardenId)).body).toMatchObject({ type: '/v1/problems/not-a-member' });
    expect((await funder.http.get('/v1/sites')).body).toMatchObject({ status: 403, type: '/v1/problems/role-missing' });
  });

  it('cannot plan with a build that is not theirs', async () => {
    const site = await make(wren.http, '/v1/sites', { ...cold.site, name: 'Wren’s plot' });
    const structure = await make(wren.http, '/v1/structures', shelter());
    const { wishes, crew, budget } = firstBuild();
    const build = { name: 'Wren’s build', siteId: site.id, structureId: structure.id, wishes, crew, budget };
    const { id } = await make(wren.http, '/v1/builds', build);
    expect((await ash.http.post('/v1/builds', { ...build, name: 'Ash’s' })).status).toBe(400);
    expect((await ash.http.post('/v1/plans', { buildId: id })).status).toBe(404);
    expect((await coordinator.http.post('/v1/plans', { buildId: id })).status).toBe(404);
    expect((await wren.http.post('/v1/plans', { buildId: id })).status).toBe(202);
    expect((await wren.http.patch(`/v1/builds/${id}`, '"1"', { shared: true })).status).toBe(200);
    expect((await ash.http.post('/v1/plans', { buildId: id })).body).toMatchObject({ status: 403, type: '/v1/problems/not-yours' });
    expect((await coordinator.http.post('/v1/plans', { buildId: id })).status).toBe(202);
  });
});
