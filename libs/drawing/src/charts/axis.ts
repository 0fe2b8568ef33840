import { scaleLinear } from 'd3-scale';
import { signed, temperature, toF } from '../lengths.js';
import { spread } from '../place-labels.js';
import type { Plate } from '../plate.js';
import { segmentHits, segmentsCross, textWidth, type Rect } from '../primitives.js';
import type { LimitLine, UnitSystem, XY } from '../types.js';

export interface Frame {
  x1: number;
  x2: number;
  top: number;
  bottom: number;
}

/** A temperature axis: one scale with two units, as on a thermometer. */
export interface TemperatureAxis {
  y: (celsius: number) => number;
  lowC: number;
  highC: number;
}

const toC = (f: number): number => (f - 32) / 1.8;

/** Range of the axis from the values, on whole ticks of the first unit, with a little air. */
export function temperatureAxis(values: readonly number[], units: UnitSystem, frame: Frame): TemperatureAxis {
  const seen = values.length > 0 ? values : [0, 20];
  const first = units === 'us' ? toF : (c: number) => c;
  const back = units === 'us' ? toC : (c: number) => c;
  const step = tickStep(Math.max(...seen.map(first)) - Math.min(...seen.map(first)), frame.bottom - frame.top);
  const low = Math.floor((Math.min(...seen.map(first)) - step * 0.15) / step) * step;
  const high = Math.max(Math.ceil((Math.max(...seen.map(first)) + step * 0.15) / step) * step, low + step);
  const scale = scaleLinear()
    .domain([back(low), back(high)])
    .range([frame.bottom, frame.top]);
  return { y: (c) => scale(c), lowC: back(low), highC: back(high) };
}

const STEPS = [1, 2, 5, 10, 20, 50];
const LABEL_STEP_MM = 4.4;
const tickStep = (span: number, heightMm: number): number => STEPS.find((s) => (span / s + 2) * LABEL_STEP_MM <= heightMm && s >= 5) ?? 50;

const ticks = (low: number, high: number, heightMm: number): number[] => {
  const step = STEPS.find((s) => s >= 5 && ((high - low) / s) * LABEL_STEP_MM <= heightMm) ?? 50;
  const out: number[] = [];
  for (let v = Math.ceil(low / step - 1e-9) * step; v <= high + 1e-9; v += step) out.push(v);
  return out;
};

/** Help lines and figures of the first unit on the left, of the second on the right; unit names above. */
export function drawTemperatureAxis(plate: Plate, axis: TemperatureAxis, frame: Frame, units: UnitSystem): void {
  const { x1, x2, top, bottom } = frame;
  const height = bottom - top;
  const first = units === 'us' ? toF : (c: number) => c;
  const backFirst = units === 'us' ? toC : (c: number) => c;
  const second = units === 'us' ? (c: number) => c : toF;
  const backSecond = units === 'us' ? (c: number) => c : toC;
  for (const v of ticks(first(axis.lowC), first(axis.highC), height)) {
    const y = axis.y(backFirst(v));
    if (y < bottom - 0.1) plate.line([x1, y], [x2, y], 'grid');
    plate.text(x1 - 1.5, y + 1.2, signed(v), '', 'end');
  }
  for (const v of ticks(second(axis.lowC), second(axis.highC), height)) {
    const y = axis.y(backSecond(v));
    plate.line([x2, y], [x2 + 1.3, y], 'thin');
    plate.text(x2 + 2, y + 1.2, signed(v), '');
  }
  plate.line([x1, bottom], [x2, bottom], 'vis');
  plate.line([x1, top], [x1, bottom], 'thin');
  plate.line([x2, top], [x2, bottom], 'thin');
  plate.text(x1 - 1.5, top - 3, units === 'us' ? '°F' : '°C', 'b', 'end');
  plate.text(x2 + 2, top - 3, units === 'us' ? '°C' : '°F', 'b');
}

const LIMIT_STEP_MM = 8.6;
const LIMIT_X_MM = 9.6;

/** Room that the names of the limits need at the right of the frame. */
export const limitRoom = (limits: readonly LimitLine[], units: UnitSystem): number =>
  Math.max(9.5, ...limits.map((l) => LIMIT_X_MM + 3.6 + Math.max(textWidth(l.label, 'b'), textWidth(limitText(l, units), '')) + 1));
const limitText = (l: LimitLine, units: UnitSystem): string => `${temperature(l.valueC, units)} (${temperature(l.valueC, units === 'us' ? 'metric' : 'us')})`;

