import { IMPORTANCE, THERMAL_FACTOR } from '../../../libs/calc/src/data/snow-factors.js';
import { LIGHT_SNOW_N_PER_M3, WET_SNOW_N_PER_M3 } from '../../../libs/calc/src/data/snow-factors.js';
import { tubeSection } from '../../../libs/calc/src/data/tubes.js';
import {
  allowableMomentNm,
  archMomentHalfNm,
  archThrustCrownN,
  archThrustFullN,
  archThrustHalfN,
  roundTube,
  semicircleThrustCrownN,
  semicircleThrustFullN,
  simpleBeamDeflectionM,
  squareTube,
  type Section,
} from '../../../libs/calc/src/physics/statics.js';
import {
  driftWeightNPerM3,
  enGroundAtPa,
  enPitchedShape,
  enRoofPa,
  flatRoofPa,
  lowSlopeMinimumPa,
  rainOnSnowPa,
  slopeFactor,
} from '../../../libs/calc/src/rooms/snow-loads.js';
import { referenceTable, type CheckValue, type ReferenceCheck, type Tolerance } from '../../support/reference.js';
import { FT, IN, LBF, LB_KG, PSF, PSI } from '../../support/us-units.js';

type Row = [id: string, unit: string, expected: CheckValue, abs: number, got: () => CheckValue];
const table = (source: string, kind: ReferenceCheck['kind'], rows: readonly Row[], fromMemory = false): ReferenceCheck[] =>
  rows.map(([id, unit, expected, abs, got]) => ({
    id,
    room: 'snow',
    kind,
    source,
    fromMemory,
    unit,
    expected,
    tolerance: { abs, why: abs === 0 ? 'table value, read back as printed' : 'digits printed in the source' } satisfies Tolerance,
    got,
  }));

const psf = (pg: number, ce: number, ct: number, is: number) => flatRoofPa(pg * PSF, ce, ct, is) / PSF;
const us = (s: Section) => ({
  areaIn2: s.areaM2 / IN ** 2,
  inertiaIn4: s.inertia / IN ** 4,
  elasticIn3: s.elastic / IN ** 3,
  plasticIn3: s.plastic / IN ** 3,
  lbPerFt: (s.massKgPerM / LB_KG) * FT,
});
const round = (od: number, wall: number) => us(roundTube(od * IN, wall * IN));
const square = (od: number, wall: number) => us(squareTube(od * IN, wall * IN));

