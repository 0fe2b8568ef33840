import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { expect, test } from '@jest/globals';
import { PlanResultSchema } from '@lathwork/model';
import { Ajv2020 } from 'ajv/dist/2020.js';
import formats from 'ajv-formats';
import { inlandCanopy } from '../support/gardens.js';

const EXAMPLE = 'docs/api/example-plan-inputs.json';
const compute = (input: string) => spawnSync(process.execPath, ['tools/plan-compute.mjs', '-'], { input, encoding: 'utf8', maxBuffer: 1 << 26 });

test('the example inputs in the documentation are those of the invented inland garden', () => {
  expect(JSON.parse(readFileSync(EXAMPLE, 'utf8'))).toEqual(JSON.parse(JSON.stringify(inlandCanopy)));
});

test('plan:compute turns them into a PlanResult on standard output, and nothing else', () => {
  const run = compute(readFileSync(EXAMPLE, 'utf8'));
  expect(run.status).toBe(0);
  const ajv = new Ajv2020({ strict: false });
  (formats as unknown as { default: (a: Ajv2020) => void }).default(ajv);
  const valid = ajv.compile(PlanResultSchema);
  expect(valid(JSON.parse(run.stdout)) || valid.errors).toBe(true);
}, 120_000);

test('plan:compute names every fault of a bad input at once and writes no result', () => {
  const bad = { ...structuredClone(inlandCanopy), surprise: 1 } as unknown as { structure: { widthM: number }; site: { latitudeDeg: number } };
  bad.structure.widthM = 0;
  bad.site.latitudeDeg = 90.0001;
  const run = compute(JSON.stringify(bad));
  expect(run.status).toBe(2);
  expect(run.stdout).toBe('');
  for (const part of ['/structure/widthM', '/site/latitudeDeg', 'surprise']) expect(run.stderr).toContain(part);
}, 120_000);
