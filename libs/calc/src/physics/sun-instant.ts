import { cited } from '../sources/cite.js';
import { sunFromAngles, type Sun } from './sun.js';

/**
 * The sun at an instant, for data that carries true times and for the hour of sunrise: a hundredth of a degree, where the
 * daily series of sun.ts is good for half a degree. Hours are universal time, east longitudes are positive.
 */
const RAD = Math.PI / 180;
const SECONDS_A_DAY = 86_400;

/** Terrestrial time runs this far ahead of universal time; 64 to 69 s between 2000 and 2026. */
const CLOCK_LEAD_S = cited(68, 's', 'MEEUS-1998', 'chapter 10; 67 s in 2010, 69 s in 2020', { min: 60, max: 80 });
/** The centre of the disc stands this far under the horizon when its upper rim rises: refraction 34 min of arc, radius 16. */
const RIM_DEG = cited(-0.8333, 'deg', 'MEEUS-1998', 'chapter 15, standard altitude of the sun');
/** Parallax of the sun at the horizon. */
const PARALLAX_DEG = cited(8.794 / 3600, 'deg', 'MEEUS-1998', 'chapter 40');

const turn = (deg: number): number => ((deg % 360) + 360) % 360;

/**
 * Gives: the Julian day of a date of the Gregorian calendar and an hour of universal time. Model: MEEUS-1998 eq. 7.1.
 * Worked line: 17 October 2003, 19:30:30 gives 2452930.312847.
 */
export const julianDay = (x: { year: number; month: number; day: number; hourUtc: number }): number => {
  const [y, m] = x.month > 2 ? [x.year, x.month] : [x.year - 1, x.month + 12];
  const century = Math.floor(y / 100);
  return Math.floor(365.25 * (y + 4716)) + Math.floor(30.6001 * (m + 1)) + x.day + x.hourUtc / 24 + 2 - century + Math.floor(century / 4) - 1524.5;
};

export interface SunInSpace {
  /** Apparent longitude on the ecliptic, deg. */
  longitudeDeg: number;
  obliquityDeg: number;
  rightAscensionDeg: number;
  declinationDeg: number;
  /** Distance in mean distances of the earth from the sun. */
  distanceRatio: number;
  equationOfTimeMin: number;
  /** Hour angle of the sun at Greenwich, deg, west positive. */
  greenwichHourAngleDeg: number;
}

/**
 * Gives: the sun among the stars at a Julian day. Model: MEEUS-1998 chapter 25, lower accuracy: mean longitude and anomaly,
 *   three terms of the equation of the centre, aberration and the main term of nutation; sidereal time by eq. 12.4.
 * Assumptions: the moon and the planets pull at nothing. Validity: 0.01 deg from 1900 to 2100.
 * Worked line: Julian day 2452930.312847 gives a declination of -9.314.
 */
export const sunInSpace = (julian: number): SunInSpace => {
  const t = (julian + CLOCK_LEAD_S / SECONDS_A_DAY - 2_451_545) / 36_525;
  const meanLongitude = turn(280.46646 + 36_000.76983 * t + 0.0003032 * t * t);
  const anomaly = (357.52911 + 35_999.05029 * t - 0.0001537 * t * t) * RAD;
  const eccentricity = 0.016708634 - 0.000042037 * t;
  const centre =
    (1.914602 - 0.004817 * t - 0.000014 * t * t) * Math.sin(anomaly) + (0.019993 - 0.000101 * t) * Math.sin(2 * anomaly) + 0.000289 * Math.sin(3 * anomaly);
  const node = (125.04 - 1934.136 * t) * RAD;
  const nutation = -0.00478 * Math.sin(node);
  const longitude = (meanLongitude + centre - 0.00569 + nutation) * RAD;
  const obliquity = (23.4392911 - 0.0130042 * t + 0.00256 * Math.cos(node)) * RAD;
  const ascension = turn(Math.atan2(Math.cos(obliquity) * Math.sin(longitude), Math.cos(longitude)) / RAD);
  const sidereal = 280.46061837 + 360.98564736629 * (julian - 2_451_545) + nutation * Math.cos(obliquity);
  const ahead = turn(meanLongitude - 0.0057183 - ascension + nutation * Math.cos(obliquity) + 180) - 180;
  return {
    longitudeDeg: turn(longitude / RAD),
    obliquityDeg: obliquity / RAD,
    rightAscensionDeg: ascension,
    declinationDeg: Math.asin(Math.sin(obliquity) * Math.sin(longitude)) / RAD,
    distanceRatio: (1.000001018 * (1 - eccentricity ** 2)) / (1 + eccentricity * Math.cos(anomaly + centre * RAD)),
    equationOfTimeMin: 4 * ahead,
    greenwichHourAngleDeg: turn(sidereal - ascension),
  };
};

/** Hour angle of a place, deg, 0 to 360, west positive. */
export const hourAngleDeg = (space: SunInSpace, longitudeDeg: number): number => turn(space.greenwichHourAngleDeg + longitudeDeg);

