import { afterAll, beforeAll, describe, expect, it, jest } from '@jest/globals';
import type { PlanInputs, PlanResult } from '@lathwork/model';
import { ComputePlanTask } from '../../apps/api/src/domains/plans/plans.jobs.js';
import { ComputePool } from '../../apps/api/src/platform/compute/compute-pool.js';
import { inputsFaults } from '../../apps/api/src/platform/compute/inputs-check.js';
import { Database } from '../../apps/api/src/platform/database/database.js';
import { Problem } from '../../apps/api/src/platform/problems/problem.js';
import { startApi, type TestApi, type TestGarden } from '../support/api-app.js';
import { cold, firstBuild, make, makeExample, type ExampleIds } from '../support/example-requests.js';
import { sampleResult } from '../support/sample-result.js';
import { seedStations } from '../support/stations.js';

interface Plan {
  id: string;
  revision: number;
  state: string;
  problem: { type: string } | null;
  reviewBlocked: boolean | null;
  reviews: { decision: string; reviewer: string }[];
  stale: { reason: string; subject: string | null }[];
  asBuiltCount: number;
  links: { result: string | null };
}

let api: TestApi;
let garden: TestGarden;
let ids: ExampleIds;
/** What the calculation answers in this file: rules of the API are tested here, the calculation elsewhere. */
let outcome: (inputs: PlanInputs) => PlanResult | Promise<PlanResult>;
let computed: PlanInputs[] = [];

const good = (inputs: PlanInputs): PlanResult => ({
  ...sampleResult(inputs),
  planId: inputs.planId,
  revision: inputs.revision,
  reviewBlocked: false,
  notes: [],
});

beforeAll(async () => {
  api = await startApi({ jobs: true });
  await seedStations(api.database.ownerUrl);
  garden = await api.garden();
  ids = await makeExample(garden.http);
  outcome = good;
  jest.spyOn(api.get(ComputePool), 'compute').mockImplementation((inputs) => {
    computed.push(inputs);
    return Promise.resolve().then(async () => ({ result: await outcome(inputs), timingsMs: { geometry: 1 } }));
  });
});
afterAll(() => api.stop());

const ask = (body: object = {}, wait = 'wait=20') => garden.http.post('/v1/plans', { buildId: ids.buildId, asOf: '2026-03-15', ...body }).set('Prefer', wait);
const ready = async (body: object = {}): Promise<Plan> => {
  const answer = await ask(body);
  expect([answer.status, (answer.body as Plan).state]).toEqual([201, 'ready']);
  return answer.body as Plan;
};
const show = async (id: string): Promise<Plan> => (await garden.http.get(`/v1/plans/${id}`)).body as Plan;

