import { describe, expect, test } from '@jest/globals';
import { computeAnchorage, computeFastening, computeSnow, computeWind } from '@lathwork/calc';
import {
  AnchorageResultSchema,
  FasteningResultSchema,
  SnowResultSchema,
  WindResultSchema,
  type Anchor,
  type SiteInputs,
  type SnowBasis,
  type StructureInputs,
  type WindBasis,
} from '@lathwork/model';
import { Value } from '@sinclair/typebox/value';
import { exampleSite, exampleStructure, geometryFixture } from '../../support/loads-fixture.js';

const run = (siteOver: Partial<SiteInputs> = {}, structureOver: Partial<StructureInputs> = {}) => {
  const site = exampleSite(siteOver);
  const structure = exampleStructure(structureOver);
  const geometry = geometryFixture(structure);
  const wind = computeWind({ site, structure, geometry });
  return {
    wind,
    snow: computeSnow({ site, structure, geometry }),
    anchorage: computeAnchorage({ site, structure, geometry, wind: wind.result }),
    fastening: computeFastening({ structure, geometry, wind: wind.result }),
  };
};
const windOf = (over: Partial<WindBasis>): WindBasis => ({
  speedMPerS: 45,
  averaging: 'gust3s',
  level: 'ultimate',
  codeEdition: 'ASCE 7-16',
  riskCategory: 'I',
  source: 'a test',
  readOn: '2026-01-01',
  ...over,
});
const snowOf = (over: Partial<SnowBasis>): SnowBasis => ({
  loadPa: 1000,
  surface: 'ground',
  level: 'service',
  codeEdition: 'ASCE 7-16',
  source: 'a test',
  readOn: '2026-01-01',
  ...over,
});
const anchorOf = (over: Partial<Anchor>): Anchor => ({
  kind: 'auger',
  perPostCount: 1,
  depthM: 0.9,
  diameterM: 0.3,
  installTorqueNm: 'unknown',
  pulledToN: 'unknown',
  ballastKg: 'unknown',
  ballastIsWater: false,
  ...over,
});
const codes = (out: { notes: { code: string; severity: string }[] }) => out.notes.map((n) => n.code);
const severityOf = (out: { notes: { code: string; severity: string }[] }, code: string) => out.notes.find((n) => n.code === code)?.severity;

