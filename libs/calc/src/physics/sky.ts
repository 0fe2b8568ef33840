import { cited } from '../sources/cite.js';
import { declinationDeg, extraterrestrialNormalWPerM2, sunsetAngleDeg } from './sun.js';

/** What the air lets through of the sun. Emissivity and temperature of the sky stand in radiation.ts. */
const RAD = Math.PI / 180;

const ANGSTROM_OVERCAST = cited(0.25, '1', 'FAO-56', 'eq. 35, share of an overcast day', { min: 0.15, max: 0.35 });
const ANGSTROM_SLOPE = cited(0.5, '1', 'FAO-56', 'eq. 35', { min: 0.4, max: 0.65 });

/** Gives: a day's level sun from sunshine hours, MJ/m2 (FAO-56 eq. 35): Ra (0.25 + 0.50 n/N). n/N 7.1/10.9, Ra 25.1: 14.45. */
export const sunFromSunshine = (extraterrestrialMJPerM2: number, sunshineFrac: number): number =>
  extraterrestrialMJPerM2 * (ANGSTROM_OVERCAST + ANGSTROM_SLOPE * Math.min(1, Math.max(0, sunshineFrac)));

/** Hargreaves' coefficient inland and by the sea. */
export const HARGREAVES = {
  inland: cited(0.16, '1/K(1/2)', 'FAO-56', 'eq. 50, interior', { min: 0.15, max: 0.2 }),
  coast: cited(0.19, '1/K(1/2)', 'FAO-56', 'eq. 50, coastal', { min: 0.15, max: 0.2 }),
} as const;
/** Months with a narrower and a wider range than these behave as the coast and as the interior do. */
const COAST_RANGE_K = cited(5, 'K', 'STATION-SUN', 'coefficient 0.188 at 4 to 6 K, 2,034 station months', { min: 4, max: 6 });
const INLAND_RANGE_K = cited(9, 'K', 'STATION-SUN', 'coefficient 0.164 at 8 to 10 K and 0.150 to 0.158 beyond, 11,168 station months', { min: 8, max: 10 });

/**
 * Gives: Hargreaves' coefficient where nobody has said whether the place lies by the sea: the range itself says it.
 * Model: FAO-56's two values, on a straight line between 5 and 9 K. Worked line: 7 K gives 0.175.
 */
export const hargreavesOfRange = (rangeK: number): number => {
  const inlandFrac = Math.min(1, Math.max(0, (rangeK - COAST_RANGE_K) / (INLAND_RANGE_K - COAST_RANGE_K)));
  return HARGREAVES.coast + inlandFrac * (HARGREAVES.inland - HARGREAVES.coast);
};

/** Gives: a day's level sun from the daily range of temperature, MJ/m2 (FAO-56 eq. 50): k sqrt(Tmax - Tmin) Ra. */
export const sunFromRange = (extraterrestrialMJPerM2: number, rangeK: number, coefficient: number): number =>
  coefficient * Math.sqrt(Math.max(0, rangeK)) * extraterrestrialMJPerM2;

/**
 * Gives: a clear day's level sun, MJ/m2. Model: FAO-56 eq. 37, (0.75 + 2e-5 z) Ra. Assumptions: clean air, plain ground.
 * Chosen over models with turbidity because it needs the height alone and so answers anywhere. Validity: -430 to 6000 m.
 */
export const clearDayMJPerM2 = (extraterrestrialMJPerM2: number, elevationM: number): number =>
  extraterrestrialMJPerM2 * Math.min(0.87, 0.75 + 2e-5 * elevationM);

/** Share of diffuse in an hour's level sun, by its clearness (ERBS-1982, hourly). 0.5: 0.659. */
export const diffuseFracOfHour = (kt: number): number => {
  if (kt <= 0.22) return 1 - 0.09 * Math.max(0, kt);
  if (kt > 0.8) return 0.165;
  return 0.9511 - 0.1604 * kt + 4.388 * kt ** 2 - 16.638 * kt ** 3 + 12.336 * kt ** 4;
};

