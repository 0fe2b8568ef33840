import { spokenRangeOf } from './spoken.js';
import type { DayChartOptions, NightChartOptions } from '../options.js';
import type { ThermalMonth } from '../model-types.js';
import { Plate } from '../plate.js';
import { HATCH, overlap, segmentHits, textWidth, type HatchStyle, type Rect } from '../primitives.js';
import type { Box, Drawing, LimitLine, XY } from '../types.js';
import { ENGLISH, type Words } from '../words.js';
import { drawLimits, drawPointers, drawTemperatureAxis, limitRoom, temperatureAxis, type Frame, type Pointer, type TemperatureAxis } from './axis.js';

const HEAD_MM = 7;
const FOOT_MM = 6.4;
const LEFT_MM = 10;

export interface MonthGrid {
  frame: Frame;
  columnMm: number;
  /** Middle of the i-th column. */
  x: (i: number) => number;
  /** Calendar month, 1 to 12, of the i-th column. */
  monthAt: (i: number) => number;
}

export function monthGrid(box: Box, startMonth: number, rightMm: number): MonthGrid {
  const frame = { x1: LEFT_MM, x2: box.wMm - rightMm, top: HEAD_MM, bottom: box.hMm - FOOT_MM };
  const columnMm = (frame.x2 - frame.x1) / 12;
  return { frame, columnMm, x: (i) => frame.x1 + columnMm * (i + 0.5), monthAt: (i) => ((startMonth - 1 + i) % 12) + 1 };
}

export const drawMonthNames = (plate: Plate, g: MonthGrid, words: Words): void => {
  for (let i = 0; i < 12; i++) {
    const name = words.months[g.monthAt(i) - 1] ?? '';
    const short = textWidth(name) < g.columnMm - 0.6 ? name : (name[0] ?? '');
    plate.text(g.x(i), g.frame.bottom + 4.6, short, '', 'middle');
  }
};

/** A month without a record is an empty column that says so. */
export function drawMissing(plate: Plate, g: MonthGrid, missing: readonly number[], words: Words): Rect[] {
  return missing.map((i) => {
    const rect = { x: g.x(i) - g.columnMm / 2 + 0.4, y: g.frame.top - 1, w: g.columnMm - 0.8, h: g.frame.bottom - g.frame.top + 0.7 };
    plate.rect(rect.x, rect.y, rect.w, rect.h, 'blank');
    plate.textTurned(g.x(i) + 1.2, (g.frame.top + g.frame.bottom) / 2, words.noRecord, '', 'middle');
    return rect;
  });
}

/** Runs of neighbouring columns that hold. */
export function runs(holds: (i: number) => boolean): number[][] {
  const out: number[][] = [];
  for (let i = 0; i < 12; i++) {
    if (!holds(i)) continue;
    const last = out.at(-1);
    if (last?.at(-1) === i - 1) last.push(i);
    else out.push([i]);
  }
  return out;
}

export interface MonthRange {
  p10: number;
  p50: number;
  p90: number;
}

/** Band from low to high over runs of months; a lone month becomes a short box. Returns its outlines. */
export function drawBand(plate: Plate, g: MonthGrid, axis: TemperatureAxis, value: (i: number) => MonthRange | null, style: HatchStyle): XY[][] {
  return runs((i) => value(i) !== null).map((run) => {
    const xs = run.length === 1 ? [g.x(run[0] ?? 0) - 2.4, g.x(run[0] ?? 0) + 2.4] : run.map(g.x);
    const of = run.length === 1 ? [run[0] ?? 0, run[0] ?? 0] : run;
    const up = of.map((i, j): XY => [xs[j] ?? 0, axis.y(value(i)?.p90 ?? 0)]);
    const down = of.map((i, j): XY => [xs[j] ?? 0, axis.y(value(i)?.p10 ?? 0)]);
    const outline = [...up, ...down.reverse()];
    plate.poly(outline, 'blank');
    plate.hatch(outline, style);
    plate.poly(outline, 'vis');
    return outline;
  });
}

export const hitsOutline =
  (outlines: readonly (readonly XY[])[]) =>
  (r: Rect): boolean =>
    outlines.some(
      (o) =>
        o.some((p, i) => segmentHits(p, o[(i + 1) % o.length] ?? p, r)) ||
        o.some(([x, y]) => x > r.x && x < r.x + r.w && y > r.y && y < r.y + r.h) ||
        contains(o, [r.x + r.w / 2, r.y + r.h / 2]),
    );
