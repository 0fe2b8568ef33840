// npm test: set-up, then everything. The last line is always "N passed, N failed".
import { existsSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { node, root, seconds, step } from './lib/steps.mjs';
import { setUp } from './setup.mjs';
import { gates, jest } from './lib/gates.mjs';

const started = performance.now();
let passed = 0;
let failed = 0;
try {
  await setUp();
  passed++;
} catch (e) {
  console.error(String(e.message ?? e));
  console.log('0 passed, 1 failed');
  process.exit(1);
}
for (const [title, args] of gates) {
  await step(title, () => node(args, { log: `${title.replaceAll(' ', '-')}.log` })).then(
    () => passed++,
    () => failed++,
  );
}
const data = resolve(process.env.LATHWORK_DATA ?? join(root, '..', 'shared', 'data'));
if (!existsSync(data))
  console.error(`The open data folder is not at hand (LATHWORK_DATA, default ../shared/data): checks that read it are skipped and say so.`);
const tests = await jest([]);
passed += tests.passed;
failed += tests.failed;
// Read after the set-up: it needs a package.
const { notRun } = await import('./lib/checklist.mjs');
const report = join(root, '.data', 'jest-result.json');
const gaps = existsSync(report) ? notRun(JSON.parse(readFileSync(report, 'utf8'))) : ['the test run left no report'];
if (gaps.length > 0) console.error(`Promised in docs/security/checklist.csv and not seen to pass:\n${gaps.map((gap) => `  ${gap}`).join('\n')}`);
failed += gaps.length > 0 ? 1 : 0;
passed += gaps.length > 0 ? 0 : 1;
if (tests.skipped > 0) console.log(`Skipped ${tests.skipped}, with reasons in their titles:\n${tests.skippedTitles.map((t) => `  ${t}`).join('\n')}`);
console.log(`Everything took ${seconds(performance.now() - started)}.`);
console.log(`${passed} passed, ${failed} failed`);
process.exit(failed > 0 ? 1 : 0);
