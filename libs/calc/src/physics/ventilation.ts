import { cited } from '../sources/cite.js';

/** Taken once: looked up millions of times in a plan. */
const { sqrt, abs, max, min } = Math;

const GRAVITY = 9.80665;
const DISCHARGE = cited(0.65, '1', 'ASHRAE-F09-16', 'Eq 38, unidirectional flow', { min: 0.4, max: 0.7 });
/** Openings face the wind squarely 0.5 to 0.6, at a slant 0.25 to 0.35; nobody turns a shelter to the wind of the day. */
const WIND_SLANT = cited(0.35, '1', 'ASHRAE-F09-16', 'Eq 37, diagonal wind', { min: 0.25, max: 0.6 });
const ONE_SIDED_DISCHARGE = cited(0.6, '1', 'BOULARD-BAILLE-1995', 'discharge coefficient', { min: 0.4, max: 0.75 });
const ONE_SIDED_WIND = cited(0.07, '1', 'BOULARD-BAILLE-1995', 'global wind coefficient, sheltered', { min: 0.05, max: 0.1 });

/** Wind through an opening, m3/s: Q = C_v A v (ASHRAE-F09-16 Eq 37). A 1 m2, v 2 m/s, C_v 0.55: 1.10 m3/s. */
export const windVentM3PerS = (areaM2: number, windMPerS: number, effectiveness = WIND_SLANT as number): number => effectiveness * areaM2 * windMPerS;

/** Buoyancy through openings, m3/s: Q = C_d A sqrt(2 g dH dT/T_i) (Eq 38); dH from the lower opening to the neutral level. */
export const stackVentM3PerS = (areaM2: number, toNeutralM: number, insideK: number, outsideK: number, discharge = DISCHARGE as number): number =>
  discharge * areaM2 * sqrt((2 * GRAVITY * toNeutralM * abs(insideK - outsideK)) / max(insideK, outsideK));

/** Discharge coefficient where air passes both ways (Eq 39): 0.40 + 0.0045 |dT|. */
export const bothWaysDischarge = (differenceK: number): number => 0.4 + 0.0045 * abs(differenceK);

export interface VentOpenings {
  topM2: number;
  lowM2: number;
  /** Height between the centres of the low and the top group, m. */
  riseM: number;
  /** Free area on the wall with most of it, and on all the others together. */
  mainWallM2: number;
  otherWallsM2: number;
  /** Height of the openings themselves, for buoyancy through one level. */
  openingHeightM: number;
}

/**
 * Gives: air through open vents, m3/s.
 * Model: wind and buoyancy joined in quadrature, sqrt(Qw^2 + Qs^2) (ASHRAE-F09-16). Openings on two walls let the wind
 * through, so the smaller side counts; on one wall, and for buoyancy on one level, the greenhouse form holds:
 * Q = (A/2) C_d sqrt(2 g (H/2) dT/(2T) + C_w v^2) (BOULARD-BAILLE-1995).
 * Assumptions: no insect screen; slanting wind. Validity: v 0 to 10 m/s. No openings: zero.
 */
export const ventM3PerS = (v: VentOpenings, insideC: number, outsideC: number, windMPerS: number): number => {
  const total = v.mainWallM2 + v.otherWallsM2;
  if (total <= 0) return 0;
  const ti = insideC + 273.15;
  const dT = abs(insideC - outsideC);
  const oneLevel = (total / 2) * ONE_SIDED_DISCHARGE * sqrt(2 * GRAVITY * (v.openingHeightM / 2) * (dT / (2 * ti)) + ONE_SIDED_WIND * windMPerS * windMPerS);
  const through = windVentM3PerS(min(v.mainWallM2, v.otherWallsM2), windMPerS);
  const stack = stackVentM3PerS(min(v.topM2, v.lowM2), v.riseM / 2, ti, outsideC + 273.15);
  return max(oneLevel, sqrt(through * through + stack * stack));
};
