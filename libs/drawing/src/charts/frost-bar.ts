import type { FrostBarOptions, FrostDays } from '../options.js';
import { spread } from '../place-labels.js';
import { Plate } from '../plate.js';
import { HATCH, textWidth, type HatchStyle, type Rect } from '../primitives.js';
import type { Drawing } from '../types.js';
import { ENGLISH, type Words } from '../words.js';

const YEAR_DAYS = 365;
const MONTH_DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;
const firstDayOf = (month: number): number => 1 + MONTH_DAYS.slice(0, month - 1).reduce((a, b) => a + b, 0);

/** Day and month of a day of the year, 1 January is 1: `26 Apr`. */
export function dateOfDay(day: number, months: readonly string[]): string {
  let left = (((Math.round(day) - 1) % YEAR_DAYS) + YEAR_DAYS) % YEAR_DAYS;
  for (let m = 0; m < 12; m++) {
    const long = MONTH_DAYS[m] ?? 31;
    if (left < long) return `${left + 1} ${months[m] ?? ''}`;
    left -= long;
  }
  return '';
}

const HEAD_Y = 3.6;
const DATE_Y = 9;
const SHARE_Y = 13;
const TICK_Y = 14.2;
const BAR = { top: 18, bottom: 26 } as const;
const MONTH_Y = 30.6;
const EDGE_MM = 0.4;
const GAP_MM = 2;

interface Axis {
  /** Millimetres from the left, of the start of a day. */
  x: (day: number) => number;
  /** A stretch of days as pieces of paper: two where it runs over the ends of the bar. */
  pieces: (from: number, to: number) => [number, number][];
}

function axisOf(widthMm: number, startMonth: number): Axis {
  const scale = (widthMm - 2 * EDGE_MM) / YEAR_DAYS;
  const x = (day: number): number => EDGE_MM + onward(firstDayOf(startMonth), day) * scale;
  return {
    x,
    pieces: (from, to) => {
      const [a, b] = [x(from), x(to)];
      return a <= b
        ? [[a, b]]
        : [
            [a, widthMm - EDGE_MM],
            [EDGE_MM, b],
          ];
    },
  };
}

const onward = (from: number, to: number): number => (((to - from) % YEAR_DAYS) + YEAR_DAYS) % YEAR_DAYS;
/** Do the days follow each other within one year, starting anywhere? */
const isOneTurn = (days: readonly number[]): boolean => days.reduce((sum, d, i) => sum + onward(d, days[(i + 1) % days.length] ?? d), 0) <= YEAR_DAYS;

interface Zone {
  from: number;
  to: number;
  style: HatchStyle;
}

/** Frost in most years: close strokes. Frost in some: wide ones. A date that too few years reach leaves its zone out. */
function zonesOf(first: FrostDays, last: FrostDays): Zone[] {
  if (first.p10 === null || last.p90 === null) return [];
  const frosty = { from: first.p10, to: last.p90, style: HATCH.wide };
  // Printed dates may overlap in midwinter; then no stretch can be called usual.
  if (first.p90 === null || last.p10 === null || !isOneTurn([first.p10, first.p90, last.p10, last.p90])) return [frosty];
  return [
    { from: first.p10, to: first.p90, style: HATCH.wide },
    { from: first.p90, to: last.p10, style: HATCH.close },
    { from: last.p10, to: last.p90, style: HATCH.wide },
  ];
}

interface DateLabel {
  day: number;
  share: string;
  group: 'last' | 'first';
}
const datesOf = (group: DateLabel['group'], d: FrostDays): DateLabel[] =>
  (
    [
      [d.p10, '10 %'],
      [d.p50, '50 %'],
      [d.p90, '90 %'],
    ] as const
  ).flatMap(([day, share]) => (day === null ? [] : [{ day, share, group }]));

/** Dates above the bar, moved apart where they lie close, each tied to its day. */
function drawDates(plate: Plate, axis: Axis, dates: readonly DateLabel[], widthMm: number, words: Words): void {
  const wide = Math.max(...dates.map((d) => textWidth(dateOfDay(d.day, words.months), '')));
  const half = wide / 2;
  const places = spread(
    dates.map((d) => axis.x(d.day)),
    wide + GAP_MM,
    half + EDGE_MM,
    widthMm - half - EDGE_MM,
  );
  dates.forEach((d, i) => {
    const at = places[i] ?? 0;
    const x = axis.x(d.day);
    plate.text(at, DATE_Y, dateOfDay(d.day, words.months), d.share === '50 %' ? 'b' : '', 'middle');
    plate.text(at, SHARE_Y, d.share, '', 'middle');
    plate.path(
      [
        [at, TICK_Y],
        [x, BAR.top - 1],
      ],
      'thin',
    );
    plate.line([x, BAR.top - 1], [x, BAR.bottom + (d.share === '50 %' ? 1 : 0)], d.share === '50 %' ? 'cut' : 'vis');
  });
  drawHeads(
    plate,
    (['last', 'first'] as const).flatMap((group) => {
      const own = dates.flatMap((d, i) => (d.group === group ? [places[i] ?? 0] : []));
      return own.length === 0 ? [] : [{ text: group === 'last' ? words.lastFrost : words.firstFrost, atMm: own.length > 2 ? (own[1] ?? 0) : Math.min(...own) }];
    }),
    widthMm,
  );
}

