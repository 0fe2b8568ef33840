import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { PublishedDocument } from '../../apps/api/src/platform/http/docs.controller.js';
import { SCOPES } from '../../apps/api/src/platform/access/scopes.js';
import { startApi, type TestApi } from '../support/api-app.js';
import { contractOf, isJson, METHODS, walk, type Contract, type Described, type Json } from '../support/contract.js';
import { OPERATOR_TOKEN } from '../support/api-app.js';

let api: TestApi;
let contract: Contract;
let origin: string;
let key: string;
let person: Record<string, string>;

beforeAll(async () => {
  api = await startApi();
  contract = contractOf(api.get(PublishedDocument).text);
  origin = `http://127.0.0.1:${(api.server.address() as { port: number }).port}`;
  const garden = await api.garden(SCOPES);
  key = garden.key;
  const { token } = await api.person(garden.gardenId, ['coordinator']);
  person = { Authorization: `Bearer ${token}`, 'Lathwork-Garden': garden.gardenId };
});
afterAll(() => api.stop());

const ID = '019a1c3e-7777-7000-8000-000000000001';
const addressOf = (path: string): string => path.replaceAll(/\{\w+\}/g, ID);
/** The parameters without which nothing else would be looked at. */
const queryOf = ({ parameters }: Described): string => {
  const needed = parameters.filter((one) => one.in === 'query' && one.required);
  const valueOf = ({ example, schema }: (typeof needed)[number]): string =>
    String(example ?? (schema['type'] === 'boolean' ? false : ((schema['enum'] as unknown[] | undefined)?.[0] ?? schema['example'])));
  return needed.length === 0 ? '' : `?${String(new URLSearchParams(needed.map((one) => [one.name, valueOf(one)])))}`;
};

const credentials = ({ schemes }: Described): Record<string, string> =>
  schemes.includes('operatorToken')
    ? { Authorization: `Bearer ${OPERATOR_TOKEN}` }
    : schemes.includes('gardenKey')
      ? { Authorization: `Bearer ${key}` }
      : person;

const ask = (operation: Described, method: string, headers: Record<string, string> = {}, body?: string): Promise<Response> =>
  fetch(origin + addressOf(operation.path) + queryOf(operation), {
    method,
    headers: { ...(operation.isPublic ? {} : credentials(operation)), ...headers },
    signal: AbortSignal.timeout(20_000),
    ...(body === undefined ? {} : { body }),
  });

const problemOf = async (answer: Response): Promise<[number, string | null, unknown]> => {
  const text = await answer.text();
  const body: unknown = text === '' ? null : JSON.parse(text);
  return [answer.status, answer.headers.get('content-type')?.split(';')[0] ?? null, isJson(body) ? body['type'] : null];
};

/** Routes as the framework has them, read from it: what could be called, whatever the description says. */
const served = (): string[] => {
  interface Layer {
    route?: { path: string | string[]; methods: Record<string, boolean> };
  }
  const { router } = api.app.getHttpAdapter().getInstance() as unknown as { router: { stack: Layer[] } };
  const own = METHODS as readonly string[];
  return router.stack.flatMap(({ route }) =>
    route
      ? [route.path].flat().flatMap((path) =>
          Object.keys(route.methods)
            .filter((method) => own.includes(method))
            .map((method) => `${method} ${path.replaceAll(/:(\w+)/g, '{$1}')}`),
        )
      : [],
  );
};