referenceTable('snow: loads', [
  ...table('ASCE 7-16 eq. 7.3-1: public engineering code tests and calculator pages', 'published', [
    ['snow.pf.30', 'psf', 21, 1e-9, () => psf(30, 1, 1, 1)],
    ['snow.pf.syracuse', 'psf', 34.7, 0.06, () => psf(50, 0.9, 1.1, 1)],
    ['snow.ps.cs09', 'psf', 18.9, 1e-9, () => 0.9 * psf(30, 1, 1, 1)],
  ]),
  ...table('ASCE 7-16 eq. 7.3-1 with its tables, worked by hand', 'worked', [
    ['snow.pf.unheated_shelter', 'psf', 20.16, 0.01, () => psf(30, 1, THERMAL_FACTOR.unheated, IMPORTANCE.I)],
    ['snow.pf.heated_greenhouse', 'psf', 14.28, 0.01, () => psf(30, 1, THERMAL_FACTOR.heatedGreenhouse, IMPORTANCE.I)],
    ['snow.pf.cold_heat_failure_ratio', 'ratio', 1.412, 0.001, () => THERMAL_FACTOR.unheated / THERMAL_FACTOR.heatedGreenhouse],
    ['snow.cs.20.1.2.slip', '-', 0.9091, 1e-4, () => slopeFactor(20, 1.2, true)],
    ['snow.cs.35.1.2.slip', '-', 0.6364, 1e-4, () => slopeFactor(35, 1.2, true)],
    ['snow.cs.45.1.2.slip', '-', 0.4545, 1e-4, () => slopeFactor(45, 1.2, true)],
    ['snow.cs.50.1.2.other', '-', 0.8, 1e-4, () => slopeFactor(50, 1.2, false)],
    ['snow.cs.45.1.0.slip', '-', 0.3846, 1e-4, () => slopeFactor(45, 1, true)],
    ['snow.cs.50.1.0.other', '-', 0.5, 1e-4, () => slopeFactor(50, 1, false)],
    ['snow.cs.15.1.2.slip', '-', 1, 1e-4, () => slopeFactor(15, 1.2, true)],
    ['snow.cs.70.1.2.slip', '-', 0, 1e-4, () => slopeFactor(70, 1.2, true)],
    ['snow.pm.low', 'psf', 12, 1e-3, () => lowSlopeMinimumPa(15 * PSF, 0.8, 10) / PSF],
    ['snow.pm.high', 'psf', 16, 1e-3, () => lowSlopeMinimumPa(40 * PSF, 0.8, 10) / PSF],
    ['snow.rain_on_snow', 'psf', 5, 1e-3, () => rainOnSnowPa(15 * PSF, 0.3, 20 * FT) / PSF],
  ]),
  ...table('ASCE 7-16 fig. 7.4-1: printed factor at 26.6 degrees, Ct 1.1, slippery', 'published', [
    ['snow.cs.printed.26_6', '-', 0.72, 0.005, () => slopeFactor(26.6, 1.1, true)],
  ]),
  ...table('Snow load guidance page: 10 pcf times 1.5 ft', 'published', [['snow.depth_rule', 'psf', 15, 0.001, () => (LIGHT_SNOW_N_PER_M3 * 1.5 * FT) / PSF]]),
  ...table('Grubinger and Person, Farming magazine: 30 to 40 psf per foot of very wet snow', 'published', [
    ['snow.wet_foot', 'psf', 40, 0.01, () => (WET_SNOW_N_PER_M3 * FT) / PSF],
  ]),
  ...table('ASCE 7-16 7.7.1, recalled', 'published', [['snow.gamma', 'pcf', 17.9, 0.001, () => driftWeightNPerM3(30 * PSF) / 157.087]], true),
  ...table('EN 1991-1-3 table 5.2 and a printed tool page', 'published', [['snow.en.s.085', 'kN/m2', 0.68, 1e-9, () => enRoofPa(enPitchedShape(15), 0.85)]]),
  ...table('EN 1991-1-3 table 5.2 and annex C form, worked by hand', 'worked', [
    ['snow.en.mu1.45', '-', 0.4, 1e-9, () => enPitchedShape(45)],
    ['snow.en.altitude', 'kN/m2', 0.9943, 1e-4, () => enGroundAtPa(0.85, 300)],
  ]),
]);

const pipe = (od: number, wall: number) => {
  const s = round(od, wall);
  return [s.areaIn2, s.inertiaIn4, s.elasticIn3];
};
const emt = (od: number, wall: number) => {
  const s = round(od, wall);
  return [s.inertiaIn4, s.elasticIn3, s.lbPerFt];
};
const whole = (s: ReturnType<typeof round>) => [s.areaIn2, s.inertiaIn4, s.elasticIn3, s.plasticIn3];
const MA = (od: number, wall: number, ksi: number) => allowableMomentNm(roundTube(od * IN, wall * IN).elastic, ksi * 1000 * PSI) / LBF / FT;
const PLF = LBF / FT;

