// Reads of the running product against a bare server that does the same SQL in the same kind of transaction, and the
// time of one printed plan against the browser alone printing the same pages.
import { chmodSync, mkdtempSync, rmSync } from 'node:fs';
import { createServer } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { document, exampleGardens, loadGarden, plan } from '../../tools/lib/example.mjs';
import { startProduct } from '../../tools/lib/services.mjs';
import { median, paired, quantile, timed } from './timing.mjs';

/** A server that only answers a stored JSON text: what HTTP itself costs here. */
const bareServer = (body) =>
  new Promise((resolve) => {
    const server = createServer((_, response) => response.setHeader('content-type', 'application/json').end(body));
    server.listen(0, '127.0.0.1', () => resolve({ url: `http://127.0.0.1:${server.address().port}`, close: () => server.close() }));
  });

export async function bench(add) {
  const database = mkdtempSync(join(tmpdir(), 'lathwork-bench-'));
  chmodSync(database, 0o755);
  const product = await startProduct({ embeddedDir: database, durable: false });
  try {
    const example = exampleGardens()[0];
    const { key, api, builds } = await loadGarden(product.apiUrl, product.operatorToken, example);
    const computed = await timed(() => plan(api, builds[0].id), { runs: 5, warmUp: 1 });
    add({ name: 'plan asked over REST until ready', value: median(computed), unit: 'ms', judge: 'value', target: { max: 5000 } });

    const ready = await plan(api, builds[0].id);
    const printed = await timed(() => document(api, ready.id, { paper: 'a4', units: 'metric' }), { runs: 5, warmUp: 1 });
    add({ name: 'plan book asked over REST until its PDF is read', value: median(printed), unit: 'ms', judge: 'value', target: { max: 10_000 } });

    const headers = { authorization: `Bearer ${key}` };
    const text = await (await fetch(`${product.apiUrl}/v1/plans/${ready.id}`, { headers })).text();
    const bare = await bareServer(text);
    const fifty = (url, options) => async () => {
      for (let i = 0; i < 50; i++) await (await fetch(url, options)).text();
    };
    add({
      name: '50 plan reads, against a bare HTTP server with no SQL',
      unit: 'ms',
      judge: 'ratio',
      ...(await paired(fifty(`${product.apiUrl}/v1/plans/${ready.id}`, { headers }), fifty(bare.url), { runs: 9, warmUp: 2 })),
    });
    bare.close();

    const near = await timed(() => fetch(`${product.apiUrl}/v1/climate/stations?near=39.93,-104.58&limit=5`, { headers }).then((r) => r.text()), {
      runs: 60,
      warmUp: 10,
    });
    add({ name: 'nearest stations over REST, p50', value: quantile(near, 0.5), unit: 'ms', judge: 'value', target: { max: 50 } });
  } finally {
    await product.stop();
    rmSync(database, { recursive: true, force: true });
  }
}