/** The sun as a vector in the sky of a place, without air. */
const inSky = (space: SunInSpace, latitudeDeg: number, longitudeDeg: number): { altitudeDeg: number; azimuthDeg: number } => {
  const [d, lat, h] = [space.declinationDeg * RAD, latitudeDeg * RAD, hourAngleDeg(space, longitudeDeg) * RAD];
  const up = Math.sin(d) * Math.sin(lat) + Math.cos(d) * Math.cos(h) * Math.cos(lat);
  const north = Math.sin(d) * Math.cos(lat) - Math.cos(d) * Math.cos(h) * Math.sin(lat);
  const east = -Math.cos(d) * Math.sin(h);
  const altitude = Math.asin(Math.min(1, Math.max(-1, up))) / RAD;
  return { altitudeDeg: altitude - PARALLAX_DEG * Math.cos(altitude * RAD), azimuthDeg: turn(Math.atan2(east, north) / RAD) };
};

/**
 * Gives: by how much the air lifts the sun, deg. Model: MEEUS-1998 eq. 16.4 with pressure and temperature (also SPA-2004 eq. 42).
 * Validity: from the horizon up; below it 0. Worked line: 39.872 deg, 820 hPa, 11 degC gives 0.0163.
 */
export const refractionDeg = (altitudeDeg: number, pressurePa: number, airC: number): number =>
  altitudeDeg < RIM_DEG ? 0 : ((pressurePa / 101_000) * (283 / (273 + airC)) * 1.02) / (60 * Math.tan((altitudeDeg + 10.3 / (altitudeDeg + 5.11)) * RAD));

/**
 * Gives: where the sun stands at an instant, without air. Model: sunInSpace turned into the sky of the place, with parallax.
 * Validity: latitude -90 to 90 and longitude -180 to 180, their ends included; 0.01 deg against SPA-2004.
 * Worked line: Golden, 17 October 2003, 19:30:30 gives zenith 50.128, bearing 194.34.
 */
export const sunAtInstant = (x: { julian: number; latitudeDeg: number; longitudeDeg: number }): Sun => {
  const { altitudeDeg, azimuthDeg } = inSky(sunInSpace(x.julian), x.latitudeDeg, x.longitudeDeg);
  return sunFromAngles(90 - altitudeDeg, azimuthDeg);
};

export interface SunTimes {
  /** Hours of universal time from the midnight that begins the date at Greenwich; may lie before 0 or after 24. Null in polar day and night. */
  riseH: number | null;
  setH: number | null;
  transitH: number;
  season: 'risesAndSets' | 'polarDay' | 'polarNight';
}

/**
 * Gives: sunrise, sunset and noon of one date at a place. Model: the instant at which the centre of the disc stands 50
 *   minutes of arc under the level horizon (MEEUS-1998 chapter 15), found by four rounds with the sun moved to that instant.
 * Assumptions: sea horizon, 34 minutes of refraction. Validity: every latitude; within a minute of SPA-2004 under 60 deg.
 * Worked line: Golden, 2 January 2015 gives 14:21:55 universal time.
 */
export const sunTimes = (x: { year: number; month: number; day: number; latitudeDeg: number; longitudeDeg: number }): SunTimes => {
  const midnight = julianDay({ ...x, hourUtc: 0 });
  const lat = x.latitudeDeg * RAD;
  const spaceAt = (hour: number) => sunInSpace(midnight + hour / 24);
  const transit = (): number => {
    let hour = 12 - x.longitudeDeg / 15;
    for (let i = 0; i < 4; i++) hour -= (turn(hourAngleDeg(spaceAt(hour), x.longitudeDeg) + 180) - 180) / 15;
    return hour;
  };
  const transitH = transit();
  const angleAt = (hour: number): number => {
    const d = spaceAt(hour).declinationDeg * RAD;
    return (Math.sin(RIM_DEG * RAD) - Math.sin(lat) * Math.sin(d)) / (Math.cos(lat) * Math.cos(d));
  };
  const cos = angleAt(transitH);
  // At the poles the divisor is next to nothing and the sign of the quotient alone tells day from night.
  if (cos < -1) return { riseH: null, setH: null, transitH, season: 'polarDay' };
  if (cos > 1) return { riseH: null, setH: null, transitH, season: 'polarNight' };
  const event = (side: -1 | 1): number => {
    let hour = transitH + (side * Math.acos(cos)) / RAD / 15;
    for (let i = 0; i < 4; i++) {
      const now = turn(hourAngleDeg(spaceAt(hour), x.longitudeDeg) + 180) - 180;
      const want = (side * Math.acos(Math.min(1, Math.max(-1, angleAt(hour))))) / RAD;
      hour += (turn(want - now + 180) - 180) / 15;
    }
    return hour;
  };
  return { riseH: event(-1), setH: event(1), transitH, season: 'risesAndSets' };
};
