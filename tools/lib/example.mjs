// Loads the invented example gardens through the REST API, as any client would: garden, site, stock, prices,
// structures, builds, claims. Then plans and documents.
import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { randomUUID } from 'node:crypto';
import { root } from './steps.mjs';

/** A client of a few lines: JSON in and out, a problem becomes an error that says where and why. */
export function client(apiUrl, key) {
  const call = async (method, path, body, headers = {}) => {
    const answer = await fetch(apiUrl + path, {
      method,
      headers: {
        authorization: `Bearer ${key}`,
        accept: 'application/json, application/problem+json',
        ...(body ? { 'content-type': 'application/json' } : {}),
        ...headers,
      },
      ...(body ? { body: JSON.stringify(body) } : {}),
    });
    if (!answer.ok) {
      const problem = await answer.json().catch(() => ({}));
      const faults = (problem.errors ?? problem.faults ?? []).map((f) => `\n    ${f.pointer}: ${f.detail}`).join('');
      throw new Error(`${method} ${path}: ${answer.status} ${problem.title ?? ''} ${problem.detail ?? ''}${faults}`);
    }
    return answer;
  };
  return {
    get: async (path) => (await call('GET', path)).json(),
    post: async (path, body, headers = {}) => (await call('POST', path, body, { 'idempotency-key': randomUUID(), ...headers })).json(),
    bytes: async (path) => Buffer.from(await (await call('GET', path, undefined, { accept: '*/*' })).arrayBuffer()),
  };
}

export const exampleGardens = () => {
  const folder = join(root, 'prisma/seed/example');
  return readdirSync(folder)
    .filter((f) => f.endsWith('.json'))
    .sort()
    .map((f) => ({ file: f.replace('.json', ''), ...JSON.parse(readFileSync(join(folder, f), 'utf8')) }));
};

/**
 * Makes one garden and everything in it.
 * @returns {Promise<{ key: string, builds: { name: string, id: string }[], api: ReturnType<typeof client> }>}
 */
export async function loadGarden(apiUrl, operatorToken, example, onProgress = () => undefined) {
  const { key } = await client(apiUrl, operatorToken).post('/v1/gardens', { ...example.garden, keyName: 'coordinator' });
  const api = client(apiUrl, key.key);
  const site = await api.post('/v1/sites', example.site);
  await api.post('/v1/stock/intakes', { items: example.stock });
  onProgress(`${example.stock.length} things on the pile`);
  for (const price of example.prices) await api.post('/v1/prices', price);
  onProgress(`${example.prices.length} prices`);
  const builds = [];
  for (const { name, structure, wishes, crew, budget, claims = [] } of example.builds) {
    const { id: structureId } = await api.post('/v1/structures', { name, ...structure });
    const { id } = await api.post('/v1/builds', { name, siteId: site.id, structureId, wishes, crew, budget });
    for (const tag of claims) await api.post(`/v1/builds/${id}/claims`, { tag });
    builds.push({ name, id });
    onProgress(`${name}: ${claims.length} things held`);
  }
  return { key: key.key, builds, api };
}

/** Asks for a plan and waits until it is ready. */
export async function plan(api, buildId, asOf) {
  let state = await api.post('/v1/plans', { buildId, ...(asOf ? { asOf } : {}) }, { prefer: 'wait=10' });
  while (state.state === 'computing') {
    await new Promise((r) => setTimeout(r, 200));
    state = await api.get(`/v1/plans/${state.id}`);
  }
  if (state.state === 'failed') throw new Error(`the plan failed: ${JSON.stringify(state.problem)}`);
  return state;
}

/** Asks for a document, waits, and gives its record and bytes. */
export async function document(api, planId, { paper, units }) {
  let state = await api.post('/v1/documents', { planId, kind: 'planBook', language: 'en', paper, units });
  while (state.state === 'queued' || state.state === 'rendering') {
    await new Promise((r) => setTimeout(r, 100));
    state = await api.get(`/v1/documents/${state.id}`);
  }
  if (state.state === 'failed') throw new Error(`the document failed: ${JSON.stringify(state.problem)}`);
  return { record: state, bytes: await api.bytes(`/v1/documents/${state.id}/file`) };
}