/** The same for one day (DUFFIE-BECKMAN-5 eq. 2.11.1); winter and the rest of the year part at a sunset angle of 81.4 deg. */
export const diffuseFracOfDay = (kt: number, sunsetDeg: number): number => {
  if (sunsetDeg <= 81.4) return kt < 0.715 ? 1 - 0.2727 * kt + 2.4495 * kt ** 2 - 11.9514 * kt ** 3 + 9.3879 * kt ** 4 : 0.143;
  return kt < 0.722 ? 1 + 0.2832 * kt - 2.5557 * kt ** 2 + 0.8448 * kt ** 3 : 0.175;
};

/** The same for a month's mean day (DUFFIE-BECKMAN-5 eq. 2.12.1); clearness is held to the range 0.3 to 0.8 it was found in. */
export const diffuseFracOfMonth = (kt: number, sunsetDeg: number): number => {
  const k = Math.min(0.8, Math.max(0.3, kt));
  return sunsetDeg <= 81.4 ? 1.391 - 3.56 * k + 4.189 * k ** 2 - 2.137 * k ** 3 : 1.311 - 3.022 * k + 3.427 * k ** 2 - 1.821 * k ** 3;
};

/** Share of a day's diffuse sun that falls in the hour about an hour angle (Liu and Jordan; DUFFIE-BECKMAN-5 eq. 2.13.4). */
export const diffuseHourFrac = (hourAngleDeg: number, sunsetDeg: number): number => {
  const above = Math.cos(hourAngleDeg * RAD) - Math.cos(sunsetDeg * RAD);
  if (above <= 0 || Math.abs(hourAngleDeg) >= sunsetDeg) return 0;
  return ((Math.PI / 24) * above) / (Math.sin(sunsetDeg * RAD) - sunsetDeg * RAD * Math.cos(sunsetDeg * RAD));
};

/** Share of a day's level sun that falls in that hour (COLLARES-RABL-1979; DUFFIE-BECKMAN-5 eq. 2.13.1). */
export const globalHourFrac = (hourAngleDeg: number, sunsetDeg: number): number => {
  const even = diffuseHourFrac(hourAngleDeg, sunsetDeg);
  if (even === 0) return 0;
  const lean = Math.sin((sunsetDeg - 60) * RAD);
  return even * (0.409 + 0.5016 * lean + (0.6609 - 0.4767 * lean) * Math.cos(hourAngleDeg * RAD));
};

export type SunBasis = 'radiation' | 'sunshineHours' | 'temperatureRange' | 'none';

/** Doubt of a month's level sun as a share of it, by what it was found from. */
export const SUN_DOUBT_FRAC = {
  radiation: cited(0.05, '1', 'CLIMATE-JUDGEMENT', 'measured or satellite means; pyranometers 3 per cent, satellites 5 to 8', { min: 0.02, max: 0.1 }),
  sunshineHours: cited(0.15, '1', 'CLIMATE-JUDGEMENT', 'general coefficients of FAO-56 eq. 35 against typical years: 0.72 to 0.99', { min: 0.05, max: 0.25 }),
  temperatureRange: cited(0.28, '1', 'STATION-SUN', 'root mean square over 95 station months of measured sun: 27 per cent, mostly too much in winter', {
    min: 0.1,
    max: 0.35,
  }),
} as const;

/** Knowledge of a day or a month that its sun may be found from; null is not known. */
export interface SunKnown {
  radiationMJPerM2: number | null;
  /** Bright share of the daylight. */
  sunshineFrac: number | null;
  rangeK: number | null;
}

/**
 * Gives: a mean day's level sun with what it was found from and its doubt. Model: in this order: radiation itself; FAO-56
 *   eq. 35 from sunshine; FAO-56 eq. 50 from the range of temperature, with the coefficient of the range. Never more than
 *   the clear day. Validity: a day without sun above the air gives 0. Nothing known gives null, which is not 0.
 */
