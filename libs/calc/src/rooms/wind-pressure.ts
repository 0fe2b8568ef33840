import {
  BEAUFORT,
  ELEVATION_PER_M,
  EN_AIR_DENSITY,
  EN_TERRAIN,
  HILLS,
  KD,
  KZ_FLOOR_CLADDING_B,
  LOWEST_Z_M,
  TERRAIN,
  VELOCITY_PRESSURE,
  type Exposure,
} from '../data/wind-coefficients.js';
import { linear } from '../physics/statics.js';

export type EnTerrain = keyof typeof EN_TERRAIN;

/** Kz = 2.01 (z / zg)^(2 / alpha), z not under 15 ft (ASCE 7-16 table 26.10-1 note 1). */
export const exposureFactor = (zM: number, exposure: Exposure): number => {
  const { alpha, gradientM } = TERRAIN[exposure];
  return 2.01 * (Math.max(zM, LOWEST_Z_M) / gradientM) ** (2 / alpha);
};

/** Kz for film and battens: exposure B counts as 0.70 at the least. */
export const claddingExposureFactor = (zM: number, exposure: Exposure): number =>
  Math.max(exposureFactor(zM, exposure), exposure === 'B' ? KZ_FLOOR_CLADDING_B : 0);

/** Ke = exp(-0.000119 zg). 1.0 is always permitted; the room uses it above sea level and the formula below. */
export const elevationFactor = (elevationM: number): number => Math.exp(-ELEVATION_PER_M * elevationM);

/** Kzt = (1 + K1 K2 K3)^2 of a hill; distances in the same unit, H / Lh over 0.5 counts as 0.5 with Lh = 2 H. */
export const hillFactor = (
  kind: keyof typeof HILLS,
  hill: { heightM: number; halfLengthM: number; fromCrestM: number; downwind: boolean; zM: number },
): number => {
  const { k1, gamma, muUp, muDown } = HILLS[kind];
  const ratio = hill.heightM / hill.halfLengthM;
  const lh = ratio > 0.5 ? 2 * hill.heightM : hill.halfLengthM;
  const k2 = Math.max(0, 1 - hill.fromCrestM / ((hill.downwind ? muDown : muUp) * lh));
  const k3 = Math.exp((-gamma * hill.zM) / lh);
  return ratio < 0.2 ? 1 : (1 + linear(ratio, k1) * k2 * k3) ** 2;
};

/** q = 0.613 Kz Kzt Kd Ke V^2 (ASCE 7-16 eq. 26.10-1). */
export const velocityPressurePa = (gustMPerS: number, kz: number, factors: { kzt?: number; kd?: number; ke?: number } = {}): number =>
  VELOCITY_PRESSURE * kz * (factors.kzt ?? 1) * (factors.kd ?? KD) * (factors.ke ?? 1) * gustMPerS ** 2;

/** Net pressure: external q G Cp less internal qi GCpi. Positive pushes on the surface. */
export const netPressurePa = (qPa: number, cp: number, gcpi: number, gust: number, insidePa = qPa): number => qPa * gust * cp - insidePa * gcpi;

/** Kr and cr, turbulence and peak pressure of EN 1991-1-4 with orography and kI of one. */
export const enTerrainFactor = (terrain: EnTerrain): number => 0.19 * (EN_TERRAIN[terrain].roughnessM / 0.05) ** 0.07;
export const enRoughness = (zM: number, terrain: EnTerrain): number =>
  enTerrainFactor(terrain) * Math.log(Math.max(zM, EN_TERRAIN[terrain].lowestM) / EN_TERRAIN[terrain].roughnessM);
export const enTurbulence = (zM: number, terrain: EnTerrain): number =>
  1 / Math.log(Math.max(zM, EN_TERRAIN[terrain].lowestM) / EN_TERRAIN[terrain].roughnessM);
/** qp = (1 + 7 Iv) 0.5 rho (cr vb)^2. */
export const enPeakPressurePa = (basicMPerS: number, zM: number, terrain: EnTerrain): number =>
  enPeakFromFactorsPa(0.5 * EN_AIR_DENSITY * basicMPerS ** 2, enRoughness(zM, terrain), enTerrainFactor(terrain));
/** The same from its factors: Iv = kr / cr. */
export const enPeakFromFactorsPa = (basicPa: number, cr: number, kr: number): number => (1 + (7 * kr) / cr) * cr ** 2 * basicPa;
/** cprob = [(1 - K ln(-ln(1 - p))) / (1 - K ln(-ln 0.98))]^n, p = 1 / years, K 0.2, n 0.5. */
export const enProbability = (years: number): number => Math.sqrt((1 - 0.2 * Math.log(-Math.log(1 - 1 / years))) / (1 - 0.2 * Math.log(-Math.log(0.98))));

/** Mid-range of a Beaufort force by the empirical v = 0.836 B^1.5, and the printed range. */
export const beaufortMPerS = (force: number): number => 0.836 * force ** 1.5;
export const beaufortRange = (force: number): { fromMPerS: number; toMPerS: number } | undefined => BEAUFORT[force];
