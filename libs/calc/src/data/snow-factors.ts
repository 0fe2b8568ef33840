import { cited } from '../sources/cite.js';

/** pf = 0.7 Ce Ct Is pg. */
export const FLAT_ROOF = cited(0.7, '1', 'ASCE7-16', 'eq. 7.3-1');
/** Exposure factor, partially exposed roof. */
export const EXPOSURE_FACTOR = {
  B: cited(1, '1', 'ASCE7-16', 'table 7.3-1, partially exposed'),
  C: cited(1, '1', 'ASCE7-16', 'table 7.3-1, partially exposed'),
  D: cited(0.9, '1', 'ASCE7-16', 'table 7.3-1, partially exposed'),
} as const;
export const THERMAL_FACTOR = {
  unheated: cited(1.2, '1', 'ASCE7-16', 'table 7.3-2, unheated and open-air'),
  heatedGreenhouse: cited(0.85, '1', 'ASCE7-16', 'table 7.3-2, continuously heated greenhouse'),
} as const;
export const IMPORTANCE = {
  I: cited(0.8, '1', 'ASCE7-16', 'table 1.5-2'),
  II: cited(1, '1', 'ASCE7-16', 'table 1.5-2'),
  III: cited(1.1, '1', 'ASCE7-16', 'table 1.5-2'),
  IV: cited(1.2, '1', 'ASCE7-16', 'table 1.5-2'),
} as const;
/** Ground snow up to which the low-slope minimum is Is pg, and above which it is 20 psf Is. */
export const LOW_SLOPE_PA = cited(957.605, 'Pa', 'ASCE7-16', '7.3.4, 20 psf');
export const LOW_SLOPE_DEG = cited(15, 'deg', 'ASCE7-16', '7.3.4, gable roofs under 15 degrees');
export const RAIN_ON_SNOW_PA = cited(239.401, 'Pa', 'ASCE7-16', '7.10, 5 psf');
/** Pitch from which a slope sheds, by thermal factor (1.0, 1.1, 1.2): slippery and other surfaces. No snow stays at 70 degrees. */
export const SHEDS_FROM_DEG = {
  slippery: [cited(5, 'deg', 'ASCE7-16', 'fig. 7.4-1'), cited(10, 'deg', 'ASCE7-16', 'fig. 7.4-1'), cited(15, 'deg', 'ASCE7-16', 'fig. 7.4-1')],
  other: [cited(30, 'deg', 'ASCE7-16', 'fig. 7.4-1'), cited(37.5, 'deg', 'ASCE7-16', 'fig. 7.4-1'), cited(45, 'deg', 'ASCE7-16', 'fig. 7.4-1')],
} as const;
export const BARE_FROM_DEG = cited(70, 'deg', 'ASCE7-16', 'fig. 7.4-1');
/** Eave to ridge on plan up to which a simple-rafter gable takes Is pg on one side and none on the other. */
export const SIMPLE_RAFTER_M = cited(6.096, 'm', 'ASCE7-16-MEMORY', '7.6.1, W not over 20 ft');

export const EN_SHAPE = cited(0.8, '1', 'EN1991-1-3', 'table 5.2, 0 to 30 degrees');
export const EN_ARCH_LIMIT = cited(2, '1', 'EN1991-1-3-MEMORY', '5.3.5, mu3');

/** Weight of a cubic metre of roof snow: settled light snow, and very wet snow (upper end). */
export const LIGHT_SNOW_N_PER_M3 = cited(1570.87, 'N/m3', 'SNOW-TEN-PCF', '10 pcf');
export const WET_SNOW_N_PER_M3 = cited(6283.5, 'N/m3', 'SNOW-WET', '30 to 40 psf per foot, upper end: 40 pcf');
/** Clear when the tube carries seven tenths of what it may: clearing takes time and snow keeps falling. */
export const CLEAR_AT_FRAC = cited(0.7, '1', 'JUDGEMENT-LOADS', 'share of the allowable load at which to clear');
