import { existsSync, readFileSync } from 'node:fs';
import { expect, test } from '@jest/globals';
import { DocumentRequestSchema, PlanInputsSchema, PlanResultSchema } from '@lathwork/model';
import { unitOfName } from '@lathwork/units';

type Json = Record<string, unknown>;

/** Names of plain counts, versions and dimensionless factors: everything else that is a number must say its unit. */
const WITHOUT_UNIT = new Set([
  'schemaVersion',
  'wordingVersion',
  'version',
  'revision',
  'fromRevision',
  'toRevision',
  'attempt',
  'progress',
  'objectVersion',
  'seed',
  'draws',
  'nodes',
  'pages',
  'limit',
  'status',
  'bytes',
  'number',
  'slice',
  'counts',
  'stageNumber',
  'month',
  'year',
  'count',
  'people',
  'strips',
  'seams',
  'screws',
  'packs',
  'crewMin',
  'crewBest',
  'chartStartMonth',
  'coldestMonth',
  'hottestMonth',
  'dayOfYear',
  'lowerBoundBoards',
  'boughtBoards',
  'minor',
  'rate',
  'cp',
  'exposure',
  'thermal',
  'importance',
  'slope',
  'factorOfSafety',
  'workDays',
  // an amount stands beside a `unit` field that names its unit
  'amount',
  'need',
  'wanted',
  'toBuy',
  'packAmount',
  'boughtAmount',
  // GeoJSON's own name: longitude and latitude in degrees (RFC 7946)
  'coordinates',
  // free parameters of a note or a problem: their own names carry the suffix, checked where notes are worded
  'params',
]);
/** Members of a range take the unit of the name above them. */
const INHERITS = new Set(['p10', 'p50', 'p90', 'low', 'likely', 'high']);

const isNumber = (s: Json): boolean =>
  s['type'] === 'number' || s['type'] === 'integer' || (Array.isArray(s['type']) && s['type'].some((t) => t === 'number' || t === 'integer'));

/** Walks a JSON Schema and reports each number whose name does not carry its unit, or carries another one. */
const faultsOf = (schema: unknown, name: string, at: string, out: string[] = []): string[] => {
  if (Array.isArray(schema)) schema.forEach((s) => faultsOf(s, name, at, out));
  if (typeof schema !== 'object' || schema === null || Array.isArray(schema)) return out;
  const s = schema as Json;
  if (isNumber(s) && !WITHOUT_UNIT.has(name)) {
    const carried = unitOfName(name);
    if (!carried) out.push(`${at}: a number without a unit in its name`);
    else if (typeof s['unit'] === 'string' && s['unit'] !== carried) out.push(`${at}: named in ${carried}, stated in ${s['unit']}`);
  }
  for (const [key, value] of Object.entries((s['properties'] as Json | undefined) ?? {})) faultsOf(value, INHERITS.has(key) ? name : key, `${at}.${key}`, out);
  for (const key of ['items', 'anyOf', 'oneOf', 'allOf', 'additionalProperties']) if (s[key] !== undefined) faultsOf(s[key], name, at, out);
  if (s['patternProperties'] !== undefined && !WITHOUT_UNIT.has(name)) Object.values(s['patternProperties'] as Json).forEach((v) => faultsOf(v, name, at, out));
  return out;
};

test.each([
  ['PlanInputs', PlanInputsSchema],
  ['PlanResult', PlanResultSchema],
  ['DocumentRequest', DocumentRequestSchema],
])('every number of %s carries its unit in its name', (title, schema) => {
  expect(faultsOf(schema, title, title)).toEqual([]);
});

test('every number of the OpenAPI document carries its unit in its name', () => {
  const file = 'docs/api/openapi.json';
  expect(existsSync(file)).toBe(true);
  const doc = JSON.parse(readFileSync(file, 'utf8')) as { components: { schemas: Json; parameters: Record<string, { name: string; schema: unknown }> } };
  const schemas = Object.entries(doc.components.schemas).flatMap(([name, schema]) => faultsOf(schema, name, name));
  const shared = Object.values(doc.components.parameters);
  expect(shared.length).toBeGreaterThan(10);
  const parameters = shared.flatMap((p) => faultsOf(p.schema, p.name, p.name));
  expect([...schemas, ...parameters]).toEqual([]);
});

test('every number column of the database carries its unit in its name', () => {
  const prisma = readFileSync('prisma/schema.prisma', 'utf8');
  const columns = [...prisma.matchAll(/^ {2}(\w+)\s+(Int|Float|Decimal|BigInt)\b/gm)].map((m) => m[1] as string);
  expect(columns.length).toBeGreaterThan(10);
  expect(columns.filter((c) => !WITHOUT_UNIT.has(c) && !unitOfName(c))).toEqual([]);
});

test('the walk does catch a planted fault', () => {
  const planted = { type: 'object', properties: { height: { type: 'number' }, spanM: { type: 'number', unit: 'ft' }, widthM: { type: 'number', unit: 'm' } } };
  expect(faultsOf(planted, 'planted', 'planted')).toEqual(['planted.height: a number without a unit in its name', 'planted.spanM: named in m, stated in ft']);
});
