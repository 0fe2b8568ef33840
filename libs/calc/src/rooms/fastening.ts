import type { FasteningResult, GeometryResult, Note, StructureInputs, Verdict, WindResult } from '@lathwork/model';
import {
  BATTEN_SCREW,
  NAILER_SPACING_M,
  SCREW_DIAMETER_M,
  SPACING_CAP_M,
  SPACING_LEAST_M,
  TUBE_SCREW_GAUGE,
  UNKNOWN_TUBE_ULTIMATE_PA,
} from '../data/fasteners.js';
import { MEMORY_RAISE } from '../data/wind-coefficients.js';
import { DURATION, RECLAIMED_GRAVITY, WET_WITHDRAWAL } from '../data/woods.js';
import { allowableScrewN, headPullThroughN, screwWithdrawalNPerM, spacingByStrengthM, steelPullOutN } from './fastening-strength.js';
import { notesOf, outsideValidity, type RoomModel, type RoomOutput } from './room.js';

export interface FasteningArgs {
  structure: StructureInputs;
  geometry: GeometryResult;
  wind: WindResult;
}

export const MODEL = {
  room: 'fastening',
  title: 'Screws through battens over film, by wind zone, and the screws that hold the boards to the tubes',
  ranges: {
    bowSpacingM: { unit: 'm', min: 0, max: 4, sourceId: 'JUDGEMENT-LOADS', safety: false },
    screwDiameterMm: { unit: 'mm', min: 2, max: 6.4, sourceId: 'AISI-S100', safety: true },
  },
  sources: ['NDS-2015', 'NDS-MEMORY', 'AISI-S100', 'ASCE7-16', 'LOADS-PRACTICE', 'JUDGEMENT-LOADS'],
} as const satisfies RoomModel;

type Zone = FasteningResult['zones'][number]['zone'];
const ZONES: readonly Zone[] = ['field', 'edge', 'corner'];
const note = notesOf('fastening', 'battens');

/** Allowable pull of one batten screw in reclaimed wet wood under wind: thread in the nailer, or head through the lath. */
export const battenScrewN = (gravity: number): { capacityN: number; ruledBy: 'thread' | 'head'; threadM: number } => {
  const threadM = BATTEN_SCREW.lengthM - BATTEN_SCREW.battenM;
  const adjust = DURATION.wind * WET_WITHDRAWAL;
  const threadN = screwWithdrawalNPerM(gravity, SCREW_DIAMETER_M[BATTEN_SCREW.gauge]) * threadM * adjust;
  // The pull-through formula is recalled, so what it promises is cut by a fifth of the demand.
  const headN = (headPullThroughN(BATTEN_SCREW.headM, gravity, BATTEN_SCREW.battenM) * adjust) / MEMORY_RAISE;
  return headN < threadN ? { capacityN: headN, ruledBy: 'head', threadM } : { capacityN: threadN, ruledBy: 'thread', threadM };
};

/** Battens along ridge and end profiles hold roof film, an eave batten both; the rest wall film. */
const surfacesOf = (run: GeometryResult['battenRuns'][number], arch: boolean): ('wall' | 'roof')[] => {
  if (arch && run.along === 'base') return ['wall', 'roof'];
  if (run.along === 'ridge' || run.along === 'endProfile') return ['roof'];
  return run.along === 'eave' ? ['wall', 'roof'] : ['wall'];
};

const zoneOf = (zone: Zone, args: FasteningArgs, capacityN: number): FasteningResult['zones'][number] & { verdict: Verdict } => {
  const { structure, geometry, wind } = args;
  const arch = structure.kind === 'roundArch';
  const runs = geometry.battenRuns.filter((r) => r.zone === zone);
  const surfaces = new Set(runs.flatMap((r) => surfacesOf(r, arch)));
  const pulls = wind.zones.filter((z) => z.zone === zone && surfaces.has(z.surface)).map((z) => z.suctionPa);
  const suctionPa = pulls.length === 0 ? null : Math.max(...pulls);
  const lineLoadNPerM = suctionPa === null ? null : (suctionPa * geometry.bowSpacingMaxM) / 2;
  const capM = SPACING_CAP_M[zone];
  const strengthM = lineLoadNPerM === null ? Infinity : spacingByStrengthM(capacityN, lineLoadNPerM);
  const byStrength = strengthM < capM;
  // Rounded down to whole centimetres so that the drawing can be followed, never under the least spacing.
  const spacingM = byStrength ? Math.max(Math.floor(strengthM * 100 + 1e-9) / 100, SPACING_LEAST_M) : capM;
  const ratio = lineLoadNPerM === null ? null : (lineLoadNPerM * spacingM) / capacityN;
  return {
    zone,
    suctionPa,
    lineLoadNPerM,
    screwCapacityN: capacityN,
    spacingMm: spacingM * 1000,
    cappedBy: byStrength ? 'strength' : 'practice',
    runM: runs.reduce((sum, r) => sum + r.lengthM, 0),
    screws: runs.reduce((sum, r) => sum + (r.lengthM > 0 ? Math.ceil(r.lengthM / spacingM - 1e-9) + 1 : 0), 0),
    verdict: ratio === null ? 'notAssessed' : ratio > 1 + 1e-9 ? 'doesNotPass' : ratio >= 0.7 ? 'marginal' : 'noRedFlag',
  };
};

