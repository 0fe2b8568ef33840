import {
  BAG_80LB_M3,
  BARE_PIPE_SILT_N,
  BURIED_PIPE_N,
  DEAD_WEIGHT_FRAC,
  SPIRAL_N,
  STAKE_N,
  TORQUE_FS,
  UNTESTED_SOIL_FS,
  WET_SOIL_FRAC,
  PULL_CHECK_FS,
} from '../../../libs/calc/src/data/anchors.js';
import { PRESUMPTIVE_SOILS } from '../../../libs/calc/src/data/soils.js';
import { embedmentConstrainedM, embedmentM, overturningNm, twoLegReactions } from '../../../libs/calc/src/physics/statics.js';
import {
  ballastNeededN,
  barePipeUltimateN,
  concreteWeightN,
  deadWeightHoldN,
  guyTensionN,
  pierVolumeM3,
  soilConeN,
  torqueUltimateN,
} from '../../../libs/calc/src/rooms/anchorage-capacity.js';
import { referenceTable, type CheckValue, type ReferenceCheck } from '../../support/reference.js';
import { FT, IN, KGF, LBF, PSF } from '../../support/us-units.js';

type Row = [id: string, unit: string, expected: CheckValue, abs: number, got: () => CheckValue];
const table = (source: string, kind: ReferenceCheck['kind'], rows: readonly Row[]): ReferenceCheck[] =>
  rows.map(([id, unit, expected, abs, got]) => ({
    id,
    room: 'anchorage',
    kind,
    source,
    unit,
    expected,
    tolerance: { abs, why: 'digits printed in the source, or of its unit conversion' },
    got,
  }));

const perFt = PSF / FT;
const soilRow = (n: 1 | 2 | 3 | 4 | 5) => {
  const s = PRESUMPTIVE_SOILS[n];
  return [s.bearingPa / PSF, s.lateralPaPerM / perFt, s.frictionRatio ?? (s.cohesionPa ?? NaN) / PSF];
};
const pier = pierVolumeM3(12 * IN, 36 * IN);
/** 12 psf on a wall of 20 x 8 ft, 10 ft wide, 500 lb. */
const wallPush = { xN: 12 * 160 * LBF, zN: 0, xM: 0, zM: 4 * FT };

