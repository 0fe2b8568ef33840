/** Where the sun stands, as a unit vector: x east, y north, z up. */
export interface SunVector {
  east: number;
  north: number;
  up: number;
}

const RAD = Math.PI / 180;

export const sunVector = (latitudeDeg: number, dayOfYear: number, solarHour: number): SunVector => {
  const b = ((dayOfYear - 1) * 2 * Math.PI) / 365;
  const dec = 0.006918 - 0.399912 * Math.cos(b) + 0.070257 * Math.sin(b) - 0.006758 * Math.cos(2 * b) + 0.000907 * Math.sin(2 * b) - 0.002697 * Math.cos(3 * b) + 0.00148 * Math.sin(3 * b);
  const w = (solarHour - 12) * 15 * RAD;
  const lat = latitudeDeg * RAD;
  return { east: -Math.cos(dec) * Math.sin(w), north: Math.sin(dec) * Math.cos(lat) - Math.cos(dec) * Math.sin(lat) * Math.cos(w), up: Math.sin(lat) * Math.sin(dec) + Math.cos(lat) * Math.cos(dec) * Math.cos(w) };
};

/** Cosine of the angle between the sun and a face's outward normal (azimuth clockwise from north). */
export const cosIncidence = (sun: SunVector, tiltDeg: number, azimuthDeg: number): number =>
  sun.east * Math.sin(tiltDeg * RAD) * Math.sin(azimuthDeg * RAD) + sun.north * Math.sin(tiltDeg * RAD) * Math.cos(azimuthDeg * RAD) + sun.up * Math.cos(tiltDeg * RAD);

export interface PlaneSun {
  beamWPerM2: number;
  skyWPerM2: number;
  groundWPerM2: number;
}

/** HDKR split of the sun on a tilted face, W/m2. */
export const planeSun = (x: { sun: SunVector; dayOfYear: number; tiltDeg: number; azimuthDeg: number; beamNormalWPerM2: number; diffuseWPerM2: number; albedoFrac: number }): PlaneSun => {
  const cos = Math.max(0, cosIncidence(x.sun, x.tiltDeg, x.azimuthDeg));
  const beam = x.sun.up > 0 ? x.beamNormalWPerM2 : 0;
  const level = beam * Math.max(0, x.sun.up);
  const global = level + x.diffuseWPerM2;
  const extra = 1367 * (1 + 0.033 * Math.cos((2 * Math.PI * x.dayOfYear) / 365));
  const ai = Math.min(1, beam / extra);
  const up = Math.max(x.sun.up, Math.sin(5 * RAD));
  const half = (1 + Math.cos(x.tiltDeg * RAD)) / 2;
  const brightening = global > 0 ? 1 + Math.sqrt(level / global) * Math.sin((x.tiltDeg * RAD) / 2) ** 3 : 1;
  return { beamWPerM2: beam * cos + x.diffuseWPerM2 * ai * (cos / up), skyWPerM2: x.diffuseWPerM2 * (1 - ai) * half * brightening, groundWPerM2: (global * x.albedoFrac * (1 - Math.cos(x.tiltDeg * RAD))) / 2 };
};
