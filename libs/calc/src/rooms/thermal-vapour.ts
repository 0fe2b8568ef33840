import { cited } from '../sources/cite.js';

/** Taken once: looked up millions of times in a plan. */
const { exp } = Math;

/** Psychrometric constant at sea level, Pa/K: cp p / (0.622 L); it falls with pressure. */
export const PSYCHROMETRIC_PA_PER_K = cited(66.5, 'Pa/K', 'ASHRAE-F17-1', '1006 x 101325 / (0.622 x 2.45e6)', { min: 60, max: 70 });

/**
 * Gives: saturation pressure over water, Pa. Model: Magnus form 610.94 exp(17.625 t/(t + 243.04)), within 0.4 per cent
 * of ASHRAE-F17-1 from -40 to 50 C over water; chosen because the time step calls it several times.
 */
export const saturationPa = (tC: number): number => 610.94 * exp((17.625 * tC) / (tC + 243.04));

/** Slope of the above at a temperature whose saturation pressure is at hand, Pa/K. */
export const slopeAtPaPerK = (tC: number, saturatedPa: number): number => (saturatedPa * (17.625 * 243.04)) / ((tC + 243.04) * (tC + 243.04));
