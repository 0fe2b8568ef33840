import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, test } from '@jest/globals';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { openApiText } from '../../apps/api/src/openapi.js';
import { resolved } from '../../apps/api/src/platform/http/document-ref.js';
import { SCOPES } from '../../apps/api/src/platform/access/scopes.js';

type Json = Record<string, unknown>;
interface Operation {
  operationId?: string;
  summary?: string;
  tags?: string[];
  security?: Json[];
  responses: Record<string, { content?: Record<string, { schema: Json }> }>;
  requestBody?: { content: Record<string, unknown> };
  parameters?: { name: string; in: string }[];
  'x-scope'?: string;
  'x-public'?: boolean;
}

/** The operation with its shared parameters and answers in place. */
const resolvedParts = (operation: Operation): Operation => ({
  ...operation,
  ...(operation.parameters ? { parameters: operation.parameters.map((one) => resolved(document, one)) } : {}),
  responses: Object.fromEntries(Object.entries(operation.responses).map(([status, answer]) => [status, resolved(document, answer)])),
});

let text = '';
let operations: [string, string, Operation][] = [];
let document: { openapi: string; components: Record<string, Record<string, Json>> & { schemas: Record<string, Json>; securitySchemes: Json } };
beforeAll(async () => {
  text = await openApiText();
  const parsed = JSON.parse(text) as typeof document & { paths: Record<string, Record<string, Operation>> };
  document = parsed;
  operations = Object.entries(parsed.paths).flatMap(([path, item]) =>
    Object.entries(item).map(([method, operation]): [string, string, Operation] => [path, method, resolvedParts(operation)]),
  );
});

test('the committed file is what the code says, byte for byte', () => {
  expect(readFileSync('docs/api/openapi.json', 'utf8')).toBe(text);
});

test('it is OpenAPI 3.1, without leftovers of 3.0', () => {
  expect(document.openapi).toBe('3.1.0');
  expect(text).not.toContain('"nullable"');
});

describe('operations', () => {
  test('there are some of every domain', () => {
    const tags = new Set(operations.flatMap(([, , { tags: own = [] }]) => own));
    for (const tag of ['gardens', 'sites', 'structures', 'stock', 'prices', 'builds', 'plans', 'documents'])
      expect([...tags].map((one) => one.toLowerCase())).toContain(tag);
    expect(operations.length).toBeGreaterThan(30);
  });

  test('each has an id of its own, a summary, a tag, an answer, and says who may call it', () => {
    const ids = operations.map(([, , { operationId }]) => operationId);
    expect(ids.filter((id, at) => !id || ids.indexOf(id) !== at)).toEqual([]);
    for (const [path, method, operation] of operations) {
      const at = `${method} ${path}`;
      expect([at, (operation.security?.length ?? 0) > 0]).toEqual([at, operation['x-public'] !== true]);
      expect([at, Boolean(operation.summary), operation.tags?.length]).toEqual([at, true, 1]);
      const isOperator = operation.security?.some((one) => 'operatorToken' in one) ?? false;
      const hasScope = (SCOPES as readonly string[]).includes(operation['x-scope'] ?? '');
      const isOwnAccount =
        !hasScope &&
        !isOperator &&
        (operation.security?.length ?? 0) > 0 &&
        (operation.security ?? []).every((one) => 'session' in one || 'sessionToken' in one);
      expect([at, [operation['x-public'] === true, isOperator, hasScope, isOwnAccount].filter(Boolean).length]).toEqual([at, 1]);
      expect([at, Object.keys(operation.responses).some((status) => status.startsWith('2'))]).toEqual([at, true]);
    }
  });

  test('each refusal is a problem, and those that can be met are told', () => {
    for (const [path, method, { responses, ...operation }] of operations) {
      const at = `${method} ${path}`;
      for (const [status, { content }] of Object.entries(responses))
        if (/^[45]/.test(status) && path !== '/readyz') expect([at, status, Object.keys(content ?? {})]).toEqual([at, status, ['application/problem+json']]);
      const wanted = [
        '500',
        ...(operation['x-public'] ? [] : ['401', '403']),
        ...(path.includes('{') ? ['404'] : []),
        ...(operation.requestBody ? ['413', '415'] : []),
      ];
      expect([at, wanted.filter((status) => !(status in responses))]).toEqual([at, []]);
      if (method === 'patch')
        expect([at, Object.keys(operation.requestBody?.content ?? {}), '412' in responses, '428' in responses]).toEqual([
          at,
          ['application/merge-patch+json'],
          true,
          true,
        ]);
    }
  });
});

