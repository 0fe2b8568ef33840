import type { ClimateInputs, ClimateMonth, ClimateMonthInputs, HourlyDay, SiteInputs } from '@lathwork/model';
import { LOWEST_OF_THIRTY } from '../data/night-spread.js';
import { dewPointFrom, heightChangeK, hourlyAirC } from '../physics/air.js';
import { clearDayMJPerM2, hourlySun, sunOfDay } from '../physics/sky.js';
import { DAYS_IN_MONTH, MEAN_DAYS, daylightH, extraterrestrialDayMJPerM2 } from '../physics/sun.js';
import { cited } from '../sources/cite.js';

/** How far a month's lowest night lies under its mean night, where the station itself says nothing about it. */
export const MONTH_SPREAD_K = cited(5.8, 'K', 'STATION-SPREAD', 'mean of 19,258 station months; tenth to ninetieth percentile 2.4 to 9.0', {
  min: 2.4,
  max: 9,
});
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
  /** More radiation than a clear day brings, and is held to the clear day. */
  radiationOver: boolean;
}

type Place = Pick<SiteInputs, 'latitudeDeg' | 'elevationM'>;

const shifted = (value: number | null, byK: number): number | null => (value === null ? null : value + byK);

/** The station's own mean drop from a month's mean night to its lowest night; the general one with under six such months. */
export const stationSpreadK = (months: readonly ClimateMonthInputs[]): { spreadK: number; own: boolean } => {
  const drops = months.flatMap((m) => (m.tMinC !== null && m.absoluteMinMeanC !== null && m.absoluteMinMeanC <= m.tMinC ? [m.tMinC - m.absoluteMinMeanC] : []));
  return drops.length < 6 ? { spreadK: MONTH_SPREAD_K, own: false } : { spreadK: drops.reduce((a, v) => a + v, 0) / drops.length, own: true };
};

/** Measured sun may pass the clear day of the formula by this much before the record is asked about. */
const OVER_CLEAR_FRAC = cited(0.1, '1', 'CLIMATE-JUDGEMENT', 'doubt of the clear day in very clean air', { min: 0.05, max: 0.2 });

/** Share of the station's daylight that is bright; null with no record. */
const brightFrac = (sunshineH: number | null, lightH: number): number | null => (sunshineH === null ? null : lightH > 0 ? Math.min(1, sunshineH / lightH) : 0);

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
  const dew = dewPointFrom({ vapourPressurePa: source.vapourPressurePa, relativeHumidityFrac: source.relativeHumidityFrac ?? null, maxC: tMaxC, minC: tMinC });
  const radiation = source.radiationMJPerM2 ?? null;
  const sun = sunOfDay(
    {
      radiationMJPerM2: radiation,
      sunshineFrac: brightFrac(source.sunshineH, stationLightH),
      rangeK: source.tMaxC !== null && source.tMinC !== null ? source.tMaxC - source.tMinC : null,
    },
    above,
    clear,
  );
  const dropK = source.absoluteMinMeanC !== null && source.tMinC !== null ? Math.max(0, source.tMinC - source.absoluteMinMeanC) : spreadK;
  return {
    contradicts,
    sunshineOver: source.sunshineH !== null && source.sunshineH > stationLightH,
    radiationOver: radiation !== null && radiation > (1 + OVER_CLEAR_FRAC) * clear + 0.1,
    rangeK: hasRecord ? tMaxC - tMinC : null,
    month: {
      month: index + 1,
      hasRecord,
      tMaxC,
      tMinC,
      dewPointC: dew.dewPointC,
      dewPointBasis: dew.basis,
      dewPointDoubtK: dew.doubtK,
      coldNightC: recordedLow ?? (tMinC === null ? null : tMinC - spreadK),
      coldNightBasis: recordedLow !== null ? 'recorded' : tMinC === null ? 'none' : 'estimated',
      sunnyDayMaxC: tMaxC === null ? null : tMaxC + (SUNNY_DEVIATIONS * dropK) / LOWEST_OF_THIRTY,
      daylightH: daylightH(place.latitudeDeg, day),
      sunMJPerM2: sun.sunMJPerM2,
      sunBasis: sun.basis,
      sunDoubtFrac: sun.doubtFrac,
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
