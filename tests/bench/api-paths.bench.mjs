// What a request costs over what its SQL costs: the product, as it runs for a user, against a bare server that does the
// same SQL through `pg` in the same kind of transaction. Both in turn, on the same database, in the same run.
import { fork } from 'node:child_process';
import { chmodSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { client, exampleGardens } from '../../tools/lib/example.mjs';
import { startProduct } from '../../tools/lib/services.mjs';
import { root } from '../../tools/lib/steps.mjs';
import { inTurn } from './lib/load.mjs';
import { fill } from './lib/plans.mjs';

const POOL = 10;
const READ = { min: 0.6 };
const WRITE = { min: 0.7 };

/** The limits are not what is measured here. */
export const WIDE_OPEN = {
  RATE_PER_ADDRESS: '1000000000',
  RATE_PER_CREDENTIAL: '1000000000',
  RATE_PER_GARDEN: '1000000000',
  RATE_COSTLY: '1000000000',
  DATABASE_POOL: String(POOL),
};

/** The addresses of the server that the product started in this folder. */
export const addressesIn = (dir) => {
  const port = readFileSync(join(dir, 'pgdata', 'postmaster.pid'), 'utf8').split('\n')[3];
  const at = (role, file) => `postgresql://${role}:${readFileSync(join(dir, file), 'utf8')}@127.0.0.1:${port}/lathwork`;
  return { url: at('lathwork_app', 'app-password'), ownerUrl: at('lathwork_owner', 'owner-password') };
};

export const startBare = (told) => {
  const child = fork(join(root, 'tests/bench/lib/bare-server.mjs'));
  return new Promise((resolve, reject) => {
    child.once('message', ({ address }) => resolve({ url: address, stop: () => child.disconnect() }));
    child.once('exit', (code) => reject(new Error(`the bare server ended with ${code}`)));
    child.send(told);
  });
};

/** The very statements of the product, with a stand-in where an id goes. */
const statements = async () => {
  const { planSql, plansSql, resultSql } = await import(join(root, 'apps/api/dist/domains/plans/plan-rows.repository.js'));
  const of = ({ text, values }) => ({ text, values });
  return { plan: of(planSql('$id')), result: of(resultSql('$id')), plans: of(plansSql(null, { after: null, take: 101 })) };
};

const world = async (product, dir) => {
  const example = exampleGardens()[0];
  const { key, garden } = await client(product.apiUrl, product.operatorToken).post('/v1/gardens', { body: { ...example.garden, keyName: 'bench' } });
  const { url, ownerUrl } = addressesIn(dir);
  await fill(ownerUrl, [garden.id], 200);
  const page = await client(product.apiUrl, key.key).get('/v1/plans', { params: { query: { limit: 100 } } });
  if (page.items.length !== 100) throw new Error('the list of 100 plans has another length');
  const bare = await startBare({ url, garden: garden.id, statements: await statements(), pool: POOL });
  return { bare, plan: page.items[50].id, headers: { authorization: `Bearer ${key.key}` }, structure: example.builds[0].structure };
};

/** A name of its own for each request: a name is taken once in a garden. */
const posting = (url, headers, structure) => {
  let made = 0;
  const run = Math.random().toString(36).slice(2);
  const bodyOf = () => JSON.stringify({ name: `bench ${run} ${++made}`, ...structure });
  return {
    url,
    status: 201,
    method: 'POST',
    headers: { ...headers, 'content-type': 'application/json' },
    requests: [{ setupRequest: (request) => ({ ...request, body: bodyOf() }) }],
  };
};

export async function bench(add) {
  const dir = mkdtempSync(join(tmpdir(), 'lathwork-bench-'));
  chmodSync(dir, 0o755);
  Object.assign(process.env, WIDE_OPEN);
  const product = await startProduct({ embeddedDir: dir, durable: true });
  let bare;
  try {
    const w = await world(product, dir);
    bare = w.bare;
    const get = (path) => ({ url: `${product.apiUrl}${path}`, headers: w.headers });
    const against = (path) => ({ url: `${bare.url}${path}` });
    const cases = [
      ['health', get('/livez'), against('/livez'), undefined],
      ['one plan read', get(`/v1/plans/${w.plan}`), against(`/plan/${w.plan}`), READ],
      ['one plan read, bare with prepared statements', get(`/v1/plans/${w.plan}`), against(`/prepared/plan/${w.plan}`), undefined],
      ['one result read, 2 kB', get(`/v1/plans/${w.plan}/result`), against(`/result/${w.plan}`), READ],
      ['list of 100 plans', get('/v1/plans?limit=100'), against('/plans'), READ],
      ['a write with audit', posting(`${product.apiUrl}/v1/structures`, w.headers, w.structure), posting(`${bare.url}/structure`, {}, w.structure), WRITE],
    ];
    for (const [name, ours, theirs, target] of cases) {
      const { perSecond, p99Ms, barePerSecond, bareP99Ms, ratio } = await inTurn(ours, theirs);
      add({
        name: `${name}: requests in a second, against bare`,
        value: perSecond,
        unit: '1/s',
        baseline: barePerSecond,
        ratio,
        judge: 'ratio',
        ...(target ? { target } : {}),
      });
      add({ name: `${name}: p99, against bare`, value: p99Ms, unit: 'ms', baseline: bareP99Ms, ratio: p99Ms / Math.max(bareP99Ms, 1), judge: 'ratio' });
    }
  } finally {
    bare?.stop();
    await product.stop();
    rmSync(dir, { recursive: true, force: true });
  }
}