referenceTable('snow: tubes and bows', [
  ...table('Mott, Machine Elements, table A16-6, schedule 40 pipe', 'published', [
    ['frame.sch40.1/2', 'in2, in4, in3', [0.25, 0.01709, 0.04069], 0.0012, () => pipe(0.84, 0.109)],
    ['frame.sch40.3/4', 'in2, in4, in3', [0.333, 0.03704, 0.0705], 0.0012, () => pipe(1.05, 0.113)],
    ['frame.sch40.1-1/4', 'in2, in4, in3', [0.669, 0.1947, 0.2346], 0.0012, () => pipe(1.66, 0.14)],
    ['frame.sch40.2', 'in2, in4, in3', [1.075, 0.6658, 0.5607], 0.0012, () => pipe(2.375, 0.154)],
  ]),
  ...table('Pipe schedule table, printed weights', 'published', [
    ['frame.sch40.wt.1', 'lb/ft', 1.679, 0.006, () => round(1.315, 0.133).lbPerFt],
    ['frame.sch40.wt.1-1/2', 'lb/ft', 2.718, 0.006, () => round(1.9, 0.145).lbPerFt],
    ['frame.sch40.wt.2', 'lb/ft', 3.653, 0.006, () => round(2.375, 0.154).lbPerFt],
  ]),
  ...table('Supplier table of square tube; sharp corners overstate by up to 6 per cent', 'published', [
    ['frame.square.wt2x.125', 'lb/ft', [3.06, 2.21], 0.14, () => [square(2, 0.125).lbPerFt, square(1.5, 0.125).lbPerFt]],
  ]),
  ...table('EMT dimensions as printed, properties worked', 'worked', [
    ['frame.emt.1/2', 'in4, in3, lb/ft', [0.0048, 0.0137, 0.3], 0.006, () => emt(0.706, 0.042)],
    ['frame.emt.3/4', 'in4, in3, lb/ft', [0.0128, 0.0279, 0.46], 0.006, () => emt(0.922, 0.049)],
    ['frame.emt.1', 'in4, in3, lb/ft', [0.0304, 0.0522, 0.67], 0.006, () => emt(1.163, 0.057)],
    ['frame.emt.2', 'in4, in3, lb/ft', [0.2476, 0.2254, 1.48], 0.006, () => emt(2.197, 0.065)],
  ]),
  ...table('Tube formulas, worked', 'worked', [
    ['frame.round.1.375x0.058', 'in2 in4 in3 in3', [0.24, 0.0521, 0.0758, 0.1007], 0.0006, () => whole(round(1.375, 0.058))],
    ['frame.round.1.5x0.035', 'in2 in4 in3 in3', [0.1611, 0.0432, 0.0577, 0.0751], 0.0006, () => whole(round(1.5, 0.035))],
    ['frame.round.1.9x0.065', 'in2 in4 in3 in3', [0.3747, 0.1579, 0.1662, 0.219], 0.0006, () => whole(round(1.9, 0.065))],
    ['frame.square.1.5x0.065', 'in2 in4 in3 in3', [0.3731, 0.1283, 0.1711, 0.2009], 0.0006, () => whole(square(1.5, 0.065))],
    ['frame.square.2.0x0.083', 'in2 in4 in3 in3', [0.6364, 0.3905, 0.3905, 0.4578], 0.0006, () => whole(square(2, 0.083))],
    ['frame.beam.defl', 'in', 0.699, 0.002, () => simpleBeamDeflectionM(40 * PLF, 6 * FT, 29e6 * PSI, roundTube(1.375 * IN, 0.065 * IN).inertia) / IN],
    ['frame.arch.udl_H', 'lb', 140, 1e-6, () => archThrustFullN(40 * PLF, 14 * FT, 7 * FT) / LBF],
    ['frame.arch.half_H', 'lb', 70, 1e-6, () => archThrustHalfN(40 * PLF, 14 * FT, 7 * FT) / LBF],
    ['frame.arch.half_M', 'lb-ft', 122.5, 1e-6, () => archMomentHalfNm(40 * PLF, 14 * FT) / LBF / FT],
    ['frame.arch.crown_H', 'lb', 39.06, 0.01, () => archThrustCrownN(100, 14, 7)],
  ]),
  ...table(
    'Two-hinged semicircle and allowable moment, recalled',
    'published',
    [
      ['frame.arch.semicircle_udl', 'lb', 118.8, 0.1, () => semicircleThrustFullN(40 * PLF, 7 * FT) / LBF],
      ['frame.arch.semicircle_pt', 'lb', 31.83, 0.01, () => semicircleThrustCrownN(100)],
      ['frame.allow_moment', 'lb-ft', 208.8, 0.3, () => MA(1.375, 0.065, 50)],
      ['frame.allow_moment_unknown', 'lb-ft', 113.5, 0.3, () => MA(1.375, 0.058, 30)],
    ],
    true,
  ),
  ...table('A tube nobody measured has no section', 'practice', [
    ['practice.unmeasured-tube', '-', null, 0, () => (tubeSection({ shape: 'round', outsideMm: 35, wallMm: 'unknown', rust: 'none' }) === null ? null : 1)],
  ]),
]);
