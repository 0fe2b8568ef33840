import { afterAll, beforeAll, describe, expect, it, jest } from '@jest/globals';
import type { PlanInputs, PlanResult } from '@lathwork/model';
import { PlanInputsReader } from '../../apps/api/src/domains/plans/plan-inputs.js';
import { StalenessDoor } from '../../apps/api/src/domains/plans/staleness.door.js';
import { ComputePool } from '../../apps/api/src/platform/compute/compute-pool.js';
import { startApi, type TestApi, type TestGarden } from '../support/api-app.js';
import { cold, firstBuild, make, makeExample, type ExampleIds } from '../support/example-requests.js';
import { sampleResult } from '../support/sample-result.js';
import { seedStations } from '../support/stations.js';

// A change that arrives while a plan is being made is either in the plan or marked on it. Each is stopped half way here,
// so that the other comes in between.

interface Plan {
  id: string;
  state: string;
  stale: { reason: string; subject: string | null }[];
}

interface Gate {
  /** Resolves when somebody stands at the gate. */
  reached: Promise<void>;
  pass: () => Promise<void>;
  open: () => void;
}

const gate = (): Gate => {
  let arrived = (): void => undefined;
  let open = (): void => undefined;
  const reached = new Promise<void>((resolve) => (arrived = resolve));
  const opened = new Promise<void>((resolve) => (open = resolve));
  return { reached, open: () => open(), pass: () => (arrived(), opened) };
};

const pause = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));

let api: TestApi;
let garden: TestGarden;
let ids: ExampleIds;
let computing: () => Promise<void>;
const NEEDED = cold.prices[0]?.material ?? 'rope';

const result = (inputs: PlanInputs): PlanResult => {
  const sample = sampleResult(inputs);
  const [line] = sample.takeOff.lines;
  if (!line) throw new Error('the sample result needs nothing');
  return {
    ...sample,
    planId: inputs.planId,
    revision: inputs.revision,
    reviewBlocked: false,
    notes: [],
    takeOff: { ...sample.takeOff, lines: [{ ...line, material: NEEDED }] },
  };
};

beforeAll(async () => {
  api = await startApi({ jobs: true });
  await seedStations(api.database.ownerUrl);
  garden = await api.garden();
  ids = await makeExample(garden.http);
  computing = () => Promise.resolve();
  jest.spyOn(api.get(ComputePool), 'compute').mockImplementation(async (inputs) => {
    await computing();
    return { result: result(inputs), timingsMs: {} };
  });
});
afterAll(() => api.stop());

const show = async (id: string): Promise<Plan> => (await garden.http.get(`/v1/plans/${id}`)).body as Plan;
const finished = async (id: string): Promise<Plan> => {
  for (let tries = 0; tries < 200 && (await show(id)).state === 'computing'; tries += 1) await pause(25);
  return show(id);
};
const patch = async (path: string, body: object): Promise<number> => {
  const etag = (await garden.http.get(path)).headers['etag'] as string;
  return (await garden.http.patch(path, etag, body)).status;
};
const release = async (tag: string): Promise<number> => {
  const { items } = (await garden.http.get(`/v1/builds/${ids.buildId}/claims?limit=100`)).body as { items: { id: string; tag: string }[] };
  const held = items.find((claim) => claim.tag === tag);
  return (await garden.http.request('delete', `/v1/builds/${ids.buildId}/claims/${held?.id}`)).status;
};
const tagAt = (at: number): string => firstBuild().claims[at] ?? '';

const CHANGES: [string, string | null, () => Promise<number>][] = [
  ['siteChanged', null, () => patch(`/v1/sites/${ids.siteId}`, { shadedFrac: 0.31 })],
  ['structureChanged', null, () => patch(`/v1/structures/${ids.structureId}`, { floor: 'gravel' })],
  ['buildChanged', null, () => patch(`/v1/builds/${ids.buildId}`, { crew: { people: 3 } })],
  ['stockChanged', tagAt(0), () => patch(`/v1/stock/${ids.stockIds[tagAt(0)]}`, { widthMm: 701 })],
  ['claimsChanged', tagAt(1), () => release(tagAt(1))],
  ['priceChanged', NEEDED, () => patch(`/v1/prices/${ids.priceIds[0]}`, { packPrice: { minor: 4321 } })],
  ['priceAdded', NEEDED, async () => (await garden.http.post('/v1/prices', cold.prices[0] ?? {})).status],
];

