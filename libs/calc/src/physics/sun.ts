import { cited } from '../sources/cite.js';

/**
 * Where the sun stands and what falls on a plane. Hours are solar hours (12 = sun in the meridian), bearings run
 * clockwise from north, the afternoon's hour angle is positive, south latitudes are negative.
 */
const RAD = Math.PI / 180;

/** Solar constant, W/m2. The world radiometric reference; 1366 and 1361 also stand in print, less than 0.5 per cent apart. */
export const SOLAR_CONSTANT_W_PER_M2 = cited(1367, 'W/m2', 'DUFFIE-BECKMAN-5', 'section 1.2', { min: 1353, max: 1376 });

/** Below this the ratio of a slope's beam to the level's is not used: at 6:30 it reaches 44 where the hour's mean is 4.6. */
const LOWEST_COS_ZENITH = cited(0.0872, '1', 'DUFFIE-BECKMAN-5', 'example 2.14.1; sun 5 degrees up', { min: 0.017, max: 0.18 });

/** Day of the year that stands for each month, January to December. */
export const MEAN_DAYS = [17, 45, 74, 105, 135, 161, 199, 230, 261, 292, 322, 347].map((n, m) =>
  cited(n, 'd', 'IQBAL-1983', `table 4.2.1, month ${m + 1}`, { min: 1, max: 366 }),
);

