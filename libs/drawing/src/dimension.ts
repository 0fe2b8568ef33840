import { chainNumbers, pairText, type ChainPart, type LengthText } from './lengths.js';
import type { Plate } from './plate.js';
import { capHeight, textWidth } from './primitives.js';
import { DoesNotFitError, type UnitSystem, type XY } from './types.js';
import { ENGLISH } from './words.js';

/** Distances in mm: first chain from the object, next chain, half a tick, gap and overshoot of an extension line. */
export const FIRST_CHAIN_MM = 8.5;
export const NEXT_CHAIN_MM = 8;
const TICK_MM = 1.1;
const GAP_MM = 1;
const OVER_MM = 1.5;
const TEXT_OFF_MM = 0.9;
const H = capHeight('let');
const ROW_MM = 4.4;

export type LabelPlace =
  | { kind: 'one'; text: string; from: number; to: number }
  | { kind: 'stacked'; first: string; second: string; from: number; to: number }
  | { kind: 'out'; text: string; from: number; to: number; row: number; centre: number };

export interface ChainLayout {
  stations: readonly number[];
  places: readonly LabelPlace[];
  /** Room beyond the line, on the far side, that the moved-out labels take. */
  extraMm: number;
}

/** Room beyond the last chain of a side: letters of a second unit under the line need more than a tick does. */
export const beyondChain = (layout: ChainLayout | undefined): number =>
  layout === undefined ? 0 : layout.places.some((p) => p.kind === 'stacked') ? 4.6 : layout.extraMm > 0 ? 3 : 1.8;

const fitsStacked = ([first, second]: LengthText, room: number): boolean => Math.max(textWidth(first), textWidth(second)) <= room - 1;

interface Run {
  from: number;
  to: number;
  /** One part of the run, and all of it. */
  text: LengthText;
  whole: LengthText;
  times: number;
  alike: boolean;
}
/** Bays set out evenly in whole millimetres differ by this much at most. */
const ALIKE_M = 0.0021;

/** A run of alike parts that are too narrow for letters becomes one label: `6 × 1219`, or `6 equal, 7315` where they differ by the rounding. */
function runsOf(stations: readonly number[], parts: readonly ChainPart[], units: UnitSystem): Run[] {
  const { texts, sum } = chainNumbers(parts, units);
  const runs: { first: number; last: number }[] = [];
  const narrow = (i: number): boolean => !fitsStacked(texts[i] ?? ['', ''], Math.abs((stations[i + 1] ?? 0) - (stations[i] ?? 0)));
  parts.forEach((part, i) => {
    const run = runs.at(-1);
    const head = run ? parts[run.first] : undefined;
    if (run && head && head.kind === part.kind && Math.abs(head.lengthM - part.lengthM) <= ALIKE_M && narrow(i) && narrow(run.first)) run.last = i;
    else runs.push({ first: i, last: i });
  });
  return runs.map(({ first, last }): Run => {
    const text = texts[first] ?? ['', ''];
    const alike = texts.slice(first, last + 1).every((t) => t[0] === text[0] && t[1] === text[1]);
    return { from: stations[first] ?? 0, to: stations[last + 1] ?? 0, text, whole: sum(first, last), times: last - first + 1, alike };
  });
}
const shown = (run: Run): LengthText => (run.times > 1 && !run.alike ? run.whole : run.text);

/**
 * Decides where each label stands: both units above the line; first above and second below; or moved out with a leader.
 * Letters never shrink and never overlap. `limits` are the ends between which moved-out labels must stay.
 */
export function layoutChain(
  stations: readonly number[],
  parts: readonly ChainPart[],
  units: UnitSystem,
  limits: readonly [number, number],
  equalWord = ENGLISH.equal,
): ChainLayout {
  const ends: number[] = [];
  const places = runsOf(stations, parts, units).map((run): LabelPlace => {
    const room = Math.abs(run.to - run.from);
    const times = run.times === 1 ? '' : run.alike ? `${run.times} × ` : `${run.times} ${equalWord}, `;
    const text = times + pairText(shown(run));
    const base = { from: run.from, to: run.to };
    if (textWidth(text) + 3 < room) return { kind: 'one', text, ...base };
    const [one, other] = shown(run);
    if (fitsStacked([times + one, other], room)) return { kind: 'stacked', first: times + one, second: other, ...base };
    return { kind: 'out', text, ...base, row: 0, centre: (run.from + run.to) / 2 };
  });
  const out = places.filter((p) => p.kind === 'out').sort((a, b) => a.centre - b.centre);
  const [low, high] = [Math.min(...limits), Math.max(...limits)];
  for (const place of out) {
    const half = textWidth(place.text) / 2 + 0.8;
    if (2 * half > high - low) throw new DoesNotFitError(`a dimension is wider than its drawing: ${place.text}`);
    const centre = Math.min(Math.max(place.centre, low + half), high - half);
    let row = 0;
    while ((ends[row] ?? -Infinity) > centre - half) row++;
    ends[row] = centre + half;
    place.row = row;
    place.centre = centre;
  }
  return { stations, places, extraMm: ends.length === 0 ? 0 : 2 + ends.length * ROW_MM };
}