/** Broken lines across the chart; the names are moved apart where limits lie close, each tied to its line by a short pointer. Returns those that found no room. */
export function drawLimits(
  plate: Plate,
  axis: TemperatureAxis,
  frame: Frame,
  limits: readonly LimitLine[],
  units: UnitSystem,
  blanks: readonly Rect[],
): string[] {
  const onAxis = limits.filter((l) => l.valueC >= axis.lowC - 1e-6 && l.valueC <= axis.highC + 1e-6);
  const room = Math.max(0, Math.floor((frame.bottom + 1.5 - frame.top + 3) / LIMIT_STEP_MM + 1 + 1e-9));
  const inside = onAxis.slice(0, room);
  const places = spread(
    inside.map((l) => axis.y(l.valueC)),
    LIMIT_STEP_MM,
    frame.top - 3,
    frame.bottom + 1.5,
  );
  inside.forEach((l, i) => {
    const y = axis.y(l.valueC);
    for (const [from, to] of piecesBetween(frame.x1, frame.x2, blanks)) plate.line([from, y], [to, y], 'hid');
    const at = places[i] ?? y;
    plate.path(
      [
        [frame.x2 + LIMIT_X_MM - 1.2, y],
        [frame.x2 + LIMIT_X_MM + 0.6, y],
        [frame.x2 + LIMIT_X_MM + 2.8, at],
      ],
      'thin',
    );
    plate.text(frame.x2 + LIMIT_X_MM + 3.6, at - 0.5, l.label, 'b');
    plate.text(frame.x2 + LIMIT_X_MM + 3.6, at + 3.5, limitText(l, units), '');
  });
  return onAxis.slice(room).map((l) => l.label);
}

/** The stretches of a level line that are not under one of the blank columns. */
export function piecesBetween(x1: number, x2: number, blanks: readonly Rect[]): [number, number][] {
  const out: [number, number][] = [];
  let at = x1;
  for (const b of [...blanks].sort((p, q) => p.x - q.x)) {
    if (b.x > at) out.push([at, Math.min(b.x, x2)]);
    at = Math.max(at, b.x + b.w);
  }
  if (at < x2) out.push([at, x2]);
  return out;
}

/** A name for a line or band: where a white label may stand, and the spot on the thing its pointer ends at. */
export interface Pointer {
  text: string;
  /** Spots on the thing, best first. */
  spots: readonly XY[];
}

const DROP_MM = [7, 9.5, 12.5, 16, 20, 25, 31, 38];
const SHIFT_MM = [0, 8, -8, 16, -16, 25, -25, 35, -35, 48, -48];

/**
 * Names things directly in the chart, clear of data, letters and other pointers. `data` are boxes and pieces that letters
 * must not cover. Returns the names that found no place.
 */
export function drawPointers(plate: Plate, pointers: readonly Pointer[], frame: Frame, data: (r: Rect) => boolean): string[] {
  const unplaced: string[] = [];
  for (const p of pointers) {
    const choice = findPlace(plate, p, frame, data);
    if (choice === null) {
      unplaced.push(p.text);
      continue;
    }
    const { at, to, rect } = choice;
    const edgeY = to[1] > rect.y + rect.h ? rect.y + rect.h : to[1] < rect.y ? rect.y : at[1];
    const edgeX = Math.min(Math.max(to[0], rect.x + 1.5), rect.x + rect.w - 1.5);
    plate.leader([edgeX, edgeY], to, true);
    plate.label(at[0], at[1], p.text, 'b', 'middle');
  }
  return unplaced;
}

function findPlace(plate: Plate, p: Pointer, frame: Frame, data: (r: Rect) => boolean): { at: XY; to: XY; rect: Rect } | null {
  const w = textWidth(p.text, 'b');
  let best: { at: XY; to: XY; rect: Rect; cost: number } | null = null;
  for (const to of p.spots)
    for (const drop of DROP_MM)
      for (const side of [-1, 1])
        for (const shift of SHIFT_MM) {
          const at: XY = [to[0] + shift, to[1] + side * drop];
          const rect: Rect = { x: at[0] - w / 2 - 0.8, y: at[1] - 3, w: w + 1.6, h: 4.2 };
          if (rect.x < frame.x1 + 0.5 || rect.x + rect.w > frame.x2 - 0.5 || rect.y < frame.top || rect.y + rect.h > frame.bottom - 0.6) continue;
          const cost = drop + Math.abs(shift) * 0.6;
          if (
            (best !== null && cost >= best.cost) ||
            !plate.isFree(rect, 0.4) ||
            plate.leaders.some(([a, b]) => segmentHits(a, b, rect)) ||
            data(rect) ||
            leaderBlocked(plate, [Math.min(Math.max(to[0], rect.x + 1.5), rect.x + rect.w - 1.5), side < 0 ? rect.y + rect.h : rect.y], to)
          )
            continue;
          best = { at, to, rect, cost };
        }
  return best;
}
const leaderBlocked = (plate: Plate, a: XY, b: XY): boolean =>
  plate.taken.some((t) => segmentHits(a, b, t)) || plate.leaders.some(([c, d]) => segmentsCross(a, b, c, d));
