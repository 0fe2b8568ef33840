import { beforeAll, describe, expect, it } from '@jest/globals';
import { openApiText } from '../../apps/api/src/openapi.js';
import { resolved } from '../../apps/api/src/platform/http/document-ref.js';

type Json = Record<string, unknown>;
const METHODS = ['get', 'post', 'put', 'patch', 'delete'];

interface Operation {
  name: string;
  it: Json & { responses: Record<string, { content?: Record<string, { schema?: unknown }> }> };
}

let document: Json;
let operations: Operation[];

beforeAll(async () => {
  document = JSON.parse(await openApiText()) as Json;
  operations = Object.entries(document['paths'] as Record<string, Record<string, Operation['it']>>).flatMap(([path, item]) =>
    Object.entries(item)
      .filter(([method]) => METHODS.includes(method))
      .map(([method, operation]) => ({ name: `${method} ${path}`, it: inPlace(operation) })),
  );
});

/** The operation with its shared parameters and answers in place. */
const inPlace = (operation: Operation['it']): Operation['it'] => ({
  ...operation,
  parameters: ((operation['parameters'] as Json[] | undefined) ?? []).map((one) => resolved(document, one)),
  responses: Object.fromEntries(Object.entries(operation.responses).map(([status, answer]) => [status, resolved(document, answer)])),
});

/** Every schema of a document with where it stands. */
const schemasIn = (value: unknown, path: string, out: [string, Json][] = []): [string, Json][] => {
  if (typeof value !== 'object' || value === null) return out;
  const json = value as Json;
  if (typeof json['type'] === 'string' && !path.endsWith('/properties')) out.push([path, json]);
  for (const [key, inner] of Object.entries(json)) schemasIn(inner, `${path}/${key}`, out);
  return out;
};

const limitless = (schema: Json): string | null => {
  const has = (...keys: string[]): boolean => keys.some((key) => schema[key] !== undefined);
  if (schema['type'] === 'string') return has('maxLength', 'enum', 'const', 'format') ? null : 'a string without a limit';
  if (schema['type'] === 'array') return has('maxItems') ? null : 'a list without a limit';
  if (schema['type'] === 'number' || schema['type'] === 'integer')
    return has('minimum', 'exclusiveMinimum', 'enum') && has('maximum', 'exclusiveMaximum', 'enum') ? null : 'a number without limits';
  if (schema['type'] === 'object') return schema['additionalProperties'] === undefined ? 'an object that takes anything' : null;
  return null;
};

describe('the description of the API', () => {
  it('has every domain', () => {
    const tags = new Set(operations.flatMap(({ it: operation }) => (operation['tags'] as string[] | undefined) ?? []));
    for (const tag of ['gardens', 'sites', 'climate', 'structures', 'stock', 'prices', 'builds', 'plans', 'documents']) expect(tags).toContain(tag);
    expect(operations.length).toBeGreaterThan(50);
  });

  it('says of every operation its id, tag, summary, access, a good answer and its refusals', () => {
    const lacking = operations
      .filter(({ it: operation }) => operation['x-public'] !== true)
      .flatMap(({ name, it: operation }) => {
        const statuses = Object.keys(operation.responses);
        const good = statuses.filter((status) => status.startsWith('2'));
        const described = good.every(
          (status) => status === '204' || Object.values(operation.responses[status]?.content ?? {}).some(({ schema }) => schema !== undefined),
        );
        const problems = statuses.filter((status) => /^[45]/.test(status));
        const asProblem = problems.every((status) => operation.responses[status]?.content?.['application/problem+json']?.schema !== undefined);
        const faults = [
          typeof operation['operationId'] === 'string' || 'operationId',
          Array.isArray(operation['tags']) || 'tag',
          typeof operation['summary'] === 'string' || 'summary',
          (Array.isArray(operation['security']) && operation['security'].length > 0) || 'security',
          (good.length > 0 && described) || 'schema of the answer',
          ['401', '403', '500'].every((status) => statuses.includes(status)) || 'refusals',
          asProblem || 'schema of the refusals',
        ];
        return faults.filter((fault) => fault !== true).map((fault) => `${name}: no ${String(fault)}`);
      });
    expect(lacking).toEqual([]);
  });

  it('gives no operation id twice', () => {
    const ids = operations.map(({ it: operation }) => operation['operationId']);
    expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]);
  });

  it('limits every string, list, number and object of every request', () => {
    const schemas = (document['components'] as { schemas: Json }).schemas;
    const requests = Object.entries(schemas).filter(([name]) => /(Request|Patch)$/.test(name));
    expect(requests.length).toBeGreaterThan(20);
    const open = requests
      .flatMap(([name, schema]) => schemasIn(schema, name))
      .flatMap(([path, schema]) => (limitless(schema) ? [`${path}: ${limitless(schema)}`] : []));
    expect(open).toEqual([]);
  });

  it('limits every parameter', () => {
    const open = operations
      .flatMap(({ name, it: operation }) => schemasIn(operation['parameters'], name))
      .flatMap(([path, schema]) => (limitless(schema) ? [`${path}: ${limitless(schema)}`] : []));
    expect(open).toEqual([]);
  });

  it('shows a quantity as a number or a text with its unit', () => {
    const structure = (document['components'] as { schemas: Record<string, { properties: Record<string, Json> }> }).schemas['StructureRequest'];
    const width = structure?.properties['widthM'];
    expect(width?.['oneOf']).toEqual([
      expect.objectContaining({ type: 'number', minimum: 0.9, maximum: 12 }),
      expect.objectContaining({ type: 'string', maxLength: 40 }),
    ]);
    expect(width?.['x-unit']).toBe('m');
  });
});
