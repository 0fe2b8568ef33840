import { cited } from '../sources/cite.js';

const LBF = 4.448_222;
const KGF = 9.806_65;
const FT = 0.3048;

/** Test pull over working load: 4,725 over 3,150 lb. Never the capacity of a garden auger. */
export const PULL_CHECK_FS = cited(1.5, '1', 'CFR-3280', '3280.306(f), 4,725 lb over 3,150 lb');
/** Saturated soil holds about half. */
export const WET_SOIL_FRAC = cited(0.5, '1', 'TENT-STAKE-2009', 'saturated soil about half');
/** Ultimate pull for each newton metre of installing torque: 10 per foot for a 1.5 in square shaft. */
export const TORQUE_FACTOR_PER_M = cited(10 / FT, '1/m', 'HELICAL-TORQUE', 'Kt 10 per ft', { min: 10 / FT, max: 11 / FT });
export const TORQUE_FS = cited(2, '1', 'HELICAL-TORQUE', 'factor of safety, permanent');
/** What two people turn in with a five-foot bar. */
export const HAND_TORQUE_NM = cited(250 * FT * LBF, 'N.m', 'HELICAL-TORQUE', '50 lb at each end of a 5 ft bar');
export const DEAD_WEIGHT_FRAC = cited(0.6, '1', 'ASCE7-16', '2.4.1, 0.6 D');
/** A bare pipe 50 cm deep in sandy loam, the weaker of the two tested. */
export const BARE_PIPE_N = cited(60.7 * KGF, 'N', 'PIPE-PULL-2015', '50 cm, 85 per cent compaction, sandy loam', { min: 60 * KGF, max: 73 * KGF });
export const BARE_PIPE_SILT_N = cited(72.8 * KGF, 'N', 'PIPE-PULL-2015', '50 cm, 85 per cent compaction, silt loam');
export const BARE_PIPE_M = cited(0.5, 'm', 'PIPE-PULL-2015', 'depth of the tests');
export const BURIED_PIPE_N = {
  siltLoam: cited(452.7 * KGF, 'N', 'PIPE-PULL-2015', 'continuous buried pipe'),
  sandyLoam: cited(450.3 * KGF, 'N', 'PIPE-PULL-2015', 'continuous buried pipe'),
} as const;
export const SPIRAL_N: Readonly<Record<50 | 75 | 100, number>> = {
  50: cited(400, 'N', 'PIPE-PULL-2015', 'spiral, SPT 2, allowable'),
  75: cited(1000, 'N', 'PIPE-PULL-2015', 'spiral, SPT 2, allowable'),
  100: cited(2500, 'N', 'PIPE-PULL-2015', 'spiral, SPT 2, allowable'),
};
/** Factors on soil values in ground nobody has tested. */
export const UNTESTED_SOIL_FS = { low: cited(2.5, '1', 'EP486', '3.4.2'), high: cited(3, '1', 'EP486', '3.4.2') } as const;
export const STAKE_N = cited(1000 * LBF, 'N', 'TENT-STAKE-2009', '1 in by 36 in stake, guyed');
export const CONCRETE_KG_PER_M3 = cited(2402.8, 'kg/m3', 'CONCRETE-150', '150 lb/ft3');
export const BAG_80LB_M3 = cited(0.6 * FT ** 3, 'm3', 'CONCRETE-150', '80 lb bag yields 0.60 ft3');
/** Ordinary pier by which a count is given: 12 in across, 36 in deep. */
export const COMMON_PIER = { diameterM: cited(0.3048, 'm', 'CONCRETE-150', '12 in pier'), depthM: cited(0.9144, 'm', 'CONCRETE-150', '36 in pier') } as const;
/** Sliding: the factor on the push where the weight is not itself reduced. */
export const SLIDING_FS = cited(1.5, '1', 'JUDGEMENT-LOADS', 'sliding, service loads');