export interface ChainOptions {
  /** Where the line runs, across the chain. */
  at: number;
  /** Edge of the object for each station's extension line; null for none. One number serves all. */
  from: number | null | readonly (number | null)[];
  vertical?: boolean;
  /** Side on which the chain lies: 1 right of or below the object, -1 left or above. */
  side: 1 | -1;
}

/** Draws a laid-out chain: extension lines, oblique ticks, letters. */
export function drawChain(plate: Plate, layout: ChainLayout, options: ChainOptions): void {
  const { at, from, side } = options;
  const vertical = options.vertical ?? false;
  const point = (along: number, across: number): XY => (vertical ? [across, along] : [along, across]);
  const put = (along: number, off: number, s: string): void => {
    if (vertical) plate.textTurned(at + off, along, s, 'let', 'middle');
    else plate.text(along, at + off, s, 'let', 'middle');
  };
  layout.stations.forEach((s, i) => {
    const edge = Array.isArray(from) ? (from as readonly (number | null)[])[i] : (from as number | null);
    if (edge !== null && edge !== undefined && Math.abs(at - edge) > GAP_MM + 0.3)
      plate.line(point(s, edge + side * GAP_MM), point(s, at + side * OVER_MM), 'thin');
    if (vertical) plate.line([at - TICK_MM, s + TICK_MM], [at + TICK_MM, s - TICK_MM], 'tick');
    else plate.line([s - TICK_MM, at + TICK_MM], [s + TICK_MM, at - TICK_MM], 'tick');
  });
  const low = Math.min(...layout.stations);
  const high = Math.max(...layout.stations);
  plate.line(point(low - OVER_MM, at), point(high + OVER_MM, at), 'thin');
  for (const place of layout.places) {
    const middle = (place.from + place.to) / 2;
    if (place.kind === 'one') put(middle, -TEXT_OFF_MM, place.text);
    else if (place.kind === 'stacked') {
      put(middle, -TEXT_OFF_MM, place.first);
      put(middle, TEXT_OFF_MM + H, place.second);
    } else {
      const clear = side * (TEXT_OFF_MM + H + 1.2 + place.row * ROW_MM);
      const elbow = side * (TEXT_OFF_MM + H + 0.7);
      plate.path([point(middle, at), point(middle, at + elbow), point(place.centre, at + clear)], 'thin');
      put(place.centre, side > 0 ? clear + H + 0.6 : clear - 0.6, place.text);
    }
  }
}

/** Paper stations from a start, for parts in metres; `k` is mm of paper per metre, negative to run the other way. */
export const stationsOf = (start: number, parts: readonly ChainPart[], k: number): number[] => {
  const out = [start];
  for (const part of parts) out.push((out.at(-1) ?? start) + part.lengthM * k);
  return out;
};
export const gap = (lengthM: number): ChainPart => ({ lengthM, kind: 'gap' });
export const openingPart = (lengthM: number): ChainPart => ({ lengthM, kind: 'opening' });

/** Parts along a line of openings: gap, opening, gap ... from 0 to the whole length. Openings that share a stretch are taken as one. */
export function partsAlong(openings: readonly (readonly [number, number])[], lengthM: number): ChainPart[] {
  const merged: [number, number][] = [];
  for (const [a, b] of [...openings].sort((p, q) => p[0] - q[0])) {
    const last = merged.at(-1);
    if (last && a < last[1] + 1e-6) continue;
    merged.push([a, b]);
  }
  const parts: ChainPart[] = [];
  let at = 0;
  for (const [a, b] of merged) {
    if (a - at > 0.0005) parts.push(gap(a - at));
    parts.push(openingPart(b - a));
    at = b;
  }
  if (lengthM - at > 0.0005) parts.push(gap(lengthM - at));
  return parts;
}
