// npm run bench: speed, as ratios within one run wherever there is something to compare with; writes out/bench.json.
// Each file tests/bench/*.bench.mjs exports `bench(add)`; add({name, value, unit, baseline?, ratio?, judge, target?}).
import { mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { root, step } from './lib/steps.mjs';
import { setUp } from './setup.mjs';

const [wanted] = process.argv.slice(2);
await setUp();
const rows = [];
const add = (row) => {
  if (row.judge !== 'value' && row.judge !== 'ratio') throw new Error(`${row.name}: judge is "value" or "ratio"`);
  if (!Number.isFinite(row[row.judge])) throw new Error(`${row.name}: ${row.judge} is not a number`);
  rows.push(row);
};
for (const file of readdirSync(join(root, 'tests/bench')).filter((f) => f.endsWith('.bench.mjs') && (!wanted || f.startsWith(wanted)))) {
  const { bench } = await import(join(root, 'tests/bench', file));
  await step(file.replace('.bench.mjs', ''), () => bench(add));
}
mkdirSync(join(root, 'out'), { recursive: true });
writeFileSync(join(root, 'out/bench.json'), JSON.stringify(rows, null, 1) + '\n');
const met = ({ judge, target, ...row }) =>
  target ? ((target.min ?? -Infinity) <= row[judge] && row[judge] <= (target.max ?? Infinity) ? 'met' : 'MISSED') : '';
const show = (n) => (n === undefined ? '' : n >= 100 ? n.toFixed(0) : n.toPrecision(3));
console.log(`${'what'.padEnd(58)}${'value'.padStart(10)} ${'unit'.padEnd(10)}${'baseline'.padStart(10)}${'ratio'.padStart(8)}  target`);
for (const r of rows) {
  const target = r.target
    ? `${r.judge} ${r.target.min !== undefined ? `>= ${r.target.min} ` : ''}${r.target.max !== undefined ? `<= ${r.target.max} ` : ''}${met(r)}`
    : '';
  console.log(`${r.name.padEnd(58)}${show(r.value).padStart(10)} ${r.unit.padEnd(10)}${show(r.baseline).padStart(10)}${show(r.ratio).padStart(8)}  ${target}`);
}
console.log(`\nout/bench.json holds ${rows.length} figures.`);