describe('the description and the routes', () => {
  it('A6: are the same set: nothing is served in the dark, nothing is described that is not there', () => {
    // The pages for people are made from the description and are not part of it.
    const shown = contract.operations.map(({ method, path }) => `${method} ${path}`);
    expect([...new Set(served())].filter((one) => !shown.includes(one) && !/^get \/v1\/docs(\/\{domain\})?$/.test(one))).toEqual([]);
    expect(shown.filter((one) => !served().includes(one))).toEqual([]);
    expect(shown.length).toBeGreaterThan(100);
  });

  it('A4: every operation has id, tag, summary, description, access, a described good answer and every refusal that applies', () => {
    const lacking = contract.operations.flatMap((operation) => {
      const { id, method, path, tag, isPublic, schemes, parameters, body, responses } = operation;
      const raw = contract.document.paths[path]?.[method] ?? {};
      const has = (name: string): boolean => parameters.some((one) => one.in === 'header' && one.name === name);
      const wanted = [
        '400',
        '406',
        '500',
        '503',
        ...(path.startsWith('/v1/') ? ['429'] : []),
        ...(isPublic ? [] : ['401', '403']),
        ...(path.includes('{') ? ['404'] : []),
        ...(has('If-Match') ? ['412', '428'] : []),
        ...(has('Idempotency-Key') ? ['409', '422'] : []),
        ...(body ? ['413', '415'] : []),
      ];
      const good = Object.keys(responses).filter((status) => status.startsWith('2'));
      const isDescribed = (status: string): boolean =>
        status === '204' ||
        (status === '202' && !responses[status]?.content) ||
        Object.values(responses[status]?.content ?? {}).some(({ schema }) => schema !== undefined);
      const faults: [boolean, string][] = [
        [/^[a-z][A-Za-z]+$/.test(id), 'id'],
        [tag !== 'undefined', 'tag'],
        [typeof raw['summary'] === 'string' && typeof raw['description'] === 'string' && raw['description'] !== '', 'words'],
        [isPublic !== schemes.length > 0, 'access'],
        [good.length > 0 && good.every(isDescribed), 'good answer'],
        ...wanted.map((status): [boolean, string] => [status in responses, status]),
        ...Object.entries(responses)
          .filter(([status]) => /^[45]/.test(status) && path !== '/readyz')
          .map(([status, { content }]): [boolean, string] => [content?.['application/problem+json']?.schema !== undefined, `${status} as a problem`]),
      ];
      return faults.filter(([holds]) => !holds).map(([, what]) => `${id}: ${what}`);
    });
    expect(lacking).toEqual([]);
  });
});

describe('limits', () => {
  /** Parameters of a note are named by its code, and what is computed has no limit that could be promised. */
  const isCalculated = (at: string, type: unknown): boolean =>
    /\/schemas\/(PlanResult|Plan[A-Z]\w*|Build(Hazards|Needs|Totals)|Site(Climate|Months)\w*|Station\w*)\//.test(at) &&
    (type === 'number' || at.includes('/params/'));
  const wantsOf: Record<string, (schema: Json) => boolean> = {
    string: (schema) => ['maxLength', 'enum', 'const', 'format'].some((name) => schema[name] !== undefined),
    array: (schema) => schema['maxItems'] !== undefined,
    number: (schema) =>
      ['minimum', 'exclusiveMinimum', 'const', 'enum'].some((name) => schema[name] !== undefined) &&
      ['maximum', 'exclusiveMaximum', 'const', 'enum'].some((name) => schema[name] !== undefined),
  };

  it('A5: every text, list and number of requests and answers has them', () => {
    const open: string[] = [];
    let seen = 0;
    walk(contract.document, (json, at, name) => {
      const type = json['type'] === 'integer' ? 'number' : json['type'];
      if (name === 'properties' || at.includes('/example') || typeof type !== 'string' || !(type in wantsOf)) return;
      seen += 1;
      if (!isCalculated(at, type) && !wantsOf[type]?.(json)) open.push(at);
    });
    expect(open).toEqual([]);
    expect(seen).toBeGreaterThan(2000);
  });

  it('A5: every object of a request refuses what it does not know', () => {
    const open: string[] = [];
    const look = (schema: Json, at: string, known: Set<string>): void => {
      walk(schema, (json, place, name) => {
        if (typeof json['$ref'] === 'string' && !known.has(json['$ref'])) {
          known.add(json['$ref']);
          look(contract.document.components['schemas']?.[json['$ref'].split('/').at(-1) ?? ''] ?? {}, json['$ref'], known);
        }
        if (name !== 'properties' && json['type'] === 'object' && json['additionalProperties'] !== false && !place.includes('/example'))
          open.push(`${at} ${place}`);
      });
    };
    for (const { id, body } of contract.operations) for (const { schema } of Object.values(body ?? {})) look(schema ?? {}, id, new Set());
    expect(open).toEqual([]);
  });
});

