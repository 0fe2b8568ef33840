import type { ClimateFile, FormatId, MonthRecord, ReadOptions } from './climate-file.js';
import { numberOf } from './csv.js';
import { shown, type Faults, type Remarks } from './faults.js';

/** What a parser is given: where faults and remarks go, and what the sender asked for. */
export interface ParserContext {
  faults: Faults;
  remarks: Remarks;
  options: ReadOptions;
}

export interface LineParser {
  /** Takes one line. False: no more lines are wanted (the faults say why). */
  line(text: string, number: number): boolean;
  /** After the last line. `cutOff` is true when the last line had no line end. Null when faults were added. */
  end(at: { linesCount: number; cutOff: boolean; lastGoodLine: number }): ClimateFile | null;
}

/** One format: how it is known by its first lines and how a parser of it starts. */
export interface FormatDoor {
  id: FormatId;
  /** Why the first lines are this format; null where they are not. */
  fits(head: readonly string[]): string | null;
  start(context: ParserContext): LineParser;
}

export interface Limits {
  min: number;
  max: number;
}

/** What can be true of a month or an hour anywhere on earth; the monthly ones are those of the plan's own inputs. */
export const LIMITS = {
  latitudeDeg: { min: -90, max: 90 },
  longitudeDeg: { min: -180, max: 180 },
  elevationM: { min: -430, max: 9000 },
  zoneH: { min: -12, max: 14 },
  tMaxC: { min: -80, max: 60 },
  tMinC: { min: -90, max: 50 },
  /** Temperatures as read: Fahrenheit under the name of Celsius must get so far that it can be asked about. */
  readC: { min: -100, max: 140 },
  monthMm: { min: 0, max: 5000 },
  snowfallMm: { min: 0, max: 30_000 },
  sunshineH: { min: 0, max: 750 },
  vapourPressurePa: { min: 0, max: 6000 },
  daysD: { min: 0, max: 31 },
  windMPerS: { min: 0, max: 110 },
  frac: { min: 0, max: 1 },
  dayMJPerM2: { min: 0, max: 45 },
  yearsCount: { min: 0, max: 400 },
  spreadK: { min: 0, max: 20 },
} as const satisfies Record<string, Limits>;

export const emptyMonth = (): MonthRecord => ({
  tMaxC: null,
  tMinC: null,
  vapourPressurePa: null,
  precipitationMm: null,
  sunshineH: null,
  absoluteMinMeanC: null,
  tMeanC: null,
  tMinYearToYearK: null,
  snowfallMm: null,
  frostDaysD: null,
  windMPerS: null,
  relativeHumidityFrac: null,
  radiationMJPerM2: null,
  nightDeviationK: null,
  recordMinC: null,
  recordMaxC: null,
  yearsCount: null,
});
export const emptyMonths = (): MonthRecord[] => Array.from({ length: 12 }, emptyMonth);

/** Reads numbers out of fields and tells the faults with line and column. */
export class FieldReader {
  constructor(private readonly faults: Faults) {}

  /** The number of a field, or null with a fault. */
  number(raw: string, at: { line: number; column: string }): number | null {
    const value = numberOf(raw);
    if (value === null)
      this.faults.add({
        ...at,
        code: 'not-a-number',
        message: `${at.column} is "${shown(raw)}", not a number`,
        remedy: /^[-+]?\d+,\d+$/.test(raw)
          ? 'Write decimals with a point, not a comma.'
          : 'Correct the field, or leave it as the format writes a missing value.',
      });
    return value;
  }

  /** The value when it can be true, else null with a fault. */
  within(value: number | null, limits: Limits, at: { line: number; column: string }): number | null {
    if (value === null) return null;
    if (value >= limits.min && value <= limits.max) return value;
    this.faults.add({
      ...at,
      code: 'out-of-range',
      message: `${at.column} is ${value} (after conversion to SI), outside ${limits.min} to ${limits.max}`,
      remedy: 'Correct the figure, or look whether its unit is the one that the column names.',
    });
    return null;
  }
}

