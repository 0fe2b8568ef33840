import { cited } from '../sources/cite.js';

/**
 * How far a month's lowest night lies under its mean night, by how cold its mean night is: cold air masses come further
 * down than warm ones. Means of classes 5 K wide over the station table outside the tropics.
 */
export const NIGHT_SPREAD = [
  { nightC: -17.5, dropK: cited(11.3, 'K', 'STATION-SPREAD', 'nights of -20 to -15 degC, 248 station months', { min: 8, max: 14 }) },
  { nightC: -7.5, dropK: cited(10, 'K', 'STATION-SPREAD', 'nights of -10 to -5 degC, 592 station months', { min: 7, max: 13 }) },
  { nightC: -2.5, dropK: cited(7.8, 'K', 'STATION-SPREAD', 'nights of -5 to 0 degC, 1,418 station months', { min: 5.5, max: 10 }) },
  { nightC: 2.5, dropK: cited(6.4, 'K', 'STATION-SPREAD', 'nights of 0 to 5 degC, 2,606 station months', { min: 4.5, max: 8 }) },
  { nightC: 7.5, dropK: cited(6.2, 'K', 'STATION-SPREAD', 'nights of 5 to 10 degC, 3,014 station months', { min: 4.5, max: 8 }) },
  { nightC: 12.5, dropK: cited(5.9, 'K', 'STATION-SPREAD', 'nights of 10 to 15 degC, 3,067 station months', { min: 4, max: 8 }) },
  { nightC: 17.5, dropK: cited(5.4, 'K', 'STATION-SPREAD', 'nights of 15 to 20 degC, 1,991 station months', { min: 3.5, max: 7 }) },
  { nightC: 22.5, dropK: cited(4.3, 'K', 'STATION-SPREAD', 'nights of 20 to 25 degC, 1,082 station months', { min: 2.5, max: 6 }) },
  { nightC: 27.5, dropK: cited(3.6, 'K', 'STATION-SPREAD', 'nights of 25 to 30 degC, 282 station months', { min: 2, max: 5 }) },
] as const;

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