describe('wind: bases and refusals', () => {
  test('unknown wind: not assessed, no numbers, a question', () => {
    const { wind, anchorage, fastening } = run({ wind: 'unknown' });
    expect(wind.result).toMatchObject({
      verdict: 'notAssessed',
      standard: 'none',
      gustMPerS: null,
      totalUpliftN: null,
      liftsUnanchoredAtMPerS: null,
      cases: [],
      posts: [],
      zones: [],
    });
    expect(severityOf(wind, 'wind.unknown-ask')).toBe('ask');
    expect(anchorage.result).toMatchObject({ verdict: 'notAssessed', rated: false, capacityEachN: null, worstDemandN: null });
    expect(fastening.result.verdict).toBe('notAssessed');
    expect(fastening.result.zones.every((z) => z.suctionPa === null && z.cappedBy === 'practice')).toBe(true);
    expect(fastening.result.screwsCount).toBeGreaterThan(0);
  });

  test('a gust over 300 km/h is refused', () => {
    const { wind } = run({ wind: windOf({ speedMPerS: 84 }) });
    expect(wind.result.verdict).toBe('notAssessed');
    expect(severityOf(wind, 'wind.gust-refused')).toBe('stop');
    expect(run({ wind: windOf({ speedMPerS: 83 }) }).wind.result.gustMPerS).toBe(83);
  });

  test('a service speed becomes ultimate by the square root of 0.6', () => {
    const { wind } = run({ wind: windOf({ speedMPerS: 40, level: 'service' }) });
    expect(wind.result.gustMPerS).toBeCloseTo(51.64, 2);
    expect(codes(wind)).toContain('wind.service-to-ultimate');
  });

  test('a ten-minute mean of another code is turned into a gust and says so; a fastest mile is not', () => {
    const mean = run({ wind: windOf({ speedMPerS: 20, averaging: 'mean10min' }) }).wind;
    expect(mean.result.gustMPerS).toBeCloseTo(31, 9);
    expect(codes(mean)).toContain('wind.mean-to-gust');
    const mile = run({ wind: windOf({ averaging: 'fastestMile' }) }).wind;
    expect(mile.result.verdict).toBe('notAssessed');
    expect(severityOf(mile, 'wind.basis-ask')).toBe('ask');
  });

  test('on a hilltop nothing is promised; unknown asks and goes on', () => {
    const yes = run({ nearHilltop: 'yes' }).wind;
    expect(yes.result).toMatchObject({ verdict: 'notAssessed', gustMPerS: null, posts: [] });
    expect(severityOf(yes, 'wind.hilltop-ask')).toBe('ask');
    const unknown = run({ nearHilltop: 'unknown' }).wind;
    expect(unknown.result.posts).toHaveLength(6);
    expect(codes(unknown)).toContain('wind.hilltop-ask');
  });

  test('European readings use European tables for a gable and refuse what is not held', () => {
    const european = windOf({ speedMPerS: 26, averaging: 'mean10min', level: 'service', codeEdition: 'EN 1991-1-4' });
    const gable = run({ wind: european }, { ridgeM: 1.9812 + 0.8 }).wind;
    expect(gable.result.standard).toBe('EN 1991-1-4');
    expect(gable.result.posts.every((p) => p.upliftN > 0)).toBe(true);
    expect(codes(gable)).toEqual(expect.arrayContaining(['wind.memory-coefficients', 'wind.zones-not-held']));
    expect(gable.result.zones).toEqual([]);
    const leanTo = run({ wind: european }, { kind: 'leanTo' }).wind;
    expect(leanTo.result.verdict).toBe('notAssessed');
    expect(codes(leanTo)).toContain('wind.en-shape-not-held');
    const flat = run({ wind: european }, { ridgeM: 1.9812 + 0.2 }).wind;
    expect(flat.result.verdict).toBe('notAssessed');
    expect(codes(flat)).toContain('wind.outside-validity');
  });

  test('a speed of a code that is not held is used with a question', () => {
    expect(severityOf(run({ wind: windOf({ codeEdition: 'AS/NZS 1170.2' }) }).wind, 'wind.code-not-held')).toBe('ask');
  });

  test('below sea level the denser air is counted; above it the thinner is not', () => {
    const q = (elevationM: number) => run({ elevationM }).wind.result.velocityPressurePa ?? 0;
    expect(q(2000)).toBe(q(0));
    expect(q(-400) / q(0)).toBeCloseTo(Math.exp(0.000119 * 400), 9);
  });
});

describe('wind: shelters', () => {
  test('weight unknown: from measured tube, else nothing', () => {
    const measured = run({}, { frameMassKg: 'unknown' }).wind;
    // 3 frames of 2 legs 1.981 m and 2 rafters 1.622 m at 1.215 kg/m (0.8159 lb/ft)
    expect(measured.result.deadLoadN).toBeCloseTo(3 * 2 * (1.9812 + 1.6218) * 1.2153 * 9.80665, -1);
    expect(codes(measured)).toContain('wind.weight-estimated');
    const unmeasured = run({}, { frameMassKg: 'unknown', tube: { shape: 'round', outsideMm: 35, wallMm: 'unknown', rust: 'none' } }).wind;
    expect(unmeasured.result.deadLoadN).toBeNull();
    expect(unmeasured.result.liftsUnanchoredAtMPerS).toBeNull();
    expect(codes(unmeasured)).toContain('wind.weight-unknown');
  });

  test('an arch is raised by a fifth for its recalled coefficients, and says so', () => {
    const { wind } = run({}, { kind: 'roundArch', eaveM: 0, ridgeM: 1.524 });
    expect(severityOf(wind, 'wind.memory-coefficients')).toBe('care');
    expect(wind.result.posts.every((p) => p.upliftN > 0)).toBe(true);
    // Semicircle from the ground, closed from the left: windward quarter +0.70, centre -1.20, leeward -0.50 on plan, gust 0.85, inside 0.18.
    const q = wind.result.velocityPressurePa ?? 0;
    const plan = 3.048 * 6.096;
    const upward = -0.25 * (0.85 * 0.7 - 0.18) + 0.5 * (0.85 * 1.2 + 0.18) + 0.25 * (0.85 * 0.5 + 0.18);
    const closed = wind.result.cases.find((c) => c.caseId === 'normalFromLeft/enclosed');
    expect((closed?.upliftN ?? 0) / (1.2 * q * plan * upward)).toBeCloseTo(1, 1);
  });

  test("a lean-to's high side carries no wind", () => {
    const { wind } = run({}, { kind: 'leanTo', ridgeM: 2.8, hostWall: { material: 'masonry', heightM: 4, roofShedsOntoIt: 'no' } });
    expect(codes(wind)).toContain('wind.lean-to-host-wall');
    const fromRight = wind.result.cases.find((c) => c.caseId === 'normalFromRight/enclosed');
    const fromLeft = wind.result.cases.find((c) => c.caseId === 'normalFromLeft/enclosed');
    expect(fromRight?.upliftN).toBeGreaterThan(0);
    expect(fromLeft?.upliftN).toBeGreaterThan(0);
  });

  test('an unbraced frame is named before bracing day', () => {
    expect(run({}, { braced: 'none' }).wind.notes.find((n) => n.code === 'wind.unbraced')?.beforeTask).toBe('brace');
    expect(codes(run({}, { braced: 'everyBay' }).wind)).not.toContain('wind.unbraced');
  });
});