describe('asking for a plan', () => {
  it('is accepted at once, computed as a job, and found under its address', async () => {
    const accepted = await garden.http.post('/v1/plans', { buildId: ids.buildId });
    expect(accepted.status).toBe(202);
    const { id, state } = accepted.body as Plan;
    expect(state).toBe('computing');
    expect(accepted.headers['location']).toBe(`/v1/plans/${id}`);
    for (let tries = 0; tries < 100 && (await show(id)).state === 'computing'; tries += 1) await new Promise((resolve) => setTimeout(resolve, 50));
    const plan = await show(id);
    expect(plan).toMatchObject({ state: 'ready', reviewBlocked: false, links: { result: `/v1/plans/${id}/result` } });
    const result = await garden.http.get(`/v1/plans/${id}/result`);
    expect(result.body).toMatchObject({ planId: id, revision: plan.revision, schemaVersion: 1 });
  });

  it('can be waited for', async () => {
    const answer = await ask();
    expect(answer.status).toBe(201);
    expect(answer.headers['preference-applied']).toBe('wait=20');
    expect((answer.body as Plan).state).toBe('ready');
  });

  it('collects complete inputs: what is claimed, the prices, the nearest station, and a coarse place only', async () => {
    computed = [];
    const plan = await ready();
    const inputs = (await garden.http.get(`/v1/plans/${plan.id}/inputs`)).body as PlanInputs;
    expect(computed[0]).toEqual(inputs);
    expect(inputsFaults(inputs)).toEqual([]);
    const { name, structure, wishes, crew, budget, claims } = firstBuild();
    expect(inputs.stock.map(({ tag }) => tag).sort()).toEqual([...claims].sort());
    expect(inputs.prices).toHaveLength(cold.prices.length);
    expect(inputs.structure).toEqual({ structureId: ids.structureId, ...structure });
    expect(inputs).toMatchObject({
      asOf: '2026-03-15',
      wishes,
      crew,
      budget,
      buildId: ids.buildId,
      gardenId: garden.gardenId,
      climate: { stationName: expect.stringContaining('Denver') },
    });
    const text = JSON.stringify(inputs);
    for (const secret of [cold.site.name, name, cold.garden.name]) expect(text).not.toContain(secret);
  });

  it('rounds the place before it gets into a plan', async () => {
    const site = await make(garden.http, '/v1/sites', { ...cold.site, name: 'Exact place', latitudeDeg: 39.934567, longitudeDeg: -104.587654 });
    const { structure, wishes, crew, budget } = firstBuild();
    const shelter = await make(garden.http, '/v1/structures', structure);
    const build = await make(garden.http, '/v1/builds', { name: 'Exact', siteId: site.id, structureId: shelter.id, wishes, crew, budget });
    const plan = await ready({ buildId: build.id });
    const inputs = await garden.http.get(`/v1/plans/${plan.id}/inputs`);
    expect((inputs.body as PlanInputs).site).toMatchObject({ latitudeDeg: 39.93, longitudeDeg: -104.59 });
    expect(inputs.text).not.toMatch(/39\.934|104\.587/);
  });

  it('numbers revisions one after the other, also when twenty are asked for at once', async () => {
    const answers = await Promise.all(Array.from({ length: 20 }, () => garden.http.post('/v1/plans', { buildId: ids.buildId })));
    expect(answers.map(({ status }) => status)).toEqual(Array.from({ length: 20 }, () => 202));
    const revisions = answers.map(({ body }) => (body as Plan).revision).sort((a, b) => a - b);
    expect(new Set(revisions).size).toBe(20);
    expect((revisions.at(-1) ?? 0) - (revisions[0] ?? 0)).toBe(19);
  });

  it('makes one revision of a repeated request', async () => {
    const body = { buildId: ids.buildId };
    const [first, again] = [await garden.http.post('/v1/plans', body, 'plan-once'), await garden.http.post('/v1/plans', body, 'plan-once')];
    expect(again.text).toBe(first.text);
    expect(again.headers['idempotency-replayed']).toBe('true');
  });

  it('is refused for a build that is not there, and for one whose site is put away', async () => {
    expect((await ask({ buildId: '01900000-0000-7000-8000-000000000000' })).status).toBe(404);
    expect((await (await api.garden()).http.post('/v1/plans', { buildId: ids.buildId })).status).toBe(404);
    expect((await ask({ buildId: 'x', asOf: '2026-13-01', surprise: 1 })).body).toMatchObject({ errors: [{}, {}, {}] });
    const etag = (await garden.http.get(`/v1/sites/${ids.siteId}`)).headers['etag'] as string;
    const away = await garden.http.request('post', `/v1/sites/${ids.siteId}/archive`).set('If-Match', etag);
    const refused = await ask();
    await garden.http.request('post', `/v1/sites/${ids.siteId}/restore`).set('If-Match', away.headers['etag'] as string);
    expect([refused.status, (refused.body as { type: string }).type]).toEqual([409, '/v1/problems/archived']);
  });

  it('ends with a problem when the figures cannot be computed', async () => {
    outcome = () => {
      throw new Problem('plan-failed', { reason: 'the ridge is below the eave' });
    };
    const answer = await ask();
    outcome = good;
    const plan = answer.body as Plan;
    expect(plan).toMatchObject({ state: 'failed', problem: { type: '/v1/problems/plan-failed', status: 422 }, links: { result: null } });
    expect((await garden.http.get(`/v1/plans/${plan.id}/result`)).status).toBe(409);
    expect((await garden.http.post(`/v1/plans/${plan.id}/reviews`, { decision: 'reviewed', reviewer: 'Dill' })).status).toBe(409);
  });

  it('does not keep a result that does not fit its schema', async () => {
    outcome = (inputs) => ({ ...good(inputs), geometry: {} }) as unknown as PlanResult;
    const plan = (await ask()).body as Plan;
    outcome = good;
    expect(plan.state).toBe('failed');
    const rows = await api.get(Database).readSnapshot(garden.actor, (db) => db.planResult.count({ where: { planId: plan.id } }));
    expect(rows).toBe(0);
  });
});

