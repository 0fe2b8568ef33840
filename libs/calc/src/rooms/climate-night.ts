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
const HEIGHT_DOUBT_SHARE = cited(0.5, '1', 'STATION-PAIRS', 'pairs 500 to 1250 m apart in height: the cold extreme falls by 3 to 5 K/km, not 6.5', {
  min: 0.3,
  max: 1,
});
/** Months as near as this to the coldest one may stand beside a colder one. */
const NEARLY_COLDEST_K = cited(2, 'K', 'CLIMATE-JUDGEMENT', 'usual step between winter months', { min: 1, max: 4 });
/** Two stations near each other differ by this much: hollows, hillsides, town and shore. It is reached within 10 km. */
const LOCAL_DOUBT_K = cited(2.3, 'K', 'STATION-PAIRS', '903 pairs under 100 km apart: root mean square 2.4 K', { min: 1.5, max: 3 });
const LOCAL_REACH_M = cited(10_000, 'm', 'CLIMATE-JUDGEMENT', 'no pairs are nearer than this', { min: 1000, max: 25_000 });
const DISTANCE_DOUBT_K_PER_M = cited(1 / 125_000, 'K/m', 'STATION-PAIRS', 'per metre; root mean square 3.2 K at 250 km, 3.7 at 350, 4.6 at 500, 7.2 at 900', {
  min: 0,
  max: 1e-4,
});
/** What a typical year's 0.4 per cent coldest hours lie above the mean of the years' coldest nights. */
const YEAR_UNDER_HOURS_K = cited(5.4, 'K', 'TYPICAL-YEARS', 'mean of five files, 1.9 to 10.8: typical years leave the extremes out', { min: 1.9, max: 10.8 });
const YEAR_UNDER_HOURS_DOUBT_K = cited(3.9, 'K', 'TYPICAL-YEARS', 'standard deviation of the same five', { min: 2, max: 6 });

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

interface Low {
  basis: Night['basis'];
  lowC: number;
  /** Doubt of the mean year's coldest night itself. */
  meanDoubtK: number;
}

/** What is found for the site: the night, and how far the mean of its coldest nights may be off. */
export interface FoundNight {
  night: Night;
  meanDoubtK: number;
}

/** Lowest night by the best record there is, before the doubt of distance and height. */
const lowOf = (months: readonly SiteMonth[], climate: ClimateInputs, byK: number): Low | null => {
  const recorded = months.flatMap((m) => (m.month.coldNightBasis === 'recorded' && m.month.coldNightC !== null ? [m.month.coldNightC] : []));
  if (climate.annualExtremeMinC !== null) return { basis: 'annualExtremeMinimum', lowC: Math.min(climate.annualExtremeMinC + byK, ...recorded), meanDoubtK: 0 };
  if (climate.hourlyLow)
    return {
      basis: 'hourlyPercentile',
      lowC: Math.min(climate.hourlyLow.lowC + byK - YEAR_UNDER_HOURS_K, ...recorded),
      meanDoubtK: YEAR_UNDER_HOURS_DOUBT_K,
    };
  const coldest = coldestMonthOf(months)?.month;
  if (!coldest || coldest.tMinC === null) return null;
  if (coldest.coldNightBasis === 'recorded')
    return { basis: 'monthlyAbsoluteMinimum', lowC: Math.min(...recorded) - YEAR_UNDER_MONTH_K, meanDoubtK: YEAR_UNDER_MONTH_DOUBT_K };
  return {
    basis: 'monthlyMeanLessSpread',
    lowC: Math.min(coldest.tMinC - YEAR_UNDER_MEAN_K, ...recorded),
    meanDoubtK: YEAR_UNDER_MEAN_DOUBT_K,
  };
};

/**
 * Gives: how far the cold end of the site may lie from the station's, K: root mean square by distance and half of the height
 *   correction. Model: local spread and distance as found between pairs of stations, taken as independent.
 * Validity: to 1,000 km and 1,500 m; a far station (over 300 km or 500 m) so widens the range by itself.
 * Worked line: 300 km away at one height: 3.3 K.
 */
export const stationDoubtK = (climate: Pick<ClimateInputs, 'distanceM'>, heightCorrectionK: number): number =>
  Math.hypot(
    LOCAL_DOUBT_K * Math.min(1, climate.distanceM / LOCAL_REACH_M),
    DISTANCE_DOUBT_K_PER_M * climate.distanceM,
    HEIGHT_DOUBT_SHARE * heightCorrectionK,
  );

/**
 * Gives: the night a crop must live through in a common winter, with its doubt and its 24 hours; null with no record.
 * Model: in this order: mean of the coldest night of each year; the cold end of a file of hours less 5.4 K; the lowest monthly
 *   mean of lowest nights less 1.4 K; the coldest month's mean night less 8.4 K. The last two are counted over the station table.
 * Assumptions: clear and calm; the mean daily range of the month follows the night, though a clear day's is wider.
 * Validity: it is a mean year's coldest night: half of all years are colder. doubtK reaches to the worst of about 16.
 */
export const designNightOf = (
  site: Pick<SiteInputs, 'latitudeDeg' | 'elevationM'>,
  climate: ClimateInputs,
  months: readonly SiteMonth[],
): FoundNight | null => {
  const upM = site.elevationM - climate.stationElevationM;
  const byK = heightChangeK(upM);
  const low = lowOf(months, climate, byK);
  const month = monthWithLeast(
    months.filter((m) => m.month.hasRecord),
    (m) => m.month.coldNightC,
  );
  if (!low || !month || month.rangeK === null) return null;
  const meanDoubtK = Math.hypot(low.meanDoubtK, stationDoubtK(climate, byK));
  return {
    meanDoubtK,
    night: {
      basis: low.basis,
      lowC: low.lowC,
      doubtK: Math.hypot(WORST_YEAR_K, meanDoubtK),
      day: clearHourlyDay(site, month.month, low.lowC, low.lowC + month.rangeK),
    },
  };
};
