import { computeAnchorage, computeFastening, computeSnow, computeWind } from '@lathwork/calc';
import { asceVariants } from '../../../libs/calc/src/rooms/wind-cases.js';
import { windwardRoofCp } from '../../../libs/calc/src/rooms/wind-coefficients.js';
import { exampleSite, exampleStructure, geometryFixture } from '../../support/loads-fixture.js';
import { referenceTable, type CheckValue, type ReferenceCheck, type Tolerance } from '../../support/reference.js';
import { FT, LBF, LB_KG, MPH, PSF } from '../../support/us-units.js';

/** 10 x 20 ft canopy, gable 20 degrees, three frames, 450 lb, 105 mph, exposure C, 25 psf: worked by hand twice, in closed form and by strips. */
const site = exampleSite();
const structure = exampleStructure();
const geometry = geometryFixture(structure);
const wind = computeWind({ site, structure, geometry }).result;
const snow = computeSnow({ site, structure, geometry }).result;
const anchorage = computeAnchorage({ site, structure, geometry, wind });

const SOURCE = 'Integrated example of a 10 x 20 ft canopy, hand calculation in closed form and by strips (docs/worked)';
const one: Tolerance = { rel: 0.01, why: 'the hand calculation rounds Kz to 0.85 and uses 0.00256 psf; 1 per cent asked' };
const check = (id: string, room: ReferenceCheck['room'], unit: string, expected: CheckValue, got: () => CheckValue, tolerance = one): ReferenceCheck => ({
  id,
  room,
  kind: 'worked',
  source: SOURCE,
  unit,
  expected,
  tolerance,
  got,
});
const lb = (n: number | null | undefined): number => (n ?? NaN) / LBF;
const totals = (caseId: string) => wind.cases.find((c) => c.caseId === caseId);
const post = (id: string): number => lb(wind.posts.find((p) => p.postId === id)?.upliftN);
const zone = (surface: 'wall' | 'roof', name: string): number => (wind.zones.find((z) => z.surface === surface && z.zone === name)?.suctionPa ?? NaN) / PSF;
const parallel = totals('parallel/partiallyEnclosed');
const holding = (kind: string) => anchorage.result.wouldHold.find((w) => w.kind === kind);

/** Forecast gust at which the middle post asks for a given allowable load: auger of that capacity in the same plan. */
const gustLimit = (allowableLb: number): number => {
  // Kt 10 per foot over 2: an allowable load of R lb comes from R / 5 ft-lb.
  const anchor = { ...structure.anchor, installTorqueNm: (allowableLb / 5) * FT * LBF };
  const note = computeAnchorage({ site, structure: { ...structure, anchor }, geometry, wind }).notes.find((n) => n.code === 'anchorage.gust-limit');
  return Number(note?.params['gustMPerS']) / MPH;
};

referenceTable('integrated example, end to end', [
  check('chain.h', 'wind', 'ft', [8.32, 7.41], () => [geometry.ridgeM / FT, wind.meanRoofHeightM / FT]),
  check('chain.q', 'wind', 'psf', 20.392, () => (wind.velocityPressurePa ?? NaN) / PSF),
  check('chain.cp_windward', 'wind', 'Cp', -0.5446, () => windwardRoofCp(20, 0.741).suction, { abs: 1e-4, why: 'four decimals' }),
  check('chain.uplift_normal.enclosed', 'wind', 'lb', 2718, () => lb(totals('normalFromLeft/enclosed')?.upliftN)),
  check('chain.uplift_normal.door_open', 'wind', 'lb', 4227, () => lb(totals('normalFromLeft/partiallyEnclosed')?.upliftN)),
  check('chain.uplift_parallel.enclosed', 'wind', 'lb', 2802, () => lb(totals('parallel/enclosed')?.upliftN)),
  check('chain.uplift_parallel.door_open', 'wind', 'lb', 4311, () => lb(parallel?.upliftN)),
  check('chain.net_asd', 'wind', 'lb', 2316, () => 0.6 * lb(parallel?.upliftN) - 0.6 * lb(wind.deadLoadN)),
  check('chain.base_shear', 'wind', 'lb', 1779, () => 0.6 * lb(totals('normalFromLeft/partiallyEnclosed')?.shearN)),
  check('chain.windward_row', 'wind', 'lb-ft; lb', [18_405, 853, 426], () => [
    (0.6 * lb(totals('normalFromLeft/partiallyEnclosed')?.overturningNm)) / FT,
    post('A2'),
    post('A1'),
  ]),
  check('chain.anchor_pier', 'anchorage', 'ft3 of concrete', 9.47, () => (holding('concretePier')?.massKg ?? NaN) / LB_KG / 150),
  check('chain.auger_torque', 'anchorage', 'ft-lb', 171, () => (holding('augerTorque')?.torqueNm ?? NaN) / FT / LBF),
  check('chain.v_lim', 'anchorage', 'mph', [30.3, 44.8, 97.3], () => [60, 212, 1250].map(gustLimit)),
  check('chain.snow', 'snow', 'psf', [16.8, 20], () => [(snow.flatRoofPa ?? NaN) / PSF, (snow.unbalancedPa ?? NaN) / PSF]),
  check('chain.rafter_snow', 'snow', 'lb-ft', [625, 113.5], () => [lb(snow.bowMomentNm) / FT, lb(snow.bowCapacityNm) / FT]),
  check('chain.film.wall4', 'wind', 'psf', 15.66, () => zone('wall', 'field')),
  check('chain.film.wall5', 'wind', 'psf', 19.33, () => zone('wall', 'corner')),
  check('chain.film.roof_z3e_gable20_27', 'wind', 'psf', 32.79, () => zone('roof', 'edge')),
]);