referenceTable('anchorage: capacities and soils', [
  ...table('IBC 2012 table 1806.2, printed', 'published', [
    ['anchor.ibc1806.class1', 'psf, psf/ft, -', [12_000, 1200, 0.7], 1e-6, () => soilRow(1)],
    ['anchor.ibc1806.class2', 'psf, psf/ft, -', [4000, 400, 0.35], 1e-6, () => soilRow(2)],
    ['anchor.ibc1806.class3', 'psf, psf/ft, -', [3000, 200, 0.35], 1e-6, () => soilRow(3)],
    ['anchor.ibc1806.class4', 'psf, psf/ft, -', [2000, 150, 0.25], 1e-6, () => soilRow(4)],
    ['anchor.ibc1806.class5', 'psf, psf/ft, psf', [1500, 100, 130], 1e-6, () => soilRow(5)],
  ]),
  ...table('IBC 1807.3.2: published calculation sheet and forum example', 'published', [
    ['anchor.ibc.constrained', 'ft', 4.951, 0.003, () => embedmentConstrainedM(90_000 * LBF * FT, 4.5 * FT, 350 * perFt, true) / FT],
    ['anchor.ibc.S3', 'Pa', 166_000, 200, () => 350 * perFt * 2 * embedmentConstrainedM(90_000 * LBF * FT, 4.5 * FT, 350 * perFt, true)],
  ]),
  ...table('IBC 1807.3.2.1 eq. 18-1, iterated by hand', 'worked', [
    ['anchor.ibc.small_post', 'ft', 4.539, 0.003, () => embedmentM(100 * LBF, 5 * FT, 0.5 * FT, 150 * perFt, false) / FT],
    ['anchor.ibc.small_post_isolated', 'ft', 3.469, 0.003, () => embedmentM(100 * LBF, 5 * FT, 0.5 * FT, 150 * perFt, true) / FT],
  ]),
  ...table('Korean field tests of plastic greenhouse foundations (JAKO201521059282514, JAKO201711656707677)', 'published', [
    ['anchor.pipe.50cm', 'kgf; lb', [72.8, 160.5], 0.1, () => [BARE_PIPE_SILT_N / KGF, BARE_PIPE_SILT_N / LBF]],
    ['anchor.pipe.50cm.sandyloam', 'kgf; lb', [60.7, 133.8], 0.1, () => [barePipeUltimateN(0.5) / KGF, barePipeUltimateN(0.5) / LBF]],
    ['anchor.continuous_pipe', 'kgf', [452.7, 450.3], 1e-6, () => [BURIED_PIPE_N.siltLoam / KGF, BURIED_PIPE_N.sandyLoam / KGF]],
    ['anchor.spiral', 'kN', [0.4, 1, 2.5], 1e-9, () => [SPIRAL_N[50] / 1000, SPIRAL_N[75] / 1000, SPIRAL_N[100] / 1000]],
  ]),
  ...table('Tent stakes, industry column of 2009', 'published', [
    ['anchor.stake_1000', 'lb', 1000, 1e-3, () => STAKE_N / LBF],
    ['anchor.stake_wet', 'lb', 500, 1e-4, () => (STAKE_N * WET_SOIL_FRAC) / LBF],
  ]),
  ...table('ASAE EP486 3.4.2', 'published', [['anchor.ep486.fs', '-', [2.5, 3], 1e-9, () => [UNTESTED_SOIL_FS.low, UNTESTED_SOIL_FS.high]]]),
  ...table('0.6 on dead load is a factor of 1.67; 40 ft3 of slab is 67 bags of 80 lb', 'published', [
    ['anchor.0p6D_is_FS', '-', 1.667, 0.001, () => 1 / DEAD_WEIGHT_FRAC],
    ['anchor.bag.slab', 'bags', 67, 0, () => Math.ceil((40 * FT ** 3) / BAG_80LB_M3)],
  ]),
  ...table('Opened formulas, worked by hand', 'worked', [
    ['anchor.hud.fs', '-', 1.5, 1e-9, () => PULL_CHECK_FS],
    ['anchor.combo7', 'lb', 1440, 1e-6, () => 0.6 * 3000 - deadWeightHoldN(600)],
    [
      'anchor.pier.12x36',
      'ft3; lb; lb',
      [2.356, 353.4, 212.1],
      0.1,
      () => [pier / FT ** 3, concreteWeightN(pier) / LBF, deadWeightHoldN(concreteWeightN(pier)) / LBF],
    ],
    ['anchor.bag.80lb', 'bags', 4, 0, () => Math.ceil(pier / BAG_80LB_M3)],
    ['anchor.barrel.0p6', 'lb', 288.4, 0.1, () => deadWeightHoldN(55 * 8.34 + 22)],
    ['anchor.ballast_combined', 'lb', 1200, 1e-6, () => ballastNeededN(300, 150, 0.25)],
    ['anchor.guy_angle', 'lb', 424.3, 0.1, () => guyTensionN(300, 45)],
    ['anchor.sliding_block', 'lb', 350, 1e-9, () => 1000 * (PRESUMPTIVE_SOILS[3].frictionRatio ?? NaN)],
    [
      'anchor.overturn',
      'lb; lb-ft; lb',
      [1920, 7680, 618],
      1e-6,
      () => [
        twoLegReactions([wallPush], 10 * FT).shearN / LBF,
        overturningNm([wallPush], 10 * FT, 'right') / LBF / FT,
        twoLegReactions([wallPush], 10 * FT).leftN / LBF - deadWeightHoldN(500) / 2,
      ],
    ],
    ['anchor.helical.250', 'lb', [2500, 1250], 1e-6, () => [torqueUltimateN(250 * FT * LBF) / LBF, torqueUltimateN(250 * FT * LBF) / LBF / TORQUE_FS]],
    ['anchor.stake_allow', 'lb', 250, 1e-4, () => (STAKE_N * WET_SOIL_FRAC) / LBF / 2],
    ['anchor.cone20', 'lb', 1125, 2, () => soilConeN(FT, 3 * FT, 20, (100 * LBF) / FT ** 3) / LBF],
  ]),
]);