describe('snow', () => {
  test('no tube data: no capacity, clear at any build-up, review blocked', () => {
    const { snow } = run({}, { tube: { shape: 'round', outsideMm: 'unknown', wallMm: 'unknown', rust: 'unknown' } });
    expect(snow.result).toMatchObject({ verdict: 'notAssessed', bowCapacityNm: null, clearAt: null });
    expect(severityOf(snow, 'snow.frame-unrated')).toBe('stop');
    expect(snow.result.bowMomentNm).toBeGreaterThan(0);
  });

  test('unknown snow: no loads, but the tube still tells at which depth to clear', () => {
    const { snow } = run({ snow: 'unknown' });
    expect(snow.result).toMatchObject({ verdict: 'notAssessed', groundPa: null, flatRoofPa: null, slopedPa: null, unbalancedPa: null, bowMomentNm: null });
    expect(snow.result.clearAt?.wetM).toBeGreaterThan(0);
    expect(codes(snow)).toContain('snow.unknown-ask');
  });

  test('no snow is no red flag', () => {
    expect(run({ snow: snowOf({ loadPa: 0 }) }).snow.result).toMatchObject({ verdict: 'noRedFlag', bowMomentNm: 0 });
  });

  test('importance follows the risk category of the wind reading, else one and says so', () => {
    expect(run({ wind: windOf({ riskCategory: 'II' }) }).snow.result.factors.importance).toBe(1);
    const none = run({ wind: windOf({ riskCategory: 'none' }) }).snow;
    expect(none.result.factors.importance).toBe(1);
    expect(codes(none)).toContain('snow.importance-assumed');
  });

  test('a European reading uses mu1; a roof reading is reckoned back to the ground', () => {
    const en = run({ snow: snowOf({ loadPa: 850, codeEdition: 'EN 1991-1-3' }) }).snow.result;
    expect(en).toMatchObject({ standard: 'EN 1991-1-3', flatRoofPa: 680 });
    const roof = run({ snow: snowOf({ loadPa: 672, surface: 'roof' }) }).snow;
    expect(roof.result.groundPa).toBeCloseTo(1000, 6);
    expect(codes(roof)).toContain('snow.ground-from-roof');
  });

  test('a lean-to under a roof that sheds snow is never passed', () => {
    const leanTo = (over: Partial<StructureInputs>) =>
      run({ snow: snowOf({ loadPa: 100 }) }, { kind: 'leanTo', widthM: 2, ridgeM: 2.6, bowsAtM: [0, 1, 2, 3, 4, 5, 6.096], ...over }).snow;
    const shed = leanTo({ hostWall: { material: 'timber', heightM: 5, roofShedsOntoIt: 'yes' } });
    expect(shed.result).toMatchObject({ driftFlag: true, verdict: 'notAssessed' });
    expect(codes(shed)).toEqual(expect.arrayContaining(['snow.drift-ask', 'snow.sliding-ask']));
    const low = leanTo({ hostWall: { material: 'timber', heightM: 2.6, roofShedsOntoIt: 'no' } });
    expect(low.result).toMatchObject({ driftFlag: false, verdict: 'noRedFlag' });
  });
});

