import { applyDecorators } from '@nestjs/common';
import { documented, fieldRule, passStandIns, REQUIRED, type Presence, type ValueFault } from './field-rule.js';
import type { JsonSchema } from './response-schema.js';

/** Longitude first, latitude second, in degrees of WGS 84 (RFC 7946). */
export type Position = [number, number];

/** A GeoJSON Polygon of one ring. */
export interface Outline {
  type: 'Polygon';
  coordinates: Position[][];
}

export const MOST_POSITIONS = 200;
const FEWEST_POSITIONS = 4;
const DECIMALS = 1e7;

/** Seven decimals of a degree are a centimetre; more would only pretend. */
export const rounded = (deg: number): number => Math.round(deg * DECIMALS) / DECIMALS + 0;

export const OUTLINE_SCHEMA: JsonSchema = {
  type: 'object',
  description: 'A GeoJSON Polygon (RFC 7946): one closed ring of [longitude, latitude], no holes, no "crs".',
  required: ['type', 'coordinates'],
  additionalProperties: false,
  properties: {
    type: { type: 'string', enum: ['Polygon'] },
    coordinates: {
      type: 'array',
      minItems: 1,
      maxItems: 1,
      items: {
        type: 'array',
        minItems: FEWEST_POSITIONS,
        maxItems: MOST_POSITIONS,
        items: { type: 'array', minItems: 2, maxItems: 2, items: { type: 'number', minimum: -180, maximum: 180 } },
      },
    },
  },
};

const isObject = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null && !Array.isArray(value);

const wrong = (detail: string, code = 'not-a-polygon'): ValueFault => ({ code, detail, remedy: 'Send a GeoJSON Polygon: [[[longitude, latitude], ...]].' });

const isPosition = (value: unknown): value is Position =>
  Array.isArray(value) && value.length === 2 && value.every((one) => typeof one === 'number' && Number.isFinite(one) && Math.abs(one) <= 180);

/** Whether it is a Polygon at all. What it encloses is looked at by `outlineFault`. */
const shapeFault = (value: unknown): ValueFault | null => {
  if (value === undefined) return REQUIRED;
  if (!isObject(value) || value['type'] !== 'Polygon') return wrong('A GeoJSON Polygon is wanted here.', 'wrong-type');
  const odd = Object.keys(value).find((key) => key !== 'type' && key !== 'coordinates');
  if (odd !== undefined)
    return wrong(`A Polygon here has no member "${odd.slice(0, 40)}"; its positions are always longitude and latitude of WGS 84.`, 'unknown-field');
  const rings = value['coordinates'];
  if (!Array.isArray(rings) || rings.length !== 1 || !Array.isArray(rings[0])) return wrong('A Polygon of exactly one ring is wanted.');
  const ring = rings[0] as unknown[];
  if (ring.length < FEWEST_POSITIONS || ring.length > MOST_POSITIONS)
    return {
      ...wrong(`The ring must have ${FEWEST_POSITIONS} to ${MOST_POSITIONS} positions.`, 'wrong-length'),
      allowed: `${FEWEST_POSITIONS} to ${MOST_POSITIONS}`,
    };
  const at = ring.findIndex((one) => !isPosition(one));
  return at < 0 ? null : wrong(`Position ${at} is not two numbers of at most 180 degrees.`, 'out-of-range');
};

/** A GeoJSON Polygon in a request. */
export const OutlineField = (presence: Presence): PropertyDecorator =>
  applyDecorators(passStandIns(presence), fieldRule(shapeFault), documented(OUTLINE_SCHEMA, presence));

/** Twice the signed area in square degrees: above zero when the ring runs counter-clockwise. */
const turn = (ring: readonly Position[]): number =>
  ring.reduce((sum, [x, y], i) => {
    const [nextX, nextY] = ring[(i + 1) % ring.length] ?? [x, y];
    return sum + x * nextY - nextX * y;
  }, 0);

const side = ([ax, ay]: Position, [bx, by]: Position, [px, py]: Position): number => Math.sign((bx - ax) * (py - ay) - (by - ay) * (px - ax));

const crosses = (a: Position, b: Position, c: Position, d: Position): boolean => side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;

const crossesItself = (ring: readonly Position[]): boolean => {
  const edges = ring.slice(1).map((to, i) => [ring[i] ?? to, to] as const);
  return edges.some(([a, b], i) => edges.slice(i + 2).some(([c, d]) => crosses(a, b, c, d)));
};

/** What keeps a ring from being the outline of a place; null when nothing does. */
export const outlineFault = ({ coordinates: [ring = []] }: Outline): { code: string; detail: string } | null => {
  const [first, last] = [ring[0], ring.at(-1)];
  if (first?.[0] !== last?.[0] || first?.[1] !== last?.[1]) return { code: 'ring-open', detail: 'The last position must be the same as the first.' };
  if (ring.some(([, latitude]) => Math.abs(latitude) > 90))
    return { code: 'out-of-range', detail: 'A latitude is beyond 90 degrees. In GeoJSON the longitude comes first; they may be swapped.' };
  const longitudes = ring.map(([longitude]) => longitude);
  if (Math.max(...longitudes) - Math.min(...longitudes) > 180)
    return { code: 'crosses-antimeridian', detail: 'The outline crosses the 180th meridian; such outlines are not taken.' };
  const around = ring.slice(0, -1).map(([x, y]): Position => [rounded(x), rounded(y)]);
  if (turn(around.map(([x, y]): Position => [x - (around[0]?.[0] ?? 0), y - (around[0]?.[1] ?? 0)])) === 0)
    return { code: 'no-area', detail: 'The outline encloses nothing.' };
  return crossesItself(ring) ? { code: 'crosses-itself', detail: 'The outline crosses itself.' } : null;
};

/** The ring as it is given out: seven decimals, counter-clockwise, closed. */
export const ringOf = ({ coordinates: [ring = []] }: Outline): Position[] => {
  const around = ring.slice(0, -1).map(([x, y]): Position => [rounded(x), rounded(y)]);
  const [originX, originY] = around[0] ?? [0, 0];
  // Near one of its own positions the little products keep their digits.
  if (turn(around.map(([x, y]): Position => [x - originX, y - originY])) < 0) around.reverse();
  return around[0] ? [...around, around[0]] : [];
};

export const settledOutline = (outline: Outline): Outline => ({ type: 'Polygon', coordinates: [ringOf(outline)] });
