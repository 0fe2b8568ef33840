// The fast half, for every commit: style, rules, types, and the tests that need neither a database nor a browser.
import { node, step } from './lib/steps.mjs';
import { setUp } from './setup.mjs';
import { gates, jest } from './lib/gates.mjs';

await setUp();
let failed = 0;
for (const [title, args] of gates) {
  await step(title, () => node(args, { log: `${title.replaceAll(' ', '-')}.log` })).catch(() => failed++);
}
const tests = await jest(['tests/unit', 'tests/reference', 'tests/property', 'tests/chain'], { LATHWORK_NO_DATABASE: '1' });
console.log(`${tests.passed + gates.length - failed} passed, ${tests.failed + failed} failed`);
process.exit(tests.failed + failed > 0 ? 1 : 0);