describe('two workers on the same plan', () => {
  it('keep one result: that of the newer attempt, whichever ends first', async () => {
    let release = (): void => undefined;
    const held = new Promise<void>((resolve) => (release = resolve));
    outcome = async (inputs) => {
      outcome = good;
      await held;
      return { ...good(inputs), engineVersion: 'late' };
    };
    const { id } = (await garden.http.post('/v1/plans', { buildId: ids.buildId })).body as Plan;
    const job = { gardenId: garden.gardenId, id };
    const state = () => api.get(Database).readSnapshot(job, (db) => db.planRevision.findFirst({ where: { id }, select: { attempt: true } }));
    for (let tries = 0; tries < 100 && (await state())?.attempt !== 1; tries += 1) await new Promise((resolve) => setTimeout(resolve, 50));
    await api.get(ComputePlanTask).run(job, new AbortController().signal, () => undefined);
    release();
    await new Promise((resolve) => setTimeout(resolve, 300));
    const rows = await api.get(Database).readSnapshot(job, (db) => db.planResult.findMany({ where: { planId: id } }));
    expect(rows.map(({ attempt }) => attempt)).toEqual([2]);
    expect(rows[0]?.engineVersion).not.toBe('late');
    expect((await show(id)).state).toBe('ready');
    // A third try finds the row finished and does nothing.
    await api.get(ComputePlanTask).run(job, new AbortController().signal, () => undefined);
    expect((await state())?.attempt).toBe(2);
  });
});

describe('reading plans', () => {
  it('lists the revisions of a build, and shows none to another garden', async () => {
    const plan = await ready();
    const { items } = (await garden.http.get(`/v1/plans?buildId=${ids.buildId}&limit=100`)).body as { items: Plan[] };
    expect(items.map(({ revision }) => revision)).toEqual([...items.map(({ revision }) => revision)].sort((a, b) => a - b));
    expect(items.at(-1)?.id).toBe(plan.id);
    const other = await api.garden();
    for (const path of ['', '/result', '/inputs', '/as-built']) expect((await other.http.get(`/v1/plans/${plan.id}${path}`)).status).toBe(404);
  });

  it('answers 304 until something gathers beside it', async () => {
    const plan = await ready();
    const etag = (await garden.http.get(`/v1/plans/${plan.id}`)).headers['etag'] as string;
    const again = (): ReturnType<typeof garden.http.get> => garden.http.get(`/v1/plans/${plan.id}`).set('If-None-Match', etag);
    expect((await again()).status).toBe(304);
    await make(garden.http, `/v1/plans/${plan.id}/as-built`, { observedOn: '2026-05-02', measures: [], remark: null });
    expect((await again()).status).toBe(200);
  });
});

describe('reviewing a plan', () => {
  const review = { decision: 'reviewed', reviewer: 'Fennel of the extension office' };

  it('is for another key than the one that asked for the plan', async () => {
    const plan = await ready();
    const own = await garden.http.post(`/v1/plans/${plan.id}/reviews`, review);
    expect([own.status, (own.body as { type: string }).type]).toEqual([403, '/v1/problems/own-review']);
    const reviewer = api.as(await api.keyOf(garden.gardenId, ['plans:read', 'plans:review']));
    expect((await reviewer.post(`/v1/plans/${plan.id}/reviews`, review)).status).toBe(201);
    expect((await show(plan.id)).reviews).toMatchObject([review]);
    const reader = api.as(await api.keyOf(garden.gardenId, ['plans:read', 'plans:write']));
    expect((await reader.post(`/v1/plans/${plan.id}/reviews`, review)).status).toBe(403);
  });

  it('is refused while a note says stop, and tells which; changes may be asked for all the same', async () => {
    outcome = (inputs) => ({
      ...good(inputs),
      reviewBlocked: true,
      notes: [
        { code: 'safety.glass-overhead', severity: 'stop', room: 'safety', subject: 'W1', params: {} },
        { code: 'thermal.hot-day', severity: 'care', room: 'thermal', params: {} },
      ],
    });
    const plan = await ready();
    outcome = good;
    expect(plan.reviewBlocked).toBe(true);
    const reviewer = api.as(await api.keyOf(garden.gardenId, ['plans:read', 'plans:review']));
    const refused = await reviewer.post(`/v1/plans/${plan.id}/reviews`, review);
    expect(refused.status).toBe(409);
    expect(refused.body).toMatchObject({ type: '/v1/problems/review-blocked', errors: [{ pointer: '/notes/0', code: 'safety.glass-overhead' }] });
    expect((refused.body as { errors: unknown[] }).errors).toHaveLength(1);
    expect((await reviewer.post(`/v1/plans/${plan.id}/reviews`, { ...review, decision: 'changesWanted', comment: 'Glass over the bed.' })).status).toBe(201);
  });
});

