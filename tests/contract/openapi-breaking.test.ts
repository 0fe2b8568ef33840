import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from '@jest/globals';
import { openApiText } from '../../apps/api/src/openapi.js';

type Json = Record<string, unknown>;
interface Break {
  kind: string;
  at: string;
}
interface Gate {
  KINDS: Record<string, string>;
  breaks(before: Json, after: Json): Break[];
  verdict(before: Json, after: Json, changes: string): string[];
  mayBreak(released: string, next: string): boolean;
}
const { KINDS, breaks, verdict, mayBreak } = (await import('../../tools/contract/breaking.mjs' as string)) as Gate;

/** A small API of its own, so that each fixture shows one change and nothing else. */
const shed = () => ({
  openapi: '3.1.0',
  info: { title: 'shed', version: '1.4.0' },
  components: {
    schemas: {
      Tool: {
        type: 'object',
        required: ['id', 'name'],
        properties: {
          id: { type: 'string', format: 'uuid' },
          name: { type: 'string', maxLength: 80 },
          state: { type: 'string', enum: ['whole', 'worn', 'lost'] },
          massKg: { anyOf: [{ type: 'number', minimum: 0, maximum: 100 }, { type: 'null' }] },
        } as Record<string, Json>,
      },
      ToolRequest: {
        type: 'object',
        additionalProperties: false,
        required: ['name'],
        properties: {
          name: { type: 'string', minLength: 1, maxLength: 80 },
          note: { type: 'string', maxLength: 200 },
          count: { type: 'integer', minimum: 0, maximum: 10 },
        } as Record<string, Json>,
      },
    },
  },
  paths: {
    '/tools': {
      get: {
        operationId: 'listTools',
        security: [{ key: [] }],
        'x-scope': 'tools:read',
        parameters: [
          { name: 'state', in: 'query', schema: { type: 'string', enum: ['whole', 'worn', 'lost'] } },
          { name: 'limit', in: 'query', schema: { type: 'integer', minimum: 1, maximum: 100 } },
        ] as Json[],
        responses: { 200: { content: { 'application/json': { schema: { type: 'array', items: { $ref: '#/components/schemas/Tool' } } } } } } as Json,
      },
      post: {
        operationId: 'createTool',
        security: [{ key: [] }] as Json[],
        'x-scope': 'tools:write',
        requestBody: { required: true, content: { 'application/json': { schema: { $ref: '#/components/schemas/ToolRequest' } } } },
        responses: { 201: { content: { 'application/json': { schema: { $ref: '#/components/schemas/Tool' } } } }, 409: { description: 'no' } } as Json,
      },
    } as Record<string, Json & { parameters?: Json[]; security?: Json[]; responses: Json }>,
  },
});
type Shed = ReturnType<typeof shed>;

const changed = (change: (document: Shed) => void): Shed => {
  const document = shed();
  change(document);
  return document;
};
const list = (document: Shed) => document.paths['/tools']['get'] as { parameters: Json[]; responses: Json; security: Json[] } & Json;
const create = (document: Shed) => document.paths['/tools']['post'] as { security: Json[]; responses: Json } & Json;
const fieldsOf = (document: Shed, name: 'Tool' | 'ToolRequest') => document.components.schemas[name].properties;