const WORST: readonly Verdict[] = ['noRedFlag', 'marginal', 'notAssessed', 'doesNotPass'];

/** Screws that hold the boards to the tubes: by pull-out from the measured wall, at most 16 in apart. */
const tubeScrews = (args: FasteningArgs, worstLineNPerM: number | null): { count: number; spacingM: number; notes: Note[] } => {
  const { structure, geometry } = args;
  const { wallMm, rust } = structure.tube;
  const nailers = geometry.members.filter((m) => m.role === 'nailer' && m.lengthM > 0);
  const notes: Note[] = [];
  const known = wallMm !== 'unknown' && rust !== 'pitted';
  if (!known && nailers.length > 0) notes.push({ ...note('tube-wall-ask', 'ask', { rust }), beforeTask: 'nailers' });
  const eachN = known ? allowableScrewN(steelPullOutN(wallMm / 1000, SCREW_DIAMETER_M[TUBE_SCREW_GAUGE], UNKNOWN_TUBE_ULTIMATE_PA)) : null;
  const strengthM = eachN === null || worstLineNPerM === null ? NAILER_SPACING_M : spacingByStrengthM(eachN, worstLineNPerM);
  const spacingM = Math.max(Math.min(strengthM, NAILER_SPACING_M), SPACING_LEAST_M);
  if (strengthM < SPACING_LEAST_M) notes.push({ ...note('tube-screws-too-close', 'stop', { spacingMm: strengthM * 1000 }), beforeTask: 'nailers' });
  return { count: nailers.reduce((sum, m) => sum + Math.ceil(m.lengthM / spacingM - 1e-9) + 1, 0), spacingM, notes };
};

/**
 * What it gives: for each wind zone the load on a metre of batten, the spacing and number of screws; the screws that hold the
 * boards to the tubes.
 * Model: line load = suction times half the bay; NDS withdrawal 2850 G^2 D with 1.6 for wind and 0.7 for wet wood, head
 * pull-through 690 pi DH G^2 t (recalled, cut by a sixth); AISI pull-out 0.85 t d Fu over 3.
 * Assumptions: number 8 screws 2 in long through a 19 mm lath; reclaimed wood of specific gravity 0.36; one zone takes the worst
 * suction of the surfaces its battens hold; tube steel of 40 ksi ultimate.
 * Validity: `MODEL.ranges`; wind not assessed: spacing by practice, no load and no verdict.
 * Fields: see FasteningResult. `cappedBy` says whether strength or practice sets the spacing (300, 200, 150 mm).
 * Worked line: zone 5 wall, 4 ft bay: 38.7 lb/ft (tests/reference/fastening).
 * References: NDS-2015, NDS-MEMORY, AISI-S100, LOADS-PRACTICE.
 */
export const computeFastening = (args: FasteningArgs): RoomOutput<FasteningResult> => {
  const { geometry, structure } = args;
  const screw = battenScrewN(RECLAIMED_GRAVITY);
  const zones = ZONES.map((zone) => zoneOf(zone, args, screw.capacityN)).filter((z) => z.runM > 0);
  const lines = zones.flatMap((z) => (z.lineLoadNPerM === null ? [] : [z.lineLoadNPerM]));
  const tube = tubeScrews(args, lines.length === 0 ? null : Math.max(...lines));
  const diameterMm = SCREW_DIAMETER_M[BATTEN_SCREW.gauge] * 1000;
  const outside = outsideValidity(MODEL, { bowSpacingM: geometry.bowSpacingMaxM, screwDiameterMm: diameterMm });
  const verdict =
    zones.length === 0 ? 'notAssessed' : zones.map((z) => z.verdict).reduce<Verdict>((a, b) => (WORST.indexOf(b) > WORST.indexOf(a) ? b : a), 'noRedFlag');
  const notes: Note[] = [...outside, ...tube.notes, note('pilot-holes', 'note', { diameterMm })];
  if (screw.ruledBy === 'head') notes.push(note('head-pulls-through', 'care', { capacityN: screw.capacityN }));
  if (verdict === 'notAssessed') notes.push(note('wind-not-assessed', 'stop'));
  for (const z of zones.filter((one) => one.verdict === 'doesNotPass'))
    notes.push(
      note('spacing-too-close', 'stop', { zone: z.zone, lineLoadNPerM: z.lineLoadNPerM ?? 0, spacingMm: z.spacingMm, bowSpacingM: geometry.bowSpacingMaxM }),
    );
  if (structure.kind === 'roundArch') notes.push(note('battens-on-tube', 'care'));
  const result: FasteningResult = {
    verdict,
    screw: { diameterMm, lengthMm: BATTEN_SCREW.lengthM * 1000, threadInWoodMm: screw.threadM * 1000, gauge: `#${BATTEN_SCREW.gauge}` },
    woodGravityRatio: RECLAIMED_GRAVITY,
    zones: zones.map(({ verdict: _verdict, ...zone }) => zone),
    screwsCount: zones.reduce((sum, z) => sum + z.screws, 0),
    battenM: zones.reduce((sum, z) => sum + z.runM, 0),
    tubeScrewsCount: tube.count,
  };
  return { result, notes, sources: ['NDS-2015', 'NDS-MEMORY', 'AISI-S100', 'ASCE7-16', 'LOADS-PRACTICE', 'JUDGEMENT-LOADS'] };
};
