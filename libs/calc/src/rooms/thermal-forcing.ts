import type { HourlyDay } from '@lathwork/model';
import { STRUCTURE_FRAC } from '../data/materials-thermal.js';
import { FILM_ABSORBED_FRAC } from '../data/covers.js';
import { clearSkyC, slantTransmissionFrac } from '../physics/radiation.js';
import { cosIncidence, extraterrestrialNormalWPerM2, planeFromSun, sunPosition } from '../physics/sun.js';
import { cited } from '../sources/cite.js';
import type { Shelter } from './thermal-shelter.js';
import { saturationPa } from './thermal-vapour.js';

export const STEP_MIN = 15;
export const STEPS_PER_DAY = (24 * 60) / STEP_MIN;

/** One day outside, by steps, and what its sun does inside with nothing drawn yet. Every array has STEPS_PER_DAY values. */
export interface Forcing {
  dayOfYear: number;
  airC: Float64Array;
  meanAirC: number;
  /** Vapour pressure outside, Pa: saturated at the dew point, which is never above the air. */
  dampPa: Float64Array;
  /** Sky temperature at its middle, and half its spread. */
  skyC: Float64Array;
  skySpreadK: Float64Array;
  sunUp: Uint8Array;
  /** 0 at night, 1 at the height of the day: wind rises with the sun. */
  dayShape: Float64Array;
  /** Sun on a level square metre inside, W/m2. */
  floorWPerM2: Float64Array;
  /** Sun taken up by each class of water, W. */
  waterW: readonly Float64Array[];
  /** Sun the water takes before it can reach the floor, W. */
  shadowW: Float64Array;
  airW: Float64Array;
  roofW: Float64Array;
  wallW: Float64Array;
}

/** Even sky light passes a sheet as a beam at 59 degrees does. */
const DIFFUSE_SLANT_FRAC = slantTransmissionFrac(
  Math.cos((cited(59, 'deg', 'DUFFIE-BECKMAN-5', 'fig. 5.4.1, effective angle of sky light', { min: 55, max: 62 }) * Math.PI) / 180),
);
const GROUND_ALBEDO = cited(0.2, '1', 'DUFFIE-BECKMAN-5', 'ground without snow', { min: 0.1, max: 0.3 });

interface HourSun {
  floor: number;
  vertical: number;
  crossing: number;
  roof: number;
  wall: number;
}

/**
 * Sun of one hour through the film. What lands on the floor is the level sun times the film's transmission, because a
 * closed film house lies wholly between floor and sun; light that enters by the walls and leaves by the next one is
 * counted as crossing, and only frame and plants catch some of it.
 */
const hourSun = (shelter: Shelter, latitudeDeg: number, day: HourlyDay, hour: number): HourSun => {
  const global = day.globalWPerM2[hour] ?? 0;
  if (global <= 0) return { floor: 0, vertical: 0, crossing: 0, roof: 0, wall: 0 };
  const clear = 1 - shelter.shadedFrac;
  const beamNormal = (day.beamNormalWPerM2[hour] ?? 0) * clear;
  const diffuse = day.diffuseWPerM2[hour] ?? 0;
  const level = Math.max(0, global - diffuse) * clear;
  const sun = sunPosition({ latitudeDeg, dayOfYear: day.dayOfYear, solarHour: hour + 0.5 });
  const aboveAir = extraterrestrialNormalWPerM2(day.dayOfYear);
  let entering = 0;
  let beamIn = 0;
  let beamOn = 0;
  const group = [0, 0];
  for (const f of shelter.faces) {
    const plane = planeFromSun(sun, aboveAir, {
      tiltDeg: f.tiltDeg,
      azimuthDeg: f.azimuthDeg,
      beamNormalWPerM2: beamNormal,
      diffuseWPerM2: diffuse,
      albedoFrac: GROUND_ALBEDO,
    });
    const cos = Math.max(0, cosIncidence(sun, f.tiltDeg, f.azimuthDeg));
    const through = shelter.sunFrac * (plane.beamWPerM2 * slantTransmissionFrac(cos) + (plane.skyWPerM2 + plane.groundWPerM2) * DIFFUSE_SLANT_FRAC);
    entering += through * f.lightM2;
    beamIn += beamNormal * cos * slantTransmissionFrac(cos) * f.lightM2;
    beamOn += beamNormal * cos * f.coverM2;
    group[f.group] = group[f.group]! + FILM_ABSORBED_FRAC * f.coverM2 * (plane.beamWPerM2 + plane.skyWPerM2 + plane.groundWPerM2);
  }
  const beamFrac = beamOn > 0 ? beamIn / beamOn : 0;
  const floor = Math.min(shelter.sunFrac * (level * beamFrac + diffuse * DIFFUSE_SLANT_FRAC), entering / shelter.floorM2);
  const sideways = beamNormal > 0 ? Math.sqrt(Math.max(0, 1 - Math.min(1, level / beamNormal) ** 2)) * beamNormal : 0;
  const vertical = shelter.sunFrac * (sideways * beamFrac + (Math.PI / 2) * diffuse * DIFFUSE_SLANT_FRAC);
  return { floor, vertical, crossing: Math.max(0, entering - floor * shelter.floorM2), roof: group[0]!, wall: group[1]! };
};