/** Everything in the document that has a place, with that place. */
const walk = (value: unknown, at: string, see: (json: Json, at: string) => void): void => {
  if (typeof value !== 'object' || value === null) return;
  if (!Array.isArray(value)) see(value as Json, at);
  for (const [key, inner] of Object.entries(value)) walk(inner, `${at}/${key}`, see);
};

test('every reference leads somewhere, and every shared part is referred to', () => {
  const references: string[] = [];
  walk(document, '#', (json) => {
    if (typeof json['$ref'] === 'string') references.push(json['$ref']);
  });
  expect(references.length).toBeGreaterThan(500);
  expect(references.filter((to) => !to.startsWith('#/components/') || resolved(document, { $ref: to }) === undefined)).toEqual([]);
  const shared = Object.entries(document.components)
    .filter(([kind]) => kind !== 'securitySchemes')
    .flatMap(([kind, parts]) => Object.keys(parts).map((name) => `#/components/${kind}/${name}`));
  expect(shared.filter((place) => !references.includes(place))).toEqual([]);
});

test('a refusal is described once, and the document stays small', () => {
  const inline = operations.filter(([path, method]) => {
    const { paths } = JSON.parse(text) as { paths: Record<string, Record<string, Operation>> };
    const responses = Object.entries(paths[path]?.[method]?.responses ?? {});
    return path !== '/readyz' && responses.some(([status, answer]) => /^[45]/.test(status) && !('$ref' in answer));
  });
  expect(inline.map(([path, method]) => `${method} ${path}`)).toEqual([]);
  // It grows with what it describes, and by no more than that.
  expect(text.length / operations.length).toBeLessThan(6_000);
});

const LIMITS: Record<string, [string[], ...string[][]]> = {
  string: [['maxLength', 'enum', 'const', 'format', 'pattern']],
  array: [['maxItems']],
  number: [
    ['minimum', 'exclusiveMinimum', 'const'],
    ['maximum', 'exclusiveMaximum', 'const'],
  ],
  integer: [
    ['minimum', 'exclusiveMinimum', 'const'],
    ['maximum', 'exclusiveMaximum', 'const'],
  ],
};
/** What is calculated has no limit that could be promised; the parameters of a note are named by its code. */
const LIMITLESS = /^#\/components\/schemas\/(PlanResult|SiteClimate|BuildNeeds|BuildHazards)\//;

test('every text, list and number has limits', () => {
  const open: string[] = [];
  let seen = 0;
  walk(document, '#', (json, at) => {
    const wanted = typeof json['type'] === 'string' && !at.endsWith('/properties') ? LIMITS[json['type']] : undefined;
    if (!wanted) return;
    seen += 1;
    const isCalculated = LIMITLESS.test(at) && (json['type'] === 'number' || /\/params\//.test(at));
    if (!isCalculated && !wanted.every((keys) => keys.some((key) => json[key] !== undefined))) open.push(at);
  });
  expect(seen).toBeGreaterThan(1000);
  expect(open).toEqual([]);
});

test('who holds a thing and what could be taken instead is described', () => {
  const claim = operations.find(([, , { operationId }]) => operationId === 'createClaim')?.[2];
  expect(claim?.responses['409']?.content?.['application/problem+json']?.schema).toEqual({ $ref: '#/components/schemas/ClaimProblem' });
  const [base, described] = document.components.schemas['ClaimProblem']?.['allOf'] as [Json, { properties: Record<string, Json> }];
  expect(base).toEqual({ $ref: '#/components/schemas/Problem' });
  expect(Object.keys(described.properties).sort()).toEqual(['alternatives', 'freeCount', 'holders']);
});

test('every schema compiles as JSON Schema 2020-12', () => {
  const ajv = new Ajv2020({ strict: false, validateFormats: false });
  ajv.addSchema({ $id: 'https://lathwork.invalid/api', ...document });
  for (const name of Object.keys(document.components.schemas))
    expect(ajv.getSchema(`https://lathwork.invalid/api#/components/schemas/${name}`)).toBeInstanceOf(Function);
});
