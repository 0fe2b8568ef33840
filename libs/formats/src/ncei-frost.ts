import type { FrostDate, FrostThreshold } from './climate-file.js';
import { celsiusOfFahrenheit, dayOfYear, DAYS_IN_MONTH } from './csv.js';
import { shown } from './faults.js';
import type { NceiRow } from './ncei-row.js';
import type { ParserContext } from './parser.js';

/**
 * Frost dates of the U.S. normals. `ANN-TMIN-PRBLST-T32FP10` is the date on or after which a freeze of 32 F still comes in
 * 10 % of years, `PRBFST` the date on or before which it has come, `PRBGSL` the length of season reached or passed. A year of
 * freezes runs from August to July: a first freeze in January belongs to the autumn before, a last one in December to the
 * spring after. (Read so off Lebanon NH: last freeze 10 % 24 May, 90 % 27 April; other glosses of these columns say the
 * reverse.)
 */
const COLUMN = /^ANN-TMIN-PRB(LST|FST|GSL)-T(\d\d)FP(\d\d)$/;
const FIRST_MONTH_OF_AUTUMN = 8;

type Kind = 'LST' | 'FST' | 'GSL';

const dateOf = (raw: string, kind: 'LST' | 'FST', chanceFrac: number): FrostDate | null => {
  const parts = /^(\d{1,2})\/(\d{1,2})$/.exec(raw);
  const [month, day] = [Number(parts?.[1]), Number(parts?.[2])];
  const days = month === 2 ? 29 : DAYS_IN_MONTH[month - 1];
  if (!parts || days === undefined || day < 1 || day > days) return null;
  const inYear = dayOfYear(month, day);
  const turned = kind === 'FST' && month < FIRST_MONTH_OF_AUTUMN ? 365 : kind === 'LST' && month >= FIRST_MONTH_OF_AUTUMN ? -365 : 0;
  return { chanceFrac, month, day, day365: inYear + turned };
};

const thresholdOf = (fahrenheit: number): FrostThreshold => ({
  thresholdC: celsiusOfFahrenheit(fahrenheit),
  lastSpring: [],
  firstAutumn: [],
  seasons: [],
  frostAllYear: false,
});

const judgeOrder = (row: NceiRow, column: string, list: readonly number[], falls: boolean, context: ParserContext): void => {
  const broken = list.some((v, i) => i > 0 && (falls ? v > (list[i - 1] ?? v) : v < (list[i - 1] ?? v)));
  if (broken)
    context.faults.add({
      line: row.line,
      column,
      code: 'not-in-order',
      message: `dates or lengths of ${column} do not ${falls ? 'fall' : 'rise'} as the chance rises`,
      remedy: 'Send the file as it was published.',
    });
};

const addDate = (
  into: FrostThreshold,
  kind: 'LST' | 'FST',
  column: string,
  x: { row: NceiRow; raw: string; chanceFrac: number; context: ParserContext },
): void => {
  const date = dateOf(x.raw, kind, x.chanceFrac);
  if (date) into[kind === 'LST' ? 'lastSpring' : 'firstAutumn'].push(date);
  else
    x.context.faults.add({
      line: x.row.line,
      column,
      code: 'not-a-date',
      message: `${column} is "${shown(x.raw)}", not a date of the form MM/DD`,
      remedy: 'Send the file as it was published.',
    });
};

/** A season over a year long can only be in tenths of days, as other counts of the layout of 1981-2010 are. */
const inWholeDays = (t: FrostThreshold, row: NceiRow, context: ParserContext): void => {
  if (row.layout === '1981-2010' && t.seasons.some((s) => s.lengthD > 366)) for (const s of t.seasons) s.lengthD /= 10;
  if (t.seasons.some((s) => s.lengthD < 0 || s.lengthD > 366))
    context.faults.add({
      line: row.line,
      code: 'out-of-range',
      message: 'a frost-free season is not of 0 to 366 days',
      remedy: 'Send the file as it was published.',
    });
};

/** Codes for "no date", in any of the layouts. */
const isNoValue = (raw: string): boolean => raw === '' || /^-(?:9999|8888|7777|6666|5555)(?:\.0*)?$/.test(raw);

/** The thresholds that have any date, coldest first; an absent date is absent, never a guess. */
export const frostOf = (row: NceiRow, columns: readonly string[], context: ParserContext): FrostThreshold[] => {
  const byThreshold = new Map<number, FrostThreshold>();
  const named = columns.flatMap((column) => {
    const m = COLUMN.exec(column);
    return m ? [{ column, kind: m[1] as Kind, fahrenheit: Number(m[2]), chance: Number(m[3]) }] : [];
  });
  for (const { column, kind, fahrenheit, chance } of named.sort((a, b) => a.fahrenheit - b.fahrenheit || a.chance - b.chance)) {
    const into = byThreshold.get(fahrenheit) ?? thresholdOf(fahrenheit);
    byThreshold.set(fahrenheit, into);
    const raw = row.text(column);
    if (row.measurement(column) === 'V') into.frostAllYear = true;
    if (row.flagged(column) === 'none' || isNoValue(raw)) {
      context.remarks.add('frost-date-absent', `${column}: the publisher gives no date${row.measurement(column) === 'V' ? ' (risk of frost all year)' : ''}`, {
        line: row.line,
      });
      continue;
    }
    const chanceFrac = chance / 100;
    if (kind !== 'GSL') addDate(into, kind, column, { row, raw, chanceFrac, context });
    else {
      const lengthD = row.value(column, 1);
      if (lengthD !== null) into.seasons.push({ chanceFrac, lengthD });
    }
  }
  const all = [...byThreshold.values()];
  for (const t of all) {
    inWholeDays(t, row, context);
    const name = `ANN-TMIN-PRB-T${Math.round(t.thresholdC * 1.8 + 32)}F`;
    judgeOrder(
      row,
      `${name} (last)`,
      t.lastSpring.map((d) => d.day365),
      true,
      context,
    );
    judgeOrder(
      row,
      `${name} (first)`,
      t.firstAutumn.map((d) => d.day365),
      false,
      context,
    );
    judgeOrder(
      row,
      `${name} (season)`,
      t.seasons.map((s) => s.lengthD),
      true,
      context,
    );
  }
  return all.filter((t) => t.lastSpring.length + t.firstAutumn.length + t.seasons.length > 0 || t.frostAllYear);
};