describe('a change between the reading of a plan and its row', () => {
  it.each(CHANGES)('%s waits, and marks the plan', async (reason, subject, change) => {
    const between = gate();
    const reader = api.get(PlanInputsReader);
    const collect = reader.collect.bind(reader);
    const spy = jest.spyOn(reader, 'collect').mockImplementationOnce(async (...asked) => {
      const read = await collect(...asked);
      await between.pass();
      return read;
    });
    const asking = garden.http.post('/v1/plans', { buildId: ids.buildId, asOf: '2026-03-15' }).then((answer) => answer);
    await between.reached;
    let isDone = false;
    const changing = change().then((status) => {
      isDone = true;
      return status;
    });
    await pause(250);
    const wasDone = isDone;
    between.open();
    const [accepted, status] = await Promise.all([asking, changing]);
    spy.mockRestore();
    expect([wasDone, accepted.status, status < 300]).toEqual([false, 202, true]);
    expect((await finished((accepted.body as Plan).id)).stale).toMatchObject([{ reason, subject }]);
  });
});

describe('a change that is made and not yet kept', () => {
  it('is waited for, and is in the plan', async () => {
    const between = gate();
    const door = api.get(StalenessDoor);
    const told = door.siteChanged.bind(door);
    const spy = jest.spyOn(door, 'siteChanged').mockImplementationOnce(async (...about) => {
      await told(...about);
      await between.pass();
    });
    const changing = patch(`/v1/sites/${ids.siteId}`, { shadedFrac: 0.42 });
    await between.reached;
    let isAccepted = false;
    const asking = garden.http.post('/v1/plans', { buildId: ids.buildId, asOf: '2026-03-15' }).then((answer) => {
      isAccepted = true;
      return answer;
    });
    await pause(250);
    const wasAccepted = isAccepted;
    between.open();
    expect([wasAccepted, await changing]).toEqual([false, 200]);
    const { id } = (await asking).body as Plan;
    spy.mockRestore();
    expect((await garden.http.get(`/v1/plans/${id}/inputs`)).body).toMatchObject({ site: { shadedFrac: 0.42 } });
    expect((await finished(id)).stale).toEqual([]);
  });
});

describe('a change while a plan is computed', () => {
  it('is told when the plan is finished, if the plan needs the material', async () => {
    const between = gate();
    computing = between.pass;
    const { id } = (await garden.http.post('/v1/plans', { buildId: ids.buildId, asOf: '2026-03-15' })).body as Plan;
    await between.reached;
    const unneeded = cold.prices.find(({ material }) => material !== NEEDED);
    for (const price of [cold.prices[0], unneeded]) await make(garden.http, '/v1/prices', price ?? {});
    const whileComputed = (await show(id)).stale;
    between.open();
    expect(whileComputed).toEqual([]);
    computing = () => Promise.resolve();
    expect((await finished(id)).stale).toMatchObject([{ reason: 'priceAdded', subject: NEEDED }]);
  });
});

describe('an exchange rate', () => {
  it('marks the plans that hold both currencies, and no others', async () => {
    const other = await api.garden();
    const [there, alone] = [await makeExample(other.http), (await garden.http.post('/v1/plans', { buildId: ids.buildId })).body as Plan];
    const foreign = { ...(cold.prices[0] ?? {}), packPrice: { minor: 500, currency: 'CAD' } };
    await make(other.http, '/v1/prices', foreign);
    const { id } = (await other.http.post('/v1/plans', { buildId: there.buildId })).body as Plan;
    const { currency } = firstBuild().budget as { currency: string };
    const rate = { from: 'CAD', to: currency, rate: 0.7, readOn: '2026-03-01' };
    for (const http of [garden.http, other.http]) await make(http, '/v1/exchange-rates', rate);
    expect(((await other.http.get(`/v1/plans/${id}`)).body as Plan).stale).toMatchObject([{ reason: 'rateAdded', subject: `CAD to ${currency}` }]);
    expect((await show(alone.id)).stale).toEqual([]);
  });
});
