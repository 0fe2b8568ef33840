import { existsSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it, jest } from '@jest/globals';
import type { PlanResult } from '@lathwork/model';
import { resultFaults } from '../../apps/api/src/platform/compute/inputs-check.js';
import { startApi, type TestApi } from '../support/api-app.js';
import { exampleGarden, EXAMPLE_GARDENS } from '../support/gardens.js';
import { make } from '../support/example-requests.js';

jest.setTimeout(180_000);

// The calculation runs on a thread of its own, which takes compiled code.
const COMPILED = new URL('../../apps/api/dist/platform/compute/worker.js', import.meta.url);

let api: TestApi;
beforeAll(async () => {
  if (!existsSync(COMPILED)) throw new Error('apps/api is not built: run `npm run build` first');
  api = await startApi({ jobs: true, env: { WAIT_LIMIT_S: '60' } });
});
afterAll(() => api.stop());

/** Every example garden as any client would bring it in, computed by the real chain from the stations that the server ships. */
describe.each(EXAMPLE_GARDENS)('the %s example', (name) => {
  it('goes the whole way from its file to finished plans', async () => {
    const example = exampleGarden(name);
    const created = await api.operator.post('/v1/gardens', example.garden);
    const http = api.as((created.body as { key: { key: string } }).key.key);
    const site = await make(http, '/v1/sites', example.site);
    await make(http, '/v1/stock/intakes', { items: example.stock });
    for (const price of example.prices) await make(http, '/v1/prices', price);
    for (const { name: label, structure, wishes, crew, budget, claims } of example.builds) {
      const shelter = await make(http, '/v1/structures', { name: label, ...structure });
      const build = await make(http, '/v1/builds', { name: label, siteId: site.id, structureId: shelter.id, wishes, crew, budget });
      for (const tag of claims) await make(http, `/v1/builds/${build.id}/claims`, { tag });
      const answer = await http.post('/v1/plans', { buildId: build.id, asOf: '2026-03-15' }).set('Prefer', 'wait=60');
      const plan = answer.body as { id: string; state: string; problem: object | null };
      expect([answer.status, plan.state, plan.problem]).toEqual([201, 'ready', null]);
      const result = (await http.get(`/v1/plans/${plan.id}/result`)).body as PlanResult;
      expect(resultFaults(result)).toEqual([]);
      expect(result.planId).toBe(plan.id);
      const reclaimed = result.takeOff.lines.flatMap((line) => line.reclaimed.map(({ tag }) => tag));
      expect(reclaimed.length).toBeGreaterThan(0);
      expect(reclaimed.filter((tag) => !claims.includes(tag))).toEqual([]);
    }
  });
});