/** GitHub's nine kinds, each with one change and where it must be found. */
const NINE: [string, string, (document: Shed) => void][] = [
  ['operation-removed', 'GET /tools', (it) => delete it.paths['/tools']['get']],
  ['parameter-removed', 'GET /tools query:state', (it) => list(it).parameters.shift()],
  [
    'answer-field-removed',
    'GET /tools 200/[]/name',
    (it) => {
      const { name, ...rest } = fieldsOf(it, 'Tool');
      it.components.schemas.Tool = { ...it.components.schemas.Tool, required: ['id'], properties: { ...rest, title: name ?? {} } };
    },
  ],
  [
    'required-parameter-added',
    'GET /tools query:shelf',
    (it) => list(it).parameters.push({ name: 'shelf', in: 'query', required: true, schema: { type: 'string' } }),
  ],
  ['became-required', 'POST /tools body/note', (it) => it.components.schemas.ToolRequest.required.push('note')],
  ['type-changed', 'GET /tools 200/[]/massKg', (it) => (fieldsOf(it, 'Tool')['massKg'] = { anyOf: [{ type: 'string' }, { type: 'null' }] })],
  ['enum-value-removed', 'GET /tools query:state=lost', (it) => (list(it).parameters[0] = { ...list(it).parameters[0], schema: { enum: ['whole', 'worn'] } })],
  ['validation-added', 'POST /tools body/name', (it) => (fieldsOf(it, 'ToolRequest')['name'] = { type: 'string', minLength: 1, maxLength: 40 })],
  ['access-changed', 'GET /tools', (it) => (list(it).security = [{ session: [] }])],
];

/** More that breaks, each of a kind above. */
const MORE: [string, string, (document: Shed) => void][] = [
  ['parameter-removed', 'POST /tools body/note', (it) => delete fieldsOf(it, 'ToolRequest')['note']],
  ['answer-field-removed', 'GET /tools 200/[]/name', (it) => (it.components.schemas.Tool.required = ['id'])],
  ['answer-field-removed', 'POST /tools 201', (it) => (create(it).responses = { 202: create(it).responses['201'] })],
  [
    'required-parameter-added',
    'POST /tools body/shelf',
    (it) => {
      fieldsOf(it, 'ToolRequest')['shelf'] = { type: 'string' };
      it.components.schemas.ToolRequest.required.push('shelf');
    },
  ],
  ['type-changed', 'GET /tools 200/[]/name', (it) => (fieldsOf(it, 'Tool')['name'] = { anyOf: [{ type: 'string', maxLength: 80 }, { type: 'null' }] })],
  ['type-changed', 'POST /tools body', (it) => (create(it)['requestBody'] = { content: { 'application/xml': {} } })],
  ['validation-added', 'POST /tools body/note', (it) => (fieldsOf(it, 'ToolRequest')['note'] = { type: 'string', maxLength: 200, pattern: '^x' })],
  ['validation-added', 'POST /tools body/count', (it) => (fieldsOf(it, 'ToolRequest')['count'] = { type: 'integer', minimum: 1, maximum: 10 })],
  ['access-changed', 'POST /tools', (it) => (create(it)['x-scope'] = 'shed:admin')],
  ['access-changed', 'POST /tools', (it) => (create(it).security = [{ key: [], second: [] }])],
];

const HARMLESS: [string, (document: Shed) => void][] = [
  ['another way in', (it) => list(it).security.push({ session: [] })],
  ['no credentials needed any more', (it) => (list(it).security = [])],
  ['a new operation', (it) => (it.paths['/tools']['delete'] = { responses: { 204: {} } })],
  ['a new optional parameter', (it) => list(it).parameters.push({ name: 'shelf', in: 'query', schema: { type: 'string' } })],
  ['a new field of an answer', (it) => (fieldsOf(it, 'Tool')['shelf'] = { type: 'string' })],
  ['a new optional field of a request', (it) => (fieldsOf(it, 'ToolRequest')['shelf'] = { type: 'string' })],
  ['a longer limit', (it) => (fieldsOf(it, 'ToolRequest')['name'] = { type: 'string', minLength: 1, maxLength: 800 })],
  ['one more word', (it) => (list(it).parameters[0] = { name: 'state', in: 'query', schema: { enum: ['whole', 'worn', 'lost', 'lent'] } })],
  ['what was required may be left out', (it) => (it.components.schemas.ToolRequest.required = [])],
  ['a request may also say null', (it) => (fieldsOf(it, 'ToolRequest')['note'] = { anyOf: [{ type: 'string', maxLength: 200 }, { type: 'null' }] })],
  ['the null of an answer never comes', (it) => (fieldsOf(it, 'Tool')['massKg'] = { type: 'number', minimum: 0, maximum: 100 })],
  ['a refusal that no longer happens', (it) => (create(it).responses = { 201: create(it).responses['201'] })],
  ['a format that the limits keep already', (it) => (fieldsOf(it, 'ToolRequest')['count'] = { type: 'integer', format: 'int32', minimum: 0, maximum: 10 })],
  ['a description', (it) => (list(it)['description'] = 'What hangs on the wall.')],
];

