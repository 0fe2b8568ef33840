// npm run demo: from nothing to printed plans of invented gardens, through the REST API like any client.
import { mkdirSync, mkdtempSync, rmSync, writeFileSync, chmodSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import { root, seconds, step } from './lib/steps.mjs';
import { setUp } from './setup.mjs';

const started = performance.now();
await setUp();
const { startProduct } = await import('./lib/services.mjs');
const { document, exampleGardens, loadGarden, plan } = await import('./lib/example.mjs');

const out = join(root, 'out');
mkdirSync(out, { recursive: true });
// A database of its own that goes away again: the demo shows the same thing each time.
const database = mkdtempSync(join(tmpdir(), 'lathwork-demo-'));
chmodSync(database, 0o755);
const product = await step('starting the database, the API and the report app', () => startProduct({ embeddedDir: database, durable: false }));
const rows = [];
let failure;
try {
  for (const example of exampleGardens()) {
    const { builds, api } = await step(`loading ${example.garden.name} (invented)`, () =>
      loadGarden(product.apiUrl, product.operatorToken, example, (line) => process.stderr.write(`    ${line}\n`)),
    );
    for (const build of builds) {
      const t0 = performance.now();
      const ready = await step(`computing the plan of ${build.name}`, () => plan(api, build.id));
      const t1 = performance.now();
      for (const wish of example.documents.filter((d) => d.build === build.name)) {
        const t2 = performance.now();
        const { record, bytes } = await step(`printing it on ${wish.paper}, ${wish.units} units`, () => document(api, ready.id, wish));
        const name = `${example.file}-${build.name.toLowerCase().replaceAll(/[^a-z0-9]+/g, '-')}-${wish.paper}.pdf`;
        writeFileSync(join(out, name), bytes);
        rows.push({
          file: relative(root, join(out, name)),
          pages: record.pages,
          kilobytes: Math.round(bytes.length / 1024),
          plan: seconds(t1 - t0),
          print: seconds(performance.now() - t2),
        });
      }
    }
  }
} catch (e) {
  failure = e;
} finally {
  await step('stopping what was started', product.stop);
  rmSync(database, { recursive: true, force: true });
}
if (failure) {
  console.error(failure.message);
  process.exit(1);
}
for (const r of rows) console.log(`${r.file}: ${r.pages} pages, ${r.kilobytes} kB, plan in ${r.plan}, print in ${r.print}`);
console.log(`${rows.length} build plans of invented gardens in ${seconds(performance.now() - started)}. Do not build from them.`);
