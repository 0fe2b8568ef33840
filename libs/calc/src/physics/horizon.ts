import { declinationDeg, daylightH, sunPosition, type Sun } from './sun.js';

/** What stands between a plot and the sun. Bearings run clockwise from north; the eye is on the ground in the middle of the plot. */
const RAD = Math.PI / 180;
const BEARINGS = 360;

export interface Screen {
  bearingDeg: number;
  distanceM: number;
  widthM: number;
  heightM: number;
}

/**
 * Gives: how high one screen reaches at a bearing, deg, 0 beside it. Model: a flat screen square to the line of sight; at
 *   an angle f from its middle it is d/cos f away, so its top stands at atan(h cos f/d). Validity: distance over 0.
 * Worked line: 10 m high, 10 m away: 45 deg in the middle.
 */
export const screenTopDeg = (screen: Screen, bearingDeg: number): number => {
  const off = Math.abs(((((bearingDeg - screen.bearingDeg) % 360) + 540) % 360) - 180);
  const half = Math.atan(screen.widthM / 2 / screen.distanceM) / RAD;
  return off > half ? 0 : Math.atan((screen.heightM * Math.cos(off * RAD)) / screen.distanceM) / RAD;
};

/** The sky line at every whole bearing, deg: the highest of the screens there. */
export const skyLine = (screens: readonly Screen[]): Float64Array =>
  Float64Array.from({ length: BEARINGS }, (_, b) => screens.reduce((top, s) => Math.max(top, screenTopDeg(s, b)), 0));

/** Whether the middle of the sun's disc clears both the level horizon and the sky line. */
export const sunIsSeen = (sun: Sun, line: Float64Array): boolean => sun.up > 0 && 90 - sun.zenithDeg > (line[Math.round(sun.azimuthDeg) % BEARINGS] ?? 0);

export interface SeenSun {
  openH: number;
  clearedH: number;
  /** Share of the day's level sun above the air that falls while the screens hide it. */
  lostFrac: number;
}

/** Steps of a day: three minutes, in which the sun moves 0.75 deg. */
const STEPS = 480;

/**
 * Gives: hours a day in which the sun is up, hours in which it also clears the sky line, and the share of direct sun lost.
 * Model: the day cut into three-minute steps; the open hours are daylightH, the cleared hours its seen share; the loss is
 *   weighed with the sine of the sun's height. Assumptions: screens let nothing through, in leaf or not.
 * Validity: every latitude; polar day gives 24 h, polar night 0. Worked line: no screens give openH = clearedH.
 */
export const seenSun = (x: { latitudeDeg: number; dayOfYear: number; line: Float64Array }): SeenSun => {
  const declination = declinationDeg(x.dayOfYear);
  const openH = daylightH(x.latitudeDeg, x.dayOfYear, declination);
  if (x.line.every((top) => top <= 0)) return { openH, clearedH: openH, lostFrac: 0 };
  let [up, seen, all, lost] = [0, 0, 0, 0];
  for (let i = 0; i < STEPS; i++) {
    const sun = sunPosition({ latitudeDeg: x.latitudeDeg, solarHour: ((i + 0.5) * 24) / STEPS, declination });
    if (sun.up <= 0) continue;
    up++;
    all += sun.up;
    if (sunIsSeen(sun, x.line)) seen++;
    else lost += sun.up;
  }
  return { openH, clearedH: up === 0 ? 0 : (openH * seen) / up, lostFrac: all === 0 ? 0 : lost / all };
};