/** Values at the middle of each hour, drawn into steps by straight lines; the day repeats. Step k ends at (k+1) steps. */
const intoSteps = (hours: readonly number[]): Float64Array =>
  Float64Array.from({ length: STEPS_PER_DAY }, (_, k) => {
    const at = ((k + 1) * STEP_MIN) / 60 - 0.5;
    const low = Math.floor(at);
    const f = at - low;
    return (hours[(low + 24) % 24] ?? 0) * (1 - f) + (hours[(low + 25) % 24] ?? 0) * f;
  });

/** Reads a day of the climate room into the steps of the night model. */
export const forcingOf = (shelter: Shelter, latitudeDeg: number, day: HourlyDay): Forcing => {
  const suns = Array.from({ length: 24 }, (_, h) => hourSun(shelter, latitudeDeg, day, h));
  const peak = Math.max(1, ...day.globalWPerM2);
  const caught = suns.map((s) =>
    shelter.water.map(
      (w) =>
        w.absorbedFrac * Math.min(w.sideShadowM2 * s.vertical + w.topM2 * s.floor, (0.5 * shelter.floorM2 * s.floor + 0.5 * s.crossing) / shelter.water.length),
    ),
  );
  const shadow = suns.map((s, h) => Math.min(Math.max(0, (caught[h] ?? []).reduce((a, w) => a + w, 0) - 0.5 * s.crossing), s.floor * shelter.floorM2));
  const airC = intoSteps(day.airC);
  const mid = airC.map((t) => clearSkyC(t, day.dewPointC, 0));
  return {
    dayOfYear: day.dayOfYear,
    airC,
    meanAirC: day.airC.reduce((a, t) => a + t, 0) / day.airC.length,
    dampPa: airC.map((t) => saturationPa(Math.min(day.dewPointC, t))),
    skyC: mid,
    skySpreadK: airC.map((t, k) => (mid[k] ?? t) - clearSkyC(t, day.dewPointC, -1)),
    sunUp: Uint8Array.from(intoSteps(day.globalWPerM2), (g) => (g > 20 ? 1 : 0)),
    dayShape: intoSteps(day.globalWPerM2.map((g) => g / peak)),
    floorWPerM2: intoSteps(suns.map((s) => s.floor)),
    waterW: shelter.water.map((_, i) => intoSteps(caught.map((c) => c[i] ?? 0))),
    shadowW: intoSteps(shadow),
    airW: intoSteps(suns.map((s) => STRUCTURE_FRAC * s.crossing)),
    roofW: intoSteps(suns.map((s) => s.roof)),
    wallW: intoSteps(suns.map((s) => s.wall)),
  };
};
