import { HOURLY_VALUES, type HourlyColumns, type HourlyFile, type HourlyGap, type HourlyValue } from './climate-file.js';
import { DAYS_IN_MONTH, dayOfYear } from './csv.js';
import { askUnit, type Limits, type ParserContext } from './parser.js';
import { judgeHumidity, judgeTemperatures, judgeZone, monthsOfHours } from './place.js';
import { findSunOffset } from './sun-offset.js';

/**
 * Puts the rows of an hourly file into a year from 1 January. Rows must run forward; the year may start in any month and
 * turn once from December to January. The year of a row plays no part, because each month of a typical year comes from
 * another year. Absent hours stay absent and are counted.
 */
export const HOURLY_LIMITS: Record<HourlyValue, Limits> = {
  /** Wide enough for Fahrenheit under the name of Celsius, which is asked about once the year is whole. */
  airC: { min: -90, max: 140 },
  dewPointC: { min: -120, max: 110 },
  relativeHumidityFrac: { min: 0, max: 1 },
  pressurePa: { min: 31_000, max: 120_000 },
  skyInfraredWPerM2: { min: 0, max: 900 },
  globalWPerM2: { min: 0, max: 1700 },
  beamNormalWPerM2: { min: 0, max: 1500 },
  diffuseWPerM2: { min: 0, max: 1200 },
  windFromDeg: { min: 0, max: 360 },
  windMPerS: { min: 0, max: 110 },
  totalCloudFrac: { min: 0, max: 1 },
  opaqueCloudFrac: { min: 0, max: 1 },
  snowDepthM: { min: 0, max: 30 },
  albedoFrac: { min: 0, max: 1 },
  /** The most ever measured in an hour is some 305 mm (from memory). */
  rainMm: { min: 0, max: 400 },
};
/** Amounts this little under zero are rounding of instruments and models, and are nothing. */
const SMALLEST_NEGATIVE: Partial<Record<HourlyValue, number>> = { globalWPerM2: -5, beamNormalWPerM2: -5, diffuseWPerM2: -5, rainMm: -0.01 };
const MOST_HUMIDITY_FRAC = 1.1;
export const DEFAULT_MISSING_HOURS_LIMIT = 876;
const GAPS_KEPT = 50;
/** No screen on earth has read more than some 57 C. */
const HOTTEST_C = 60;
const FEW_HOURS = 5;
/** A typical year is made whole by its publisher: one that lacks more than its last day was cut off. */
const LONGEST_TAIL_H = 24;

export type HourValues = Partial<Record<HourlyValue, number | null>>;
interface Row {
  slot: number;
  year: number | null;
  line: number;
}

/** Place of an hour in a year of 8,784 hours. */
const slotOf = (month: number, day: number, hourEnding: number): number => {
  const days = dayOfYear(month, day) - 1 + (month > 2 || (month === 2 && day === 29) ? 1 : 0);
  return days * 24 + hourEnding - 1;
};
const FEB_29 = 59 * 24;
const SLOTS = 8784;

/** A part of a date for a message; what is no number is not shown as one. */
const told = (name: string, value: number): string => (Number.isFinite(value) ? `${name} ${value}` : `no ${name}`);

export class HourlyYear {
  private readonly rows: Row[] = [];
  private readonly values: Record<HourlyValue, (number | null)[]>;
  private turned = false;
  private leap = false;
  private readonly taken = new Uint8Array(SLOTS);

  constructor(private readonly context: ParserContext) {
    this.values = Object.fromEntries(HOURLY_VALUES.map((v) => [v, [] as (number | null)[]])) as Record<HourlyValue, (number | null)[]>;
  }

  get rowsCount(): number {
    return this.rows.length;
  }

  /** Takes one row; false when there are more rows than any year has. */
  add(at: { line: number; year: number | null; month: number; day: number; hourEnding: number }, values: HourValues): boolean {
    const { faults } = this.context;
    if (!this.isHour(at)) {
      faults.add({
        line: at.line,
        code: 'not-a-date',
        message: `${told('month', at.month)}, ${told('day', at.day)}, ${told('hour', at.hourEnding)}: this is not an hour of the year`,
        remedy: 'Months run from 1 to 12, hours from 1 to 24, the hour being the one that ends.',
      });
      return true;
    }
    const slot = slotOf(at.month, at.day, at.hourEnding);
    const before = this.rows.at(-1);
    if (this.taken[slot] === 1 && this.rows.length >= SLOTS - 24) {
      faults.add({
        line: at.line,
        code: 'too-many-rows',
        message: `${this.rows.length} hours stand before this line, and a year has no more`,
        remedy: 'Send one year.',
      });
      return false;
    }
    if (this.taken[slot] === 1) {
      faults.add({
        line: at.line,
        code: 'duplicate-row',
        message: `month ${at.month}, day ${at.day}, hour ${at.hourEnding} stands twice`,
        remedy: 'Keep one row an hour; a year has no hour twice, clocks do not change.',
      });
      return true;
    }
    if (before && slot < before.slot) {
      if (this.turned || before.slot - slot < SLOTS / 12) {
        faults.add({
          line: at.line,
          code: 'not-in-order',
          message: `month ${at.month}, day ${at.day}, hour ${at.hourEnding} comes after a later hour`,
          remedy: 'Sort the rows by month, day and hour (not by year).',
        });
        return true;
      }
      this.turned = true;
    }
    this.taken[slot] = 1;
    if (at.month === 2 && at.day === 29) this.leap = true;
    this.rows.push({ slot, year: at.year, line: at.line });
    for (const name of HOURLY_VALUES) this.values[name].push(this.fit(name, values[name] ?? null, at.line));
    return true;
  }