describe('the comparison of two documents', () => {
  it('A34: there are nine kinds, and a fixture for each', () => {
    expect(Object.keys(KINDS)).toHaveLength(9);
    expect(NINE.map(([kind]) => kind).sort()).toEqual(Object.keys(KINDS).sort());
  });

  it.each([...NINE, ...MORE])('A34: %s is found at %s', (kind, at, change) => {
    const found = breaks(shed(), changed(change));
    expect(found.map((one) => [one.kind, one.at])).toContainEqual([kind, at]);
    expect(new Set(found.map((one) => one.kind))).toEqual(new Set([kind]));
  });

  it.each(HARMLESS)('A34: %s breaks nobody', (_what, change) => {
    expect(breaks(shed(), changed(change))).toEqual([]);
  });

  it('A34: nothing breaks against itself, and a renamed parameter of an address is the same address', () => {
    expect(breaks(shed(), shed())).toEqual([]);
    const [before, after] = ['/a/{id}', '/a/{toolId}'].map((path) => ({ ...shed(), paths: { [path]: { get: { responses: { 200: {} } } } } }));
    expect(breaks(before ?? {}, after ?? {})).toEqual([]);
  });
});

describe('the gate', () => {
  const [, , gone] = NINE[0] as [string, string, (document: Shed) => void];
  const at = (version: string): Shed => ({ ...changed(gone), info: { title: 'shed', version } });
  const row = (version: string): string => `## ${version}\n\n| \`operation-removed\` | \`GET /tools\` | nobody calls it |\n`;

  it('A34: a break needs both a version that may break and a line of the changes', () => {
    expect(verdict(shed(), at('2.0.0'), row('2.0.0'))).toEqual([]);
    expect(verdict(shed(), at('2.0.0'), '')).toHaveLength(1);
    expect(verdict(shed(), at('1.5.0'), row('1.5.0')).length).toBeGreaterThan(0);
    expect(verdict(shed(), at('1.5.0'), row('2.0.0')).length).toBeGreaterThan(0);
    expect(verdict(shed(), { ...shed() }, row('2.0.0'))).toEqual([expect.stringContaining('which is no break')]);
  });

  it('A34: before 1.0 a minor version may break, a patch may not', () => {
    expect([
      mayBreak('0.1.0', '0.2.0'),
      mayBreak('0.1.0', '0.1.1'),
      mayBreak('0.1.0', '1.0.0'),
      mayBreak('1.0.0', '1.1.0'),
      mayBreak('1.9.0', '2.0.0'),
    ]).toEqual([true, false, true, false, true]);
  });

  it('A34: the document as it stands breaks nothing of the released one that is not announced', async () => {
    const released = JSON.parse(readFileSync('docs/api/released/v1.json', 'utf8')) as Json;
    expect(verdict(released, JSON.parse(await openApiText()) as Json, readFileSync('docs/api/changes.md', 'utf8'))).toEqual([]);
  });

  it('A34: the command says what breaks, and fails', () => {
    const released = 'docs/api/released/v1.json';
    const run = (changes: string) => spawnSync(process.execPath, ['tools/contract/breaking.mjs', released, released, changes], { encoding: 'utf8' });
    expect([run('/dev/null').status, run('/dev/null').stdout]).toEqual([0, 'nothing breaks that is not announced\n']);
    expect(run('docs/api/changes.md').status).toBe(1);
  });
});