export const DAYS_IN_MONTH = [31, 28.25, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;

const dayAngle = (dayOfYear: number): number => (2 * Math.PI * (dayOfYear - 1)) / 365;

/**
 * Gives: the sun's declination, deg. Model: SPENCER-1971, seven terms. Assumptions: one value a day, taken at its noon
 *   (half a day past the midnight that the series counts from), which halves the error against an ephemeris.
 * Validity: any year; within 0.35 deg of an ephemeris at noon, 2003 to 2026. Worked line: day 74 gives -2.4.
 */
export const declinationDeg = (dayOfYear: number): number => {
  const b = dayAngle(dayOfYear + 0.5);
  const c = Math.cos;
  const s = Math.sin;
  return (0.006918 - 0.399912 * c(b) + 0.070257 * s(b) - 0.006758 * c(2 * b) + 0.000907 * s(2 * b) - 0.002697 * c(3 * b) + 0.00148 * s(3 * b)) / RAD;
};

/**
 * Gives: equation of time, minutes by which the sun is ahead of the clock. Model: SPENCER-1971 with the constants
 * 0.0000075 and 0.040849 (0.000075 and 0.04089 are misprints in wide use). Validity: within 0.9 min, 2003 to 2026. Day 34: -13.5.
 */
export const equationOfTimeMin = (dayOfYear: number): number => {
  const b = dayAngle(dayOfYear);
  return 229.18 * (0.0000075 + 0.001868 * Math.cos(b) - 0.032077 * Math.sin(b) - 0.014615 * Math.cos(2 * b) - 0.040849 * Math.sin(2 * b));
};

/**
 * Gives: solar hour of a clock hour. Model: DUFFIE-BECKMAN-5 eq. 1.5.2; east longitudes positive; `zoneH` is the clock's
 * lead on universal time. Worked line: 10:30, 89.4 W, zone -6, day 34 gives 10:18:55.
 */
export const solarHourOf = (clockH: number, x: { longitudeDeg: number; zoneH: number; dayOfYear: number }): number =>
  clockH + (4 * (x.longitudeDeg - 15 * x.zoneH) + equationOfTimeMin(x.dayOfYear)) / 60;

/** The reverse of solarHourOf. */
export const clockHourOf = (solarHour: number, x: { longitudeDeg: number; zoneH: number; dayOfYear: number }): number =>
  2 * solarHour - solarHourOf(solarHour, x);

/**
 * Gives: hour angle of sunset, deg: 0 in polar night, 180 in polar day. Model: cos w = -tan(lat) tan(decl), held to -1..1.
 * Assumptions: centre of the disc, no refraction, level horizon: sunrise comes up to 7 min earlier in truth.
 * Validity: latitude -90 to 90, the poles themselves included. Worked line: 43 N, day 105 gives 98.9.
 */
export const sunsetAngleDeg = (latitudeDeg: number, declination: number): number => {
  const cos = -Math.tan(latitudeDeg * RAD) * Math.tan(declination * RAD);
  return Math.acos(Math.min(1, Math.max(-1, cos))) / RAD;
};

/** Hours between sunrise and sunset: 2/15 of the sunset angle (FAO-56 eq. 34). */
export const daylightH = (latitudeDeg: number, dayOfYear: number, declination = declinationDeg(dayOfYear)): number =>
  (2 / 15) * sunsetAngleDeg(latitudeDeg, declination);

/** The sun as a direction: shares towards east, north and up add up to a vector of length one. */
export interface Sun {
  east: number;
  north: number;
  up: number;
  zenithDeg: number;
  azimuthDeg: number;
}

const sunTowards = (east: number, north: number, up: number): Sun => ({
  east,
  north,
  up,
  zenithDeg: Math.acos(Math.min(1, Math.max(-1, up))) / RAD,
  azimuthDeg: (Math.atan2(east, north) / RAD + 360) % 360,
});

/** The sun from its two angles, for data that carries them. */
export const sunFromAngles = (zenithDeg: number, azimuthDeg: number): Sun => {
  const flat = Math.sin(zenithDeg * RAD);
  return sunTowards(flat * Math.sin(azimuthDeg * RAD), flat * Math.cos(azimuthDeg * RAD), Math.cos(zenithDeg * RAD));
};

/**
 * Gives: the sun's place at a solar hour. Model: DUFFIE-BECKMAN-5 eq. 1.6.5 as a vector, which needs no quadrant rules.
 * Assumptions: declination of the day. Validity: 0.4 deg against a full ephemeris. `declinationDeg` may be given instead
 * of the day. Worked line: 43 N, decl -14, 9.5 h gives zenith 66.5, bearing 140.
 */
export const sunPosition = (x: { latitudeDeg: number; solarHour: number } & ({ dayOfYear: number } | { declination: number })): Sun => {
  const decl = ('declination' in x ? x.declination : declinationDeg(x.dayOfYear)) * RAD;
  const lat = x.latitudeDeg * RAD;
  const w = 15 * (x.solarHour - 12) * RAD;
  return sunTowards(
    -Math.cos(decl) * Math.sin(w),
    Math.sin(decl) * Math.cos(lat) - Math.cos(decl) * Math.cos(w) * Math.sin(lat),
    Math.sin(decl) * Math.sin(lat) + Math.cos(decl) * Math.cos(w) * Math.cos(lat),
  );
};

/** Cosine of the angle between the sun and a plane's outward normal; below 0 the sun is behind it. DUFFIE-BECKMAN-5 eq. 1.6.2 as a product of vectors. */
export const cosIncidence = (sun: Sun, tiltDeg: number, azimuthDeg: number): number => {
  const flat = Math.sin(tiltDeg * RAD);
  return sun.up * Math.cos(tiltDeg * RAD) + flat * (sun.east * Math.sin(azimuthDeg * RAD) + sun.north * Math.cos(azimuthDeg * RAD));
};

/** Factor for the sun's distance: 1 + 0.033 cos(360 n/365) (DUFFIE-BECKMAN-5 eq. 1.4.1a; FAO-56 eq. 23). */
export const distanceFactor = (dayOfYear: number): number => 1 + 0.033 * Math.cos((2 * Math.PI * dayOfYear) / 365);

/** Sun above the air on a plane that faces it, W/m2. Day 1: 1412.1. */
export const extraterrestrialNormalWPerM2 = (dayOfYear: number): number => SOLAR_CONSTANT_W_PER_M2 * distanceFactor(dayOfYear);

/** Level sun above the air between two hour angles, MJ/m2 (DUFFIE-BECKMAN-5 eq. 1.10.4), both held to the day between sunrise and sunset. */
const extraterrestrialBetween = (latitudeDeg: number, dayOfYear: number, fromDeg: number, toDeg: number, decl: number): number => {
  const set = sunsetAngleDeg(latitudeDeg, decl);
  const a = Math.max(-set, Math.min(set, fromDeg)) * RAD;
  const b = Math.max(-set, Math.min(set, toDeg)) * RAD;
  const part = Math.cos(latitudeDeg * RAD) * Math.cos(decl * RAD) * (Math.sin(b) - Math.sin(a)) + (b - a) * Math.sin(latitudeDeg * RAD) * Math.sin(decl * RAD);
  return Math.max(0, ((12 * 3600) / Math.PI) * extraterrestrialNormalWPerM2(dayOfYear) * part * 1e-6);
};

/**
 * Gives: a day's level sun above the air, MJ/m2, never below 0 (DUFFIE-BECKMAN-5 eq. 1.10.3; FAO-56 eq. 21).
 * A declination may be given where a text brings its own. Worked line: 20 S, day 246, 0.120 rad gives 32.2.
 */
export const extraterrestrialDayMJPerM2 = (latitudeDeg: number, dayOfYear: number, declination = declinationDeg(dayOfYear)): number =>
  extraterrestrialBetween(latitudeDeg, dayOfYear, -180, 180, declination);

/** Gives: the same for one hour that starts at a solar hour, MJ/m2. 43 N, day 105, 10 to 11 h: 3.79. */
export const extraterrestrialHourMJPerM2 = (latitudeDeg: number, dayOfYear: number, fromSolarHour: number, declination = declinationDeg(dayOfYear)): number =>
  extraterrestrialBetween(latitudeDeg, dayOfYear, 15 * (fromSolarHour - 12), 15 * (fromSolarHour - 11), declination);

/** Beam of a slope over beam of the level (DUFFIE-BECKMAN-5 eq. 1.8.1), with the sun held at least five degrees up. */
export const beamRatio = (sun: Sun, tiltDeg: number, azimuthDeg: number): number =>
  Math.max(0, cosIncidence(sun, tiltDeg, azimuthDeg)) / Math.max(LOWEST_COS_ZENITH, sun.up);

export interface PlaneSun {
  /** Straight from the sun's disc and its halo. */
  beamWPerM2: number;
  skyWPerM2: number;
  groundWPerM2: number;
}

interface Shine {
  tiltDeg: number;
  azimuthDeg: number;
  beamNormalWPerM2: number;
  diffuseWPerM2: number;
  albedoFrac: number;
}

/**
 * Gives: sun on a tilted plane in three parts, W/m2, from the sun's place and the sun above the air.
 * Model: HDKR (REINDL-1990; DUFFIE-BECKMAN-5 eq. 2.16.7): the share A = beam/extraterrestrial of the diffuse comes from
 *   the sun's direction, the rest from the dome, brighter at the horizon by 1 + sqrt(beam/global) sin^3(tilt/2).
 * Assumptions: level ground of one albedo, free horizon. Validity: any tilt; sun under the horizon leaves dome and ground.
 *   Against the isotropic dome it is the better model: yearly sums on south, east and north walls of the Denver file lie
 *   inside the range of six programs, where the isotropic ones do not.
 * Worked line: 40 N, day 51, 9.5 h, tilt 60 south, level hour 1.04 MJ/m2, albedo 0.6: 1.28 MJ/m2.
 */
export const planeFromSun = (sun: Sun, extraterrestrialWPerM2: number, x: Shine): PlaneSun => {
  const beamLevel = sun.up > 0 ? x.beamNormalWPerM2 * sun.up : 0;
  const global = beamLevel + x.diffuseWPerM2;
  const domeShare = (1 + Math.cos(x.tiltDeg * RAD)) / 2;
  const halo = sun.up > 0 ? Math.min(1, x.beamNormalWPerM2 / extraterrestrialWPerM2) : 0;
  const horizon = global > 0 ? Math.sqrt(beamLevel / global) * Math.sin((x.tiltDeg * RAD) / 2) ** 3 : 0;
  const disc = sun.up > 0 ? x.beamNormalWPerM2 * Math.max(0, cosIncidence(sun, x.tiltDeg, x.azimuthDeg)) : 0;
  return {
    beamWPerM2: disc + x.diffuseWPerM2 * halo * beamRatio(sun, x.tiltDeg, x.azimuthDeg),
    skyWPerM2: x.diffuseWPerM2 * (1 - halo) * domeShare * (1 + horizon),
    groundWPerM2: global * x.albedoFrac * (1 - domeShare),
  };
};

/** The same for a place, a day and a solar hour. */
export const planeIrradiance = (x: Shine & { latitudeDeg: number; dayOfYear: number; solarHour: number }): PlaneSun =>
  planeFromSun(sunPosition(x), extraterrestrialNormalWPerM2(x.dayOfYear), x);

/**
 * Gives: the same three parts with an even dome, for comparison only: I_b R_b + I_d (1 + cos b)/2 + I albedo (1 - cos b)/2.
 * Model: DUFFIE-BECKMAN-5 eq. 2.15.1. Over a year of the Denver file it gives the south wall 5 per cent too little and the north
 *   wall 10 per cent too much. Worked line: 40 N, day 51, 9.5 h, tilt 60 south, level hour 1.04 MJ/m2, albedo 0.6: 1.17 MJ/m2.
 */
export const planeUnderEvenDome = (sun: Sun, x: Shine): PlaneSun => {
  const beamLevel = sun.up > 0 ? x.beamNormalWPerM2 * sun.up : 0;
  const domeShare = (1 + Math.cos(x.tiltDeg * RAD)) / 2;
  return {
    beamWPerM2: sun.up > 0 ? x.beamNormalWPerM2 * Math.max(0, cosIncidence(sun, x.tiltDeg, x.azimuthDeg)) : 0,
    skyWPerM2: x.diffuseWPerM2 * domeShare,
    groundWPerM2: (beamLevel + x.diffuseWPerM2) * x.albedoFrac * (1 - domeShare),
  };
};

/** Parts an hour is cut into where its mean is wanted. */
const PARTS_OF_HOUR = 4;

/**
 * Gives: mean over one solar hour of the sun on a tilted plane, W/m2, from the hour's mean beam and diffuse sun.
 * Model: planeFromSun at the middle of each quarter; the beam of an hour in which the sun rises or sets is kept, and falls in the
 *   quarters in which the sun is up. Chosen over the middle of the hour because a low sun there stands for an hour of which half
 *   was dark: over the Denver year the level plane comes out at 1669 and not 1671 kWh/m2, where the six programs end at 1670.
 * Validity: every latitude. An hour without sun leaves dome and ground.
 */
export const planeOfHour = (x: Shine & { latitudeDeg: number; dayOfYear: number; fromSolarHour: number }): PlaneSun => {
  const above = extraterrestrialNormalWPerM2(x.dayOfYear);
  const declination = declinationDeg(x.dayOfYear);
  const suns = Array.from({ length: PARTS_OF_HOUR }, (_, i) =>
    sunPosition({ latitudeDeg: x.latitudeDeg, declination, solarHour: x.fromSolarHour + (i + 0.5) / PARTS_OF_HOUR }),
  );
  const lit = suns.filter((s) => s.up > 0).length;
  const out: PlaneSun = { beamWPerM2: 0, skyWPerM2: 0, groundWPerM2: 0 };
  for (const sun of suns) {
    const beamNormalWPerM2 = sun.up > 0 ? (x.beamNormalWPerM2 * PARTS_OF_HOUR) / lit : 0;
    const part = planeFromSun(sun, above, { ...x, beamNormalWPerM2 });
    out.beamWPerM2 += part.beamWPerM2 / PARTS_OF_HOUR;
    out.skyWPerM2 += part.skyWPerM2 / PARTS_OF_HOUR;
    out.groundWPerM2 += part.groundWPerM2 / PARTS_OF_HOUR;
  }
  return out;
};
