// What the same questions cost when there are ten and a hundred times as many plans. One product for each size, asked in
// turn, so that a slow moment of the machine hits all sizes. LATHWORK_BENCH_ROWS=10000,100000,1000000 asks for the million
// too (some minutes, and about 5 GB of disk).
import { chmodSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { client, exampleGardens } from '../../tools/lib/example.mjs';
import { startProduct } from '../../tools/lib/services.mjs';
import { root } from '../../tools/lib/steps.mjs';
import { addressesIn, WIDE_OPEN } from './api-paths.bench.mjs';
import { fill, fillOthers, makeMember } from './lib/plans.mjs';
import { quantile } from './timing.mjs';

const SIZES = (process.env.LATHWORK_BENCH_ROWS ?? '10000,100000').split(',').map(Number);
const PLANS_OF_A_GARDEN = 1_000;
const ROUNDS = 40;
const READS_OF_A_ROUND = 10;
const MOST_GROWTH = { max: 1.5 };

const get = async (url, headers, path) => {
  const answer = await fetch(url + path, { headers });
  const body = await answer.json();
  if (answer.status !== 200) throw new Error(`${path}: ${answer.status} ${JSON.stringify(body)}`);
  return body;
};

/** A tenth of all plans is one garden's, the rest lies in gardens of a thousand. */
const worldOf = async (rows, product, ownerUrl) => {
  const { makeSessionToken } = await import(join(root, 'apps/api/dist/platform/access/key.js'));
  const { key, garden } = await client(product.apiUrl, product.operatorToken).post('/v1/gardens', {
    body: { ...exampleGardens()[0].garden, keyName: 'bench' },
  });
  const token = makeSessionToken().key;
  const member = await makeMember(ownerUrl, garden.id, token);
  await fill(ownerUrl, [garden.id], rows / 10, { owner: member });
  await fillOthers(ownerUrl, Math.round((rows - rows / 10) / PLANS_OF_A_GARDEN), PLANS_OF_A_GARDEN);
  const callers = {
    'by a key': { authorization: `Bearer ${key.key}` },
    'by a member, own rows': { authorization: `Bearer ${token}`, 'lathwork-garden': garden.id },
  };
  return { rows, url: product.apiUrl, callers: Object.entries(callers).map(([name, headers]) => ({ name, headers, next: null })), times: {} };
};

const start = async (rows) => {
  const dir = mkdtempSync(join(tmpdir(), 'lathwork-bench-'));
  chmodSync(dir, 0o755);
  const product = await startProduct({ embeddedDir: dir, durable: false });
  const stop = async () => {
    await product.stop();
    rmSync(dir, { recursive: true, force: true });
  };
  try {
    return { ...(await worldOf(rows, product, addressesIn(dir).ownerUrl)), stop };
  } catch (error) {
    await stop();
    throw error;
  }
};

const timed = async (times, name, work) => {
  const started = performance.now();
  const result = await work();
  (times[name] ??= []).push(performance.now() - started);
  return result;
};

/** Each caller turns one page further (and from the last one back to the first), and reads some plans of it. */
const round = async ({ url, callers, times }, kept) => {
  for (const caller of callers) {
    const page = await timed(kept ? times : {}, `list ${caller.name}`, () =>
      get(url, caller.headers, `/v1/plans?limit=100${caller.next ? `&cursor=${caller.next}` : ''}`),
    );
    if (page.items.length === 0) throw new Error('an empty page');
    caller.next = page.next;
    for (let i = 0; i < READS_OF_A_ROUND; i++) {
      const { id } = page.items[Math.floor(Math.random() * page.items.length)];
      await timed(kept ? times : {}, `read ${caller.name}`, () => get(url, caller.headers, `/v1/plans/${id}`));
    }
  }
};

export async function bench(add) {
  Object.assign(process.env, WIDE_OPEN);
  const worlds = [];
  try {
    for (const rows of SIZES) worlds.push(await start(rows));
    for (let i = -8; i < ROUNDS; i++) for (const world of worlds) await round(world, i >= 0);
    const [smallest] = worlds;
    for (const { rows, times } of worlds)
      for (const [name, list] of Object.entries(times)) {
        const [value, baseline] = [quantile(list, 0.95), quantile(smallest.times[name], 0.95)];
        add({ name: `${name}, ${rows.toLocaleString('en')} plans, p50`, value: quantile(list, 0.5), unit: 'ms', judge: 'value' });
        add({
          name: `${name}, ${rows.toLocaleString('en')} plans, p95`,
          value,
          unit: 'ms',
          baseline,
          ratio: value / baseline,
          judge: 'ratio',
          target: MOST_GROWTH,
        });
      }
  } finally {
    for (const world of worlds) await world.stop();
  }
}
