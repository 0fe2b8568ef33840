import type { FilePlace, HourlyColumns, SunHeight, SunOffset } from './climate-file.js';
import { dayOfYear, rounded } from './csv.js';

/**
 * Gives: the hour at which the sun of an hourly file stands, relative to the hour's label.
 * Model: closure, global = diffuse + direct x cos(zenith), which each row must meet at the sun's true height. The offset with
 *   the least mean absolute misfit is taken, first in steps of a quarter hour from -1.5 to +1, then of 0.05 h around the best.
 *   The minute field and the header are not asked: producers write 0, 00 and 60 for one and the same meaning.
 * Assumptions: the same rows count at every offset: sun and direct beam both over 100 W/m2, so that the half-lit hours of
 *   sunrise, whose mean height is not that of their middle, do not weigh.
 * Validity: at least 200 such hours; a misfit under a tenth of the mean global; at the end of the range only when the misfit
 *   rises again beyond it.
 * References: typical years of the U.S. close at -0.5 h with 2 to 5 W/m2 whatever the minute field says; hourly files from
 *   satellites of one known producer close near +0.25 h.
 */
const LEAST_W_PER_M2 = 100;
const LEAST_HOURS = 200;
/** One old typical year closes within 1.1 W/m2 at -1: its sun stands at the hour's beginning. */
const FIRST_H = -1.5;
const LAST_H = 1;
const COARSE_H = 0.25;
const FINE_H = 0.05;
const WORST_SHARE = 0.1;
const MID_HOUR_H = -0.5;

interface SunnyHour {
  dayOfYear: number;
  hourEnding: number;
  globalWPerM2: number;
  beamWPerM2: number;
  diffuseWPerM2: number;
}

const sunnyHours = (hours: HourlyColumns): { sunny: SunnyHour[]; withRadiation: number } => {
  const sunny: SunnyHour[] = [];
  let withRadiation = 0;
  hours.globalWPerM2.forEach((g, i) => {
    const [b, d] = [hours.beamNormalWPerM2[i], hours.diffuseWPerM2[i]];
    if (g === null || typeof b !== 'number' || typeof d !== 'number') return;
    withRadiation++;
    if (g < LEAST_W_PER_M2 || b < LEAST_W_PER_M2) return;
    sunny.push({
      dayOfYear: dayOfYear(hours.month[i] ?? 1, hours.day[i] ?? 1),
      hourEnding: hours.hourEnding[i] ?? 12,
      globalWPerM2: g,
      beamWPerM2: b,
      diffuseWPerM2: d,
    });
  });
  return { sunny, withRadiation };
};

const unknown = (reason: SunOffset['reason'], hoursCount: number): SunOffset => ({
  offsetH: null,
  residualWPerM2: null,
  residualMidHourWPerM2: null,
  hoursCount,
  reason,
});

export const findSunOffset = (hours: HourlyColumns, place: FilePlace, sunHeight: SunHeight | undefined): SunOffset => {
  const zoneH = place.zoneH;
  if (!sunHeight || zoneH === null) return unknown('no-sun-function', 0);
  const { sunny, withRadiation } = sunnyHours(hours);
  if (withRadiation === 0) return unknown('no-radiation', 0);
  if (sunny.length < LEAST_HOURS) return unknown('too-few-hours', sunny.length);
  const { latitudeDeg, longitudeDeg } = place;
  const misfit = (offsetH: number): number => {
    let sum = 0;
    for (const x of sunny) {
      const up = sunHeight({ latitudeDeg, longitudeDeg, zoneH, dayOfYear: x.dayOfYear, clockH: x.hourEnding + offsetH });
      sum += Math.abs(x.globalWPerM2 - x.diffuseWPerM2 - x.beamWPerM2 * Math.max(0, up));
    }
    return sum / sunny.length;
  };
  const known = new Map<number, number>();
  const best = (from: number, to: number, step: number): number => {
    const steps = Math.round((to - from) / step);
    let at = from;
    for (let k = 0; k <= steps; k++) {
      const offset = rounded(from + k * step, 3);
      if (!known.has(offset)) known.set(offset, misfit(offset));
      if ((known.get(offset) ?? Infinity) < (known.get(at) ?? Infinity)) at = offset;
    }
    return at;
  };
  const coarse = best(FIRST_H, LAST_H, COARSE_H);
  const offsetH = best(Math.max(FIRST_H, rounded(coarse - COARSE_H, 3)), Math.min(LAST_H, rounded(coarse + COARSE_H, 3)), FINE_H);
  const residual = known.get(offsetH) ?? Infinity;
  const meanGlobal = sunny.reduce((a, x) => a + x.globalWPerM2, 0) / sunny.length;
  const found = {
    residualWPerM2: rounded(residual, 2),
    residualMidHourWPerM2: rounded(known.get(MID_HOUR_H) ?? misfit(MID_HOUR_H), 2),
    hoursCount: sunny.length,
  };
  if (residual > WORST_SHARE * meanGlobal) return { ...found, offsetH: null, reason: 'does-not-close' };
  // A best value at the end of the range is a true one only when the misfit rises again beyond it: one older typical year closes at -1.
  if (offsetH <= FIRST_H || (offsetH >= LAST_H && misfit(offsetH + Math.sign(offsetH) * FINE_H) <= residual))
    return { ...found, offsetH: null, reason: 'at-the-edge' };
  return { ...found, offsetH, reason: 'found' };
};