describe('anchorage', () => {
  test('nothing chosen does not pass where the wind lifts, whatever the soil', () => {
    const { anchorage } = run({ soilClass: 'unknown' }, { anchor: anchorOf({ kind: 'none', perPostCount: 0 }) });
    expect(anchorage.result).toMatchObject({ verdict: 'doesNotPass', capacityEachN: 0, capacityBasis: 'none' });
    expect(severityOf(anchorage, 'anchorage.does-not-hold')).toBe('stop');
  });

  test('soil or tube unknown: not rated, no capacity, a stop note', () => {
    for (const [site, structure, reason] of [
      [{ soilClass: 'unknown' }, {}, 'soil-unknown'],
      [{}, { tube: { shape: 'round', outsideMm: 38, wallMm: 'unknown', rust: 'none' } }, 'tube-unknown'],
    ] as const) {
      const { anchorage } = run(site, { anchor: anchorOf({ pulledToN: 9000 }), ...structure });
      expect(anchorage.result).toMatchObject({ rated: false, verdict: 'notAssessed', capacityEachN: null, capacityBasis: 'none' });
      expect(anchorage.result.posts.every((p) => p.capacityN === null && p.verdict === 'notAssessed')).toBe(true);
      expect(anchorage.notes.find((n) => n.code === 'anchorage.unrated')).toMatchObject({ severity: 'stop', params: { reason } });
    }
  });

  test('an auger nobody pulled or measured is worth nothing on paper', () => {
    const { anchorage } = run({}, { anchor: anchorOf({}) });
    expect(anchorage.result).toMatchObject({ rated: false, verdict: 'notAssessed', capacityEachN: null });
    expect(severityOf(anchorage, 'anchorage.auger-unproved')).toBe('stop');
  });

  test('capacity by kind names its basis and its factor', () => {
    const of = (over: Partial<Anchor>) => run({}, { anchor: anchorOf(over) }).anchorage.result;
    expect(of({ pulledToN: 6000 })).toMatchObject({ capacityEachN: 2000, factorOfSafety: 3, capacityBasis: 'pullCheck' });
    expect(of({ installTorqueNm: 338.95 }).capacityEachN).toBeCloseTo(1250 * 4.4482, -1);
    expect(of({ kind: 'concretePier', diameterM: 0.3048, depthM: 0.9144 }).capacityEachN).toBeCloseTo(212.1 * 4.4482, -1);
    expect(of({ kind: 'ballast', ballastKg: 200 }).capacityEachN).toBeCloseTo(0.6 * 200 * 9.80665, 9);
    expect(of({ kind: 'drivenPipe', depthM: 0.5 })).toMatchObject({ capacityBasis: 'published', factorOfSafety: 2.5 });
    // Deeper than the tests earns nothing; shallower falls with the square.
    expect(of({ kind: 'drivenPipe', depthM: 1 }).capacityEachN).toBe(of({ kind: 'drivenPipe', depthM: 0.5 }).capacityEachN);
    expect(of({ kind: 'drivenPipe', depthM: 0.25 }).capacityEachN).toBeCloseTo((of({ kind: 'drivenPipe', depthM: 0.5 }).capacityEachN ?? 0) / 4, 9);
    expect(of({ kind: 'concretePier', diameterM: 'unknown' })).toMatchObject({ rated: false, verdict: 'notAssessed' });
  });

  test('ratio words: over one does not pass, from 0.7 marginal, under it no red flag', () => {
    const worst = run().anchorage.result.worstDemandN ?? 0;
    const word = (ratio: number) => run({}, { anchor: anchorOf({ pulledToN: (3 * worst) / ratio }) }).anchorage.result.verdict;
    expect([word(1.01), word(0.99), word(0.71), word(0.69)]).toEqual(['doesNotPass', 'marginal', 'marginal', 'noRedFlag']);
  });

  test('soft ground asks for an engineer, except for a dead weight on top of it', () => {
    const soft = run({ soilClass: '5' }, { anchor: anchorOf({ pulledToN: 9000 }) }).anchorage;
    expect(codes(soft)).toContain('anchorage.soft-ground-engineer');
    expect(soft.result.verdict).toBe('notAssessed');
    expect(run({ soilClass: '5' }, { anchor: anchorOf({ kind: 'ballast', ballastKg: 200 }) }).anchorage.result.rated).toBe(true);
  });

  test('forbidden permanent anchors: both needs are shown, with what comes out again', () => {
    const { anchorage } = run({ permanentAnchors: 'forbidden' }, { anchor: anchorOf({ kind: 'concretePier' }) });
    const note = anchorage.notes.find((n) => n.code === 'anchorage.permit-conflict');
    expect(note).toMatchObject({ severity: 'ask', beforeTask: 'permission', params: { anchorsNeeded: true } });
    expect(note?.params['removableKinds']).toContain('ballast');
    expect(codes(run({ permanentAnchors: 'allowed' }, { anchor: anchorOf({ kind: 'concretePier' }) }).anchorage)).not.toContain('anchorage.permit-conflict');
  });

  test('digging needs a locate, frost needs depth', () => {
    const { anchorage } = run({ frostDepthM: 1.2 }, { anchor: anchorOf({ kind: 'concretePier', depthM: 0.9 }) });
    expect(anchorage.notes.find((n) => n.code === 'anchorage.locate-utilities')).toMatchObject({ severity: 'ask', beforeTask: 'anchors' });
    expect(anchorage.notes.find((n) => n.code === 'anchorage.frost-heave')?.params['wantedM']).toBeCloseTo(1.35, 9);
    expect(codes(run({}, { anchor: anchorOf({ kind: 'ballast', ballastKg: 100 }) }).anchorage)).not.toContain('anchorage.locate-utilities');
  });
});

