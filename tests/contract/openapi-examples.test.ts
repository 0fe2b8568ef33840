import { writeFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import prettier from 'prettier';
import { ANSWER_EXAMPLES } from '../../apps/api/src/examples/generated/answers.js';
import { EXAMPLE_IDS, REQUEST_EXAMPLES } from '../../apps/api/src/examples/requests.js';
import { startApi, type TestApi } from '../support/api-app.js';
import { contractOf, isJson, type Contract, type Described, type Json } from '../support/contract.js';
import { startFakeReport } from '../support/fake-report.js';
import { makeWorld, namesIn, send, withRealIds, type Given, type Ids, type World } from '../support/contract-world.js';
import { PublishedDocument } from '../../apps/api/src/platform/http/docs.controller.js';

/** Too large to read in a description: plan inputs stand in docs/api/example-plan-inputs.json, a result is one request away. */
const TOO_LARGE = ['getOpenApi', 'getPlanInputs', 'getPlanResult'];
/** What they show depends on how far the sender has come by then. */
const CHANGING = ['getDelivery', 'listDeliveries', 'redeliver'];
const LONGEST = 6000;
const RECORD = process.env['RECORD_EXAMPLES'] === '1';

let report: Awaited<ReturnType<typeof startFakeReport>>;
let api: TestApi;
let contract: Contract;
let world: World;
const given = new Map<string, Given[]>();

const keep = (id: string, one: Given): void => void given.set(id, [...(given.get(id) ?? []), one]);

/** Changes come after what is made, and what takes things away comes last. */
const rank = ({ method, id }: Described): number =>
  method === 'patch' ? 1 : id.startsWith('archive') ? 2 : id.startsWith('restore') ? 3 : method === 'get' ? 4 : method === 'delete' ? 5 : 0;

const clientOf = (operation: Described) => (operation.isPublic ? api.anyone : operation.schemes.includes('gardenKey') ? world.http : null);

beforeAll(async () => {
  report = await startFakeReport();
  api = await startApi({ jobs: true, env: { REPORT_URL: report.url } });
  contract = contractOf(api.get(PublishedDocument).text);
  world = await makeWorld(api, contract.of);
  for (const { id, given: one } of world.steps) keep(id, one);
  const made = new Set(world.steps.map(({ id }) => id));
  const rest = contract.operations.filter((one) => !made.has(one.id) && namesIn(one.path) && clientOf(one)).sort((a, b) => rank(a) - rank(b));
  for (const operation of rest) {
    const body = REQUEST_EXAMPLES[operation.id];
    if (operation.method === 'post' && operation.body && !body) continue;
    const http = clientOf(operation);
    if (http) keep(operation.id, await send(http, operation, world.ids, body === undefined ? undefined : withRealIds(body, world.ids)));
  }
}, 180_000);
afterAll(async () => {
  await api.stop();
  await report.stop();
});

const UUID = /[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}/g;
const MOMENT = /"\d{4}-\d\d-\d\dT[\d:.]+Z"/g;

/** The same answer with fixed ids and times in place of those of this run, and lists cut to their beginning. */
const normalised = (value: unknown, ids: Ids): unknown => {
  // A page shows its first two things; a list inside a thing stays whole.
  const shorter = (one: unknown): unknown => (isJson(one) && Array.isArray(one['items']) ? { ...one, items: one['items'].slice(0, 2) } : one);
  const known = new Map(Object.entries(EXAMPLE_IDS).map(([name, id]) => [ids[name], id as string]));
  const others = new Map<string, string>();
  const text = JSON.stringify(shorter(value))
    .replaceAll(UUID, (id) => {
      const kept = known.get(id) ?? others.get(id) ?? `019a1c3e-0000-7000-8000-0000000001${String(others.size).padStart(2, '0')}`;
      if (!known.has(id)) others.set(id, kept);
      return kept;
    })
    .replaceAll(MOMENT, '"2026-03-15T09:00:00.000Z"')
    .replaceAll(/"lw_[0-9A-Za-z_]{30,}"/g, '"lw_shown-once-and-kept-by-you"')
    .replaceAll(/"whsec_[^"]+"/g, '"whsec_shown-once-and-kept-by-you"')
    .replaceAll(/"prefix":"lw_[^"]+"/g, '"prefix":"lw_example1"')
    // A packed garden is as long as its own ids and times let it be.
    .replaceAll(/"byteCount":\d+/g, '"byteCount":48000')
    .replaceAll(/"next":"[^"]+"/g, '"next":null')
    .replaceAll(/"Person [0-9a-f]{4}"/g, '"Yarrow Fieldgate"')
    .replaceAll(/[0-9a-f]{64}/g, 'c0ffee'.repeat(11).slice(0, 64));
  return JSON.parse(text) as unknown;
};

const recorded = (): Record<string, Record<string, unknown>> =>
  Object.fromEntries(
    [...given]
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([id, answers]): [string, Record<string, unknown>] => {
        const shown = answers.filter(({ status, headers }) => status < 300 && headers['content-type']?.startsWith('application/json'));
        const small = shown.map(({ status, body }): [string, unknown] => [String(status), normalised(body, world.ids)]);
        return [id, Object.fromEntries(small.filter(([, body]) => JSON.stringify(body).length < LONGEST))];
      })
      .filter(([id, answers]) => Object.keys(answers).length > 0 && !TOO_LARGE.includes(id) && !CHANGING.includes(id)),
  );

