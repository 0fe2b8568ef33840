import type { GeometryResult, Note, SiteInputs, SnowResult, StructureInputs } from '@lathwork/model';
import {
  BARE_FROM_DEG,
  CLEAR_AT_FRAC,
  EXPOSURE_FACTOR,
  IMPORTANCE,
  LIGHT_SNOW_N_PER_M3,
  SIMPLE_RAFTER_M,
  THERMAL_FACTOR,
  WET_SNOW_N_PER_M3,
} from '../data/snow-factors.js';
import { tubeSection } from '../data/tubes.js';
import { MEMORY_RAISE } from '../data/wind-coefficients.js';
import { allowableMomentNm, archMomentHalfNm, simpleBeamMomentNm, UNKNOWN_TUBE_YIELD_PA } from '../physics/statics.js';
import type { SourceId } from '../sources/bibliography.js';
import { notesOf, outsideValidity, type RoomModel, type RoomOutput } from './room.js';
import { enArchShape, enPitchedShape, enRoofPa, flatRoofPa, lowSlopeMinimumPa, rainOnSnowPa, slopeFactor } from './snow-loads.js';

export interface SnowArgs {
  site: SiteInputs;
  structure: StructureInputs;
  geometry: GeometryResult;
}

export const MODEL = {
  room: 'snow',
  title: 'Snow on the roof, balanced and on one side, and what one bow of the frame can take',
  ranges: {
    groundPa: { unit: 'Pa', min: 0, max: 15_000, sourceId: 'ASCE7-16', safety: true },
    roofSlopeDeg: { unit: 'deg', min: 0, max: 80, sourceId: 'ASCE7-16', safety: true },
    eaveToRidgeM: { unit: 'm', min: 0, max: SIMPLE_RAFTER_M, sourceId: 'ASCE7-16-MEMORY', safety: true },
  },
  sources: ['ASCE7-16', 'ASCE7-16-MEMORY', 'EN1991-1-3', 'EN1991-1-3-MEMORY', 'STATICS', 'TUBE-STEEL-MEMORY', 'SNOW-WET', 'SNOW-TEN-PCF', 'JUDGEMENT-LOADS'],
} as const satisfies RoomModel;

const note = notesOf('snow');

type Loads = Pick<SnowResult, 'standard' | 'groundPa' | 'flatRoofPa' | 'slopedPa' | 'unbalancedPa' | 'factors'> & { notes: Note[] };

/** Mean pitch; an arch is taken from springing to crown. */
const pitchOf = ({ geometry }: SnowArgs): number => geometry.roofSlopeDeg;
const eaveToRidgeM = ({ structure }: SnowArgs): number => (structure.kind === 'leanTo' ? structure.widthM : structure.widthM / 2);

const importanceOf = (site: SiteInputs): { importance: number; notes: Note[] } => {
  const category = site.wind === 'unknown' ? 'none' : site.wind.riskCategory;
  if (category === 'none') return { importance: 1, notes: [note('importance-assumed', 'note', { importanceRatio: 1 })] };
  return { importance: IMPORTANCE[category], notes: [] };
};

/** Load on one side: a simple-rafter gable takes Is pg there and none on the other; an arch the same on half its span; one slope has no other side. */
const oneSidedPa = (args: SnowArgs, groundPa: number, importance: number, slopedPa: number): number | null => {
  if (args.structure.kind === 'leanTo') return null;
  return pitchOf(args) >= BARE_FROM_DEG ? slopedPa : Math.max(importance * groundPa, slopedPa);
};

const americanLoads = (args: SnowArgs): Loads | null => {
  const { site } = args;
  if (site.snow === 'unknown') return null;
  const { importance, notes } = importanceOf(site);
  const ce = EXPOSURE_FACTOR[site.exposure];
  const ct = THERMAL_FACTOR.unheated;
  const pitch = pitchOf(args);
  const fromRoof = site.snow.surface === 'roof';
  const groundPa = fromRoof ? site.snow.loadPa / flatRoofPa(1, ce, ct, importance) : site.snow.loadPa;
  const flatPa = fromRoof ? site.snow.loadPa : flatRoofPa(groundPa, ce, ct, importance);
  const cs = slopeFactor(pitch, ct, false);
  const slopedPa = Math.max(cs * flatPa, lowSlopeMinimumPa(groundPa, importance, pitch)) + rainOnSnowPa(groundPa, pitch, eaveToRidgeM(args));
  if (fromRoof) notes.push(note('ground-from-roof', 'note', { roofPa: site.snow.loadPa, groundPa }));
  if (site.snow.level === 'ultimate') notes.push(note('ultimate-used-as-service', 'note', { loadPa: site.snow.loadPa }));
  if (!/ASCE|IBC|IRC/i.test(site.snow.codeEdition)) notes.push(note('code-not-held', 'ask', { codeEdition: site.snow.codeEdition, used: 'ASCE 7-16' }));
  return {
    standard: 'ASCE 7-16',
    groundPa,
    flatRoofPa: flatPa,
    slopedPa,
    unbalancedPa: oneSidedPa(args, groundPa, importance, slopedPa),
    factors: { exposure: ce, thermal: ct, importance, slope: cs },
    notes,
  };
};

