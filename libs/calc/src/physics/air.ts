import { cited } from '../sources/cite.js';
import { windAtHeightRatio } from './convection.js';
import { daylightH } from './sun.js';

/** Moist air, the daily course of temperature, and height. Temperatures in degC, pressures in Pa. The wind profile stands in convection.ts. */
const KELVIN = 273.15;

/** Water's triple point. The two saturation curves meet here, not at 0 degC; switching at 0 breaks the way back to a dew point. */
const TRIPLE_POINT_C = cited(0.01, 'degC', 'ASHRAE-F17-1', 'eq. 5 and 6, limits as used in practice');
const MOLE_RATIO = cited(0.621945, '1', 'ASHRAE-F17-1', 'eq. 20');
/** Fall of temperature with height in the standard atmosphere, K per metre. Cold nights often show less, or the reverse. */
const LAPSE_K_PER_M = cited(0.0065, 'K/m', 'ICAO-7488', 'table 4, per metre below 11 km', { min: 0.003, max: 0.0098 });

/** Gives: saturation pressure over ice below 0.01 degC and over water above, Pa (ASHRAE-F17-1 eq. 5 and 6). Validity: -100 to 200 degC. 25: 3169. */
export const saturationPa = (airC: number): number => {
  const t = airC + KELVIN;
  return airC <= TRIPLE_POINT_C
    ? Math.exp(-5.6745359e3 / t + 6.3925247 - 9.677843e-3 * t + 6.2215701e-7 * t ** 2 + 2.0747825e-9 * t ** 3 - 9.484024e-13 * t ** 4 + 4.1635019 * Math.log(t))
    : Math.exp(-5.8002206e3 / t + 1.3914993 - 4.8640239e-2 * t + 4.1764768e-5 * t ** 2 - 1.4452093e-8 * t ** 3 + 6.5459673 * Math.log(t));
};

/** Halves an interval until a rising function meets its target. */
const solveRising = (f: (x: number) => number, target: number, low: number, high: number): number => {
  let [a, b] = [low, high];
  for (let i = 0; i < 60; i++) {
    const mid = (a + b) / 2;
    if (f(mid) < target) a = mid;
    else b = mid;
  }
  return (a + b) / 2;
};

/** Gives: dew or frost point, degC, the temperature whose saturation pressure is the vapour's. Held to -100 to 100 degC. */
export const dewPointC = (vapourPa: number): number => solveRising(saturationPa, vapourPa, -100, 100);

/** Vapour pressure of air at a relative humidity, Pa. */
export const vapourPa = (airC: number, humidityFrac: number): number => humidityFrac * saturationPa(airC);

/** Gives: a day's vapour pressure from its extremes, Pa (FAO-56 eq. 17): the moist morning with the cold, the dry afternoon with the warm. 82 and 54 %: 1700. */
export const vapourOfExtremesPa = (x: { coldSaturationPa: number; warmSaturationPa: number; moistFrac: number; dryFrac: number }): number =>
  (x.coldSaturationPa * x.moistFrac + x.warmSaturationPa * x.dryFrac) / 2;

export type DewBasis = 'vapourPressure' | 'relativeHumidity' | 'nightRule' | 'none';

/** Dew point under the mean night and its spread by the daily range, counted over 24,730 station months. */
const NIGHT_RULE = [
  { toRangeK: 12.5, underK: cited(0.3, 'K', 'STATION-DEW', '18,182 months with a range under 12.5 K'), doubtK: cited(2.4, 'K', 'STATION-DEW', 'their spread') },
  { toRangeK: 15, underK: cited(3, 'K', 'STATION-DEW', '4,100 months of 12.5 to 15 K'), doubtK: cited(5.2, 'K', 'STATION-DEW', 'their spread') },
  { toRangeK: Infinity, underK: cited(5.5, 'K', 'STATION-DEW', '2,242 months of 15 to 20 K'), doubtK: cited(6.5, 'K', 'STATION-DEW', 'their spread') },
] as const;
const VAPOUR_DOUBT_K = cited(0.5, 'K', 'CLIMATE-JUDGEMENT', 'mean of hours against hours of the mean', { min: 0.2, max: 1 });
const HUMIDITY_DOUBT_K = cited(1.5, 'K', 'CLIMATE-JUDGEMENT', 'mean humidity taken at the mean temperature; 5 per cent is about 1 K', { min: 0.5, max: 3 });

/**
 * Gives: a month's dew point from what is known of it, with its basis and its doubt. Model: in this order: vapour pressure;
 *   relative humidity at the mean temperature; the mean night less 0.3 K, or 3 to 5.5 K where days are far warmer than nights
 *   (FAO-56 says Tmin, less 2 to 5 K in dry places; the steps are counted over the station table).
 * Assumptions: never above the mean of day and night. Validity: -80 to 40 degC. Nothing known gives null.
 */
