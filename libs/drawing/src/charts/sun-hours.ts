import { scaleLinear } from 'd3-scale';
import type { SunHoursOptions } from '../options.js';
import type { SunHours } from '../model-types.js';
import { Plate } from '../plate.js';
import { HATCH, overlap, textWidth, type Rect } from '../primitives.js';
import type { Drawing, XY } from '../types.js';
import { ENGLISH, type Words } from '../words.js';
import { drawPointers, type Frame, type Pointer } from './axis.js';

const TOP_MM = 5;
const FOOT_MM = 6.4;
/** Room above the tallest bar: where the names, which are never laid over bars, find none between the bars, it is widened. */
const NAMES_MM = [2, 8, 13, 18] as const;
const TICK_STEP_MM = 4.4;
const STEPS_H = [2, 4, 6, 12];
const BAR_MM = 8;
/** Under a quarter of an hour the obstacles take nothing that a figure can show. */
const LOST_H = 0.25;

const column = (x: number, y: number, bottom: number, wide: number): XY[] => [
  [x - wide / 2, bottom],
  [x + wide / 2, bottom],
  [x + wide / 2, y],
  [x - wide / 2, y],
];

interface Grid {
  frame: Frame;
  x: (i: number) => number;
  y: (hours: number) => number;
  monthAt: (i: number) => number;
  wide: number;
}

function gridOf(o: SunHoursOptions, namesMm: number): Grid {
  const frame = { x1: o.leftMm, x2: o.boxMm.wMm, top: TOP_MM, bottom: o.boxMm.hMm - FOOT_MM };
  const most = Math.max(1, ...o.hours.map((h) => h.openH));
  const columnMm = (frame.x2 - frame.x1) / 12;
  const scale = scaleLinear()
    .domain([0, most])
    .range([frame.bottom, frame.top + namesMm]);
  return {
    frame,
    x: (i) => frame.x1 + columnMm * (i + 0.5),
    y: (hours) => scale(hours),
    monthAt: (i) => ((o.startMonth - 1 + i) % 12) + 1,
    wide: Math.min(BAR_MM, columnMm - 2),
  };
}

function drawScale(plate: Plate, g: Grid, most: number, words: Words): void {
  const { x1, x2, bottom } = g.frame;
  const step = STEPS_H.find((s) => Math.abs(g.y(s) - g.y(0)) >= TICK_STEP_MM) ?? 24;
  for (let v = 0; v <= most + 1e-9; v += step) {
    if (v > 0) plate.line([x1, g.y(v)], [x2, g.y(v)], 'grid');
    plate.text(x1 - 1.5, g.y(v) + 1.2, String(v), '', 'end');
  }
  plate.text(x1 - 1.5, g.frame.top - 1.4, words.hoursADay, 'b', 'end');
  plate.line([x1, bottom], [x2, bottom], 'vis');
}

interface Spots {
  open: XY[];
  cleared: XY[];
  bright: XY[];
}

/** One month: the sun over a free horizon as an empty bar, what clears the obstacles hatched wide, what is to be expected hatched close. */
function drawMonth(plate: Plate, g: Grid, i: number, h: SunHours, spots: Spots): Rect {
  const [x, bottom] = [g.x(i), g.frame.bottom];
  const bar = (hours: number): XY[] => column(x, g.y(hours), bottom, g.wide);
  const shaded = h.openH - h.clearedH >= LOST_H;
  if (shaded) {
    plate.poly(bar(h.openH), 'face');
    spots.open.push([x, g.y(h.openH)]);
  }
  if (h.clearedH > 0) {
    plate.poly(bar(h.clearedH), 'blank');
    plate.hatch(bar(h.clearedH), HATCH.wide);
    plate.poly(bar(h.clearedH), 'vis');
    (shaded ? spots.cleared : spots.open).push([x, g.y(h.clearedH)]);
  }
  if (h.brightH !== null && h.brightH > 0) {
    plate.poly(bar(h.brightH), 'blank');
    plate.hatch(bar(h.brightH), HATCH.close);
    plate.poly(bar(h.brightH), 'vis');
    spots.bright.push([x, g.y(h.brightH) + 0.6]);
  }
  return { x: x - g.wide / 2, y: g.y(h.openH), w: g.wide, h: bottom - g.y(h.openH) };
}

