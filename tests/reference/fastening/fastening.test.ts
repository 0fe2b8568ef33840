import { GAUGE_M, SCREW_DIAMETER_M } from '../../../libs/calc/src/data/fasteners.js';
import { DURATION, REPETITIVE, SIZE_FACTOR, WET_WITHDRAWAL, WOOD_GRADES, type WoodGrade } from '../../../libs/calc/src/data/woods.js';
import { filmTensionNPerM, rectangle } from '../../../libs/calc/src/physics/statics.js';
import { claddingWallGcp } from '../../../libs/calc/src/rooms/wind-coefficients.js';
import { netPressurePa, velocityPressurePa } from '../../../libs/calc/src/rooms/wind-pressure.js';
import {
  allowableScrewN,
  headPullThroughN,
  lagWithdrawalNPerM,
  nailUltimateNPerM,
  nailWithdrawalNPerM,
  screwUltimateNPerM,
  screwWithdrawalNPerM,
  spacingByStrengthM,
  steelPullOutN,
  steelPullOverN,
} from '../../../libs/calc/src/rooms/fastening-strength.js';
import { referenceTable, type CheckValue, type ReferenceCheck } from '../../support/reference.js';
import { FT, IN, LBF, MPH, PSF, PSI } from '../../support/us-units.js';

type Row = [id: string, unit: string, expected: CheckValue, abs: number, got: () => CheckValue];
const table = (source: string, kind: ReferenceCheck['kind'], rows: readonly Row[], fromMemory = false): ReferenceCheck[] =>
  rows.map(([id, unit, expected, abs, got]) => ({
    id,
    room: 'fastening',
    kind,
    source,
    fromMemory,
    unit,
    expected,
    tolerance: { abs, why: 'digits printed in the source' },
    got,
  }));

const perIn = (nPerM: number) => (nPerM * IN) / LBF;
const screw = (g: number, d: number) => perIn(screwWithdrawalNPerM(g, d * IN));
const lag = (g: number, d: number) => perIn(lagWithdrawalNPerM(g, d * IN));
const nail = (g: number, d: number) => perIn(nailWithdrawalNPerM(g, d * IN));
const pullOut = (no: 8 | 10 | 12, t: number) => allowableScrewN(steelPullOutN(t * IN, SCREW_DIAMETER_M[no], 45_000 * PSI)) / LBF;
const psi = (w: WoodGrade) =>
  [w.bendingPa, w.tensionPa, w.shearPa, w.acrossGrainPa, w.alongGrainPa, w.modulusPa, w.leastModulusPa].map((p) => p / PSI).concat(w.gravityRatio);

const LAGS: [string, number, number, number][] = [
  ['1_4', 0.25, 0.42, 173],
  ['5_16', 0.3125, 0.42, 205],
  ['3_8', 0.375, 0.42, 235],
  ['1_2', 0.5, 0.42, 291],
  ['3_8', 0.375, 0.5, 305],
  ['1_2', 0.5, 0.5, 378],
  ['1_4', 0.25, 0.55, 260],
  ['3_8', 0.375, 0.55, 352],
  ['1_2', 0.5, 0.55, 437],
  ['1_4', 0.25, 0.36, 137],
  ['3_8', 0.375, 0.36, 186],
  ['1_2', 0.5, 0.36, 231],
];
const PULL_OUT: [10 | 12, number, number][] = [
  [10, 0.018, 44],
  [10, 0.024, 58],
  [10, 0.03, 73],
  [10, 0.036, 87],
  [10, 0.048, 116],
  [10, 0.06, 145],
  [10, 0.075, 182],
  [10, 0.105, 254],
  [12, 0.018, 50],
  [12, 0.024, 66],
  [12, 0.03, 83],
  [12, 0.036, 99],
  [12, 0.06, 165],
  [12, 0.075, 207],
];
const WITHDRAWAL: [6 | 8 | 10 | 12, string, number, number][] = [
  [6, '0.42', 0.42, 69.4],
  [6, '0.5', 0.5, 98.3],
  [6, '0.36', 0.36, 51],
  [8, '0.42', 0.42, 82.4],
  [8, '0.5', 0.5, 116.9],
  [8, '0.36', 0.36, 60.6],
  [10, '0.42', 0.42, 95.5],
  [10, '0.5', 0.5, 135.4],
  [10, '0.36', 0.36, 70.2],
  [12, '0.42', 0.42, 108.6],
  [12, '0.5', 0.5, 153.9],
  [12, '0.36', 0.36, 79.8],
];
/** Wall corner, 105 mph, exposure C, service level, 4 ft bay: lb for each foot of batten. */
const lineLoad = () => ((-netPressurePa(velocityPressurePa(105 * MPH, 0.85), claddingWallGcp('corner', 0.9), 0.18, 1) * 0.6 * 2 * FT) / LBF) * FT;
const number8 = () => (screwWithdrawalNPerM(0.42, SCREW_DIAMETER_M[8]) * IN * DURATION.wind * WET_WITHDRAWAL) / LBF;

