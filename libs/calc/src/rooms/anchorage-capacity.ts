import type { Anchor, AnchorageResult, Note, SiteInputs } from '@lathwork/model';
import {
  BARE_PIPE_M,
  BARE_PIPE_N,
  CONCRETE_KG_PER_M3,
  DEAD_WEIGHT_FRAC,
  PULL_CHECK_FS,
  SLIDING_FS,
  TORQUE_FACTOR_PER_M,
  TORQUE_FS,
  UNTESTED_SOIL_FS,
  WET_SOIL_FRAC,
} from '../data/anchors.js';
import { GRAVITY_M_PER_S2 } from '../physics/statics.js';
import { notesOf } from './room.js';

/** What one anchor may hold, by what, and how cautiously. Null capacity: nothing is known to hold. */
export interface Capacity {
  eachN: number | null;
  factorOfSafety: number | null;
  basis: AnchorageResult['capacityBasis'];
  notes: Note[];
}

const note = notesOf('anchorage', 'anchors');
const nothing = (...notes: Note[]): Capacity => ({ eachN: null, factorOfSafety: null, basis: 'none', notes });

/** Qu = Kt T. */
export const torqueUltimateN = (torqueNm: number): number => TORQUE_FACTOR_PER_M * torqueNm;
export const pierVolumeM3 = (diameterM: number, depthM: number): number => (Math.PI / 4) * diameterM ** 2 * depthM;
export const concreteWeightN = (volumeM3: number): number => volumeM3 * CONCRETE_KG_PER_M3 * GRAVITY_M_PER_S2;
/** Usable part of a dead weight in the combination 0.6 D + 0.6 W. */
export const deadWeightHoldN = (weightN: number): number => DEAD_WEIGHT_FRAC * weightN;
/** Loose ballast that holds an uplift and a push by its weight and friction: W >= U + FS H / mu. */
export const ballastNeededN = (upliftN: number, pushN: number, frictionRatio: number, factor = SLIDING_FS): number =>
  upliftN + (factor * pushN) / frictionRatio;
/** Pull in a guy that stands at an angle from the ground and holds an uplift. */
export const guyTensionN = (upliftN: number, fromGroundDeg: number): number => upliftN / Math.sin((fromGroundDeg * Math.PI) / 180);
/** Weight of the cone of soil over a plate or bell. */
export const soilConeN = (baseDiameterM: number, depthM: number, angleDeg: number, soilNPerM3: number): number => {
  const r = baseDiameterM / 2;
  const top = r + depthM * Math.tan((angleDeg * Math.PI) / 180);
  return ((Math.PI * depthM) / 3) * (r * r + r * top + top * top) * soilNPerM3;
};

/** Bare pipe of another depth than the tests: deeper earns nothing, shallower falls with the square of the depth. */
export const barePipeUltimateN = (depthM: number): number => BARE_PIPE_N * Math.min(depthM / BARE_PIPE_M, 1) ** 2;

const pullChecked = (pulledToN: number): Capacity => ({
  eachN: (pulledToN / PULL_CHECK_FS) * WET_SOIL_FRAC,
  factorOfSafety: PULL_CHECK_FS / WET_SOIL_FRAC,
  basis: 'pullCheck',
  notes: [note('pull-check-halved', 'note', { pulledToN, capacityN: (pulledToN / PULL_CHECK_FS) * WET_SOIL_FRAC, wetFrac: WET_SOIL_FRAC })],
});

const bySoil = (anchor: Anchor): Capacity => {
  if (anchor.pulledToN !== 'unknown') return pullChecked(anchor.pulledToN);
  if (anchor.kind === 'auger') {
    if (anchor.installTorqueNm === 'unknown') return nothing(note('auger-unproved', 'stop'));
    const eachN = torqueUltimateN(anchor.installTorqueNm) / TORQUE_FS;
    return { eachN, factorOfSafety: TORQUE_FS, basis: 'torque', notes: [] };
  }
  if (anchor.depthM === 'unknown') return nothing(note('anchor-size-unknown', 'stop', { kind: anchor.kind, missing: ['depth'] }));
  const eachN = barePipeUltimateN(anchor.depthM) / UNTESTED_SOIL_FS.low;
  return {
    eachN,
    factorOfSafety: UNTESTED_SOIL_FS.low,
    basis: 'published',
    notes: [note('bare-pipe-holds-little', 'care', { capacityN: eachN, depthM: anchor.depthM })],
  };
};

const byWeight = (anchor: Anchor): Capacity => {
  const held = (weightN: number, notes: Note[]): Capacity => ({
    eachN: deadWeightHoldN(weightN),
    factorOfSafety: 1 / DEAD_WEIGHT_FRAC,
    basis: 'weight',
    notes,
  });
  if (anchor.kind === 'ballast') {
    if (anchor.ballastKg === 'unknown') return nothing(note('anchor-size-unknown', 'stop', { kind: anchor.kind, missing: ['mass'] }));
    return held(anchor.ballastKg * GRAVITY_M_PER_S2, anchor.ballastIsWater ? [note('water-ballast', 'care', { massKg: anchor.ballastKg })] : []);
  }
  const missing = [...(anchor.depthM === 'unknown' ? ['depth'] : []), ...(anchor.diameterM === 'unknown' ? ['diameter'] : [])];
  if (anchor.depthM === 'unknown' || anchor.diameterM === 'unknown') return nothing(note('anchor-size-unknown', 'stop', { kind: anchor.kind, missing }));
  return held(concreteWeightN(pierVolumeM3(anchor.diameterM, anchor.depthM)), []);
};

/** Does it lean on soil nobody may guess? A dead weight on the ground does not. */
export const leansOnSoil = (kind: Anchor['kind']): boolean => kind === 'auger' || kind === 'drivenPipe' || kind === 'groundPost' || kind === 'concretePier';

/** What one chosen anchor holds. Nominal ratings of shops and catalogues never enter. */
export const capacityOf = (anchor: Anchor, site: SiteInputs): Capacity => {
  if (anchor.kind === 'none' || anchor.perPostCount === 0) return { eachN: 0, factorOfSafety: null, basis: 'none', notes: [] };
  if (site.soilClass === '5' && leansOnSoil(anchor.kind)) return nothing(note('soft-ground-engineer', 'stop', { soilClass: '5' }));
  if (anchor.kind === 'concretePier' || anchor.kind === 'ballast')
    return anchor.pulledToN !== 'unknown' && anchor.kind === 'concretePier' ? pullChecked(anchor.pulledToN) : byWeight(anchor);
  return bySoil(anchor);
};
