import type { ClimateInputs, DegreeDays, Frost, Hardiness } from '@lathwork/model';
import { LOWEST_OF_THIRTY, nightDropK } from '../data/night-spread.js';
import { hardinessClassOf } from '../data/hardiness.js';
import { dailyCurve, meanShortfallK, MONTH_DAYS } from '../physics/weather-normal.js';
import { frostFreeDays, frostYear, type DateSpread, type FrostYear } from '../physics/weather-frost.js';
import { cited } from '../sources/cite.js';
import type { SiteMonth } from './climate-months.js';

/** Screen air at 0 degC. Plants on the ground freeze on nights of 2 to 4 degC: printed beside the dates. */
const FROST_C = cited(0, 'degC', 'CLIMATE-JUDGEMENT', 'air frost in the screen');
const ESTIMATED_DOUBT_D = cited(10, 'd', 'CLIMATE-JUDGEMENT', 'dates from monthly means against printed ones', { min: 5, max: 20 });
const PUBLISHED_DOUBT_D = cited(3, 'd', 'CLIMATE-JUDGEMENT', 'thirty years of dates with a spread of 10 days: 2 days, and one for the smoothing', {
  min: 1,
  max: 7,
});
const HEATING_BASE_C = cited(18.3, 'degC', 'THOM-1954', '65 degF, as degree-days are printed in the United States', { min: 15, max: 19 });
const GROWING_BASE_C = cited(10, 'degC', 'CLIMATE-JUDGEMENT', '50 degF, base of warm crops', { min: 4, max: 12 });

/** Standard deviation of a month's nights: the record's own, else by how far its lowest night lies down, else by the kind of month it is. */
const spreadOf = (raw: ClimateInputs['months'][number] | undefined, nightC: number, seasonK: number, rangeK: number): number => {
  if (raw?.nightDeviationK !== undefined && raw.nightDeviationK !== null) return raw.nightDeviationK;
  const drop = raw && raw.tMinC !== null && raw.absoluteMinMeanC !== null && raw.absoluteMinMeanC <= raw.tMinC ? raw.tMinC - raw.absoluteMinMeanC : null;
  return (drop ?? nightDropK({ nightC, seasonK, rangeK })) / LOWEST_OF_THIRTY;
};

/** Spread of the nights of each month, K; null where the month has no record. A neighbour without a record tells nothing of the season. */
export const nightSpreads = (months: readonly SiteMonth[], climate: ClimateInputs): (number | null)[] =>
  months.map(({ month, rangeK }, i) => {
    if (month.tMinC === null || rangeK === null) return null;
    const [before, after] = [months[(i + 11) % 12]?.month.tMinC ?? null, months[(i + 1) % 12]?.month.tMinC ?? null];
    return spreadOf(climate.months[i], month.tMinC, before === null || after === null ? 0 : (after - before) / 2, rangeK);
  });

interface Nights {
  meanC: number[];
  spreadK: number[];
}

/** The twelve mean nights and their spreads at the site; null with a month missing. */
const nightsOf = (months: readonly SiteMonth[], climate: ClimateInputs): Nights | null => {
  const meanC = months.flatMap((m) => (m.month.tMinC === null ? [] : [m.month.tMinC]));
  if (meanC.length < 12) return null;
  return { meanC, spreadK: nightSpreads(months, climate).map((k) => k ?? 0) };
};

const modelled = (nights: Nights, shiftK: number, thresholdC: number): FrostYear =>
  frostYear(dailyCurve(nights.meanC.map((t) => t + shiftK)), dailyCurve(nights.spreadK), thresholdC);

const moved = (day: number | null, from: number | null, to: number | null): number | null => {
  if (day === null) return null;
  if (from === null || to === null) return day;
  const by = ((to - from + 547) % 365) - 182;
  return ((day - 1 + by + 365) % 365) + 1;
};
const movedAll = (given: DateSpread, station: DateSpread, site: DateSpread): DateSpread => ({
  p10: moved(given.p10, station.p10, site.p10),
  p50: moved(given.p50, station.p50, site.p50),
  p90: moved(given.p90, station.p90, site.p90),
});

/**
 * Gives: dates of the last and first frost, the days between, and their basis; null when a month is missing and no table is at hand.
 * Model: the publisher's table where the record has one, moved by what the model says the height does; else frostYear over
 *   the site's twelve mean nights and their spreads. Assumptions: air in the screen, not leaves. Validity: every latitude.
 */
export const frostOf = (months: readonly SiteMonth[], climate: ClimateInputs, heightCorrectionK: number): Frost | null => {
  const nights = nightsOf(months, climate);
  const given = climate.frostDates ?? null;
  if (given === null) {
    if (nights === null) return null;
    return { thresholdC: FROST_C, basis: 'monthlyDistribution', ...modelled(nights, 0, FROST_C), doubtD: ESTIMATED_DOUBT_D };
  }
  const here = nights && modelled(nights, 0, given.thresholdC);
  const there = nights && modelled(nights, -heightCorrectionK, given.thresholdC);
  const lastDayD = here && there ? movedAll(given.lastDayD, there.lastDayD, here.lastDayD) : { ...given.lastDayD };
  const firstDayD = here && there ? movedAll(given.firstDayD, there.firstDayD, here.firstDayD) : { ...given.firstDayD };
  return {
    thresholdC: given.thresholdC,
    basis: 'published',
    pattern: here?.pattern ?? 'everyYear',
    yearsWithFrostFrac: here?.yearsWithFrostFrac ?? 1,
    lastDayD,
    firstDayD,
    freeD: frostFreeDays(lastDayD, firstDayD),
    doubtD: PUBLISHED_DOUBT_D,
  };
};

/** The class of winter cold with the classes at the ends of the doubt; null without a night to take it from. */
export const hardinessOf = (meanExtremeC: number | null, doubtK: number): Hardiness | null => {
  if (meanExtremeC === null) return null;
  const { name, minC, maxC } = hardinessClassOf(meanExtremeC);
  return {
    hardinessClass: name,
    classMinC: minC,
    classMaxC: maxC,
    coldestClass: hardinessClassOf(meanExtremeC - doubtK).name,
    mildestClass: hardinessClassOf(meanExtremeC + doubtK).name,
  };
};

/**
 * Gives: heating and growing degree-days of the year, K.d. Model: THOM-1954 by months: each month's days are normally spread
 * about the middle of its mean night and day. Assumptions: the days spread as the nights do. Validity: all twelve months.
 */
export const degreeDaysOf = (months: readonly SiteMonth[], climate: ClimateInputs): DegreeDays => {
  const spreads = nightSpreads(months, climate);
  let [heating, growing, count] = [0, 0, 0];
  months.forEach(({ month }, i) => {
    if (month.tMaxC === null || month.tMinC === null) return;
    const meanC = (month.tMaxC + month.tMinC) / 2;
    const spreadK = spreads[i] ?? 0;
    const days = MONTH_DAYS[i] ?? 30;
    heating += days * meanShortfallK(meanC, spreadK, HEATING_BASE_C);
    growing += days * meanShortfallK(-meanC, spreadK, -GROWING_BASE_C);
    count++;
  });
  const whole = count === 12;
  return { heatingBaseC: HEATING_BASE_C, heatingKD: whole ? heating : null, growingBaseC: GROWING_BASE_C, growingKD: whole ? growing : null };
};