referenceTable('fastening: screws, lags, nails', [
  ...table(
    'Wood and sheet-metal screw sizes, AISI note sheet and charts',
    'published',
    (
      [
        [7, 0.151],
        [8, 0.164],
        [10, 0.19],
        [12, 0.216],
        [14, 0.242],
      ] as const
    ).map(([no, d]): Row => [`fast.screwdia.${no}`, 'in', d, 1e-9, () => SCREW_DIAMETER_M[no] / IN]),
  ),
  ...table('Screw number 9, recalled', 'published', [['fast.screwdia.9', 'in', 0.177, 1e-9, () => SCREW_DIAMETER_M[9] / IN]], true),
  ...table('Printed page: G 0.45, No. 10', 'published', [['fast.screw.engtoolbox', 'lb/in', 109, 0.7, () => screw(0.45, 0.19)]]),
  ...table(
    'NDS eq. 12.2-2, worked',
    'worked',
    WITHDRAWAL.map(([no, label, g, w]): Row => [`fast.screwW.${no}.${label}`, 'lb/in', w, 0.1, () => perIn(screwWithdrawalNPerM(g, SCREW_DIAMETER_M[no]))]),
  ),
  ...table(
    'NDS table 12.2A, printed',
    'published',
    LAGS.map(([name, d, g, w]): Row => [`fast.lag.${name}.${g}`, 'lb/in', w, 0.7, () => lag(g, d)]),
  ),
  ...table('Printed page: 20d nail 0.203, G 0.45', 'published', [['fast.nail.engtoolbox', 'lb/in', 38, 0.2, () => nail(0.45, 0.203)]]),
  ...table('AWC Structural Wood Design Solved Examples E2.1a and E2.3', 'published', [
    ['fast.nail.awc_E2_1a', 'lb/in; lb', [20.67, 49.5], 0.01, () => [nail(0.42, 0.131), nail(0.42, 0.131) * 2.395]],
    ['fast.lag.awc_E2_3', 'lb', 955, 0.3, () => lag(0.55, 0.5) * 2.1875],
  ]),
  ...table('Page quoting the Wood Handbook', 'published', [['fast.wood_handbook.screw', 'lb', 1262, 0.5, () => perIn(screwUltimateNPerM(0.7, 0.164 * IN))]]),
  ...table('Formulas of NDS, Wood Handbook and FPL-093, worked', 'worked', [
    ['fast.ratio_ult_allow', '-', 5.51, 0.005, () => screwUltimateNPerM(0.42, 0.004) / screwWithdrawalNPerM(0.42, 0.004)],
    ['fast.nail.fpl093', 'lb/in', 103.3, 0.1, () => perIn(nailUltimateNPerM(0.42, 0.131 * IN))],
    ['fast.screw.issuhub_group', 'lb/in', 160.1, 0.1, () => screw(0.51, 0.216)],
    ['fast.screw.adj', 'lb', 92.3, 0.1, number8],
    ['wind.film_batten_line', 'lb/ft', 38.66, 0.05, lineLoad],
    ['fast.spacing.strength', 'ft', 2.39, 0.01, () => spacingByStrengthM(number8(), lineLoad())],
    ['fast.film.membrane', 'lb/ft', 90.9, 0.1, () => (filmTensionNPerM(15 * PSF, 4 * FT, 0.33 * FT) / LBF) * FT],
  ]),
  ...table('NDS 2018 12.2.5, recalled', 'published', [['fast.nds.pullthrough', 'lb', 86, 0.3, () => headPullThroughN(0.3 * IN, 0.42, 0.75 * IN) / LBF]], true),
]);

