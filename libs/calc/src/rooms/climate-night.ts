import type { ClimateInputs, ClimateResult, SiteInputs } from '@lathwork/model';
import { heightChangeK } from '../physics/air.js';
import { cited } from '../sources/cite.js';
import { clearHourlyDay, type SiteMonth } from './climate-months.js';

/** The mean of the coldest month's lowest night lies this far above the mean of the year's: the coldest night may come in any month. */
const YEAR_UNDER_MONTH_K = cited(1.4, 'K', 'STATION-SPREAD', 'mean of 1,509 stations, standard deviation 0.9', { min: 0.5, max: 2.7 });
/** The year's lowest night lies this far under the coldest month's mean night. */
const YEAR_UNDER_MEAN_K = cited(8.4, 'K', 'STATION-SPREAD', 'mean of 1,509 stations, standard deviation 3.8', { min: 4, max: 13.7 });
const YEAR_UNDER_MEAN_DOUBT_K = cited(3.8, 'K', 'STATION-SPREAD', 'standard deviation of the same', { min: 2, max: 5 });
const YEAR_UNDER_MONTH_DOUBT_K = cited(0.9, 'K', 'STATION-SPREAD', 'standard deviation of the same', { min: 0.5, max: 2 });
/** Half of all years have a colder night than the mean one. The coldest of about 16 years lay this far under it. */
const WORST_YEAR_K = cited(4.4, 'K', 'STATION-SPREAD', 'mean of 1,509 stations, tenth to ninetieth percentile 1.7 to 7.7', { min: 1.7, max: 7.7 });
/** Part of a height correction that may be wrong: on clear nights cold air lies in the low places. */
const HEIGHT_DOUBT_SHARE = cited(0.5, '1', 'CLIMATE-JUDGEMENT', 'night inversions', { min: 0.3, max: 1 });
/** Months as near as this to the coldest one may stand beside a colder one. */
const NEARLY_COLDEST_K = cited(2, 'K', 'CLIMATE-JUDGEMENT', 'usual step between winter months', { min: 1, max: 4 });
const DISTANCE_DOUBT_K_PER_M = cited(1 / 150_000, 'K/m', 'CLIMATE-JUDGEMENT', 'per metre: 2 K at 300 km', { min: 0, max: 1e-4 });

type Night = NonNullable<ClimateResult['designNight']>;
export type Hemisphere = ClimateResult['hemisphere'];

/** Within five degrees of the equator no side is favoured and there is no winter to plan by. */
export const hemisphereOf = (latitudeDeg: number): Hemisphere => (Math.abs(latitudeDeg) < 5 ? 'equatorial' : latitudeDeg > 0 ? 'north' : 'south');

const monthWithLeast = (months: readonly SiteMonth[], of: (m: SiteMonth) => number | null): SiteMonth | null =>
  months.reduce<SiteMonth | null>((best, m) => {
    const value = of(m);
    const least = best && of(best);
    return value !== null && (least === null || value < least) ? m : best;
  }, null);

export const coldestMonthOf = (months: readonly SiteMonth[]): SiteMonth | null => monthWithLeast(months, (m) => m.month.tMinC);
export const hottestMonthOf = (months: readonly SiteMonth[]): SiteMonth | null =>
  monthWithLeast(months, (m) => (m.month.tMaxC === null ? null : -m.month.tMaxC));

/**
 * Gives: the months without a record that are likely the coldest of the year.
 * Model: a gap that touches the coldest month on record, or one within 2 K of it, may hide a colder one; January (north)
 *   or July (south) is always suspect. Assumptions: one winter a year. The rule errs towards blocking: a frost that nobody
 *   promised against costs a question, a promise that fails costs the crop.
 */
export const missingLikelyColdest = (months: readonly SiteMonth[], latitudeDeg: number): number[] => {
  const missing = new Set(months.filter((m) => !m.month.hasRecord).map((m) => m.month.month));
  const coldestC = coldestMonthOf(months.filter((m) => m.month.hasRecord))?.month.tMinC ?? null;
  if (coldestC === null) return [...missing];
  const hemisphere = hemisphereOf(latitudeDeg);
  const midwinter = hemisphere === 'north' ? 1 : hemisphere === 'south' ? 7 : null;
  const suspects = new Set(midwinter !== null && missing.has(midwinter) ? [midwinter] : []);
  const cold = months.filter((m) => m.month.hasRecord && m.month.tMinC !== null && m.month.tMinC <= coldestC + NEARLY_COLDEST_K);
  for (const { month } of cold) {
    for (const step of [1, 11]) {
      let at: number = ((month.month - 1 + step) % 12) + 1;
      while (missing.has(at)) {
        suspects.add(at);
        at = ((at - 1 + step) % 12) + 1;
      }
    }
  }
  return [...suspects].sort((a, b) => a - b);
};

/** Lowest night by the best record there is, before the doubt of distance and height. */
const lowOf = (months: readonly SiteMonth[], climate: ClimateInputs, byK: number): Pick<Night, 'basis' | 'lowC' | 'doubtK'> | null => {
  const recorded = months.flatMap((m) => (m.month.coldNightBasis === 'recorded' && m.month.coldNightC !== null ? [m.month.coldNightC] : []));
  if (climate.annualExtremeMinC !== null)
    return { basis: 'annualExtremeMinimum', lowC: Math.min(climate.annualExtremeMinC + byK, ...recorded), doubtK: WORST_YEAR_K };
  const coldest = coldestMonthOf(months)?.month;
  if (!coldest || coldest.tMinC === null) return null;
  if (coldest.coldNightBasis === 'recorded')
    return { basis: 'monthlyAbsoluteMinimum', lowC: Math.min(...recorded) - YEAR_UNDER_MONTH_K, doubtK: Math.hypot(WORST_YEAR_K, YEAR_UNDER_MONTH_DOUBT_K) };
  return {
    basis: 'monthlyMeanLessSpread',
    lowC: Math.min(coldest.tMinC - YEAR_UNDER_MEAN_K, ...recorded),
    doubtK: Math.hypot(WORST_YEAR_K, YEAR_UNDER_MEAN_DOUBT_K),
  };
};

/**
 * Gives: the night a crop must live through in a common winter, with its doubt and its 24 hours; null with no record.
 * Model: in this order: mean of the coldest night of each year; the lowest monthly mean of lowest nights less 1.4 K; the
 *   coldest month's mean night less 8.4 K. The last two steps are counted over the station table.
 * Assumptions: clear and calm; the mean daily range of the month follows the night, though a clear day's is wider.
 * Validity: it is a mean year's coldest night: half of all years are colder. doubtK reaches to the worst of about 16.
 */
export const designNightOf = (site: Pick<SiteInputs, 'latitudeDeg' | 'elevationM'>, climate: ClimateInputs, months: readonly SiteMonth[]): Night | null => {
  const upM = site.elevationM - climate.stationElevationM;
  const byK = heightChangeK(upM);
  const low = lowOf(months, climate, byK);
  const month = monthWithLeast(
    months.filter((m) => m.month.hasRecord),
    (m) => m.month.coldNightC,
  );
  if (!low || !month || month.rangeK === null) return null;
  return {
    ...low,
    doubtK: Math.hypot(low.doubtK, HEIGHT_DOUBT_SHARE * byK, DISTANCE_DOUBT_K_PER_M * climate.distanceM),
    day: clearHourlyDay(site, month.month, low.lowC, low.lowC + month.rangeK),
  };
};