/** Written up the bar where that is tall enough; the table below says it in any case. */
function noRecordInBar(plate: Plate, g: Grid, x: number, hours: number, words: Words): void {
  const long = textWidth(words.noRecord, '');
  const [top, bottom] = [g.y(hours), g.frame.bottom];
  if (bottom - top < long + 2.4) return;
  const middle = (top + bottom) / 2;
  plate.rect(x - 2, middle - long / 2 - 0.6, 4, long + 1.2, 'blank');
  plate.textTurned(x + 1.2, middle, words.noRecord, '', 'middle');
}

const spoken = (name: string, months: readonly SunHours[], pick: (h: SunHours) => number | null, words: Words): string | null => {
  const known = months.flatMap((h) => {
    const v = pick(h);
    return v === null ? [] : [{ month: h.month, v }];
  });
  if (known.length === 0) return `${name}: ${words.noRecord}`;
  const least = known.reduce((a, b) => (b.v < a.v ? b : a));
  const most = known.reduce((a, b) => (b.v > a.v ? b : a));
  const at = (k: { month: number; v: number }): string => `${Math.round(k.v)} in ${words.months[k.month - 1] ?? ''}`;
  return `${name}: ${at(least)} to ${at(most)}`;
};

function drawBars(plate: Plate, g: Grid, o: SunHoursOptions, words: Words): { spots: Spots; bars: Rect[] } {
  const spots: Spots = { open: [], cleared: [], bright: [] };
  const bars: Rect[] = [];
  const someKnown = o.hours.some((h) => h.brightH !== null);
  for (let i = 0; i < 12; i++) {
    const h = o.hours.find((m) => m.month === g.monthAt(i));
    plate.text(g.x(i), g.frame.bottom + 4.6, words.months[g.monthAt(i) - 1] ?? '', '', 'middle');
    if (h === undefined) continue;
    bars.push(drawMonth(plate, g, i, h, spots));
    // Where no month has a record, the finding and the table say so once.
    if (h.brightH === null && someKnown) noRecordInBar(plate, g, g.x(i), h.clearedH, words);
  }
  return { spots, bars };
}

const altOf = (o: SunHoursOptions, shaded: boolean, words: Words): string => {
  const said = [
    spoken(words.freeHorizon, o.hours, (h) => h.openH, words),
    ...(shaded ? [spoken(words.pastObstacles, o.hours, (h) => h.clearedH, words)] : []),
    spoken(words.sunToExpect, o.hours, (h) => h.brightH, words),
  ].filter((s) => s !== null);
  return `${words.hoursADay}: ${said.join('; ')}.`;
};

function drawIn(o: SunHoursOptions, namesMm: number, words: Words): Drawing {
  const g = gridOf(o, namesMm);
  const plate = new Plate();
  drawScale(plate, g, Math.max(1, ...o.hours.map((h) => h.openH)), words);
  const { spots, bars } = drawBars(plate, g, o, words);
  const pointers: Pointer[] = [
    { text: words.freeHorizon, spots: spots.open },
    { text: words.pastObstacles, spots: spots.cleared },
    { text: words.sunToExpect, spots: spots.bright },
  ].filter((p) => p.spots.length > 0);
  const unplaced = drawPointers(plate, pointers, g.frame, (r) => bars.some((b) => overlap(b, r, 0.3)));
  return plate.finish(o.boxMm.wMm, o.boxMm.hMm, altOf(o, spots.cleared.length > 0, words), null, { unplaced });
}

/** Hours of direct sun on the plot on the mean day of each month, bars from zero. */
export function sunHoursChart(o: SunHoursOptions): Drawing {
  const words = o.words ?? ENGLISH;
  let drawing = drawIn(o, NAMES_MM[0], words);
  for (const namesMm of NAMES_MM.slice(1)) {
    if (drawing.unplaced.length === 0) break;
    drawing = drawIn(o, namesMm, words);
  }
  return drawing;
}
