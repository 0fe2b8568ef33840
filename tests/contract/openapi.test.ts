import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, test } from '@jest/globals';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { openApiText } from '../../apps/api/src/openapi.js';
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

let text = '';
let operations: [string, string, Operation][] = [];
let document: { openapi: string; components: { schemas: Record<string, Json>; securitySchemes: Json } };
beforeAll(async () => {
  text = await openApiText();
  const parsed = JSON.parse(text) as typeof document & { paths: Record<string, Record<string, Operation>> };
  document = parsed;
  operations = Object.entries(parsed.paths).flatMap(([path, item]) =>
    Object.entries(item).map(([method, operation]): [string, string, Operation] => [path, method, operation]),
  );
}, 60_000);

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
      expect([at, Boolean(operation.summary), operation.tags?.length]).toEqual([at, true, 1]);
      const isOperator = operation.security?.some((one) => 'operatorToken' in one) ?? false;
      const hasScope = (SCOPES as readonly string[]).includes(operation['x-scope'] ?? '');
      expect([at, [operation['x-public'] === true, isOperator, hasScope].filter(Boolean).length]).toEqual([at, 1]);
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

test('every schema compiles as JSON Schema 2020-12, and every reference leads somewhere', () => {
  const references = [...text.matchAll(/"\$ref": "#\/components\/schemas\/([^"]+)"/g)].map((match) => match[1] as string);
  expect(references.length).toBeGreaterThan(20);
  expect(references.filter((name) => !(name in document.components.schemas))).toEqual([]);
  const ajv = new Ajv2020({ strict: false, validateFormats: false });
  ajv.addSchema({ $id: 'https://lathwork.invalid/api', ...document });
  for (const name of Object.keys(document.components.schemas))
    expect(ajv.getSchema(`https://lathwork.invalid/api#/components/schemas/${name}`)).toBeInstanceOf(Function);
});
