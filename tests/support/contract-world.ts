import { EXAMPLE_IDS, REQUEST_EXAMPLES } from '../../apps/api/src/examples/requests.js';
import { SCOPES } from '../../apps/api/src/platform/access/scopes.js';
import type { TestApi } from './api-app.js';
import type { Described, Json } from './contract.js';
import { jpeg } from './pictures.js';
import { signedUp } from './people.js';
import { peopleSteps } from './contract-people.js';
import type { HttpClient } from './http-client.js';

/** Which real thing a parameter of an address stands for, by the address up to it. */
const NAMES: Readonly<Record<string, string>> = {
  '/v1/sites/{id}': 'site',
  '/v1/structures/{id}': 'structure',
  '/v1/builds/{id}': 'build',
  '/v1/builds/{buildId}': 'build',
  '/v1/builds/{buildId}/claims/{id}': 'claim',
  '/v1/stock/{id}': 'stock',
  '/v1/prices/{id}': 'price',
  '/v1/exchange-rates/{id}': 'rate',
  '/v1/plans/{id}': 'plan',
  '/v1/documents/{id}': 'document',
  '/v1/spending/{id}': 'spending',
  '/v1/stock/{id}/photos/{photoId}': 'stockPhoto',
  '/v1/builds/{id}/photos/{photoId}': 'buildPhoto',
  '/v1/jobs/{id}': 'job',
  '/v1/webhooks/{id}': 'webhook',
  '/v1/webhooks/{webhookId}': 'webhook',
  '/v1/webhooks/{webhookId}/deliveries/{id}': 'delivery',
  '/v1/exports/{id}': 'export',
  '/v1/keys/{id}': 'key',
  '/v1/members/{id}': 'member',
  '/v1/invitations/{id}': 'invitation',
  '/v1/sessions/{id}': 'session',
  '/v1/climate/stations/{id}': 'station',
  '/v1/problems/{key}': 'problem',
};

/** Ids of real things, by the names above. */
export type Ids = Record<string, string>;

/** The names of the things that an address speaks of; null for an address whose things this world does not have. */
export const namesIn = (path: string): string[] | null => {
  const names = [...path.matchAll(/\{\w+\}/g)].map((match) => NAMES[path.slice(0, match.index + match[0].length)]);
  return names.every((name) => name !== undefined) ? names : null;
};

/** The address of an operation with real ids in it. */
export const addressOf = (path: string, ids: Ids): string => {
  const names = namesIn(path);
  if (!names) throw new Error(`tests/support/contract-world.ts does not say what the parameters of ${path} are`);
  let at = 0;
  return path.replaceAll(/\{\w+\}/g, () => {
    const name = names[at++] ?? '';
    const id = ids[name];
    if (id === undefined) throw new Error(`there is no ${name} for ${path}`);
    return id;
  });
};

/** A value with the ids of the examples replaced by real ones. */
export const withRealIds = (value: unknown, ids: Ids): unknown => {
  const text = Object.entries(EXAMPLE_IDS).reduce((so, [name, id]) => so.replaceAll(id, ids[name] ?? id), JSON.stringify(value));
  return JSON.parse(text) as unknown;
};

export interface Given {
  status: number;
  headers: Record<string, string>;
  body: unknown;
  text: string;
}

export interface Step {
  id: string;
  given: Given;
}

/** One request as the description says it should be sent. */
export const send = async (http: HttpClient, operation: Described, ids: Ids, body?: unknown): Promise<Given> => {
  const query = operation.parameters.filter((one) => one.in === 'query' && one.required).map((one) => [one.name, String(one.example)]);
  const address = addressOf(operation.path, ids) + (query.length > 0 ? `?${String(new URLSearchParams(query))}` : '');
  const wants = (name: string): boolean => operation.parameters.some((one) => one.in === 'header' && one.name === name);
  let request = http.request(operation.method, address).ok(() => true);
  if (wants('Idempotency-Key')) request = request.set('Idempotency-Key', crypto.randomUUID());
  if (wants('Prefer')) request = request.set('Prefer', 'wait=20');
  if (wants('If-Match')) {
    const whole = operation.path.replace(/\/(archive|restore|withdrawal|decision)$/, '');
    const current = await http.get(addressOf(whole, ids));
    request = request.set('If-Match', current.headers['etag'] as string);
  }
  const [type] = Object.keys(operation.body ?? {});
  const answer = await (type && body !== undefined ? request.set('Content-Type', type).send(JSON.stringify(body)) : request);
  return { status: answer.status, headers: answer.headers as Record<string, string>, body: answer.body as unknown, text: answer.text };
};

const idOf = (given: Given): string => String((given.body as Json)['id']);

