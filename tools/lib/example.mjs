// Loads the invented example gardens through the REST API with the typed client, as any program would: garden, site,
// stock, prices, structures, builds, claims. Then plans and documents.
import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { createClient } from '@lathwork/client';
import { root } from './steps.mjs';

/** @returns {import('@lathwork/client').LathworkClient} the client of one garden, or of the operator */
export const client = (apiUrl, key) => createClient({ baseUrl: apiUrl, key });

export const exampleGardens = () => {
  const folder = join(root, 'prisma/seed/example');
  return readdirSync(folder)
    .filter((f) => f.endsWith('.json'))
    .sort()
    .map((f) => ({ file: f.replace('.json', ''), ...JSON.parse(readFileSync(join(folder, f), 'utf8')) }));
};

/**
 * Makes one garden and everything in it.
 * @returns {Promise<{ key: string, builds: { name: string, id: string }[], api: import('@lathwork/client').LathworkClient }>}
 */
export async function loadGarden(apiUrl, operatorToken, example, onProgress = () => undefined) {
  const { key } = await client(apiUrl, operatorToken).post('/v1/gardens', { body: { ...example.garden, keyName: 'coordinator' } });
  const api = client(apiUrl, key.key);
  const site = await api.post('/v1/sites', { body: example.site });
  await api.post('/v1/stock/intakes', { body: { items: example.stock } });
  onProgress(`${example.stock.length} things on the pile`);
  for (const price of example.prices) await api.post('/v1/prices', { body: price });
  onProgress(`${example.prices.length} prices`);
  const builds = [];
  for (const { name, structure, wishes, crew, budget, claims = [] } of example.builds) {
    const { id: structureId } = await api.post('/v1/structures', { body: { name, ...structure } });
    const { id } = await api.post('/v1/builds', { body: { name, siteId: site.id, structureId, wishes, crew, budget } });
    for (const tag of claims) await api.post('/v1/builds/{buildId}/claims', { params: { path: { buildId: id } }, body: { tag } });
    builds.push({ name, id });
    onProgress(`${name}: ${claims.length} things held`);
  }
  return { key: key.key, builds, api };
}

/** Asks for a plan and waits until it is ready. */
export const plan = (api, buildId, asOf) => api.makePlan({ buildId, ...(asOf ? { asOf } : {}) });

/** Asks for a document, waits, and gives its record and bytes. */
export async function document(api, planId, { paper, units }) {
  const record = await api.makeDocument({ planId, kind: 'planBook', language: 'en', paper, units });
  return { record, bytes: Buffer.from(await api.documentFile(record.id)) };
}