const europeanLoads = (args: SnowArgs): Loads | null => {
  const { site, structure } = args;
  if (site.snow === 'unknown') return null;
  const notes: Note[] = [];
  const arch = structure.kind === 'roundArch';
  const raise = arch ? MEMORY_RAISE : 1;
  if (arch) notes.push(note('memory-coefficients', 'care', { raisedByFrac: MEMORY_RAISE - 1, about: 'cylindrical-roof' }));
  const fromRoof = site.snow.surface === 'roof';
  const groundPa = fromRoof ? site.snow.loadPa / enPitchedShape(0) : site.snow.loadPa;
  if (fromRoof) notes.push(note('ground-from-roof', 'note', { roofPa: site.snow.loadPa, groundPa }));
  if (site.snow.level === 'ultimate') notes.push(note('ultimate-used-as-service', 'note', { loadPa: site.snow.loadPa }));
  const mu = arch ? raise * enArchShape((structure.ridgeM - structure.eaveM) / structure.widthM) : enPitchedShape(pitchOf(args));
  const slopedPa = enRoofPa(mu, groundPa);
  const slope = mu / enPitchedShape(0);
  return {
    standard: 'EN 1991-1-3',
    groundPa,
    flatRoofPa: enRoofPa(enPitchedShape(0), groundPa),
    slopedPa,
    // Duopitch: the same load on one side, half of it on the other; a cylinder: mu3 on one half.
    unbalancedPa: structure.kind === 'leanTo' ? null : slopedPa,
    factors: { exposure: 1, thermal: 1, importance: 1, slope },
    notes,
  };
};

/** Moment of one bow for each pascal of snow on the half of the roof that counts. */
const momentPerPa = (args: SnowArgs): number => {
  const { structure, geometry } = args;
  const bandM = Math.max(...geometry.posts.map((p) => p.tributaryM), 0) || geometry.bowSpacingMaxM;
  if (structure.kind === 'roundArch') return archMomentHalfNm(bandM, structure.widthM);
  return simpleBeamMomentNm(bandM, eaveToRidgeM(args));
};

const capacityOf = (structure: StructureInputs): { capacityNm: number | null; notes: Note[] } => {
  const section = tubeSection(structure.tube);
  if (!section) return { capacityNm: null, notes: [{ ...note('frame-unrated', 'stop', { reason: 'tube-unknown' }), beforeTask: 'erect' }] };
  if (structure.tube.rust === 'pitted')
    return { capacityNm: null, notes: [{ ...note('frame-unrated', 'stop', { reason: 'tube-pitted' }), beforeTask: 'erect' }] };
  const notes = structure.tube.rust === 'unknown' ? [note('rust-ask', 'ask')] : [];
  return { capacityNm: allowableMomentNm(section.elastic, UNKNOWN_TUBE_YIELD_PA), notes };
};

/** A lean-to under something taller gathers drifted or sliding snow that no figure here covers. */
const driftNotes = ({ structure }: SnowArgs): Note[] => {
  if (structure.kind !== 'leanTo') return [];
  const host = structure.hostWall;
  if (host === null) return [note('drift-ask', 'ask', { hostHeightM: 0, highSideM: structure.ridgeM })];
  const taller = host.heightM > structure.ridgeM ? [note('drift-ask', 'ask', { hostHeightM: host.heightM, highSideM: structure.ridgeM })] : [];
  return host.roofShedsOntoIt === 'no' ? taller : [...taller, note('sliding-ask', 'ask', { roofShedsOntoIt: host.roofShedsOntoIt })];
};

const verdictOf = (momentNm: number | null, capacityNm: number | null, drift: boolean): SnowResult['verdict'] => {
  if (momentNm === null || capacityNm === null) return 'notAssessed';
  const ratio = momentNm / capacityNm;
  if (ratio > 1) return 'doesNotPass';
  if (drift) return 'notAssessed';
  return ratio >= 0.7 ? 'marginal' : 'noRedFlag';
};