describe('every operation alike', () => {
  it('A11: a method that an address does not have is 405, and Allow says which it has', async () => {
    const paths = [...new Set(contract.operations.map(({ path }) => path))];
    const wrong: unknown[] = [];
    for (const path of paths) {
      const own = contract.operations.filter((one) => one.path === path);
      const other = contract.operations.filter(
        (one) => one.path !== path && new RegExp(`^${one.path.replaceAll('.', '\\.').replaceAll(/\{\w+\}/g, '[^/]+')}$`).test(addressOf(path)),
      );
      const [operation] = own;
      const methods = [...new Set([...own, ...other].map(({ method }) => method.toUpperCase()))];
      const allow = [...methods, ...(methods.includes('GET') ? ['HEAD'] : [])].sort().join(', ');
      for (const method of ['GET', 'POST', 'PUT', 'PATCH', 'DELETE', 'OPTIONS'].filter((one) => !methods.includes(one))) {
        if (!operation) continue;
        const answer = await ask(operation, method);
        const heard = [...(await problemOf(answer)), answer.headers.get('allow')];
        if (JSON.stringify(heard) !== JSON.stringify([405, 'application/problem+json', '/v1/problems/method-not-allowed', allow]))
          wrong.push([method, path, ...heard]);
      }
    }
    expect(wrong).toEqual([]);
  });

  it('A11: a media type that it does not answer with is 406, one that it does not take is 415', async () => {
    const wrong: unknown[] = [];
    for (const operation of contract.operations) {
      const method = operation.method.toUpperCase();
      const headers = { 'If-Match': '"1"', 'Idempotency-Key': 'k' };
      if (operation.method === 'get') {
        const heard = await problemOf(await ask(operation, method, { Accept: 'application/x-nothing' }));
        if (heard[0] !== 406 || heard[2] !== '/v1/problems/not-acceptable') wrong.push([operation.id, 'Accept', ...heard]);
      }
      if (operation.body) {
        const heard = await problemOf(await ask(operation, method, { ...headers, 'Content-Type': 'text/x-nothing' }, 'x'));
        if (heard[0] !== 415 || heard[2] !== '/v1/problems/media-type-unsupported') wrong.push([operation.id, 'Content-Type', ...heard]);
      }
    }
    expect(wrong).toEqual([]);
  });

  it('A11: HEAD says what GET says, without a body; OPTIONS is for browsers of named origins only', async () => {
    const gets = contract.operations.filter(
      ({ method, path, responses }) =>
        method === 'get' && !path.includes('{') && !JSON.stringify(responses['200']).includes('octet') && !path.includes('export'),
    );
    const wrong: unknown[] = [];
    for (const operation of gets) {
      const [get, head] = [await ask(operation, 'GET'), await ask(operation, 'HEAD')];
      const said = (answer: Response): string => ['content-type', 'etag', 'cache-control', 'link'].map((name) => answer.headers.get(name) ?? '').join(' | ');
      if (get.status !== head.status || said(get) !== said(head) || (await head.text()) !== '')
        wrong.push([operation.id, get.status, head.status, said(get), said(head)]);
      await get.text();
      const options = await ask(operation, 'OPTIONS', { Origin: 'https://elsewhere.example', 'Access-Control-Request-Method': 'GET' });
      if (options.status !== 405 || options.headers.get('access-control-allow-origin') !== null) wrong.push([operation.id, 'OPTIONS', options.status]);
      await options.text();
    }
    expect(gets.length).toBeGreaterThan(20);
    expect(wrong).toEqual([]);
  });

  it('A10: the faults of one body come together, each with a JSON Pointer and a code, at most fifty', async () => {
    const wrong: unknown[] = [];
    const takers = contract.operations.filter(
      ({ method, body, path, schemes }) =>
        method === 'post' && body && Object.keys(body).includes('application/json') && !path.includes('{') && schemes.includes('gardenKey'),
    );
    for (const operation of takers) {
      const body = JSON.stringify(Object.fromEntries(Array.from({ length: 60 }, (_one, at) => [`odd~/${at}`, at])));
      const answer = await ask(operation, 'POST', { 'Content-Type': 'application/json' }, body);
      const problem = (await answer.json()) as { errors?: { pointer: string; code: string }[] };
      const pointers = (problem.errors ?? []).map(({ pointer }) => pointer);
      const isRight =
        answer.status === 400 &&
        pointers.length === 50 &&
        new Set(pointers).size === 50 &&
        pointers.every((one) => /^(\/([^~/]|~[01])*)+$/.test(one)) &&
        problem.errors?.every(({ code }) => /^[a-z][a-z-]+$/.test(code));
      if (!isRight) wrong.push([operation.id, answer.status, pointers.length, pointers.slice(0, 3)]);
    }
    expect(takers.length).toBeGreaterThan(8);
    expect(wrong).toEqual([]);
  });
});