/** What each creating operation makes, by the names above. */
const MAKES: readonly (readonly [string, string])[] = [
  ['createSite', 'site'],
  ['createStructure', 'structure'],
  ['createStockIntake', ''],
  ['createStockItem', 'stock'],
  ['createBuild', 'build'],
  ['createClaim', 'claim'],
  ['createPrice', 'price'],
  ['createExchangeRate', 'rate'],
  ['createKey', 'key'],
  ['createPlan', 'plan'],
  ['createReview', ''],
  ['createAsBuilt', ''],
  ['createDocument', 'document'],
  ['createSpendRequest', 'spending'],
  ['createWebhook', 'webhook'],
  ['testWebhook', 'delivery'],
  ['exportGarden', 'export'],
];

export interface World {
  ids: Ids;
  http: HttpClient;
  /** Somebody else of the same garden: nobody reviews what they asked for. */
  other: HttpClient;
  /** What was asked and answered while it was made. */
  steps: Step[];
}

/** Asks again until it is so, for ten seconds. */
const until = async (holds: () => Promise<boolean>): Promise<void> => {
  for (let tries = 0; tries < 100; tries += 1) {
    if (await holds()) return;
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  throw new Error('what was waited for did not come');
};

/** The example garden made through the API, from its first key to its plan, by the very requests of the description. */
export const makeWorld = async (api: TestApi, of: (id: string) => Described): Promise<World> => {
  const garden = await send(api.operator, of('createGarden'), {}, REQUEST_EXAMPLES['createGarden']);
  if (garden.status !== 201) throw new Error(`createGarden answered ${garden.status}: ${JSON.stringify(garden.body)}`);
  const steps: Step[] = [{ id: 'createGarden', given: garden }];
  const { key } = garden.body as { key: { key: string } };
  const http = api.as(key.key);
  const ids: Ids = { garden: String((garden.body as { garden: Json }).garden['id']), problem: 'not-found' };
  const other = api.as(await api.keyOf(ids['garden'] ?? '', SCOPES));
  for (const [id, name] of MAKES) {
    const given = await send(id === 'createReview' ? other : http, of(id), ids, withRealIds(REQUEST_EXAMPLES[id] ?? {}, ids));
    if (given.status >= 300) throw new Error(`${id} answered ${given.status}: ${JSON.stringify(given.body)}`);
    steps.push({ id, given });
    if (name) ids[name] = idOf(given);
  }
  steps.push(...(await peopleSteps(api, of, ids, http, send)));
  // Whoever asked does not decide, and a key never does.
  const treasurer = await api.person(ids['garden'] ?? '', ['treasurer']);
  const decided = await send(treasurer.http, of('decideSpendRequest'), ids, REQUEST_EXAMPLES['decideSpendRequest']);
  if (decided.status >= 300) throw new Error(`decideSpendRequest answered ${decided.status}: ${JSON.stringify(decided.body)}`);
  steps.push({ id: 'decideSpendRequest', given: decided });
  // What only a person can say of themselves.
  const member = await api.person(ids['garden'] ?? '', ['member']);
  for (const id of ['giveConsent', 'withdrawConsent', 'updatePrivateDetails']) {
    const given = await send(member.http, of(id), ids, REQUEST_EXAMPLES[id]);
    if (given.status >= 300) throw new Error(`${id} answered ${given.status}: ${JSON.stringify(given.body)}`);
    steps.push({ id, given });
  }
  const leaver = await signedUp(api);
  steps.push({ id: 'eraseAccount', given: await send(leaver.http, of('eraseAccount'), ids, REQUEST_EXAMPLES['eraseAccount']) });
  ids['spending'] = idOf(await send(http, of('createSpendRequest'), ids, withRealIds(REQUEST_EXAMPLES['createSpendRequest'], ids)));
  const picture = await jpeg();
  const photo = async (of: string): Promise<string> =>
    idOf((await http.request('post', `${of}?showsPeople=false`).set('Content-Type', 'image/jpeg').send(picture)) as unknown as Given);
  ids['stockPhoto'] = await photo(`/v1/stock/${ids['stock']}/photos`);
  ids['buildPhoto'] = await photo(`/v1/builds/${ids['build']}/photos`);
  await until(async () => ((await http.get(`/v1/exports/${ids['export']}`)).body as Json)['state'] === 'ready');
  ids['job'] = String(((await http.get('/v1/jobs')).body as { items: Json[] }).items[0]?.['id']);
  const stations = await http.get('/v1/climate/stations?near=39.93,-104.58&elevationM=1640');
  ids['station'] = String((stations.body as { items: Json[] }).items[0]?.['stationId']);
  return { ids, http, other, steps };
};
