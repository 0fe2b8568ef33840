import { dateOfDay } from '@lathwork/drawing';
import type { Frost, SunHours } from '@lathwork/model';
import type { TableSpec } from '../../../parts/table.js';
import { common, MONTHS, MONTHS_SHORT } from '../../../words/en/common.js';
import { climatePages } from '../../../words/en/pages-climate.js';
import { percent, whole } from '../../../words/figures.js';
import { fill } from '../../../words/fill.js';
import { chartMonths, type Context } from './context.js';

export interface FrostView {
  finding: string;
  /** Null where there is no date to draw. */
  bar: { frost: Frost; startMonth: number } | null;
  table: TableSpec | null;
  notes: readonly string[];
}

export interface SunView {
  finding: string;
  hours: readonly SunHours[] | null;
  table: TableSpec | null;
  notes: readonly string[];
}

/** First column of the sun table, and the scale of the chart above it: months stand under their bars. */
export const SUN_NAME_MM = 31;

const monthName = (month: number): string => MONTHS[month - 1] ?? '';
const day = (value: number | null): string => (value === null ? common.none : dateOfDay(value, MONTHS));
const days = (value: number | null): string => (value === null ? common.none : whole(value));

const YEAR_DAYS = 365;
/** January where the cold season lies about the New Year, else July: the season without frost then stands whole. */
function startMonthOf(frost: Frost, chartStartMonth: number): number {
  const [from, to] = [frost.firstDayD.p50 ?? frost.firstDayD.p10, frost.lastDayD.p50 ?? frost.lastDayD.p90];
  if (from === null || to === null) return ((chartStartMonth + 4) % 12) + 1;
  const middle = (from + ((to - from + YEAR_DAYS) % YEAR_DAYS) / 2) % YEAR_DAYS;
  return middle > YEAR_DAYS / 4 && middle < (YEAR_DAYS * 3) / 4 ? 7 : 1;
}

const hasSeason = ({ lastDayD, firstDayD }: Frost): boolean => lastDayD.p90 !== null && firstDayD.p10 !== null;

function frostFinding(frost: Frost): string {
  const w = climatePages.frost;
  if (frost.pattern === 'never') return w.never;
  if (frost.pattern === 'allYear') return w.allYear;
  const { lastDayD, firstDayD } = frost;
  if (frost.pattern === 'everyYear' && lastDayD.p50 !== null && firstDayD.p50 !== null)
    return fill(w.finding, { last: day(lastDayD.p50), first: day(firstDayD.p50) });
  // A share worked out from means is worth tenths.
  const share = percent(Math.max(0.1, Math.round(frost.yearsWithFrostFrac * 10) / 10));
  if (lastDayD.p90 === null || firstDayD.p10 === null) return fill(w.findingSomeOnly, { share });
  return fill(w.findingSome, { share, last: day(lastDayD.p90), first: day(firstDayD.p10) });
}

function frostTable(ctx: Context, { lastDayD, firstDayD, freeD, thresholdC }: Frost): TableSpec {
  const w = climatePages.frost;
  const row = (name: string, of: Frost['lastDayD'], say: (v: number | null) => string) => ({ cells: [name, say(of.p10), say(of.p50), say(of.p90)] });
  return {
    caption: fill(w.table, { t: ctx.fig.temperature(thresholdC) }),
    columns: [{ head: '', widthMm: null }, ...[w.cols.p10, w.cols.p50, w.cols.p90].map((head) => ({ head, widthMm: 38, whole: true }))],
    rows: [row(w.lastRow, lastDayD, day), row(w.firstRow, firstDayD, day), row(w.freeRow, freeD, days)],
  };
}

export function frostView(ctx: Context): FrostView {
  const w = climatePages.frost;
  const { frost, monthsWithRecordCount, chartStartMonth } = ctx.result.climate;
  if (frost === undefined) return { finding: w.absent, bar: null, table: null, notes: [] };
  if (frost === null) return { finding: fill(w.unknown, { count: monthsWithRecordCount }), bar: null, table: null, notes: [] };
  const dated = frost.pattern === 'everyYear' || frost.pattern === 'someYears';
  const doubt = whole(frost.doubtD);
  const publisher = ctx.inputs.climate.frostDates?.publisher;
  const source =
    frost.basis === 'monthlyDistribution'
      ? fill(w.estimated, { doubt })
      : publisher === undefined
        ? fill(w.publishedPlain, { doubt })
        : fill(w.published, { doubt, publisher: publisher.replace(/\.$/, '') });
  const table = dated ? frostTable(ctx, frost) : null;
  return {
    finding: frostFinding(frost),
    bar: dated && hasSeason(frost) ? { frost, startMonth: startMonthOf(frost, chartStartMonth) } : null,
    table,
    notes: dated
      ? [source, w.ground, ...(table?.rows.some((r) => r.cells.includes(common.none)) === true ? [w.dash] : [])]
      : frost.pattern === 'allYear'
        ? []
        : [w.ground],
  };
}