function contains(o: readonly XY[], [x, y]: XY): boolean {
  let odd = false;
  o.forEach(([x1, y1], i) => {
    const [x2, y2] = o[(i + 1) % o.length] ?? [x1, y1];
    if (y1 > y !== y2 > y && x < x1 + ((y - y1) / (y2 - y1)) * (x2 - x1)) odd = !odd;
  });
  return odd;
}

const midOf = (g: MonthGrid, axis: TemperatureAxis, value: (i: number) => number | null): XY[] =>
  Array.from({ length: 11 }, (_, i): XY | null => {
    const [a, b] = [value(i), value(i + 1)];
    return a === null || b === null ? null : [(g.x(i) + g.x(i + 1)) / 2, (axis.y(a) + axis.y(b)) / 2];
  }).filter((p): p is XY => p !== null);
const atMonths = (g: MonthGrid, axis: TemperatureAxis, value: (i: number) => number | null): XY[] =>
  Array.from({ length: 12 }, (_, i): XY | null => {
    const v = value(i);
    return v === null ? null : [g.x(i), axis.y(v)];
  }).filter((p): p is XY => p !== null);

/** A limit as far off as this from every value would squeeze the chart, and is left to the table. */
const FAR_LIMIT_K = 25;
const nearLimits = (limits: readonly LimitLine[], values: readonly number[]): LimitLine[] =>
  limits.filter((l) => values.length === 0 || (l.valueC > Math.min(...values) - FAR_LIMIT_K && l.valueC < Math.max(...values) + FAR_LIMIT_K));

interface Prepared {
  g: MonthGrid;
  axis: TemperatureAxis;
  limits: LimitLine[];
  at: (i: number) => ThermalMonth | undefined;
  missing: number[];
}
function prepare(o: NightChartOptions, pick: (m: ThermalMonth) => readonly (number | null | undefined)[]): Prepared {
  const values = o.months.flatMap(pick).filter((v): v is number => v !== null && v !== undefined);
  const limits = nearLimits(o.limits, values);
  const g = monthGrid(o.boxMm, o.startMonth, limitRoom(limits, o.units));
  const at = (i: number): ThermalMonth | undefined => o.months.find((m) => m.month === g.monthAt(i));
  const missing = Array.from({ length: 12 }, (_, i) => i).filter((i) => {
    const m = at(i);
    return m === undefined || pick(m).every((v) => v === null || v === undefined);
  });
  return { g, axis: temperatureAxis([...values, ...limits.map((l) => l.valueC)], o.units, g.frame), limits, at, missing };
}

const altOf = (title: string, parts: readonly (string | null)[], missing: readonly number[], g: MonthGrid, words: Words): string =>
  `${title}: ${parts.filter((p) => p !== null).join('; ')}${missing.length > 0 ? `; ${missing.map((i) => words.months[g.monthAt(i) - 1]).join(', ')}: ${words.noRecord}` : ''}.`;