describe('what was really built', () => {
  it('stands beside the revision, with what was typed', async () => {
    const plan = await ready();
    const measures = [{ subject: 'anchor A1', lengthM: null, pulledToN: '500 lb', remark: null }];
    const { body } = await make(garden.http, `/v1/plans/${plan.id}/as-built`, { observedOn: '2026-05-02', measures });
    expect((body['measures'] as { pulledToN: number }[])[0]?.pulledToN).toBeCloseTo(2224.11, 1);
    expect(body['asTyped']).toEqual({ '/measures/0/pulledToN': '500 lb' });
    expect(((await garden.http.get(`/v1/plans/${plan.id}/as-built`)).body as { items: unknown[] }).items).toEqual([body]);
    expect((await show(plan.id)).asBuiltCount).toBe(1);
  });
});

describe('a finished plan when something changes', () => {
  const stale = async (change: () => Promise<unknown>): Promise<[string, string | null][]> => {
    const plan = await ready();
    const before = await garden.http.get(`/v1/plans/${plan.id}/inputs`);
    await change();
    expect((await garden.http.get(`/v1/plans/${plan.id}/inputs`)).text).toBe(before.text);
    return (await show(plan.id)).stale.map(({ reason, subject }) => [reason, subject]);
  };
  const patch = async (path: string, body: object): Promise<void> => {
    const etag = (await garden.http.get(path)).headers['etag'] as string;
    expect((await garden.http.patch(path, etag, body)).status).toBe(200);
  };

  it('has no mark as long as nothing changes', async () => {
    expect(await stale(() => Promise.resolve())).toEqual([]);
  });

  it('gets a mark for its site, structure and build', async () => {
    expect(await stale(() => patch(`/v1/sites/${ids.siteId}`, { shadedFrac: 0.2 }))).toEqual([['siteChanged', null]]);
    expect(await stale(() => patch(`/v1/structures/${ids.structureId}`, { floor: 'gravel' }))).toEqual([['structureChanged', null]]);
    expect(await stale(() => patch(`/v1/builds/${ids.buildId}`, { crew: { people: 2 } }))).toEqual([['buildChanged', null]]);
  });

  it('gets one mark for a price however often it changes, and none for what it never used', async () => {
    const marks = await stale(async () => {
      for (const minor of [600, 700]) await patch(`/v1/prices/${ids.priceIds[0]}`, { packPrice: { minor } });
    });
    expect(marks).toEqual([['priceChanged', cold.prices[0]?.material]]);
    const unclaimed = cold.stock.find(({ tag }) => !firstBuild().claims.includes(tag));
    expect(await stale(() => patch(`/v1/stock/${ids.stockIds[unclaimed?.tag ?? '']}`, { grade: 'C' }))).toEqual([]);
  });

  it('gets a mark for a thing it counts on, and for what is claimed or given back', async () => {
    const tag = firstBuild().claims[1] ?? '';
    expect(await stale(() => patch(`/v1/stock/${ids.stockIds[tag]}`, { widthMm: 700 }))).toEqual([['stockChanged', tag]]);
    const { items } = (await garden.http.get(`/v1/builds/${ids.buildId}/claims?limit=100`)).body as { items: { id: string; tag: string }[] };
    const held = items.find((claim) => claim.tag === tag);
    expect(await stale(async () => garden.http.request('delete', `/v1/builds/${ids.buildId}/claims/${held?.id}`))).toEqual([['claimsChanged', tag]]);
  });
});
