import { cited } from '../sources/cite.js';

/**
 * How far a month's lowest night lies under its mean night where the record does not say, K: a sum of four terms found by least
 * squares over 10,500 station months outside the tropics with mean nights of -8 to 15 degC; what is left over is 1.45 K.
 * Cold air masses, months in which the season turns fast, and dry places with a wide daily range come further down.
 */
export const NIGHT_DROP = {
  baseK: cited(5.45, 'K', 'STATION-SPREAD', 'least squares, constant term', { min: 4, max: 7 }),
  perNightRatio: cited(-0.149, '1', 'STATION-SPREAD', 'least squares, for each K of the mean night over 0 degC', { min: -0.25, max: 0 }),
  perSeasonRatio: cited(0.241, '1', 'STATION-SPREAD', 'least squares, for each K by which the mean night moves in a month', { min: 0, max: 0.5 }),
  perRangeRatio: cited(0.119, '1', 'STATION-SPREAD', 'least squares, for each K of the daily range', { min: 0, max: 0.3 }),
  leastK: cited(3, 'K', 'STATION-SPREAD', 'mean of nights over 27 degC: 3.2 to 3.6', { min: 2, max: 4 }),
  mostK: cited(11.5, 'K', 'STATION-SPREAD', 'mean of nights of -20 to -15 degC: 11.3', { min: 9, max: 13 }),
} as const;

/** The drop by those four terms, held between what the coldest and the warmest nights show. Night 5, season 5, range 12: 7.3. */
export const nightDropK = (x: { nightC: number; seasonK: number; rangeK: number }): number => {
  const { baseK, perNightRatio, perSeasonRatio, perRangeRatio, leastK, mostK } = NIGHT_DROP;
  return Math.min(mostK, Math.max(leastK, baseK + perNightRatio * x.nightC + perSeasonRatio * Math.abs(x.seasonK) + perRangeRatio * x.rangeK));
};

/**
 * The lowest of thirty draws of a normal distribution lies this many standard deviations under its mean. Frost days of 311
 * station months give 2.09 (median 1.95), so that the count of draws needs no correction for nights in a row being alike.
 */
export const LOWEST_OF_THIRTY = cited(
  2.04,
  '1',
  'CLIMATE-JUDGEMENT',
  'order statistics: 2.043 for 30 normal nights; 2.09 by frost days of 311 station months',
  {
    min: 1.5,
    max: 2.5,
  },
);
