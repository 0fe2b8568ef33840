import { cited } from '../sources/cite.js';

/** Taken once: looked up millions of times in a plan. */
const { sqrt, abs, log } = Math;

/** Shelter classes of the leakage model: 1 no obstruction, 3 moderate, 5 very heavy. */
export type ShelterClass = 1 | 2 | 3 | 4 | 5;

/** Stack coefficient of a one-storey building, (L/s)^2/(cm4 K). */
const STACK = cited(0.000145, '(L/s)2/(cm4.K)', 'EP-IO-REF', 'effective leakage area, basic model, stack coefficient, one storey');
/** Wind coefficients of a one-storey building by shelter class, (L/s)^2/(cm4 (m/s)^2). */
const WIND: Readonly<Record<ShelterClass, number>> = {
  1: cited(0.000319, '(L/s)2/(cm4.(m/s)2)', 'EP-IO-REF', 'wind coefficient, one storey, shelter class 1'),
  2: cited(0.000246, '(L/s)2/(cm4.(m/s)2)', 'EP-IO-REF', 'wind coefficient, one storey, shelter class 2'),
  3: cited(0.000174, '(L/s)2/(cm4.(m/s)2)', 'EP-IO-REF', 'wind coefficient, one storey, shelter class 3'),
  4: cited(0.000104, '(L/s)2/(cm4.(m/s)2)', 'EP-IO-REF', 'wind coefficient, one storey, shelter class 4'),
  5: cited(0.000032, '(L/s)2/(cm4.(m/s)2)', 'EP-IO-REF', 'wind coefficient, one storey, shelter class 5'),
};

/**
 * Gives: air that leaks through gaps, m3/s.
 * Model: ASHRAE basic model, Q = (A_L/1000) sqrt(C_s |dT| + C_w v^2).
 * Assumptions: gaps spread evenly; A_L in cm2 at 4 Pa; v in m/s.
 * Validity: one storey; v 0 to 20 m/s, dT 0 to 40 K.
 * Worked line: A_L 500 cm2, dT 20 K, v 3 m/s, class 3: 0.0334 m3/s.
 * References: EP-IO-REF; ASHRAE-F09-16.
 */
export const leakageM3PerS = (leakAreaCm2: number, differenceK: number, windMPerS: number, shelter: ShelterClass): number =>
  (leakAreaCm2 / 1000) * sqrt(STACK * abs(differenceK) + WIND[shelter] * windMPerS * windMPerS);

/** Air changes per hour from design coefficients of whole buildings, A + B|dT| + C v (BLAST) for comparison. EP-ENG-REF. */
export const blastFactor = (differenceK: number, windMPerS: number): number => 0.606 + 0.03636 * abs(differenceK) + 0.1177 * windMPerS;

/** The same of DOE-2: 0.224 v. EP-ENG-REF. */
export const doe2Factor = (windMPerS: number): number => 0.224 * windMPerS;

/** Air changes per hour from the decay of a tracer above the outside level: N = ln(C0/C1)/t. */
export const tracerAirChangesPerH = (startAbove: number, endAbove: number, hours: number): number => log(startAbove / endAbove) / hours;
