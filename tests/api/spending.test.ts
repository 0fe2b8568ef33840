import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import pg from 'pg';
import { startApi, type TestApi, type TestGarden, type TestPerson } from '../support/api-app.js';
import { make, makeExample, type ExampleIds } from '../support/example-requests.js';

let api: TestApi;
let garden: TestGarden;
let ids: ExampleIds;
let member: TestPerson;
let coordinator: TestPerson;
let treasurer: TestPerson;

beforeAll(async () => {
  api = await startApi();
  garden = await api.garden();
  ids = await makeExample(garden.http);
  member = await api.person(garden.gardenId, ['member']);
  coordinator = await api.person(garden.gardenId, ['coordinator']);
  treasurer = await api.person(garden.gardenId, ['treasurer']);
  const { headers } = await garden.http.get('/v1/gardens/current');
  const limits = await coordinator.http.patch('/v1/gardens/current', headers['etag'] as string, { coordinatorLimitMinor: 5000, treasurerLimitMinor: 20_000 });
  expect(limits.body).toMatchObject({ coordinatorLimitMinor: 5000, treasurerLimitMinor: 20_000 });
});
afterAll(() => api.stop());

const ask = (who: TestPerson | TestGarden, minor: number, currency = 'EUR') =>
  make(who.http, '/v1/spending', { purpose: 'screws', amount: { minor, currency } });
const decide = (who: TestPerson | TestGarden, id: string, decision = 'approved') =>
  who.http.request('post', `/v1/spending/${id}/decision`).set('If-Match', '"1"').send({ decision });

describe('spending', () => {
  it('is asked for by one and decided by another, each told who', async () => {
    const { id, body } = await ask(member, 1200);
    expect(body).toMatchObject({ state: 'submitted', requestedById: member.memberId, decidedById: null });
    const { body: after, status } = await decide(treasurer, id);
    expect([status, after]).toEqual([200, expect.objectContaining({ state: 'approved', decidedById: treasurer.memberId, version: 2 })]);
    expect((await treasurer.http.request('post', `/v1/spending/${id}/decision`).set('If-Match', '"2"').send({ decision: 'refused' })).body.type).toBe(
      '/v1/problems/already-decided',
    );
  });

  it('is never decided by whoever asked, whatever their roles, nor by a key', async () => {
    const both = await api.person(garden.gardenId, ['coordinator', 'treasurer']);
    expect((await decide(both, (await ask(both, 10)).id)).body.type).toBe('/v1/problems/own-request');
    const { id } = await ask(garden, 10);
    expect((await decide(garden, id)).body.type).toBe('/v1/problems/person-only');
    expect((await decide(member, id)).body.type).toBe('/v1/problems/role-missing');
  });

  it('holds in the database itself: the one who asked cannot decide, the one who planned cannot review', async () => {
    const admin = new pg.Client({ connectionString: api.database.adminUrl });
    await admin.connect();
    const { id } = await ask(member, 10);
    await expect(
      admin.query("UPDATE spend_requests SET state = 'approved', decided_by_id = requested_by_id, decided_at = now() WHERE id = $1", [id]),
    ).rejects.toMatchObject({ constraint: 'spend_requests_two_people_check' });
    const { body: plan } = await garden.http.post('/v1/plans', { buildId: ids.buildId });
    await expect(
      admin.query(
        `INSERT INTO plan_reviews (garden_id, id, plan_id, decision, reviewer, created_by_id)
         SELECT garden_id, gen_random_uuid(), id, 'reviewed', 'me', created_by_id FROM plan_revisions WHERE id = $1`,
        [plan.id],
      ),
    ).rejects.toMatchObject({ constraint: 'plan_reviews_two_people' });
    await admin.end();
  });

  it('is approved up to the limit of the role, in the currency of the garden', async () => {
    expect((await decide(coordinator, (await ask(member, 5000)).id)).status).toBe(200);
    expect((await decide(coordinator, (await ask(member, 5001)).id)).body).toMatchObject({ status: 403, type: '/v1/problems/over-limit' });
    expect((await decide(treasurer, (await ask(member, 20_000)).id)).status).toBe(200);
    expect((await decide(treasurer, (await ask(member, 20_001)).id)).status).toBe(403);
    expect((await decide(treasurer, (await ask(member, 1, 'USD')).id)).status).toBe(403);
    expect((await decide(coordinator, (await ask(member, 9_000_000)).id, 'refused')).status).toBe(200);
  });

  it('goes to one of two deciders who are quick', async () => {
    const { id } = await ask(member, 100);
    const answers = await Promise.all([coordinator, treasurer, coordinator, treasurer].map((who) => decide(who, id)));
    const statuses = answers.map(({ status }) => status);
    expect(statuses.filter((status) => status === 200)).toHaveLength(1);
    expect(statuses.every((status) => [200, 409, 412].includes(status))).toBe(true);
  });

  it('is seen by a member where it is their own, and taken back by whoever asked', async () => {
    const { id } = await ask(coordinator, 100);
    expect((await member.http.get(`/v1/spending/${id}`)).status).toBe(404);
    const mine = await ask(member, 100);
    const withdraw = (who: TestPerson) => who.http.request('post', `/v1/spending/${mine.id}/withdrawal`).set('If-Match', '"1"');
    expect((await withdraw(coordinator)).status).toBe(404);
    expect((await withdraw(member)).body).toMatchObject({ state: 'withdrawn' });
    expect((await member.http.get('/v1/spending?state=withdrawn')).body.items.map((one: { id: string }) => one.id)).toEqual([mine.id]);
  });

  it('names what it is for only when that exists here', async () => {
    const other = await api.garden();
    const { body } = await other.http.post('/v1/spending', { purpose: 'x', amount: { minor: 1, currency: 'EUR' }, buildId: ids.buildId, planId: ids.buildId });
    expect(body.errors.map((one: { pointer: string }) => one.pointer)).toEqual(['/buildId', '/planId']);
  });
});