/** Coldest night month by month: outside as a thick line, the bare and the covered inside as bands, crop limits as broken lines. */
export function monthlyNights(o: NightChartOptions): Drawing {
  const words = o.words ?? ENGLISH;
  const { g, axis, limits, at, missing } = prepare(o, (m) => [
    m.outsideLowC,
    m.insideLowC?.p10,
    m.insideLowC?.p90,
    m.innerCoverLowC?.p10,
    m.innerCoverLowC?.p90,
  ]);
  const plate = new Plate();
  drawTemperatureAxis(plate, axis, g.frame, o.units);
  drawMonthNames(plate, g, words);
  const blanks = drawMissing(plate, g, missing, words);
  const unplaced = drawLimits(plate, axis, g.frame, limits, o.units, blanks);
  const bare = drawBand(plate, g, axis, (i) => at(i)?.insideLowC ?? null, HATCH.close);
  const cover = drawBand(plate, g, axis, (i) => at(i)?.innerCoverLowC ?? null, HATCH.wide);
  const outside = (i: number): number | null => at(i)?.outsideLowC ?? null;
  const outsideLines = runs((i) => outside(i) !== null).map((run) => run.map((i): XY => [g.x(i), axis.y(outside(i) ?? 0)]));
  for (const line of outsideLines) {
    plate.path(line, 'cut');
    line.forEach((p) => plate.circle(p, 0.9, 'solid'));
  }
  const flat = outsideLines.map((l) => [...l, ...[...l].reverse()]);
  const pointers: Pointer[] = [
    { text: words.outside, spots: midOf(g, axis, outside) },
    ...(bare.length > 0 ? [{ text: words.insideBare, spots: atMonths(g, axis, (i) => at(i)?.insideLowC?.p50 ?? null) }] : []),
    ...(cover.length > 0 ? [{ text: words.underCover, spots: atMonths(g, axis, (i) => at(i)?.innerCoverLowC?.p90 ?? null) }] : []),
  ];
  drawPointers(plate, pointers, g.frame, hitsOutline([...bare, ...cover, ...flat]));
  const alt = altOf(
    words.coldNight,
    [
      spokenRangeOf(
        words.outside,
        o.months.map((m) => m.outsideLowC),
        o.units,
      ),
      spokenRangeOf(
        words.insideBare,
        o.months.flatMap((m) => [m.insideLowC?.p10 ?? null, m.insideLowC?.p90 ?? null]),
        o.units,
      ),
      spokenRangeOf(
        words.underCover,
        o.months.flatMap((m) => [m.innerCoverLowC?.p10 ?? null, m.innerCoverLowC?.p90 ?? null]),
        o.units,
      ),
    ],
    missing,
    g,
    words,
  );
  return plate.finish(o.boxMm.wMm, o.boxMm.hMm, alt, null, { unplaced });
}

/** Hottest air on a clear day month by month, shut and opened: two range boxes a month, the likely value as a thick bar. */
export function dayPeaks(o: DayChartOptions): Drawing {
  const words = o.words ?? ENGLISH;
  const { g, axis, limits, at, missing } = prepare(o, (m) => [m.closedHighC?.p10, m.closedHighC?.p90, m.openedHighC?.p10, m.openedHighC?.p90]);
  const plate = new Plate();
  drawTemperatureAxis(plate, axis, g.frame, o.units);
  drawMonthNames(plate, g, words);
  const unplaced = drawLimits(plate, axis, g.frame, limits, o.units, drawMissing(plate, g, missing, words));
  const wide = Math.min(3.6, g.columnMm / 2 - 0.8);
  const boxes: Rect[] = [];
  const shutSpots: XY[] = [];
  const openSpots: XY[] = [];
  const rangeBox = (i: number, range: MonthRange | null | undefined, dx: number, hatched: boolean): void => {
    if (!range) return;
    const r = { x: g.x(i) + dx, y: axis.y(range.p90), w: wide, h: Math.max(axis.y(range.p10) - axis.y(range.p90), 0.7) };
    const corners: XY[] = [
      [r.x, r.y],
      [r.x + r.w, r.y],
      [r.x + r.w, r.y + r.h],
      [r.x, r.y + r.h],
    ];
    plate.poly(corners, 'face');
    if (hatched) plate.hatch(corners, HATCH.close);
    plate.line([r.x - 0.4, axis.y(range.p50)], [r.x + r.w + 0.4, axis.y(range.p50)], 'cut');
    boxes.push(r);
    (hatched ? shutSpots : openSpots).push([r.x + r.w / 2, hatched ? r.y : r.y + r.h]);
  };
  for (let i = 0; i < 12; i++) {
    rangeBox(i, at(i)?.closedHighC, -wide - 0.4, true);
    rangeBox(i, at(i)?.openedHighC, 0.4, false);
  }
  drawPointers(
    plate,
    [...(shutSpots.length > 0 ? [{ text: words.allShut, spots: shutSpots }] : []), ...(openSpots.length > 0 ? [{ text: words.opened, spots: openSpots }] : [])],
    g.frame,
    (r) => boxes.some((b) => overlap(b, r, 0.3)),
  );
  const alt = altOf(
    words.dayHigh,
    [
      spokenRangeOf(
        words.allShut,
        o.months.flatMap((m) => [m.closedHighC?.p10 ?? null, m.closedHighC?.p90 ?? null]),
        o.units,
      ),
      spokenRangeOf(
        words.opened,
        o.months.flatMap((m) => [m.openedHighC?.p10 ?? null, m.openedHighC?.p90 ?? null]),
        o.units,
      ),
    ],
    missing,
    g,
    words,
  );
  return plate.finish(o.boxMm.wMm, o.boxMm.hMm, alt, null, { unplaced });
}