  private isHour(at: { month: number; day: number; hourEnding: number }): boolean {
    const days = at.month === 2 ? 29 : DAYS_IN_MONTH[at.month - 1];
    return (
      days !== undefined &&
      at.day >= 1 &&
      at.day <= days &&
      at.hourEnding >= 1 &&
      at.hourEnding <= 24 &&
      [at.month, at.day, at.hourEnding].every(Number.isInteger)
    );
  }

  private fit(name: HourlyValue, value: number | null, line: number): number | null {
    if (value === null) return null;
    const { min, max } = HOURLY_LIMITS[name];
    if (value >= min && value <= max) return value;
    if (name === 'relativeHumidityFrac' && value > 1 && value <= MOST_HUMIDITY_FRAC) {
      this.context.remarks.add('humidity-over-100', 'humidity from 100 to 110 % was taken as 100 %', { line });
      return 1;
    }
    if (value < 0 && value >= (SMALLEST_NEGATIVE[name] ?? 0)) {
      this.context.remarks.add('small-negative', 'a small negative amount was taken as nothing', { line, column: name });
      return 0;
    }
    // Published years hold a few hours of rain beyond any ever measured; the hour is left without a figure, not the year refused.
    if (name === 'rainMm' && value > max) {
      this.context.remarks.add('not-believed', `rain of ${value} mm in an hour was left out`, { line, column: name });
      return null;
    }
    this.context.faults.add({
      line,
      column: name,
      code: 'out-of-range',
      message: `${name} is ${value}, outside ${min} to ${max}`,
      remedy: 'Correct the figure, or look whether its unit is the one of the format.',
    });
    return null;
  }

  /** The year, or null with a fault when too much of it is absent. */
  finish(
    base: Omit<HourlyFile, 'kind' | 'hours' | 'slotsCount' | 'rowsReadCount' | 'missingHoursCount' | 'gaps' | 'missingValues' | 'sunOffset'>,
    placeLine: number,
    cutOff: boolean,
  ): HourlyFile | null {
    const { faults, remarks, options } = this.context;
    const slotsCount = this.leap ? SLOTS : SLOTS - 24;
    const missingHoursCount = slotsCount - this.rows.length;
    if (this.rows.length === 0) {
      if (faults.count === 0) faults.add({ line: 0, code: 'truncated', message: 'no row of figures follows the header', remedy: 'Send the whole file.' });
      return null;
    }
    const gaps = this.gaps(slotsCount);
    const tail = gaps.find((g) => g.afterLine === this.rows.at(-1)?.line);
    const endsEarly = base.source.kind === 'typicalYear' && (tail?.hoursCount ?? 0) > LONGEST_TAIL_H;
    if ((endsEarly || missingHoursCount > (options.missingHoursLimit ?? DEFAULT_MISSING_HOURS_LIMIT)) && faults.count === 0)
      this.tooFew(missingHoursCount, gaps, cutOff || endsEarly);
    if (missingHoursCount > 0)
      remarks.add('missing-hours', `${missingHoursCount} hours of the year are absent and stay so`, {
        line: gaps[0]?.afterLine ?? 0,
        count: missingHoursCount,
      });
    if (this.leap) remarks.add('leap-day', 'the file has a 29 February: 8,784 hours');
    const hours = this.columns(slotsCount);
    const missingValues = this.missing();
    this.remarkValues(missingValues);
    const years = new Set(this.rows.map((r) => r.year).filter((y) => y !== null));
    if (years.size > 1) remarks.add('mixed-years', `the rows come from ${years.size} different years`, { count: years.size });
    this.judgeHeat();
    judgeZone(base.place, placeLine, this.context);
    judgeTemperatures(base.place, monthsOfHours(hours), this.context);
    judgeHumidity(hours, this.context);
    const sunOffset = findSunOffset(hours, base.place, options.sunHeight);
    if (sunOffset.offsetH === null && sunOffset.reason !== 'no-sun-function')
      remarks.add('sun-offset-unknown', `the sun could not be fitted to the radiation: ${sunOffset.reason}`);
    return {
      kind: 'hourly',
      ...base,
      hours,
      slotsCount,
      rowsReadCount: this.rows.length,
      missingHoursCount,
      gaps: gaps.slice(0, GAPS_KEPT),
      missingValues,
      sunOffset,
    };
  }

