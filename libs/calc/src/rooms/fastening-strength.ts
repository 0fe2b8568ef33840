import { SCREW_OMEGA } from '../data/fasteners.js';

const IN = 0.0254;
const LBF = 4.448_222;
/** lb for each inch of thread -> N for each metre, diameter in metres. */
const perLength = (lbPerIn: number): number => (lbPerIn * LBF) / IN;

/** Allowable withdrawal from side grain for each metre of thread, load duration 1 (NDS 12.2). */
export const screwWithdrawalNPerM = (gravity: number, diameterM: number): number => perLength(2850 * gravity ** 2 * (diameterM / IN));
export const lagWithdrawalNPerM = (gravity: number, diameterM: number): number => perLength(1800 * gravity ** 1.5 * (diameterM / IN) ** 0.75);
export const nailWithdrawalNPerM = (gravity: number, diameterM: number): number => perLength(1380 * gravity ** 2.5 * (diameterM / IN));
/** Ultimate withdrawal, for comparison only: Wood Handbook screws, FPL-093 nails. */
export const screwUltimateNPerM = (gravity: number, diameterM: number): number => perLength(15_700 * gravity ** 2 * (diameterM / IN));
export const nailUltimateNPerM = (gravity: number, diameterM: number): number => perLength(6900 * gravity ** 2.5 * (diameterM / IN));
/** Head pulled through the side piece: 690 pi DH G^2 t (NDS 2018, recalled). */
export const headPullThroughN = (headM: number, gravity: number, sideM: number): number => 690 * Math.PI * (headM / IN) * gravity ** 2 * (sideM / IN) * LBF;
/** Thread pulled out of thin steel, ultimate: 0.85 tc d Fu2; allowable is a third. */
export const steelPullOutN = (wallM: number, diameterM: number, ultimatePa: number): number => 0.85 * wallM * diameterM * ultimatePa;
/** Sheet pulled over the head, ultimate: 1.5 t1 d'w Fu1. */
export const steelPullOverN = (sheetM: number, washerM: number, ultimatePa: number): number => 1.5 * sheetM * washerM * ultimatePa;
export const allowableScrewN = (ultimateN: number): number => ultimateN / SCREW_OMEGA;
/** Spacing by strength: what a screw may hold over the load on each metre of batten. */
export const spacingByStrengthM = (capacityN: number, lineNPerM: number): number => (lineNPerM <= 0 ? Infinity : capacityN / lineNPerM);
