import { afterAll, expect, test } from '@jest/globals';
import { computePlan } from '@lathwork/calc';
import type { PlanInputs } from '@lathwork/model';
import pg from 'pg';
import { ComputePool } from '../../../apps/api/src/platform/compute/compute-pool.js';
import { ENGINE_VERSION } from '../../../apps/api/src/platform/compute/engine.js';
import { inputsFaults, resultFaults } from '../../../apps/api/src/platform/compute/inputs-check.js';
import { parseConfig } from '../../../apps/api/src/platform/config/config.js';
import { Metrics } from '../../../apps/api/src/platform/metrics/metrics.js';
import { inlandCanopy } from '../../support/gardens.js';

const config = parseConfig({ REPORT_SECRET: 's'.repeat(32) });
const unconnected = new pg.Pool();
const metrics = new Metrics(unconnected, unconnected, config);
const pool = new ComputePool(config, metrics);
afterAll(() => pool.onApplicationShutdown());

test('a thread computes what the chain itself computes, and says how long each room took', async () => {
  const { result, timingsMs } = await pool.compute(inlandCanopy);
  expect(resultFaults(result)).toEqual([]);
  expect(result).toEqual(JSON.parse(JSON.stringify(computePlan(inlandCanopy, { engineVersion: ENGINE_VERSION }))));
  expect(Object.keys(timingsMs).length).toBeGreaterThanOrEqual(10);
  for (const ms of Object.values(timingsMs)) expect(ms).toBeGreaterThanOrEqual(0);
});

test('the event loop stays free meanwhile', async () => {
  let worst = 0;
  let last = performance.now();
  const timer = setInterval(() => {
    const now = performance.now();
    worst = Math.max(worst, now - last);
    last = now;
  }, 5);
  await pool.compute(inlandCanopy);
  clearInterval(timer);
  expect(worst).toBeLessThan(1000);
});

test('inputs of another form are refused before any thread sees them, with their places', async () => {
  const broken = { ...inlandCanopy, seed: -1, structure: { ...inlandCanopy.structure, widthM: '10 ft' } } as unknown as PlanInputs;
  expect(
    inputsFaults(broken)
      .map(({ pointer }) => pointer)
      .sort(),
  ).toEqual(['/seed', '/structure/widthM']);
  await expect(pool.compute(broken)).rejects.toMatchObject({ key: 'plan-failed' });
});

test('a calculation that takes too long is ended', async () => {
  const short = new ComputePool({ ...config, computeTimeoutMs: 1 }, metrics);
  await expect(short.compute(inlandCanopy)).rejects.toMatchObject({ key: 'timed-out' });
  await short.onApplicationShutdown();
});