  /** Air over 60 C: in many hours a question of the unit, in a few a fault each. */
  private judgeHeat(): void {
    const hot = this.values.airC.flatMap((t, i) => (t !== null && t > HOTTEST_C ? [i] : []));
    if (hot.length > FEW_HOURS && this.context.options.answers?.temperatureUnit === undefined)
      return askUnit(this.context, 'maybe-fahrenheit', `${hot.length} hours are warmer than ${HOTTEST_C} C`);
    for (const i of hot)
      this.context.faults.add({
        line: this.rows[i]?.line ?? 0,
        column: 'airC',
        code: 'out-of-range',
        message: `airC is ${this.values.airC[i] ?? ''}, over ${HOTTEST_C}`,
        remedy: 'Correct the figure, or look whether its unit is Celsius.',
      });
  }

  private tooFew(missing: number, gaps: readonly HourlyGap[], cutOff: boolean): void {
    const last = this.rows.at(-1);
    const tail = gaps.at(-1);
    const endsEarly = last !== undefined && (cutOff || (tail?.afterLine === last.line && tail.hoursCount > missing / 2));
    this.context.faults.add(
      endsEarly
        ? {
            line: last.line,
            code: 'truncated',
            message: `the file ends after line ${last.line}: ${missing} hours of the year are absent`,
            remedy: `Send the whole file again; line ${last.line} is the last good one.`,
          }
        : {
            line: gaps[0]?.afterLine ?? 0,
            code: 'not-a-year',
            message: `${missing} hours of the year are absent`,
            remedy: 'Send a file with a whole year of hours.',
          },
    );
  }

  /** Where hours are absent, in the order of the file. */
  private gaps(slotsCount: number): HourlyGap[] {
    const lineAt = new Map(this.rows.map((r) => [r.slot, r.line]));
    const first = this.rows[0]?.slot ?? 0;
    const gaps: HourlyGap[] = [];
    let afterLine = 0;
    let open: HourlyGap | null = null;
    for (let i = 0; i < SLOTS; i++) {
      const slot = (first + i) % SLOTS;
      if (slotsCount < SLOTS && slot >= FEB_29 && slot < FEB_29 + 24) continue;
      if (this.taken[slot] === 1) {
        afterLine = lineAt.get(slot) ?? afterLine;
        open = null;
      } else if (open) open.hoursCount++;
      else gaps.push((open = { afterLine, hoursCount: 1, ...hourOf(slot) }));
    }
    return gaps;
  }

  private columns(slotsCount: number): HourlyColumns {
    const rowAt = new Map(this.rows.map((r, i) => [r.slot, i]));
    const out = { year: [], month: [], day: [], hourEnding: [], ...Object.fromEntries(HOURLY_VALUES.map((v) => [v, []])) } as unknown as HourlyColumns;
    for (let slot = 0; slot < SLOTS; slot++) {
      if (slotsCount < SLOTS && slot >= FEB_29 && slot < FEB_29 + 24) continue;
      const row = rowAt.get(slot);
      const at = hourOf(slot);
      out.year.push(row === undefined ? null : (this.rows[row]?.year ?? null));
      out.month.push(at.month);
      out.day.push(at.day);
      out.hourEnding.push(at.hourEnding);
      for (const name of HOURLY_VALUES) out[name].push(row === undefined ? null : (this.values[name][row] ?? null));
    }
    return out;
  }

  private missing(): Record<HourlyValue, number> {
    return Object.fromEntries(HOURLY_VALUES.map((v) => [v, this.values[v].reduce<number>((n, x) => n + (x === null ? 1 : 0), 0)])) as Record<
      HourlyValue,
      number
    >;
  }

  private remarkValues(missing: Record<HourlyValue, number>): void {
    const { faults, remarks } = this.context;
    for (const name of HOURLY_VALUES) {
      if (missing[name] === this.rows.length) remarks.add('column-empty', `${name} has no figure in any hour`, { column: name });
      else if (missing[name] > 0) remarks.add('missing-values', `${name} is missing in ${missing[name]} hours`, { column: name, count: missing[name] });
    }
    if (missing.airC === this.rows.length && faults.count === 0)
      faults.add({ line: 0, column: 'airC', code: 'nothing-usable', message: 'no hour has an air temperature', remedy: 'Send a file with air temperatures.' });
  }
}

const hourOf = (slot: number): { month: number; day: number; hourEnding: number } => {
  let day = Math.floor(slot / 24);
  let month = 0;
  for (; month < 11; month++) {
    const days = month === 1 ? 29 : (DAYS_IN_MONTH[month] ?? 31);
    if (day < days) break;
    day -= days;
  }
  return { month: month + 1, day: day + 1, hourEnding: (slot % 24) + 1 };
};