/** The hand calculation shows posts under wind along the ridge alone; the room gives the worse of all winds, so that one wind is taken out here. */
const alongFromFront = asceVariants(
  { structure, geometry, heightM: geometry.meanRoofHeightM, pitchDeg: geometry.roofSlopeDeg },
  wind.velocityPressurePa ?? NaN,
  1,
).find((v) => v.direction === 'parallel' && v.enclosure === 'partiallyEnclosed');
const alongNet = (postId: string, share: number): number => 0.6 * lb(alongFromFront?.posts.find((p) => p.postId === postId)?.pullN) - 0.6 * share * 450;
referenceTable('integrated example, posts under parallel wind', [
  check('chain.posts_parallel', 'wind', 'lb', [368, 577], () => [alongNet('A1', 1 / 8), alongNet('A2', 1 / 4)]),
]);

const winterStorm = 55 * MPH;
referenceTable('what people in the trade know', [
  {
    id: 'practice.unanchored-canopy-lifts',
    room: 'wind',
    kind: 'practice',
    source: 'An unanchored film-covered canopy of 10 x 20 ft lifts in an ordinary winter storm',
    unit: '-',
    expected: true,
    tolerance: { abs: 0, why: 'yes or no' },
    // Well under the 55 mph of a storm, and under half of the design speed, also when it weighs as much as the heaviest such frame.
    got: () =>
      [45, 95, 204].every((massKg) => {
        const light = exampleStructure({ frameMassKg: massKg });
        const lifts = computeWind({ site, structure: light, geometry: geometryFixture(light) }).result.liftsUnanchoredAtMPerS;
        return lifts !== null && lifts < winterStorm / 2 && lifts < (105 * MPH) / 2;
      }),
  },
  {
    id: 'practice.bare-pipe-holds-a-tenth',
    room: 'anchorage',
    kind: 'practice',
    source: 'A bare hoop leg pushed 20 in into the ground holds an order of magnitude less than the post asks',
    unit: '-',
    expected: true,
    tolerance: { abs: 0, why: 'yes or no' },
    got: () => {
      const pipe = exampleStructure({ anchor: { ...structure.anchor, kind: 'drivenPipe', depthM: 0.5, installTorqueNm: 'unknown' } });
      const worst = Math.max(...computeAnchorage({ site, structure: pipe, geometry, wind }).result.posts.map((p) => p.demandRatio ?? 0));
      return worst > 10 && worst < 20;
    },
  },
  {
    id: 'practice.edges-get-more-screws',
    room: 'fastening',
    kind: 'practice',
    source: 'Edges and corners of a film get screws closer than the field does',
    unit: '-',
    expected: true,
    tolerance: { abs: 0, why: 'yes or no' },
    got: () => {
      const close = exampleStructure({ bowsAtM: [0, 1.2, 2.4, 3.6, 4.8, 20 * FT] });
      const zones = computeFastening({ structure: close, geometry: geometryFixture(close), wind }).result.zones;
      const at = (z: string) => zones.find((one) => one.zone === z)?.spacingMm ?? NaN;
      return at('corner') < at('edge') && at('edge') < at('field');
    },
  },
]);