describe('fastening', () => {
  test('wide bays make the screws stand too close, and the plan stops', () => {
    const wide = run({ wind: windOf({ speedMPerS: 70 }) }, { bowsAtM: [0, 6.096] }).fastening;
    expect(wide.result.verdict).toBe('doesNotPass');
    expect(severityOf(wide, 'fastening.spacing-too-close')).toBe('stop');
  });

  test('close bows: practice sets the spacing', () => {
    const close = run({ wind: windOf({ speedMPerS: 25 }) }, { bowsAtM: [0, 0.6, 1.2, 1.8, 2.4, 3, 3.6, 4.2, 4.8, 5.4, 6.096] }).fastening.result;
    expect(close.zones.map((z) => [z.zone, z.spacingMm, z.cappedBy])).toEqual([
      ['field', 300, 'practice'],
      ['edge', 200, 'practice'],
      ['corner', 150, 'practice'],
    ]);
    expect(close.verdict).toBe('noRedFlag');
    // field 4.296 m: 15 + 1; edge 6.096 m: 31 + 1; corner 0.9 m: 6 + 1 and two rafters 3.244 m: 22 + 1.
    expect(close.zones.map((z) => z.screws)).toEqual([16, 32, 30]);
  });

  test('boards on a tube of unmeasured wall are counted by practice and asked about', () => {
    const out = run({}, { tube: { shape: 'round', outsideMm: 38, wallMm: 'unknown', rust: 'none' } }).fastening;
    expect(codes(out)).toContain('fastening.tube-wall-ask');
    // two boards of 6.096 m at 400 mm: 16 + 1 each
    expect(out.result.tubeScrewsCount).toBe(34);
  });
});

test('results keep to their schemas, with every input known and with every one unknown', () => {
  const unknowns = run(
    { wind: 'unknown', snow: 'unknown', soilClass: 'unknown', frostDepthM: 'unknown', nearHilltop: 'unknown', permanentAnchors: 'unknown' },
    { frameMassKg: 'unknown', tube: { shape: 'round', outsideMm: 'unknown', wallMm: 'unknown', rust: 'unknown' } },
  );
  for (const all of [run(), unknowns]) {
    for (const [schema, out] of [
      [WindResultSchema, all.wind],
      [SnowResultSchema, all.snow],
      [AnchorageResultSchema, all.anchorage],
      [FasteningResultSchema, all.fastening],
    ] as const) {
      expect([...Value.Errors(schema, out.result)].map((e) => `${e.path} ${e.message}`)).toEqual([]);
    }
  }
});
