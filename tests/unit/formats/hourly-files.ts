import type { SunHeight } from '@lathwork/formats';
import { solarHourOf, sunPosition } from '../../../libs/calc/src/physics/sun.js';

/** Cosine of the zenith angle, from the plan's own solar position. */
export const sunHeight: SunHeight = ({ latitudeDeg, longitudeDeg, zoneH, dayOfYear, clockH }) =>
  Math.cos((sunPosition({ latitudeDeg, dayOfYear, solarHour: solarHourOf(clockH, { longitudeDeg, zoneH, dayOfYear }) }).zenithDeg * Math.PI) / 180);

export const DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

export interface Hour {
  dayOfYear: number;
  month: number;
  day: number;
  hour: number;
}

const makeHours = (leap: boolean): Hour[] => {
  const out: Hour[] = [];
  let dayOfYear = 0;
  DAYS.forEach((days, m) => {
    for (let day = 1; day <= days + (leap && m === 1 ? 1 : 0); day++) {
      dayOfYear++;
      for (let hour = 1; hour <= 24; hour++) out.push({ dayOfYear, month: m + 1, day, hour });
    }
  });
  return out;
};

const [YEAR, LEAP_YEAR] = [makeHours(false), makeHours(true)];
/** Every hour of a year, with a 29 February or without. */
export const hoursOf = (leap = false): readonly Hour[] => (leap ? LEAP_YEAR : YEAR);

/** Air of a made-up temperate year: coldest in January (July in the south), warmest in the afternoon. */
export const airOf = (h: Hour, south = false): number =>
  Math.round((10 - 10 * (south ? -1 : 1) * Math.cos((2 * Math.PI * (h.dayOfYear - 15)) / 365) - 4 * Math.cos((2 * Math.PI * (h.hour - 3)) / 24)) * 10) / 10;

export const EPW_HEAD = [
  'LOCATION,HAND MADE,XX,USA,TMY3,725300,42.0,-88.0,-6.0,200.0',
  'DESIGN CONDITIONS,0',
  'TYPICAL/EXTREME PERIODS,0',
  'GROUND TEMPERATURES,0',
  'HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0',
  'COMMENTS 1,by hand',
  'COMMENTS 2,',
  'DATA PERIODS,1,1,Data,Sunday, 1/ 1,12/31',
];
export const epwRow = (
  h: Hour,
  x: { air?: string; dew?: string; minute?: string; year?: number; sun?: readonly [number, number, number]; rain?: string; humidity?: string } = {},
): string => {
  const [g, b, d] = x.sun ?? [0, 0, 0];
  return `${x.year ?? 1999},${h.month},${h.day},${h.hour},${x.minute ?? '0'},?9?9,${x.air ?? airOf(h).toFixed(1)},${x.dew ?? (airOf(h) - 3).toFixed(1)},${x.humidity ?? '80'},99000,0,0,280,${g},${b},${d},0,0,0,0,180,3.0,5,5,16.0,77777,9,999999999,50,0.0000,0,88,0.200,${x.rain ?? '0.0,1.0'}`;
};
const PLAIN = new Map<Hour, string>();
const plainRow = (h: Hour): string => {
  const known = PLAIN.get(h) ?? epwRow(h);
  PLAIN.set(h, known);
  return known;
};
export const epwFile = (x: { head?: readonly string[]; row?: (h: Hour) => string; hours?: readonly Hour[]; end?: string } = {}): string =>
  [...(x.head ?? EPW_HEAD), ...(x.hours ?? hoursOf()).map(x.row ?? plainRow)].join('\n') + (x.end ?? '\n');