const sourcesFor = (args: SnowArgs, loads: Loads | null): SourceId[] => [
  ...(loads?.standard === 'EN 1991-1-3'
    ? (['EN1991-1-3', ...(args.structure.kind === 'roundArch' ? (['EN1991-1-3-MEMORY'] as const) : [])] as const)
    : loads
      ? (['ASCE7-16', 'ASCE7-16-MEMORY'] as const)
      : []),
  'STATICS',
  'TUBE-STEEL-MEMORY',
  'SNOW-WET',
  'SNOW-TEN-PCF',
  'JUDGEMENT-LOADS',
];

/**
 * What it gives: flat, sloped and one-sided snow load; bending of one bow under the worse of them against what its tube may
 * carry; the depths of light and of very wet snow at which to clear.
 * Model: ASCE 7-16 eq. 7.3-1 and fig. 7.4-1, or EN 1991-1-3 table 5.2 where the reading is European; gable and lean-to
 * rafters as simple beams w L^2 / 8, an arch as two-hinged and parabolic with half its span loaded, w L^2 / 64.
 * Assumptions: unheated (Ct 1.2); partially exposed; surface not slippery, for battens and slack film hold snow; importance by
 * the risk category of the wind reading, else 1; steel of unknown grade (30 ksi over 1.67); sway, buckling and joints are not
 * checked; a reading marked ultimate is used as if it were service, on the cautious side.
 * Validity: `MODEL.ranges`. Tube not measured, or pitted: no capacity and no verdict.
 * Fields: see SnowResult; `clearAt` is taken at 0.7 of the allowable load.
 * Worked line: 25 psf, risk category I, 1-3/8 in x 17 ga at 10 ft: 625 against 113.5 lb-ft (tests/reference/snow).
 * References: ASCE7-16, EN1991-1-3, STATICS, TUBE-STEEL-MEMORY.
 */
export const computeSnow = (args: SnowArgs): RoomOutput<SnowResult> => {
  const { site, structure } = args;
  const european = site.snow !== 'unknown' && /\bEN\b|1991|eurocode/i.test(site.snow.codeEdition);
  const loads = european ? europeanLoads(args) : americanLoads(args);
  const outside = outsideValidity(MODEL, {
    groundPa: loads?.groundPa ?? 0,
    roofSlopeDeg: pitchOf(args),
    eaveToRidgeM: structure.kind === 'leanTo' ? 0 : eaveToRidgeM(args),
  });
  const capacity = capacityOf(structure);
  const drift = driftNotes(args);
  const perPa = momentPerPa(args);
  const usable = loads !== null && outside.length === 0;
  const rulingPa = usable ? Math.max(loads.slopedPa ?? 0, loads.unbalancedPa ?? 0) : null;
  const momentNm = rulingPa === null ? null : rulingPa * perPa;
  const clearPa = capacity.capacityNm === null ? null : (CLEAR_AT_FRAC * capacity.capacityNm) / perPa;
  const notes = [...(loads?.notes ?? [note('unknown-ask', 'ask')]), ...outside, ...capacity.notes, ...drift];
  const verdict = verdictOf(momentNm, capacity.capacityNm, drift.length > 0);
  if (verdict === 'doesNotPass' || verdict === 'marginal')
    notes.push(
      note('clear-or-take-off', 'care', {
        momentNm: momentNm ?? 0,
        capacityNm: capacity.capacityNm ?? 0,
        demandRatio: (momentNm ?? 0) / (capacity.capacityNm ?? 1),
      }),
    );
  if (structure.kind === 'roundArch') notes.push(note('arch-sway-not-checked', 'note'));
  const result: SnowResult = {
    verdict,
    standard: usable ? loads.standard : 'none',
    groundPa: usable ? loads.groundPa : null,
    flatRoofPa: usable ? loads.flatRoofPa : null,
    slopedPa: usable ? loads.slopedPa : null,
    unbalancedPa: usable ? loads.unbalancedPa : null,
    factors: loads?.factors ?? { exposure: 1, thermal: 1, importance: 1, slope: 1 },
    bowMomentNm: momentNm,
    bowCapacityNm: capacity.capacityNm,
    clearAt: clearPa === null ? null : { lightM: clearPa / LIGHT_SNOW_N_PER_M3, wetM: clearPa / WET_SNOW_N_PER_M3 },
    driftFlag: drift.length > 0,
  };
  return { result, notes, sources: sourcesFor(args, loads) };
};
