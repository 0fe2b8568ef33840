import { afterAll, beforeAll, describe, expect, it, jest } from '@jest/globals';
import type { PlanInputs } from '@lathwork/model';
import { ComputePool } from '../../apps/api/src/platform/compute/compute-pool.js';
import { SCOPES } from '../../apps/api/src/platform/access/scopes.js';
import { PublishedDocument } from '../../apps/api/src/platform/http/docs.controller.js';
import { startApi, type TestApi } from '../support/api-app.js';
import { contractOf, type Contract } from '../support/contract.js';
import { makeWorld } from '../support/contract-world.js';
import { startFakeReport } from '../support/fake-report.js';
import { CHECKS } from '../support/fuzz/checks.js';
import { Fuzzer, type FuzzReport } from '../support/fuzz/fuzzer.js';
import { sampleResult } from '../support/sample-result.js';

/** A few of each operation in every run; FUZZ_CASES=100 and more in the long ones. The seed of a bad run brings it back. */
const CASES = Number(process.env['FUZZ_CASES'] ?? 25);
const SEED = Number(process.env['FUZZ_SEED'] ?? Math.floor(Math.random() * 2 ** 31));

/** They want a code from a mail, a password, an authenticator, or to be the very asker; the replay of the examples carries them out. */
const PERSONAL = new Set([
  ...['confirmAccount', 'createSession', 'changePassword', 'redeemPasswordReset', 'redeemInvitation', 'eraseAccount', 'endSession'],
  ...['beginFactor', 'confirmFactor', 'renewRecoveryCodes', 'removeFactor', 'withdrawSpendRequest', 'decideSpendRequest', 'importGarden'],
]);

let report: Awaited<ReturnType<typeof startFakeReport>>;
let api: TestApi;
let contract: Contract;
let run: FuzzReport;

beforeAll(async () => {
  report = await startFakeReport();
  api = await startApi({ jobs: true, env: { REPORT_URL: report.url } });
  contract = contractOf(api.get(PublishedDocument).text);
  jest.spyOn(api.get(ComputePool), 'compute').mockImplementation((inputs: PlanInputs) =>
    Promise.resolve({
      result: { ...sampleResult(inputs), planId: inputs.planId, revision: inputs.revision, reviewBlocked: false, notes: [] },
      timingsMs: {},
    }),
  );
  const { ids } = await makeWorld(api, contract.of);
  const key = await api.keyOf(ids['garden'] ?? '', SCOPES);
  const started = performance.now();
  run = await new Fuzzer(api, contract, { ids, key }, { cases: CASES, seed: SEED }).run();
  const seconds = Math.round((performance.now() - started) / 100) / 10;
  console.log(`contract fuzz: ${run.requests} requests, ${CASES} cases for each of ${contract.operations.length} operations, ${seconds} s, FUZZ_SEED=${SEED}`);
}, 900_000);
afterAll(async () => {
  await api.stop();
  await report.stop();
});

describe('requests made from the description', () => {
  it(`A7: none of the fourteen checks finds anything (FUZZ_SEED=${SEED})`, () => {
    expect(run.findings.all.map(({ check, operation, detail }) => `${check} | ${operation} | ${detail}`)).toEqual([]);
  });

  it('A7: every check was really made, and every operation was reached', () => {
    expect(CHECKS.filter((check) => run.findings.made[check] === 0)).toEqual([]);
    expect(run.unreached).toEqual([]);
    expect(run.requests).toBeGreaterThan(contract.operations.length * CASES);
  });

  it('A7: every operation was carried out at least once, but those that need what only one person has', () => {
    expect(run.neverDone.filter((id) => !PERSONAL.has(id))).toEqual([]);
  });
});