export const sunOfDay = (
  known: SunKnown,
  aboveMJPerM2: number,
  clearMJPerM2: number,
): { sunMJPerM2: number | null; basis: SunBasis; doubtFrac: number | null } => {
  const found = (basis: Exclude<SunBasis, 'none'>, mj: number) => ({ sunMJPerM2: Math.min(clearMJPerM2, mj), basis, doubtFrac: SUN_DOUBT_FRAC[basis] });
  if (known.radiationMJPerM2 !== null) return found('radiation', known.radiationMJPerM2);
  if (known.sunshineFrac !== null) return found('sunshineHours', sunFromSunshine(aboveMJPerM2, known.sunshineFrac));
  if (known.rangeK !== null) return found('temperatureRange', sunFromRange(aboveMJPerM2, known.rangeK, hargreavesOfRange(known.rangeK)));
  return { sunMJPerM2: null, basis: 'none', doubtFrac: null };
};

/**
 * Gives: share of the sky under cloud, from a day's level sun and a clear day's. Model: KASTEN-CZEPLAK-1980 turned round:
 *   G/Gclear = 1 - 0.75 N^3.4. Validity: 0 to 1; under a quarter of the clear sun the sky is overcast. Worked line: half the clear sun gives 0.89.
 */
export const cloudFracOfSun = (sunMJPerM2: number, clearMJPerM2: number): number =>
  clearMJPerM2 <= 0 ? 0 : Math.min(1, Math.max(0, (1 - sunMJPerM2 / clearMJPerM2) / 0.75)) ** (1 / 3.4);

export interface SunDay {
  globalWPerM2: number[];
  beamNormalWPerM2: number[];
  diffuseWPerM2: number[];
}

const MJ_PER_HOUR_IN_W = 1e6 / 3600;
const HOURS = 24;

/** Where the hours of a day are written: three lists of at least `at + 24` numbers. */
interface SunHoursInto {
  globalWPerM2: number[] | Float64Array;
  beamNormalWPerM2: number[] | Float64Array;
  diffuseWPerM2: number[] | Float64Array;
}

/**
 * Gives: 24 mid-hour values of a day whose level sun is known, W/m2, written from place `at` on.
 * Model: level sun by COLLARES-RABL-1979, scaled so that the day's energy is kept (at mid-hours the series sums to 1.002);
 *   each hour's diffuse share by its own clearness (ERBS-1982, hourly), which leaves little beam to a low sun; the beam is
 *   what is left, over the cosine of the zenith, never above the sun over the air.
 * Assumptions: forenoon and afternoon alike. Validity: every latitude; a day with no sun gives zeros, and a sun that shows
 *   for less than half an hour about noon is dropped (it brings less than 0.1 MJ/m2).
 */
export const writeHourlySun = (out: SunHoursInto, at: number, x: { latitudeDeg: number; dayOfYear: number; dayMJPerM2: number }): void => {
  const declination = declinationDeg(x.dayOfYear);
  const set = sunsetAngleDeg(x.latitudeDeg, declination);
  const normal = extraterrestrialNormalWPerM2(x.dayOfYear);
  let sum = 0;
  for (let h = 0; h < HOURS; h++) sum += out.globalWPerM2[at + h] = globalHourFrac(15 * (h + 0.5 - 12), set);
  const scale = sum > 0 ? (x.dayMJPerM2 * MJ_PER_HOUR_IN_W) / sum : 0;
  const constant = Math.sin(declination * RAD) * Math.sin(x.latitudeDeg * RAD);
  const turning = Math.cos(declination * RAD) * Math.cos(x.latitudeDeg * RAD);
  for (let h = 0; h < HOURS; h++) {
    const global = scale * (out.globalWPerM2[at + h] ?? 0);
    const up = Math.max(0, constant + turning * Math.cos(15 * (h + 0.5 - 12) * RAD));
    const beam = up > 1e-6 ? Math.min(normal, (global * (1 - diffuseFracOfHour(global / (normal * up)))) / up) : 0;
    out.globalWPerM2[at + h] = global;
    out.beamNormalWPerM2[at + h] = beam;
    out.diffuseWPerM2[at + h] = global - beam * up;
  }
};

/** The same for one day, in lists of its own. */
export const hourlySun = (x: { latitudeDeg: number; dayOfYear: number; dayMJPerM2: number }): SunDay => {
  const out: SunDay = { globalWPerM2: [], beamNormalWPerM2: [], diffuseWPerM2: [] };
  writeHourlySun(out, 0, x);
  return out;
};
