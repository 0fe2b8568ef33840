import type { ClimateInputs, ClimateMonth, ClimateMonthInputs, HourlyDay, SiteInputs } from '@lathwork/model';
import { dewPointC, heightChangeK, hourlyAirC } from '../physics/air.js';
import { clearDayMJPerM2, HARGREAVES, hourlySun, sunFromRange, sunFromSunshine } from '../physics/sky.js';
import { DAYS_IN_MONTH, MEAN_DAYS, daylightH, extraterrestrialDayMJPerM2 } from '../physics/sun.js';
import { cited } from '../sources/cite.js';

/** How far a month's lowest night lies under its mean night, where the station itself says nothing about it. */
export const MONTH_SPREAD_K = cited(5.8, 'K', 'STATION-SPREAD', 'mean of 19,258 station months; tenth to ninetieth percentile 2.4 to 9.0', {
  min: 2.4,
  max: 9,
});
/** The lowest of thirty draws of a normal distribution lies this many standard deviations under its mean. */
const LOWEST_OF_THIRTY = cited(
  2.04,
  '1',
  'CLIMATE-JUDGEMENT',
  'order statistics: 2.043 for 30 independent normal nights; nights in a row are alike, so this is a low count',
  { min: 1.5, max: 2.1 },
);
/** A warm sunny day: this many standard deviations over the mean day, one day in six. */
const SUNNY_DEVIATIONS = cited(1, '1', 'CLIMATE-JUDGEMENT', 'one day in six is warmer', { min: 0.5, max: 1.5 });

export interface SiteMonth {
  month: ClimateMonth;
  /** Mean range between day and night, K; null with no record. */
  rangeK: number | null;
  /** The record names a night warmer than its day, and is not used. */
  contradicts: boolean;
  /** More sunshine than there is daylight, and is held to the daylight. */
  sunshineOver: boolean;
}

type Place = Pick<SiteInputs, 'latitudeDeg' | 'elevationM'>;

const shifted = (value: number | null, byK: number): number | null => (value === null ? null : value + byK);

/** The station's own mean drop from a month's mean night to its lowest night; the general one with under six such months. */
export const stationSpreadK = (months: readonly ClimateMonthInputs[]): { spreadK: number; own: boolean } => {
  const drops = months.flatMap((m) => (m.tMinC !== null && m.absoluteMinMeanC !== null && m.absoluteMinMeanC <= m.tMinC ? [m.tMinC - m.absoluteMinMeanC] : []));
  return drops.length < 6 ? { spreadK: MONTH_SPREAD_K, own: false } : { spreadK: drops.reduce((a, v) => a + v, 0) / drops.length, own: true };
};

const sunOf = (source: ClimateMonthInputs, aboveMJ: number, clearMJ: number, sunshineFrac: number | null): Pick<ClimateMonth, 'sunMJPerM2' | 'sunBasis'> => {
  if (sunshineFrac !== null) return { sunMJPerM2: Math.min(clearMJ, sunFromSunshine(aboveMJ, sunshineFrac)), sunBasis: 'sunshineHours' };
  if (source.tMaxC !== null && source.tMinC !== null)
    return { sunMJPerM2: Math.min(clearMJ, sunFromRange(aboveMJ, source.tMaxC - source.tMinC, HARGREAVES.between)), sunBasis: 'temperatureRange' };
  return { sunMJPerM2: null, sunBasis: 'none' };
};

/** One month of a station, carried to the site: height corrected, sun added, what is not recorded left null. */
const siteMonth = (raw: ClimateMonthInputs, index: number, place: Place, climate: ClimateInputs, byK: number, spreadK: number): SiteMonth => {
  const contradicts = raw.tMaxC !== null && raw.tMinC !== null && raw.tMinC > raw.tMaxC;
  const source: ClimateMonthInputs = contradicts ? { ...raw, tMaxC: null, tMinC: null } : raw;
  const day = MEAN_DAYS[index] ?? 1;
  const above = extraterrestrialDayMJPerM2(place.latitudeDeg, day);
  const clear = clearDayMJPerM2(above, place.elevationM);
  const stationLightH = daylightH(climate.stationLatitudeDeg, day) * (DAYS_IN_MONTH[index] ?? 30);
  const tMaxC = shifted(source.tMaxC, byK);
  const tMinC = shifted(source.tMinC, byK);
  const hasRecord = tMaxC !== null && tMinC !== null;
  const recordedLow = shifted(source.absoluteMinMeanC, byK);
  const dew = source.vapourPressurePa !== null && source.vapourPressurePa > 0 ? dewPointC(source.vapourPressurePa) : tMinC;
  const dropK = source.absoluteMinMeanC !== null && source.tMinC !== null ? Math.max(0, source.tMinC - source.absoluteMinMeanC) : spreadK;
  return {
    contradicts,
    sunshineOver: source.sunshineH !== null && source.sunshineH > stationLightH,
    rangeK: hasRecord ? tMaxC - tMinC : null,
    month: {
      month: index + 1,
      hasRecord,
      tMaxC,
      tMinC,
      dewPointC: dew === null ? null : hasRecord ? Math.min(dew, (tMaxC + tMinC) / 2) : dew,
      coldNightC: recordedLow ?? (tMinC === null ? null : tMinC - spreadK),
      coldNightBasis: recordedLow !== null ? 'recorded' : tMinC === null ? 'none' : 'estimated',
      sunnyDayMaxC: tMaxC === null ? null : tMaxC + (SUNNY_DEVIATIONS * dropK) / LOWEST_OF_THIRTY,
      daylightH: daylightH(place.latitudeDeg, day),
      ...sunOf(source, above, clear, source.sunshineH === null ? null : stationLightH > 0 ? Math.min(1, source.sunshineH / stationLightH) : 0),
      clearSkyMJPerM2: clear,
    },
  };
};

/** The twelve months of the station at the site's height and latitude. */
export const siteMonths = (place: Place, climate: ClimateInputs): SiteMonth[] => {
  const byK = heightChangeK(place.elevationM - climate.stationElevationM);
  const { spreadK } = stationSpreadK(climate.months);
  return climate.months.map((m, index) => siteMonth(m, index, place, climate, byK, spreadK));
};

/**
 * Gives: 24 mid-hours of a clear day of a month between two temperatures. The dew point may not stand above the day's
 * lowest air: dew or frost would have brought it down.
 */
export const clearHourlyDay = (place: Place, month: ClimateMonth, lowC: number, highC: number): HourlyDay => {
  const dayOfYear = MEAN_DAYS[month.month - 1] ?? 1;
  return {
    month: month.month,
    dayOfYear,
    airC: hourlyAirC({ latitudeDeg: place.latitudeDeg, dayOfYear, maxC: highC, minC: lowC }),
    dewPointC: Math.min(month.dewPointC ?? lowC, lowC),
    ...hourlySun({ latitudeDeg: place.latitudeDeg, dayOfYear, dayMJPerM2: month.clearSkyMJPerM2 }),
  };
};
