import { generateSync } from 'json-schema-faker';
import { resolved } from '../../../apps/api/src/platform/http/document-ref.js';
import { isJson, type Contract, type Json } from '../contract.js';
import type { Ids } from '../contract-world.js';

/** A small generator of its own: the same seed gives the same run on every machine. */
export const dice = (seed: number): (() => number) => {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
};

export const pick = <T>(from: readonly T[], roll: () => number): T => {
  const one = from[Math.floor(roll() * from.length)];
  if (one === undefined) throw new Error('there is nothing to pick from');
  return one;
};

/** A schema with its references in place. Where it names examples, a text of that form is one of them. */
export const wholeSchema = (contract: Contract, value: unknown): unknown => {
  if (Array.isArray(value)) return value.map((one) => wholeSchema(contract, one));
  if (!isJson(value)) return value;
  if (typeof value['$ref'] === 'string') {
    const { $ref, ...beside } = value;
    return wholeSchema(contract, { ...resolved<Json>(contract.document, { $ref }), ...beside });
  }
  if (Array.isArray(value['examples']) && value['type'] === 'string') return { enum: value['examples'] };
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, wholeSchema(contract, one)]));
};

/** Fields of requests that name a thing, and which. */
const REFERS: Readonly<Record<string, string>> = {
  siteId: 'site',
  structureId: 'structure',
  buildId: 'build',
  planId: 'plan',
  stockItemId: 'stock',
  memberId: 'member',
  stationId: 'station',
};

const withReferences = (value: unknown, ids: Ids): unknown => {
  if (Array.isArray(value)) return value.map((one) => withReferences(one, ids));
  if (!isJson(value)) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, one]) => [key, typeof one === 'string' && REFERS[key] ? (ids[REFERS[key]] ?? one) : withReferences(one, ids)]),
  );
};

/** A value that the schema takes, with real ids where it refers to something. */
export const validValue = (schema: Json, ids: Ids, seed: number): unknown =>
  withReferences(generateSync(schema, { seed: (seed % 2_000_000_000) + 1, optionalsProbability: 0.5, maxItems: 5 }), ids);

/** Every place inside a value, as a path of keys. */
const placesIn = (value: unknown, path: (string | number)[] = []): (string | number)[][] => {
  if (typeof value !== 'object' || value === null) return [path];
  const inner = Object.entries(value).flatMap(([key, one]) => placesIn(one, [...path, Array.isArray(value) ? Number(key) : key]));
  return [path, ...inner];
};

const setAt = (value: unknown, path: readonly (string | number)[], change: (old: unknown) => unknown): unknown => {
  const [first, ...rest] = path;
  if (first === undefined) return change(value);
  if (Array.isArray(value)) return value.map((one, i) => (i === first ? setAt(one, rest, change) : one));
  if (!isJson(value)) return value;
  return Object.fromEntries(
    Object.entries(value).flatMap(([key, one]) => {
      const next = key === first ? setAt(one, rest, change) : one;
      return next === undefined ? [] : [[key, next]];
    }),
  );
};

const withUnknown = (old: unknown): unknown => (isJson(old) ? { ...old, neverHeardOf: 1 } : { neverHeardOf: old });

/** Ways to spoil a value. Whether the result is really invalid is asked of the schema afterwards. */
const SPOILERS: readonly ((old: unknown) => unknown)[] = [
  () => undefined,
  () => null,
  () => true,
  () => -1e9,
  () => 1e15,
  () => 0.123456789,
  () => '',
  () => 'x'.repeat(3000),
  () => [],
  () => ({}),
  () => ['\u202e', 7],
  withUnknown,
  (old) => (typeof old === 'number' ? String(old) : typeof old === 'string' ? old.length : 'text'),
  (old) => (Array.isArray(old) ? Array.from({ length: 1001 }, () => old[0] ?? null) : old),
];

/** The value with one thing wrong, somewhere. */
export const spoiled = (value: unknown, roll: () => number): unknown => setAt(value, pick(placesIn(value), roll), pick(SPOILERS, roll));