const writeAnswers = async (): Promise<void> => {
  const source = `/** Answers to the examples as the server gave them, with ids and times in place of its own. Written by the test of the examples. */
export const ANSWER_EXAMPLES: Readonly<Record<string, Readonly<Record<string, unknown>>>> = ${JSON.stringify(recorded())};\n`;
  const path = 'apps/api/src/examples/generated/answers.ts';
  writeFileSync(path, await prettier.format(source, { ...(await prettier.resolveConfig(path)), filepath: path }));
};

const media = (): [string, Json, unknown][] =>
  contract.operations.flatMap(({ id, body, responses }) => {
    const parts = [['request', body ?? {}] as const, ...Object.entries(responses).map(([status, { content }]) => [status, content ?? {}] as const)];
    return parts.flatMap(([part, content]) =>
      Object.values(content).flatMap(({ schema, example }): [string, Json, unknown][] =>
        example === undefined ? [] : [[`${id} ${part}`, schema ?? {}, example]],
      ),
    );
  });

describe('the examples of the description', () => {
  it('A36: every operation that takes JSON shows a request', () => {
    const lacking = contract.operations.filter(({ body }) =>
      Object.entries(body ?? {}).some(([type, one]) => type.includes('json') && one.example === undefined),
    );
    expect(lacking.map(({ id }) => id)).toEqual([]);
  });

  it('A36: every request shown was sent, and got an answer that the description promises', () => {
    const unsent = Object.keys(REQUEST_EXAMPLES).filter((id) => !given.has(id));
    expect(unsent).toEqual([]);
    for (const [id, answers] of given) {
      const { responses } = contract.of(id);
      for (const { status, headers, body, text } of answers) {
        expect([id, status, status < 300 ? 'done' : JSON.stringify(body)]).toEqual([id, status, 'done']);
        const described = responses[String(status)];
        expect([id, status, Object.keys(responses)]).toEqual([id, status, expect.arrayContaining([String(status)])]);
        const type = headers['content-type']?.split(';')[0] ?? '';
        const schema = described?.content?.[type]?.schema;
        if (!schema || !type.includes('json')) continue;
        const check = contract.check(schema);
        expect([id, check(schema['type'] === 'string' ? text : body), check.errors]).toEqual([id, true, null]);
      }
    }
    expect(given.size).toBeGreaterThan(50);
  });

  it('A36: every example fits its schema', () => {
    const all = media();
    expect(all.length).toBeGreaterThan(60);
    const wrong = all.flatMap(([at, schema, example]) => {
      const check = contract.check(schema);
      return check(example) ? [] : [`${at}: ${JSON.stringify(check.errors)}`];
    });
    expect(wrong).toEqual([]);
  });

  it('A36: the answers shown are the answers given', async () => {
    if (RECORD) await writeAnswers();
    else expect(recorded()).toEqual(ANSWER_EXAMPLES);
  });
});
