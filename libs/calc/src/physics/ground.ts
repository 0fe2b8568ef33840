import { cited } from '../sources/cite.js';

const YEAR_D = 365;

export interface GroundYear {
  meanC: number;
  swingK: number;
  /** Day of the year on which the surface is coldest. */
  coldestDayD: number;
}

/**
 * Gives: undisturbed soil temperature at a depth on a day of the year, degC.
 * Model: Kusuda and Achenbach 1965: T = Tm - A exp(-z sqrt(pi/(365 a))) cos(2 pi/365 (t - t0 - z/2 sqrt(365/(pi a)))), a in m2/day.
 * Assumptions: even soil, no snow, no flowing water. Validity: z 0 to 20 m.
 * Worked line: a 0.07684, Tm 15.5, A 3.2, t0 8: 1 m on day 8 gives 13.34.
 */
export const kusudaC = (year: GroundYear, depthM: number, dayOfYear: number, diffusivityM2PerDay: number): number => {
  const decay = depthM * Math.sqrt(Math.PI / (YEAR_D * diffusivityM2PerDay));
  const lagD = (depthM / 2) * Math.sqrt(YEAR_D / (Math.PI * diffusivityM2PerDay));
  return year.meanC - year.swingK * Math.exp(-decay) * Math.cos(((2 * Math.PI) / YEAR_D) * (dayOfYear - year.coldestDayD - lagD));
};

/** Thermal diffusivity in m2/day from conductivity W/(m K) and heat capacity J/(m3 K). */
export const diffusivityM2PerDay = (conductivity: number, heatCapacityJPerM3K: number): number => (conductivity / heatCapacityJPerM3K) * 86_400;

/** Depth at which a swing of the given period is down to 1/e: sqrt(a P/pi), m. */
export const dampingDepthM = (diffusivityM2PerS: number, periodS: number): number => Math.sqrt((diffusivityM2PerS * periodS) / Math.PI);

/** Heat an even soil takes up per kelvin of surface swing, W/(m2 K): sqrt(k c 2 pi/P). */
export const surfaceAdmittance = (conductivity: number, heatCapacityJPerM3K: number, periodS: number): number =>
  Math.sqrt((conductivity * heatCapacityJPerM3K * 2 * Math.PI) / periodS);

/**
 * Gives: the year's wave of monthly means, by least squares on the months that have a record; null with fewer than 4.
 * Model: T = Tm + p cos wt + q sin wt at mid-month. Validity: outside air stands for the soil's surface.
 */
export const groundYear = (monthlyMeanC: readonly (number | null)[]): GroundYear | null => {
  const rows = monthlyMeanC.flatMap((t, m) => (t === null ? [] : [{ t, w: (2 * Math.PI * ((m + 0.5) * (YEAR_D / 12))) / YEAR_D }]));
  if (rows.length < 4) return null;
  const normal = new Float64Array(9);
  const right = new Float64Array(3);
  for (const { t, w } of rows) {
    const v = [1, Math.cos(w), Math.sin(w)];
    for (let i = 0; i < 3; i++) {
      right[i] = right[i]! + v[i]! * t;
      for (let j = 0; j < 3; j++) normal[i * 3 + j] = normal[i * 3 + j]! + v[i]! * v[j]!;
    }
  }
  const [meanC, p, q] = solveThree(normal, right);
  const warmest = Math.atan2(q, p);
  const coldest = (((warmest + Math.PI) / (2 * Math.PI)) * YEAR_D + YEAR_D) % YEAR_D;
  return { meanC, swingK: Math.hypot(p, q), coldestDayD: coldest };
};

/**
 * The soil of open ground is warmer over the year than the air over it: the sun falls on the soil, and snow covers it on the
 * coldest days. The wave of the air alone is that much too cold, on the careful side for a night.
 */
export const SOIL_OVER_AIR_K = cited(2, 'K', 'USCRN-2020', 'mean of eight sites at 5 to 100 cm; 0.9 to 3.4 by site', { min: 0.8, max: 3.9 });

