import { cited } from '../sources/cite.js';
import { normalShare, YEAR_DAYS } from './weather-normal.js';

/** Dates of the last and first frost from the means and spreads of the nights. */

/** Frost nights come in runs, so that a night counts for less than a draw of its own. */
const NIGHTS_IN_RUNS_FRAC = cited(0.7, '1', 'CLIMATE-JUDGEMENT', 'chosen by the printed dates of Lebanon NH; 0.5 misses them by six days towards hope', {
  min: 0.3,
  max: 1,
});

export interface DateSpread {
  p10: number | null;
  p50: number | null;
  p90: number | null;
}

export interface FrostYear {
  /** Share of years with a frost at all. */
  yearsWithFrostFrac: number;
  pattern: 'everyYear' | 'someYears' | 'never' | 'allYear';
  lastDayD: DateSpread;
  firstDayD: DateSpread;
  freeD: DateSpread;
}

const EVERY_YEAR_FRAC = 0.9;
const HARDLY_EVER_FRAC = 0.1;
/** A warmest month that has a frost in half of all years leaves no season to speak of. */
const WARMEST_DAYS = 15;

/** Day of the greatest or least value; the earliest of equals. */
const dayOf = (curve: Float64Array, better: (a: number, b: number) => boolean): number =>
  curve.reduce((best, v, d) => (better(v, curve[best] ?? v) ? d : best), 0);

/** Days of the year, from 1, on which the chance of a frost since the warmest day reaches 10, 50 and 90 per cent. */
const walk = (risk: Float64Array, from: number, step: 1 | -1, days: number): { at10: number | null; at50: number | null; at90: number | null } => {
  const out: { at10: number | null; at50: number | null; at90: number | null } = { at10: null, at50: null, at90: null };
  let sum = 0;
  for (let k = 0; k <= days; k++) {
    const day = (((from + step * k) % YEAR_DAYS) + YEAR_DAYS) % YEAR_DAYS;
    sum += risk[day] ?? 0;
    const chance = 1 - Math.exp(-sum);
    if (out.at10 === null && chance >= 0.1) out.at10 = day + 1;
    if (out.at50 === null && chance >= 0.5) out.at50 = day + 1;
    if (out.at90 === null && chance >= 0.9) out.at90 = day + 1;
  }
  return out;
};

const between = (from: number, to: number): number => (to - from + YEAR_DAYS) % YEAR_DAYS;
const NONE: DateSpread = { p10: null, p50: null, p90: null };

/**
 * Gives: length of the season without frost, d. Model: between the two median dates; its ends by the two dates' own ends,
 * taken as independent. Validity: both dates known at all three chances. Worked line: 117, 129, 144 and 266, 279, 292: 130, 150, 168.
 */
export const frostFreeDays = (last: DateSpread, first: DateSpread): DateSpread => {
  if (last.p10 === null || last.p50 === null || last.p90 === null || first.p10 === null || first.p50 === null || first.p90 === null) return NONE;
  const middle = between(last.p50, first.p50) - 1;
  const short = Math.hypot(between(last.p50, last.p90), between(first.p10, first.p50));
  const long = Math.hypot(between(last.p10, last.p50), between(first.p50, first.p90));
  return { p10: Math.max(0, middle - short), p50: Math.max(0, middle), p90: Math.min(YEAR_DAYS, middle + long) };
};

/**
 * Gives: dates of the last and the first frost at 10, 50 and 90 per cent, the season between them, and what kind of year it is.
 * Model: each night is normally spread about its mean; the chance of a year without frost from a day on is the product of
 *   the nights' chances, each to the power 0.7 because cold nights come in runs. The walk starts at the warmest day and
 *   goes both ways to the coldest, so that it needs no hemisphere (after THOM-SHAW-1958: the dates come out nearly normal).
 * Assumptions: one warm and one cold season; the spread does not change from year to year. Validity: any latitude; years
 *   that never freeze and years that always may say so. Doubt: about 10 days against printed dates.
 * Fields: daily mean nights, degC; daily spreads, K; days of the year from 1.
 */
export const frostYear = (nightC: Float64Array, spreadK: Float64Array, thresholdC: number): FrostYear => {
  const risk = nightC.map((t, d) => {
    const share = normalShare((thresholdC - t) / Math.max(0.1, spreadK[d] ?? 0));
    return -NIGHTS_IN_RUNS_FRAC * Math.log(Math.max(1e-9, 1 - share));
  });
  const yearsWithFrostFrac = 1 - Math.exp(-risk.reduce((a, v) => a + v, 0));
  const free: DateSpread = { p10: YEAR_DAYS, p50: YEAR_DAYS, p90: YEAR_DAYS };
  if (yearsWithFrostFrac < HARDLY_EVER_FRAC) return { yearsWithFrostFrac, pattern: 'never', lastDayD: NONE, firstDayD: NONE, freeD: free };
  const warmest = dayOf(nightC, (a, b) => a > b);
  const coldest = dayOf(nightC, (a, b) => a < b);
  let midsummer = 0;
  for (let k = -WARMEST_DAYS; k <= WARMEST_DAYS; k++) midsummer += risk[(warmest + k + YEAR_DAYS) % YEAR_DAYS] ?? 0;
  if (1 - Math.exp(-midsummer) >= 0.5) return { yearsWithFrostFrac, pattern: 'allYear', lastDayD: NONE, firstDayD: NONE, freeD: { p10: 0, p50: 0, p90: 0 } };
  const back = walk(risk, warmest, -1, between(coldest, warmest));
  const on = walk(risk, warmest, 1, between(warmest, coldest));
  const lastDayD = { p10: back.at90, p50: back.at50, p90: back.at10 };
  const firstDayD = { p10: on.at10, p50: on.at50, p90: on.at90 };
  return {
    yearsWithFrostFrac,
    pattern: yearsWithFrostFrac >= EVERY_YEAR_FRAC ? 'everyYear' : 'someYears',
    lastDayD,
    firstDayD,
    freeD: frostFreeDays(lastDayD, firstDayD),
  };
};
