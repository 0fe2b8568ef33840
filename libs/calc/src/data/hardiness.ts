import { cited } from '../sources/cite.js';

/** Bounds of the classes of winter cold, by the mean of each year's coldest night. */
const COLDEST_BOUND_F = -60;
export const HALF_CLASS_K = cited(5 / 1.8, 'K', 'PHZM-2012', 'half class, 5 degF');
/** Lower bound of class 1a, -60 degF. */
export const COLDEST_BOUND_C = cited((COLDEST_BOUND_F - 32) / 1.8, 'degC', 'PHZM-2012', 'class k runs from -60 + 10 (k - 1) to -50 + 10 (k - 1) degF');
const HALF_CLASSES = 26;

export interface WinterClass {
  name: string;
  minC: number;
  maxC: number;
}

/**
 * Gives: the class of a mean annual extreme minimum. Model: classes 1 to 13 of 10 degF from -60 degF, halves a and b; a bound
 * belongs to the milder class. Validity: colder than 1a and milder than 13b are named by those. Worked line: -24.7 degC is 5b.
 */
export const hardinessClassOf = (meanExtremeC: number): WinterClass => {
  // A bound in degF is seldom a round number in degC, so the least rounding must not push it a class down.
  const half = Math.min(HALF_CLASSES - 1, Math.max(0, Math.floor((meanExtremeC - COLDEST_BOUND_C) / HALF_CLASS_K + 1e-9)));
  const minC = COLDEST_BOUND_C + half * HALF_CLASS_K;
  return { name: `${Math.floor(half / 2) + 1}${half % 2 === 0 ? 'a' : 'b'}`, minC, maxC: minC + HALF_CLASS_K };
};
