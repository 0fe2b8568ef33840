// Runs the reference checks alone and prints what the numbers lean on: a table by room and kind, the values still
// from memory, and out/evidence.json for machines.
import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { root, node, step } from './lib/steps.mjs';
import { setUp } from './setup.mjs';

await setUp();
const lines = join(root, '.data', 'evidence.jsonl');
rmSync(lines, { force: true });
let failed = false;
await step('running the reference checks', () =>
  node(['--experimental-vm-modules', '--no-warnings=ExperimentalWarning', 'node_modules/jest/bin/jest.js', 'tests/reference', '--silent'], {
    env: { LATHWORK_EVIDENCE: lines, LATHWORK_NO_DATABASE: '1' },
    log: 'evidence.log',
  }),
).catch(() => (failed = true));

const rows = existsSync(lines)
  ? readFileSync(lines, 'utf8')
      .trim()
      .split('\n')
      .map((l) => JSON.parse(l))
  : [];
rows.sort((a, b) => (a.id < b.id ? -1 : 1));
mkdirSync(join(root, 'out'), { recursive: true });
writeFileSync(join(root, 'out', 'evidence.json'), JSON.stringify(rows, null, 1) + '\n');

const kinds = ['published', 'practice', 'worked', 'cross-check', 'regression'];
const rooms = [...new Set(rows.map((r) => r.room))].sort();
const count = (room, kind) => rows.filter((r) => r.room === room && r.kind === kind && r.pass).length;
const cell = (s, w) => String(s).padStart(w);
console.log(['room'.padEnd(12), ...kinds.map((k) => cell(k, 12)), cell('from memory', 13), cell('failed', 8), cell('skipped', 9)].join(''));
for (const room of rooms) {
  const own = rows.filter((r) => r.room === room);
  console.log(
    [
      room.padEnd(12),
      ...kinds.map((k) => cell(count(room, k), 12)),
      cell(own.filter((r) => r.fromMemory).length, 13),
      cell(own.filter((r) => r.pass === false).length, 8),
      cell(own.filter((r) => r.skipped).length, 9),
    ].join(''),
  );
}
const memory = rows.filter((r) => r.fromMemory);
if (memory.length > 0) console.log(`\nExpected values still from memory (${memory.length}):\n${memory.map((r) => `  ${r.id}: ${r.source}`).join('\n')}`);
const passed = rows.filter((r) => r.pass).length;
const wrong = rows.filter((r) => r.pass === false);
if (wrong.length > 0)
  console.log(`\nFailed:\n${wrong.map((r) => `  ${r.id}: got ${JSON.stringify(r.got)}, expected ${JSON.stringify(r.expected)}`).join('\n')}`);
console.log(`\nout/evidence.json holds ${rows.length} checks.\n${passed} passed, ${wrong.length} failed, ${rows.filter((r) => r.skipped).length} skipped`);
process.exit(failed || wrong.length > 0 ? 1 : 0);