/** The year in short: winter class, degree-days, month of the greatest risk of overheating. One line each. */
export function yearFacts(ctx: Context): [string, string][] {
  const w = climatePages.year;
  const { hardiness, degreeDays, overheating } = ctx.result.climate;
  const { fig } = ctx;
  const winter = (): string => {
    if (hardiness === undefined) return w.absent;
    if (hardiness === null) return w.winterNone;
    const { hardinessClass, coldestClass, mildestClass, classMinC, classMaxC } = hardiness;
    return fill(w.winterText, {
      name: hardinessClass,
      low: fig.t(classMinC),
      high: fig.temperatureShort(classMaxC),
      range: coldestClass === mildestClass ? w.winterSure : fill(w.winterRange, { coldest: coldestClass, mildest: mildestClass }),
    });
  };
  const sums = (): string => {
    if (degreeDays === undefined) return w.absent;
    const { heatingKD, growingKD, heatingBaseC, growingBaseC } = degreeDays;
    if (heatingKD === null || growingKD === null) return w.degreeNone;
    return fill(w.degreeText, {
      heating: fig.degreeDays(heatingKD),
      heatingBase: fig.temperatureShort(heatingBaseC),
      growing: fig.degreeDays(growingKD),
      growingBase: fig.temperatureShort(growingBaseC),
    });
  };
  const heat = (): string => {
    if (overheating === undefined) return w.absent;
    if (overheating === null) return w.heatNone;
    return fill(overheating.nightsShut ? w.heatText : w.heatOpen, { month: monthName(overheating.month) });
  };
  return [
    [w.winter, winter()],
    [w.degreeDays, sums()],
    [w.heat, heat()],
  ];
}

function sunFinding(hours: readonly SunHours[]): string {
  const w = climatePages.sun;
  const clouded = hours.flatMap((h) => (h.brightH === null ? [] : [{ month: h.month, h: h.brightH }]));
  const all = clouded.length > 0 ? clouded : hours.map((h) => ({ month: h.month, h: h.clearedH }));
  const most = all.reduce((a, b) => (b.h > a.h ? b : a));
  const least = all.reduce((a, b) => (b.h < a.h ? b : a));
  const said = { most: whole(most.h), bright: monthName(most.month), least: whole(least.h), dark: monthName(least.month) };
  const even = said.most === said.least;
  if (clouded.length === 0) return fill(even ? w.sameSky : w.findingSky, said);
  return fill(even ? w.same : w.finding, said);
}

function shadeSentence(ctx: Context, hours: readonly SunHours[]): string {
  const w = climatePages.sun;
  if (ctx.result.climate.sunHoursBasis !== 'obstacles') return w.freeHorizon;
  const worst = hours.filter((h) => h.openH > 0).reduce<SunHours | null>((a, b) => (a === null || b.lostFrac > a.lostFrac ? b : a), null);
  if (worst === null || worst.lostFrac < 0.005) return w.obstaclesNone;
  return fill(w.obstacles, { share: percent(worst.lostFrac), month: monthName(worst.month) });
}

function sunTable(ctx: Context, hours: readonly SunHours[]): TableSpec {
  const w = climatePages.sun;
  const order = chartMonths(ctx);
  const at = (month: number): SunHours | undefined => hours.find((h) => h.month === month);
  const row = (name: string, say: (h: SunHours) => string) => ({
    cells: [
      name,
      ...order.map((month) => {
        const h = at(month);
        return h === undefined ? common.noRecord : say(h);
      }),
    ],
  });
  const shaded = ctx.result.climate.sunHoursBasis === 'obstacles';
  const expect = hours.every((h) => h.brightH === null)
    ? { cells: [w.rows.expect], spanned: common.noRecord }
    : row(w.rows.expect, (h) => (h.brightH === null ? common.noRecord : whole(h.brightH)));
  return {
    caption: w.table,
    columns: [
      { head: '', widthMm: SUN_NAME_MM },
      ...order.map((month) => ({ head: MONTHS_SHORT[month - 1] ?? '', widthMm: (ctx.portrait.widthMm - SUN_NAME_MM) / 12, middle: true })),
    ],
    rows: [
      row(w.rows.open, (h) => whole(h.openH)),
      ...(shaded ? [row(w.rows.cleared, (h) => whole(h.clearedH)), row(w.rows.lost, (h) => percent(h.lostFrac))] : []),
      expect,
    ],
  };
}

export function sunView(ctx: Context): SunView {
  const w = climatePages.sun;
  const hours = ctx.result.climate.sunHours;
  if (hours === undefined) return { finding: w.absent, hours: null, table: null, notes: [] };
  return {
    finding: `${sunFinding(hours)} ${shadeSentence(ctx, hours)}`,
    hours,
    table: sunTable(ctx, hours),
    notes: [w.note, ...(ctx.result.climate.sunHoursBasis === 'obstacles' ? [] : [w.openNote])],
  };
}
