import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { PlanResult } from '@lathwork/model';
import { startApi, type TestApi, type TestGarden, type TestPerson } from '../support/api-app.js';
import { makeExample, type ExampleIds } from '../support/example-requests.js';
import type { Role } from '../../apps/api/src/platform/access/roles.js';

let api: TestApi;
let garden: TestGarden;
let ids: ExampleIds;
let result: PlanResult;
const people = new Map<Role, TestPerson>();

const as = (role: Role): TestPerson['http'] => people.get(role)?.http ?? garden.http;

beforeAll(async () => {
  api = await startApi({ jobs: true });
  garden = await api.garden();
  ids = await makeExample(garden.http);
  for (const role of ['member', 'coordinator', 'treasurer', 'storekeeper', 'safetyLead', 'funder'] as const)
    people.set(role, await api.person(garden.gardenId, [role]));
  const plan = await garden.http.post('/v1/plans', { buildId: ids.buildId }).set('Prefer', 'wait=30');
  expect(plan.body.state).toBe('ready');
  result = (await garden.http.get(`/v1/plans/${plan.body.id}/result`)).body as PlanResult;
}, 90_000);
afterAll(() => api.stop());

describe('what of a build is for whom', () => {
  it('is a few words for everybody', async () => {
    const { body } = await as('treasurer').get('/v1/overview/builds').expect(200);
    expect(body.items).toEqual([
      { id: ids.buildId, name: expect.any(String), kind: 'gableCanopy', ownerMemberId: null, shared: false, state: 'planned', revision: 1, stale: false },
    ]);
    await as('funder').get('/v1/overview/builds').expect(403);
  });

  it('is what to find, without money, for the store', async () => {
    const { body, text } = await as('storekeeper').get(`/v1/builds/${ids.buildId}/needs`).expect(200);
    expect(body.needs).toHaveLength(result.takeOff.lines.length);
    expect(body.needs.map((one: { lineId: string; wanted: number }) => [one.lineId, one.wanted])).toEqual(
      result.takeOff.lines.map((one) => [one.lineId, one.wanted]),
    );
    expect(text).not.toMatch(/minor|currency|cash|supplier|worth/i);
    await as('treasurer').get(`/v1/builds/${ids.buildId}/needs`).expect(403);
    await as('storekeeper').get(`/v1/builds/${ids.buildId}`).expect(403);
  });

  it('is what may hurt for the safety lead', async () => {
    const { body } = await as('safetyLead').get(`/v1/builds/${ids.buildId}/hazards`).expect(200);
    const wanted = result.notes.filter(({ room, severity }) => room === 'safety' || severity === 'stop' || severity === 'care');
    expect(wanted.length).toBeGreaterThan(3);
    expect(body.notes).toEqual(wanted);
    await as('storekeeper').get(`/v1/builds/${ids.buildId}/hazards`).expect(403);
  });

  it('is sums, without things, for the treasurer', async () => {
    const { body } = await as('treasurer').get(`/v1/builds/${ids.buildId}/totals`).expect(200);
    const { currency, cashMinor, reclaimedMinor, capMinor } = result.budget;
    expect(body).toMatchObject({ currency, cashMinor, reclaimedMinor, capMinor });
    expect(Object.keys(body).sort()).toEqual(
      ['buildId', 'capMinor', 'cashMinor', 'currency', 'inKindMinor', 'overCapMinor', 'planId', 'reclaimedMinor', 'revision', 'unpricedCount'].sort(),
    );
    await as('storekeeper').get(`/v1/builds/${ids.buildId}/totals`).expect(403);
  });

  it('is sums over the garden, naming nobody, for a funder', async () => {
    const { body } = await as('funder').get('/v1/overview/totals').expect(200);
    expect(body).toEqual({
      builds: { unplannedCount: 0, computingCount: 0, failedCount: 0, plannedCount: 1, reviewedCount: 0 },
      money: [
        {
          currency: result.budget.currency,
          reclaimedMinor: result.budget.reclaimedMinor,
          cashMinor: result.budget.cashMinor,
          inKindMinor: result.budget.inKindMinor,
          buildCount: 1,
        },
      ],
      hours: result.schedule.totalHours,
    });
    await as('member').get('/v1/overview/totals').expect(403);
  });

  it('does not exist in another garden', async () => {
    const other = await api.garden();
    for (const view of ['needs', 'hazards', 'totals']) await other.http.get(`/v1/builds/${ids.buildId}/${view}`).expect(404);
  });
});