/** True when no month has any temperature, sun or rain: then there is nothing to plan with. */
export const nothingInMonths = (months: readonly MonthRecord[]): boolean =>
  months.every((m) => m.tMaxC === null && m.tMinC === null && m.tMeanC === null && m.precipitationMm === null && m.radiationMJPerM2 === null);

export const missingMonthsOf = (months: readonly MonthRecord[], key: keyof MonthRecord): number => months.filter((m) => m[key] === null).length;

const TRUE_LIMITS: readonly (readonly [keyof MonthRecord, Limits])[] = [
  ['tMaxC', LIMITS.tMaxC],
  ['tMinC', LIMITS.tMinC],
  ['tMeanC', LIMITS.tMaxC],
  ['absoluteMinMeanC', LIMITS.tMinC],
  ['recordMinC', LIMITS.tMinC],
  ['recordMaxC', LIMITS.tMaxC],
];

/** Temperatures beyond any on earth: a question where several months are too hot and the unit has not been answered, else a fault each. */
const judgeLimits = (months: readonly MonthRecord[], lines: readonly number[], context: ParserContext): void => {
  const beyond = months.flatMap((month, m) =>
    TRUE_LIMITS.flatMap(([key, { min, max }]) => {
      const value = month[key];
      return value === null || (value >= min && value <= max) ? [] : [{ line: lines[m] ?? 0, column: `${key}, month ${m + 1}`, value, min, max }];
    }),
  );
  const tooHot = new Set(beyond.filter((b) => b.value > b.max).map((b) => b.line));
  if (tooHot.size > 1 && context.options.answers?.temperatureUnit === undefined) {
    askUnit(context, 'maybe-fahrenheit', `${beyond.length} temperatures such as ${beyond[0]?.value ?? ''} are beyond any on earth in Celsius`);
    return;
  }
  for (const { line, column, value, min, max } of beyond)
    context.faults.add({
      line,
      column,
      code: 'out-of-range',
      message: `${column} is ${value} C, outside ${min} to ${max}`,
      remedy: 'Correct the figure, or look whether its unit is Celsius.',
    });
};

/** Asks once which unit the temperatures are in. */
export const askUnit = (context: ParserContext, code: 'maybe-fahrenheit' | 'maybe-celsius', why: string): void => {
  if (context.faults.list.some((f) => f.code === code)) return;
  context.faults.add({
    line: 0,
    code,
    message: why,
    remedy: 'Say which unit the temperatures are in, or correct the place.',
    ask: { answer: 'temperatureUnit', choices: ['celsius', 'fahrenheit'] },
  });
};

/** Tells which months have no temperatures, and faults what cannot be: a mean lowest over the mean highest. */
export const judgeMonths = (months: readonly MonthRecord[], lines: readonly number[], context: ParserContext): void => {
  months.forEach((m, i) => {
    if (m.tMaxC !== null && m.tMinC !== null && m.tMinC > m.tMaxC)
      context.faults.add({
        line: lines[i] ?? 0,
        code: 'min-over-max',
        message: `month ${i + 1}: mean lowest ${m.tMinC} C lies over mean highest ${m.tMaxC} C`,
        remedy: 'Look whether the two columns are interchanged.',
      });
  });
  judgeLimits(months, lines, context);
  if (nothingInMonths(months))
    context.faults.add({
      line: 0,
      code: 'nothing-usable',
      message: 'no month has a temperature, rain or sun',
      remedy: 'Choose a station with a record of temperatures.',
    });
  const missing = months.flatMap((m, i) => (m.tMaxC === null || m.tMinC === null ? [i + 1] : []));
  if (missing.length > 0)
    context.remarks.add('missing-months', `no mean highest or lowest temperature for month ${missing.join(', ')}`, { count: missing.length });
};