/** Gives: the soil's year from monthly air means: groundYear moved up by SOIL_OVER_AIR_K. Validity: open ground, 5 cm to 1 m; 2.3 to 3 K root mean square. */
export const soilYear = (monthlyMeanC: readonly (number | null)[]): GroundYear | null => {
  const air = groundYear(monthlyMeanC);
  return air && { ...air, meanC: air.meanC + SOIL_OVER_AIR_K };
};

/**
 * Gives: swing of the mean temperature from the surface down to a depth, as a share of the surface's swing.
 * Model: the wave of kusudaC averaged over depth: |1 - exp(-(1+i)x)| / (sqrt 2 x), x = depth over damping depth.
 * The ground temperatures in the head of an EPW file are such means, though labelled as temperatures at a depth.
 * Validity: depth over 0. Worked line: x = 1 gives 0.69.
 */
export const meanToDepthSwingFrac = (depthM: number, dampingM: number): number => {
  const x = depthM / dampingM;
  const decay = Math.exp(-x);
  return Math.hypot(1 - decay * Math.cos(x), decay * Math.sin(x)) / (Math.SQRT2 * x);
};

/** Cramer's rule for the three unknowns of the wave. */
const solveThree = (m: Float64Array, r: Float64Array): [number, number, number] => {
  const det = (a: readonly number[]) =>
    a[0]! * (a[4]! * a[8]! - a[5]! * a[7]!) - a[1]! * (a[3]! * a[8]! - a[5]! * a[6]!) + a[2]! * (a[3]! * a[7]! - a[4]! * a[6]!);
  const base = [...m];
  const d = det(base);
  const column = (c: number) => det(base.map((v, i) => (i % 3 === c ? r[Math.floor(i / 3)]! : v))) / d;
  return [column(0), column(1), column(2)];
};

export interface SlabLoss {
  characteristicM: number;
  equivalentM: number;
  uValueWPerM2K: number;
}

/**
 * Gives: steady U of a floor on the ground.
 * Model: ISO 13370: B' = A/(P/2); dt = w + lambda (Rsi + Rf + Rse); dt < B': U = 2 lambda/(pi B' + dt) ln(pi B'/dt + 1), else lambda/(0.457 B' + dt).
 * Validity: heater sizing and checks; the night model carries the soil layer by layer instead.
 * Worked line: 18.3 m2, 18.2 m, w 0.05 m, bare, lambda 2: U 1.574.
 */
export const slabLoss = (x: {
  areaM2: number;
  perimeterM: number;
  wallM: number;
  conductivity: number;
  floorM2KPerW: number;
  insideM2KPerW: number;
  outsideM2KPerW: number;
}): SlabLoss => {
  const b = x.areaM2 / (0.5 * x.perimeterM);
  const dt = x.wallM + x.conductivity * (x.insideM2KPerW + x.floorM2KPerW + x.outsideM2KPerW);
  const u = dt < b ? ((2 * x.conductivity) / (Math.PI * b + dt)) * Math.log((Math.PI * b) / dt + 1) : x.conductivity / (0.457 * b + dt);
  return { characteristicM: b, equivalentM: dt, uValueWPerM2K: u };
};

/** Thicknesses of the soil layers, m: fine where a day's wave runs, coarse below; they end at 1.16 m. */
export const SOIL_LAYERS_M = [0.02, 0.04, 0.08, 0.12, 0.2, 0.3, 0.4] as const;
/** Depth of the deep boundary. */
export const SOIL_DEEP_M = cited(1.2, 'm', 'KUSUDA-1965', 'a day is damped to nothing and a week to a tenth at this depth', { min: 1, max: 3 });

/**
 * Gives: conductance from the soil under the edge to the soil outside, W/K.
 * Model: heat runs in half circles under the edge: per metre k/pi ln(r2/r1), from 0.15 m to half the characteristic width
 * (the logarithm of ISO 13370, taken from an inner radius because the first layers are carried apart).
 */
export const edgeWPerK = (areaM2: number, perimeterM: number, conductivity: number): number => {
  const outer = Math.max(areaM2 / (0.5 * perimeterM) / 2, 0.2);
  return (perimeterM * conductivity * Math.log(outer / 0.15)) / Math.PI;
};
