// From nothing to a printed plan book, as a program of yours would do it:
//
//   LATHWORK_URL=http://127.0.0.1:8080 node docs/examples/plan-and-print.mjs you@example.org plan-book.pdf
//
// @ts-check
import { writeFile } from 'node:fs/promises';
import { ConnectionError, createClient, FailedError, ProblemError } from '@lathwork/client';
import * as ours from './shelter.mjs';
import { enter, makeGarden } from './sign-up.mjs';

/** @typedef {import('@lathwork/client').LathworkClient} Client */

const baseUrl = process.env['LATHWORK_URL'] ?? 'http://127.0.0.1:8080';
const [email = 'sorrel@example.org', file = 'plan-book.pdf'] = process.argv.slice(2);
const password = process.env['LATHWORK_PASSWORD'] ?? 'five barrows under a bridge';

/**
 * Site, things on the pile, prices, structure: what a plan is made from.
 * @param {Client} api
 */
async function describe(api) {
  const site = await api.post('/v1/sites', { body: ours.site });
  console.log(`site ${site.name}: ${site.timeZone}, climate of ${await stationName(api, site)}`);

  await api.post('/v1/stock/intakes', { body: { items: ours.stock } });
  for (const price of ours.prices) await api.post('/v1/prices', { body: price });

  const structure = await api.post('/v1/structures', { body: ours.structure });
  const build = await api.post('/v1/builds', { body: { ...ours.build, siteId: site.id, structureId: structure.id } });

  // Hold every free thing for this build, page by page, so that nobody else plans with it.
  let held = 0;
  for await (const { tag } of api.items('/v1/stock', { params: { query: { free: true, limit: 5 } } })) {
    await api.post('/v1/builds/{buildId}/claims', { params: { path: { buildId: build.id } }, body: { tag } });
    held++;
  }
  console.log(`build ${build.name}: ${held} things held for it`);
  return build.id;
}

/**
 * @param {Client} api
 * @param {{ latitudeDeg: number, longitudeDeg: number }} at
 */
async function stationName(api, at) {
  const near = `${at.latitudeDeg},${at.longitudeDeg}`;
  const { items } = await api.get('/v1/climate/stations', { params: { query: { near, limit: 1 } } });
  const [nearest] = items;
  return nearest ? `${nearest.stationName}, ${Math.round(nearest.distanceM / 1000)} km away` : 'no station';
}

/**
 * Computes the plan, tells what to know before anybody builds, and prints it.
 * @param {Client} api
 * @param {string} buildId
 */
async function planAndPrint(api, buildId) {
  const plan = await api.makePlan({ buildId }, { onState: ({ state }) => console.log(`plan: ${state}`) });
  const result = await api.get('/v1/plans/{id}/result', { params: { path: { id: plan.id } } });
  const stops = result.notes.filter(({ severity }) => severity === 'stop').map(({ code }) => code);
  console.log(
    `revision ${plan.revision}: ${result.notes.length} notes, budget ${result.budget.verdict}, ${result.budget.unpricedCount} things without a price`,
  );
  if (stops.length > 0) console.log(`settle these before anybody builds: ${stops.join(', ')}`);

  const document = await api.makeDocument({ planId: plan.id, kind: 'planBook', language: 'en', paper: 'letter', units: 'us' });
  await writeFile(file, await api.documentFile(document.id));
  console.log(`${file}: ${document.pages} pages, sha256 ${document.sha256}`);
}

/**
 * A plan is its maker's alone until it is shared. Then whoever is in the garden may read it, and who is not yet is invited.
 * @param {Client} api
 * @param {string} buildId
 */
async function share(api, buildId) {
  const build = await api.update('/v1/builds/{id}', { id: buildId }, { shared: true });
  const invitation = await api.post('/v1/invitations', { body: { email: `neighbour-of-${email}`, roles: ['extensionVolunteer'] } });
  console.log(`${build.name} is ${build.shared ? 'shared' : 'not shared'} in the garden; ${invitation.email} is invited to read it`);
}

/** @param {unknown} error */
function tell(error) {
  // A refusal says what is wrong, where, and what can be done. `key` is stable: decide by it, not by the words.
  if (error instanceof ProblemError) {
    console.error(error.message);
    if (error.remedy) console.error(error.remedy);
    if (error.key === 'quota-exceeded') console.error('Wait until earlier jobs are done.');
    if (error.requestId) console.error(`Give this to whoever runs the server: request ${error.requestId}`);
  } else if (error instanceof FailedError || error instanceof ConnectionError) console.error(error.message);
  else throw error;
  process.exitCode = 1;
}

try {
  const anybody = createClient({ baseUrl });
  const person = await enter(anybody, { email, password, name: 'Sorrel Hedgerow' });
  const api = await makeGarden(person, ours.garden);
  const buildId = await describe(api);
  await planAndPrint(api, buildId);
  await share(api, buildId);
  await person.delete('/v1/sessions/current');
} catch (error) {
  tell(error);
}