function drawHeads(plate: Plate, heads: readonly { text: string; atMm: number }[], widthMm: number): void {
  let end = 0;
  const sorted = [...heads].sort((a, b) => a.atMm - b.atMm);
  sorted.forEach((h, i) => {
    const w = textWidth(h.text, 'b');
    const rest = sorted.slice(i + 1).reduce((sum, r) => sum + textWidth(r.text, 'b') + 3, 0);
    const left = Math.min(Math.max(h.atMm - w / 2, end, EDGE_MM), widthMm - w - EDGE_MM - rest);
    plate.text(left, HEAD_Y, h.text, 'b');
    end = left + w + 3;
  });
}

/** Names a zone in its widest piece, on white ground, where the piece has room for the words. */
function nameZone(plate: Plate, pieces: readonly [number, number][], text: string, kept: readonly number[]): void {
  const widest = pieces.reduce((a, b) => (b[1] - b[0] > a[1] - a[0] ? b : a), [0, 0] as [number, number]);
  const w = textWidth(text, 'b');
  const middle = (widest[0] + widest[1]) / 2;
  const rect: Rect = { x: middle - w / 2 - 1, y: BAR.top, w: w + 2, h: BAR.bottom - BAR.top };
  if (rect.x < widest[0] || rect.x + rect.w > widest[1] || !plate.isFree(rect) || kept.some((x) => x > rect.x - 0.6 && x < rect.x + rect.w + 0.6)) return;
  plate.label(middle, (BAR.top + BAR.bottom) / 2 + 1.2, text, 'b', 'middle');
}

function drawMonths(plate: Plate, axis: Axis, o: FrostBarOptions, words: Words): void {
  for (let m = 1; m <= 12; m++) {
    const x = axis.x(firstDayOf(m));
    const next = x + ((MONTH_DAYS[m - 1] ?? 30) * (o.widthMm - 2 * EDGE_MM)) / YEAR_DAYS;
    plate.line([x, BAR.bottom], [x, BAR.bottom + 1.6], 'thin');
    plate.text((x + next) / 2, MONTH_Y, words.months[m - 1] ?? '', '', 'middle');
  }
}

const spoken = (name: string, d: FrostDays, words: Words): string | null => {
  const said = datesOf('last', d).map((x) => `${x.share} by ${dateOfDay(x.day, words.months)}`);
  return said.length === 0 ? null : `${name}: ${said.join(', ')}`;
};

/**
 * The year as one bar: where frost comes in most years, in some, and in hardly any, with the dates of the last and first
 * frost at 10, 50 and 90 per cent. The year may start in any month and stretches run over its ends. Six dates are written,
 * or fewer where so few years have a frost that a date does not exist.
 */
export function frostBar(o: FrostBarOptions): Drawing {
  const words = o.words ?? ENGLISH;
  const axis = axisOf(o.widthMm, o.startMonth);
  const plate = new Plate();
  plate.rect(EDGE_MM, BAR.top, o.widthMm - 2 * EDGE_MM, BAR.bottom - BAR.top, 'face');
  const zones = zonesOf(o.firstDayD, o.lastDayD);
  const boxOf = ([a, b]: [number, number]) =>
    [
      [a, BAR.top],
      [b, BAR.top],
      [b, BAR.bottom],
      [a, BAR.bottom],
    ] as const;
  for (const z of zones) for (const piece of axis.pieces(z.from, z.to)) plate.hatch(boxOf(piece), z.style);
  plate.rect(EDGE_MM, BAR.top, o.widthMm - 2 * EDGE_MM, BAR.bottom - BAR.top, 'vis');
  const dates = [...datesOf('last', o.lastDayD), ...datesOf('first', o.firstDayD)];
  if (dates.length > 0) drawDates(plate, axis, dates, o.widthMm, words);
  drawMonths(plate, axis, o, words);
  const marks = dates.map((d) => axis.x(d.day));
  const winter = zones.find((z) => z.style === HATCH.close);
  if (winter !== undefined) nameZone(plate, axis.pieces(winter.from, winter.to), words.frostUsual, marks);
  const { p90: from } = o.lastDayD;
  const { p10: to } = o.firstDayD;
  if (from !== null && to !== null) nameZone(plate, axis.pieces(from, to), words.frostHardlyEver, marks);
  const said = [spoken(words.lastFrost, o.lastDayD, words), spoken(words.firstFrost, o.firstDayD, words)].filter((s) => s !== null);
  return plate.finish(o.widthMm, MONTH_Y + 1.4, `${said.join('; ') || words.none}.`);
}