referenceTable('fastening: screws in thin steel, and wood grades', [
  ...table(
    'ICC-ES ESR-1976 table 2, Fu 45 ksi',
    'published',
    PULL_OUT.map(([no, t, lb]): Row => [`fast.aisi.pullout.${no}.${t}`, 'lb', lb, 0.8, () => pullOut(no, t)]),
  ),
  ...table('AISI S100 as in an opened note sheet', 'published', [
    ['fast.aisi.0283', '-', 0.2833, 5e-4, () => allowableScrewN(steelPullOutN(1, 1, 1))],
    [
      'fast.wire_gauge_tubes',
      'in',
      [0.019, 0.028, 0.035, 0.045, 0.057, 0.071, 0.102],
      1e-9,
      () => ([25, 22, 20, 18, 16, 14, 12] as const).map((g) => GAUGE_M[g] / IN),
    ],
  ]),
  ...table('Manufacturer test table: No. 10-16 in 18 ga, calculated ultimate', 'published', [
    ['fast.screw.test_vs_calc', 'lb', 349, 0.5, () => steelPullOutN(0.048 * IN, 0.19 * IN, 45_000 * PSI) / LBF],
  ]),
  ...table('AISI S100, worked', 'worked', [
    ['fast.aisi.pullout.8.035', 'lb', 73.2, 0.1, () => pullOut(8, 0.035)],
    ['fast.aisi.pullout.10.065', 'lb', 157.5, 0.2, () => pullOut(10, 0.065)],
    ['fast.aisi.pullover', 'lb', 337.5, 0.1, () => allowableScrewN(steelPullOverN(0.03 * IN, 0.5 * IN, 45_000 * PSI)) / LBF],
  ]),
  ...table('NDS 2015 supplement table 4A, as carried in a public code', 'published', [
    ['frame.nds4A.SPF_No.1/No.2', 'psi; G', [875, 450, 135, 425, 1150, 1.4e6, 510_000, 0.42], 1e-6, () => psi(WOOD_GRADES.sprucePineFirNo2)],
    ['frame.nds4A.DF-L_No.2', 'psi; G', [900, 575, 180, 625, 1350, 1.6e6, 580_000, 0.5], 1e-6, () => psi(WOOD_GRADES.douglasFirLarchNo2)],
    ['frame.nds4A.Hem-Fir_No.2', 'psi; G', [850, 525, 150, 405, 1300, 1.3e6, 470_000, 0.43], 1e-6, () => psi(WOOD_GRADES.hemFirNo2)],
    ['frame.nds4A.Western_cedars_No.2', 'psi; G', [700, 425, 155, 425, 650, 1e6, 370_000, 0.36], 1e-6, () => psi(WOOD_GRADES.westernCedarNo2)],
    ['frame.nds4A.SPF_Stud', 'psi; G', [675, 350, 135, 425, 725, 1.2e6, 440_000, 0.42], 1e-6, () => psi(WOOD_GRADES.sprucePineFirStud)],
    ['frame.nds4A.SPF_No.3', 'psi; G', [500, 250, 135, 425, 650, 1.2e6, 440_000, 0.42], 1e-6, () => psi(WOOD_GRADES.sprucePineFirNo3)],
    ['frame.nds.CF.2x4', '-', 1.5, 0, () => SIZE_FACTOR['2x4']],
    ['frame.nds.CF.2x8', '-', 1.2, 0, () => SIZE_FACTOR['2x8']],
    ['frame.nds.CF.2x12', '-', 1, 0, () => SIZE_FACTOR['2x12']],
    ['frame.nds.CD', '-', [0.9, 1, 1.15, 1.6], 0, () => [DURATION.permanent, DURATION.floor, DURATION.snow, DURATION.wind]],
  ]),
  ...table('HUD Residential Structural Design Guide, example 5.1', 'published', [
    [
      'frame.rsdg.section',
      'in3; in4',
      [13.14, 47.63],
      0.01,
      () => {
        const r = rectangle(1.5 * IN, 7.25 * IN);
        return [r.elastic / IN ** 3, r.inertia / IN ** 4];
      },
    ],
    ['frame.rsdg.Fb', 'psi', 1345, 0.6, () => 975 * REPETITIVE * SIZE_FACTOR['2x8']],
  ]),
]);