export const dewPointFrom = (x: {
  vapourPressurePa: number | null;
  relativeHumidityFrac: number | null;
  maxC: number | null;
  minC: number | null;
}): { dewPointC: number | null; basis: DewBasis; doubtK: number | null } => {
  const meanC = x.maxC === null || x.minC === null ? null : (x.maxC + x.minC) / 2;
  const held = (dewC: number): number => (meanC === null ? dewC : Math.min(dewC, meanC));
  if (x.vapourPressurePa !== null && x.vapourPressurePa > 0)
    return { dewPointC: held(dewPointC(x.vapourPressurePa)), basis: 'vapourPressure', doubtK: VAPOUR_DOUBT_K };
  if (x.relativeHumidityFrac !== null && x.relativeHumidityFrac > 0 && meanC !== null)
    return { dewPointC: held(dewPointC(vapourPa(meanC, x.relativeHumidityFrac))), basis: 'relativeHumidity', doubtK: HUMIDITY_DOUBT_K };
  if (x.minC === null || x.maxC === null) return { dewPointC: null, basis: 'none', doubtK: null };
  const rangeK = x.maxC - x.minC;
  const rule = NIGHT_RULE.find((r) => rangeK < r.toRangeK) ?? NIGHT_RULE[2];
  return { dewPointC: held(x.minC - rule.underK), basis: 'nightRule', doubtK: rule.doubtK };
};

/** Gives: pressure at a height, Pa (ASHRAE-F17-1 eq. 3). Below sea level is valid. 1000 m: 89875. */
export const pressurePa = (elevationM: number): number => 101_325 * (1 - 2.25577e-5 * elevationM) ** 5.2559;

/** Humidity ratio of a vapour pressure, kg/kg (ASHRAE-F17-1 eq. 20). */
export const humidityRatio = (vapourPa: number, totalPa: number): number => (MOLE_RATIO * vapourPa) / (totalPa - vapourPa);

/** Humidity ratio from wet bulb, kg/kg (ASHRAE-F17-1 eq. 33 over water, 35 over ice). */
export const humidityRatioOfWetBulb = (airC: number, wetC: number, totalPa: number): number => {
  const s = humidityRatio(saturationPa(wetC), totalPa);
  return wetC >= 0
    ? ((2501 - 2.326 * wetC) * s - 1.006 * (airC - wetC)) / (2501 + 1.86 * airC - 4.186 * wetC)
    : ((2830 - 0.24 * wetC) * s - 1.006 * (airC - wetC)) / (2830 + 1.86 * airC - 2.1 * wetC);
};

/** Wet bulb of a humidity ratio, degC, found by halving between dew point and air. */
export const wetBulbC = (airC: number, ratio: number, totalPa: number): number =>
  solveRising((wet) => humidityRatioOfWetBulb(airC, wet, totalPa), ratio, dewPointC(vapourOfRatioPa(ratio, totalPa)), airC);

/** Vapour pressure of a humidity ratio, Pa. */
export const vapourOfRatioPa = (ratio: number, totalPa: number): number => (totalPa * ratio) / (MOLE_RATIO + ratio);

/** Heat content of moist air, J/kg of dry air (ASHRAE-F17-1 eq. 30). */
export const enthalpyJPerKg = (airC: number, ratio: number): number => (1.006 * airC + ratio * (2501 + 1.86 * airC)) * 1000;

/** Volume of moist air, m3/kg of dry air (ASHRAE-F17-1 eq. 26). */
export const volumeM3PerKg = (airC: number, ratio: number, totalPa: number): number => (287.042 * (airC + KELVIN) * (1 + 1.607858 * ratio)) / totalPa;

/** Density of moist air, kg/m3. */
export const densityKgPerM3 = (airC: number, ratio: number, totalPa: number): number => (1 + ratio) / volumeM3PerKg(airC, ratio, totalPa);

/** Change of air temperature from one height to another, K: minus 6.5 K for each kilometre up. */
export const heightChangeK = (upM: number): number => -LAPSE_K_PER_M * upM;

/** Share of the daily range below the maximum, hours 0 to 23. Full range at 5 h, none at 14 and 15 h. */
export const RANGE_FRACTIONS = [
  0.82, 0.88, 0.92, 0.95, 0.98, 1, 0.98, 0.91, 0.74, 0.55, 0.38, 0.23, 0.13, 0.05, 0, 0, 0.06, 0.14, 0.24, 0.39, 0.5, 0.59, 0.68, 0.75,
].map((f, h) => cited(f, '1', 'ASHRAE-F09-14', `table 6, hour ${h}`, { min: 0, max: 1 }));

const SUNSET_SHARE = cited(0.39, '1', 'CESARACCIO-2001', 'c, fall from the maximum by sunset', { min: 0.3, max: 0.5 });
const HOURS_MAX_BEFORE_SUNSET = cited(4, 'h', 'CESARACCIO-2001', 'time of the maximum', { min: 3, max: 5 });

/**
 * Gives: air temperature at an hour, degC. Model: CESARACCIO-2001: a sine from sunrise to the maximum four hours before
 *   sunset, a sine down to sunset, then a square root down to the next sunrise, which it reaches exactly.
 * Validity: sunset more than four hours after sunrise. Worked line: 30/10, next 12, 6 to 18 h: 17.65 at 8 h.
 * Fields: hours 0 to 24; `peakH` overrides the time of the maximum.
 */
