import { BARE_FROM_DEG, EN_ARCH_LIMIT, EN_SHAPE, FLAT_ROOF, LOW_SLOPE_DEG, LOW_SLOPE_PA, RAIN_ON_SNOW_PA, SHEDS_FROM_DEG } from '../data/snow-factors.js';

/** pf = 0.7 Ce Ct Is pg (ASCE 7-16 eq. 7.3-1). */
export const flatRoofPa = (groundPa: number, ce: number, ct: number, importance: number): number => FLAT_ROOF * ce * ct * importance * groundPa;

/** Cs: one up to the pitch at which the surface sheds, then straight down to nothing at 70 degrees (fig. 7.4-1). */
export const slopeFactor = (pitchDeg: number, ct: number, slippery: boolean): number => {
  const rows = slippery ? SHEDS_FROM_DEG.slippery : SHEDS_FROM_DEG.other;
  const from = ct >= 1.2 ? rows[2] : ct >= 1.1 ? rows[1] : rows[0];
  return pitchDeg <= from ? 1 : Math.max(0, (BARE_FROM_DEG - pitchDeg) / (BARE_FROM_DEG - from));
};

/** Least load of a low roof: Is pg up to 20 psf, else 20 psf Is; nothing from 15 degrees on (7.3.4). */
export const lowSlopeMinimumPa = (groundPa: number, importance: number, pitchDeg: number): number =>
  pitchDeg < LOW_SLOPE_DEG ? importance * Math.min(groundPa, LOW_SLOPE_PA) : 0;

/** Rain on snow: 5 psf where there is little snow and the roof is flatter than W / 50 (W in ft, degrees). Both are needed. */
export const rainOnSnowPa = (groundPa: number, pitchDeg: number, eaveToRidgeM: number): number =>
  groundPa > 0 && groundPa <= LOW_SLOPE_PA && pitchDeg < eaveToRidgeM / 0.3048 / 50 ? RAIN_ON_SNOW_PA : 0;

/** Weight of drifted snow: 0.13 pg + 14 pcf, at most 30 (recalled), N/m3. */
export const driftWeightNPerM3 = (groundPa: number): number => Math.min(0.13 * (groundPa / 47.880_26) + 14, 30) * 157.087;

/** mu1 of EN 1991-1-3: 0.8 up to 30 degrees, straight down to nothing at 60. */
export const enPitchedShape = (pitchDeg: number): number => (pitchDeg <= 30 ? EN_SHAPE : Math.max(0, (EN_SHAPE * (60 - pitchDeg)) / 30));
/** mu3 of a cylindrical roof: 0.2 + 10 h / b, at most 2 (recalled). */
export const enArchShape = (riseOverSpan: number): number => Math.min(0.2 + 10 * riseOverSpan, EN_ARCH_LIMIT);
export const enRoofPa = (mu: number, groundPa: number, ce = 1, ct = 1): number => mu * ce * ct * groundPa;
/** Snow on the ground by altitude: s = s0 (1 + (A / 728)^2). */
export const enGroundAtPa = (seaLevelPa: number, altitudeM: number): number => seaLevelPa * (1 + (altitudeM / 728) ** 2);
