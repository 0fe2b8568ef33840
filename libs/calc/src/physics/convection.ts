import { cited } from '../sources/cite.js';

/** Taken once: looked up millions of times in a plan. */
const { cbrt, sqrt, abs, max, pow } = Math;

/** A difference of nought would give no convection at all; air in a shelter is never that still. */
const STILL_K = cited(0.1, 'K', 'THERMAL-JUDGEMENT', 'least driving difference of inside convection');

/** Inside convection on an upright surface, W/(m2 K): 1.31 dT^(1/3) (EP-ENG-REF, TARP algorithm). dT 5 K: 2.24. */
export const uprightWPerM2K = (differenceK: number): number => 1.31 * cbrt(max(abs(differenceK), STILL_K));

/** The same where warm air lies under a cold roof or over a warm floor: 9.482 dT^(1/3)/(7.283 - |cos tilt|). */
export const buoyantWPerM2K = (differenceK: number, cosTilt: number): number => (9.482 * cbrt(max(abs(differenceK), STILL_K))) / (7.283 - abs(cosTilt));

/** The same where layers lie stable: 1.810 dT^(1/3)/(1.382 + |cos tilt|). */
export const stableWPerM2K = (differenceK: number, cosTilt: number): number => (1.81 * cbrt(max(abs(differenceK), STILL_K))) / (1.382 + abs(cosTilt));

/** Natural convection on a barrel, can or leaf, W/(m2 K): 1.42 (dT/L)^0.25 (HEAT-TRANSFER-TEXTS, laminar). dT 5 K, L 0.88 m: 2.19. */
export const bodyWPerM2K = (differenceK: number, lengthM: number): number => 1.42 * sqrt(sqrt(max(abs(differenceK), STILL_K) / lengthM));

const OUT_STILL = cited(2.8, 'W/(m2.K)', 'WATMUFF-1977', 'h = 2.8 + 3.0 v');
const OUT_SLOPE = 3.0;

/** Outside convection alone on a low shelter, W/(m2 K): 2.8 + 3.0 v (WATMUFF-1977). Long-wave is not in it. */
export const outsideWPerM2K = (windMPerS: number): number => OUT_STILL + OUT_SLOPE * windMPerS;

/** Outside coefficient with long-wave already in it, smooth surface: 8.23 + 3.33 v - 0.036 v^2 (EP-ENG-REF). Comparison only. */
export const outsideCombinedWPerM2K = (windMPerS: number): number => 8.23 + 3.33 * windMPerS - 0.036 * windMPerS * windMPerS;

/** Wind at height z from the 10 m wind of an open station: (270/10)^0.14 (z/layer)^exponent (EP-ENG-REF). */
export const windAtHeightRatio = (heightM: number, exponent: number, layerM: number): number => pow(270 / 10, 0.14) * pow(heightM / layerM, exponent);

/** U of a thin sheet from its two surface coefficients. */
export const thinSheetUWPerM2K = (insideWPerM2K: number, outsideWPerM2KValue: number): number => 1 / (1 / insideWPerM2K + 1 / outsideWPerM2KValue);
