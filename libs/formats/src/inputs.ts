import type { ClimateInputs, ClimateMonthInputs } from '@lathwork/model';
import type { AnnualFile, FrostDate, HourlyFile, MonthlyFile, MonthRecord } from './climate-file.js';
import { monthsOfHourlyFile } from './hourly-months.js';

/**
 * From what a file says to the climate of a plan. Spread from year to year is not the spread of nights and is not carried;
 * the coldest hour of a typical year is not the mean of coldest nights and is not carried either.
 */
type FrostDates = NonNullable<ClimateInputs['frostDates']>;
type HourlyLow = NonNullable<ClimateInputs['hourlyLow']>;

const COLD_SHARE = 0.004;
const LEAST_HOURS = 8000;
const DAYS = 365;

/** Day of the year from 1 to 365, of a date that runs over the turn of the year. */
const inYear = (day365: number): number => ((((day365 - 1) % DAYS) + DAYS) % DAYS) + 1;
const dateAt = (list: readonly FrostDate[], chanceFrac: number): number | null => {
  const date = list.find((d) => Math.abs(d.chanceFrac - chanceFrac) < 1e-6);
  return date ? inYear(date.day365) : null;
};

/**
 * Frost dates at one threshold. The publisher's chance is of a freeze on or after the last date and on or before the first,
 * so that the date which nine years in ten keep to is its 10 % for the last frost. Null without a single date.
 */
export const frostDatesOf = (file: AnnualFile, thresholdC = 0): FrostDates | null => {
  const at = file.frost.find((t) => Math.abs(t.thresholdC - thresholdC) < 0.05);
  if (!at || at.lastSpring.length + at.firstAutumn.length === 0) return null;
  return {
    thresholdC: at.thresholdC,
    lastDayD: { p10: dateAt(at.lastSpring, 0.9), p50: dateAt(at.lastSpring, 0.5), p90: dateAt(at.lastSpring, 0.1) },
    firstDayD: { p10: dateAt(at.firstAutumn, 0.1), p50: dateAt(at.firstAutumn, 0.5), p90: dateAt(at.firstAutumn, 0.9) },
    publisher: file.source.publisher,
  };
};

/** The temperature that 0.4 % of the hours lie under; null with fewer than 8,000 hours. */
export const hourlyLowOf = (file: HourlyFile): HourlyLow | null => {
  const sorted = file.hours.airC.filter((t) => t !== null).sort((a, b) => a - b);
  const under = Math.round(COLD_SHARE * sorted.length);
  const lowC = sorted[under];
  if (sorted.length < LEAST_HOURS || lowC === undefined) return null;
  return { lowC, coldShareFrac: under / sorted.length, hoursCount: sorted.length, years: file.source.kind === 'typicalYear' ? 'typical' : 'real' };
};

const monthInputs = (m: MonthRecord): ClimateMonthInputs => ({
  tMaxC: m.tMaxC,
  tMinC: m.tMinC,
  vapourPressurePa: m.vapourPressurePa,
  precipitationMm: m.precipitationMm,
  sunshineH: m.sunshineH,
  absoluteMinMeanC: m.absoluteMinMeanC,
  radiationMJPerM2: m.radiationMJPerM2,
  relativeHumidityFrac: m.relativeHumidityFrac,
  nightDeviationK: m.nightDeviationK,
});

export interface InputsContext {
  distanceM: number;
  /** Height to use where the file gives none. */
  elevationM?: number;
  /** The file of yearly figures and frost dates of the same station. */
  annual?: AnnualFile;
}

/** Why a file gives no climate for a plan. */
export type NoInputs = { outcome: 'notUsable'; reason: 'elevation-unknown' | 'annual-of-another-station' };
export type InputsResult = { outcome: 'inputs'; inputs: ClimateInputs } | NoInputs;

const stationIdOf = (file: MonthlyFile | HourlyFile): string => {
  const { stationId, stationName } = file.place;
  return (stationId ?? `${file.source.formatId} ${stationName}`).slice(0, 40);
};
const filled = (text: string, otherwise: string, most: number): string => (text.trim() === '' ? otherwise : text.slice(0, most));

/** A monthly or an hourly file as the climate of a plan; missing months stay missing. */
export const toClimateInputs = (file: MonthlyFile | HourlyFile, at: InputsContext): InputsResult => {
  const { place, source } = file;
  const elevationM = place.elevationM ?? at.elevationM;
  if (elevationM === undefined) return { outcome: 'notUsable', reason: 'elevation-unknown' };
  if (at.annual && place.stationId !== at.annual.place.stationId) return { outcome: 'notUsable', reason: 'annual-of-another-station' };
  const hourly = file.kind === 'hourly';
  const inputs: ClimateInputs = {
    stationId: stationIdOf(file),
    stationName: filled(place.stationName, 'not named', 120),
    country: filled(place.country ?? '', 'not stated', 80),
    stationLatitudeDeg: place.latitudeDeg,
    stationLongitudeDeg: place.longitudeDeg,
    stationElevationM: elevationM,
    distanceM: at.distanceM,
    period: filled(source.period ?? '', source.kind === 'typicalYear' ? 'typical year' : 'not stated', 40),
    kind: source.kind === 'normals' ? 'normals' : 'means',
    credit: filled(source.credit, source.publisher, 200),
    months: (hourly ? monthsOfHourlyFile(file) : file.months).map(monthInputs),
    annualExtremeMinC: hourly ? null : file.annualExtremeMinC,
    annualExtremeMinYearsCount: hourly ? null : file.annualExtremeMinYearsCount,
    frostDates: at.annual ? frostDatesOf(at.annual) : null,
    hourlyLow: hourly ? hourlyLowOf(file) : null,
  };
  return { outcome: 'inputs', inputs };
};