export const airAtHourC = (hour: number, x: { maxC: number; minC: number; nextMinC: number; sunriseH: number; sunsetH: number; peakH?: number }): number => {
  const peak = x.peakH ?? x.sunsetH - HOURS_MAX_BEFORE_SUNSET;
  const sunsetC = x.maxC - SUNSET_SHARE * (x.maxC - x.nextMinC);
  if (hour >= x.sunriseH && hour <= peak) return x.minC + (x.maxC - x.minC) * Math.sin((Math.PI / 2) * ((hour - x.sunriseH) / (peak - x.sunriseH)));
  if (hour > peak && hour < x.sunsetH) return sunsetC + (x.maxC - sunsetC) * Math.sin((Math.PI / 2) * (1 + (hour - peak) / (x.sunsetH - peak)));
  const sinceSunset = (hour - x.sunsetH + 24) % 24;
  return sunsetC + ((x.nextMinC - sunsetC) / Math.sqrt(24 - (x.sunsetH - x.sunriseH))) * Math.sqrt(sinceSunset);
};

/** Moves an hour to the nearest middle of an hour. */
const toMidHour = (h: number): number => Math.round(h - 0.5) + 0.5;

/**
 * Gives: a repeating day's air temperature at the 24 mid-hours, degC, whose lowest and highest are exactly those asked for.
 * Model: CESARACCIO-2001 where the sun is up for 7 to 20 h, sunrise and peak moved to the nearest mid-hour so that the
 *   extremes are hit; elsewhere (near the poles) the fixed fractions of ASHRAE-F09-14. Chosen over a sine with exponential
 *   decay because that one never reaches the minimum, and the minimum is what a night is planned on.
 * Validity: every latitude and day.
 */
export const hourlyAirC = (x: { latitudeDeg: number; dayOfYear: number; maxC: number; minC: number }): number[] => {
  const light = daylightH(x.latitudeDeg, x.dayOfYear);
  if (light < 7 || light > 20) return RANGE_FRACTIONS.map((f) => x.maxC - f * (x.maxC - x.minC));
  const sunriseH = toMidHour(12 - light / 2);
  const sunsetH = 12 + light / 2;
  const peakH = toMidHour(sunsetH - HOURS_MAX_BEFORE_SUNSET);
  const day = { maxC: x.maxC, minC: x.minC, nextMinC: x.minC, sunriseH, sunsetH, peakH };
  return Array.from({ length: 24 }, (_, h) => airAtHourC(h + 0.5, day));
};

/** Wind at 2 m over short grass from another height (FAO-56 eq. 47): 3.2 m/s at 10 m gives 2.4. */
export const windAtTwoMetres = (speedMPerS: number, heightM: number): number => (speedMPerS * 4.87) / Math.log(67.8 * heightM - 5.42);

/** Terrain behind each exposure: exponent of the wind's rise and depth of the layer (EP-ENG-REF, table of terrain). */
const TERRAIN = {
  B: { exponent: cited(0.22, '1', 'EP-ENG-REF', 'rough, wooded, suburbs'), layerM: cited(370, 'm', 'EP-ENG-REF', 'rough, wooded, suburbs') },
  C: { exponent: cited(0.14, '1', 'EP-ENG-REF', 'open country'), layerM: cited(270, 'm', 'EP-ENG-REF', 'open country') },
  D: { exponent: cited(0.1, '1', 'EP-ENG-REF', 'ocean, flat shore'), layerM: cited(210, 'm', 'EP-ENG-REF', 'ocean, flat shore') },
} as const;
/** Hedges, fences and houses near the plot are in no terrain class. */
const SHELTERED_FRAC = cited(0.5, '1', 'CLIMATE-JUDGEMENT', 'wind behind a hedge or a fence as a share of the open wind', { min: 0.3, max: 0.8 });

/**
 * Gives: mean wind at the height of a shelter, from the mean wind at 10 m of an open station, with its low and high end.
 * Model: power law of both places (EP-ENG-REF); the low end halves it for hedges and houses near by, the high end is the open
 *   country's wind at that height. Assumptions: a mean, not a gust: no load may be taken from it. Validity: 0.5 to 10 m.
 * Worked line: 4 m/s, exposure B, 1.5 m: 1.9 m/s, from 0.9 to 3.1.
 */
export const shelterWind = (
  stationMPerS: number,
  exposure: keyof typeof TERRAIN,
  heightM: number,
): { lowMPerS: number; likelyMPerS: number; highMPerS: number } => {
  const at = (e: keyof typeof TERRAIN): number => stationMPerS * windAtHeightRatio(heightM, TERRAIN[e].exponent, TERRAIN[e].layerM);
  const likely = at(exposure);
  return { lowMPerS: SHELTERED_FRAC * likely, likelyMPerS: likely, highMPerS: Math.max(likely, at('C')) };
};
