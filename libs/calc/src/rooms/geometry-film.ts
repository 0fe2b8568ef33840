import type { GeometryResult, Note, PlacedOpening, StructureInputs, WallName } from '@lathwork/model';
import { cited } from '../sources/cite.js';
import type { Shape } from './geometry-shape.js';

type FilmSheet = GeometryResult['filmSheets'][number];
type BattenRun = GeometryResult['battenRuns'][number];
type Zone = BattenRun['zone'];

/** Lap of a seam, shingled downhill so that rain runs over it. */
const SEAM_LAP_M = cited(0.3, 'm', 'LOW-COST-PRACTICE', 'seam lap at least 12 in', { min: 0.3 });
/** Width of the strips at edges and corners where wind sucks hardest (the "a" of components and cladding). */
const ZONE_FRAC_OF_WIDTH = cited(0.1, '1', 'ASCE7-16', '30.1 notation a: 10 % of the least horizontal dimension');
const ZONE_FRAC_OF_HEIGHT = cited(0.4, '1', 'ASCE7-16', '30.1 notation a: or 0.4 h, whichever is smaller');
const ZONE_LEAST_FRAC = cited(0.04, '1', 'ASCE7-16', '30.1 notation a: but not less than 4 % of the least dimension');
const ZONE_LEAST_M = cited(0.914, 'm', 'ASCE7-16', '30.1 notation a: or 3 ft');

/** Width of the edge strips: min(0.1 b, 0.4 h), at least 0.04 b and 3 ft, with b the least plan dimension, h the mean roof height. */
export const edgeStripM = (s: StructureInputs): number => {
  const least = Math.min(s.widthM, s.lengthM);
  return Math.max(Math.min(ZONE_FRAC_OF_WIDTH * least, (ZONE_FRAC_OF_HEIGHT * (s.eaveM + s.ridgeM)) / 2), ZONE_LEAST_FRAC * least, ZONE_LEAST_M);
};

/** Strips of a roll that cover a width with lapped seams. */
export const stripsFor = (widthM: number, rollM: number): number => (rollM >= widthM ? 1 : Math.ceil((widthM - SEAM_LAP_M) / (rollM - SEAM_LAP_M) - 1e-9));

const sheet = (sheetId: string, covers: FilmSheet['covers'], lengthM: number, widthM: number, rollM: number): FilmSheet => {
  const strips = stripsFor(widthM, rollM);
  const seams = strips - 1;
  return { sheetId, covers, lengthM, widthM, strips, seams, seamLapM: seams > 0 ? SEAM_LAP_M : 0, cutAreaM2: (widthM + seams * SEAM_LAP_M) * lengthM };
};

/** Length of roll that both ends take: side by side where the roll is wide enough for the two. */
const rollLengthOfEnds = (ends: readonly FilmSheet[], rollM: number): number => {
  const lengths = ends.map((f) => f.lengthM * f.strips);
  const sideBySide = ends.every((f) => f.strips === 1) && ends.reduce((sum, f) => sum + f.widthM, 0) <= rollM;
  return sideBySide ? Math.max(...lengths) : lengths.reduce((sum, l) => sum + l, 0);
};

/** The end walls may lie either way on the roll: the way with fewer seams, then with the shorter piece of roll for both. */
const endSheets = (widthM: number, heightM: number, rollM: number): FilmSheet[] => {
  const lying = (a: number, b: number) => [sheet('F2', 'front', a, b, rollM), sheet('F3', 'back', a, b, rollM)];
  const ways = [lying(widthM, heightM), lying(heightM, widthM)].map((ends) => ({
    ends,
    seams: ends[0]?.seams ?? 0,
    rollLengthM: rollLengthOfEnds(ends, rollM),
  }));
  ways.sort((m, n) => m.seams - n.seams || m.rollLengthM - n.rollLengthM);
  return ways[0]?.ends ?? [];
};

/** One sheet over the top by the girth method, one for each end; where the roll is too narrow, strips and both remedies. */
export const filmSheets = (s: StructureInputs, shape: Shape): { sheets: FilmSheet[]; notes: Note[] } => {
  const { wrapM, rollWidthM } = s.cover;
  const wide = shape.girthM + 2 * wrapM;
  const long = s.lengthM + 2 * wrapM;
  const over = sheet('F1', 'overTheTop', long, wide, rollWidthM);
  const ends = endSheets(s.widthM + 2 * wrapM, Math.max(s.ridgeM, s.eaveM) + 2 * wrapM, rollWidthM);
  if (over.seams === 0) return { sheets: [over, ...ends], notes: [] };
  const roofWidthM = shape.roofLineM + 2 * wrapM;
  const wallWidthM = shape.leftLegM + 2 * wrapM;
  const params = {
    girthM: shape.girthM,
    wantedWidthM: wide,
    rollWidthM,
    shortM: wide - rollWidthM,
    stripsCount: over.strips,
    seamsCount: over.seams,
    seamLapM: SEAM_LAP_M,
    // A seam needs a rigid member under it and battens on both sides: one run more on each side of every seam.
    extraBattenM: 2 * over.seams * s.lengthM,
    roofSheetWidthM: roofWidthM,
    wallSheetWidthM: wallWidthM,
    roofSheetSeamsCount: stripsFor(roofWidthM, rollWidthM) - 1,
    remedies: ['lappedSeamOnRigidMember', 'roofAndWallsSeparate'],
  };
  return {
    sheets: [over, ...ends],
    notes: [{ code: 'geometry.roll-narrower-than-girth', severity: 'care', room: 'geometry', subject: 'F1', beforeTask: 'mainCover', params }],
  };
};

/** Splits a straight run into its two ends (within the edge strip) and its middle. */
const zoned = (runId: string, along: BattenRun['along'], lengthM: number, middle: Zone, ends: Zone, stripM: number): BattenRun[] => {
  const end = Math.min(stripM, lengthM / 2);
  const field = lengthM - 2 * end;
  return [
    { runId: `${runId}-1`, along, zone: ends, lengthM: end },
    ...(field > 1e-9 ? [{ runId: `${runId}-2`, along, zone: middle, lengthM: field }] : []),
    { runId: `${runId}-3`, along, zone: ends, lengthM: end },
  ].filter((r) => r.lengthM > 1e-9);
};

const openingRuns = (s: StructureInputs, o: PlacedOpening, stripM: number): BattenRun[] => {
  if (!o.fits) return [];
  const wallM = o.wall === 'front' || o.wall === 'back' ? s.widthM : s.lengthM;
  const nearEnd = o.offsetM < stripM || o.offsetM + o.widthM > wallM - stripM;
  // A door's threshold carries no batten.
  const bottoms = o.bottomM > 0 ? 2 : 1;
  return [{ runId: `${o.openingId}-round`, along: 'opening', zone: nearEnd ? 'edge' : 'field', lengthM: 2 * o.heightM + bottoms * o.widthM }];
};

/**
 * Every straight run of batten: both bases, both eaves, both end profiles over the top, round every opening, and the
 * end sills less the doors. Middle of a wall: field; its end strips and the roof's edges: edge; where two edges meet: corner.
 */
export const battenRuns = (s: StructureInputs, shape: Shape, openings: readonly PlacedOpening[]): BattenRun[] => {
  const stripM = edgeStripM(s);
  const sides = s.kind === 'leanTo' ? ['A'] : ['A', 'B'];
  const doorsIn = (wall: WallName) => openings.filter((o) => o.fits && o.wall === wall && o.bottomM === 0).reduce((sum, o) => sum + o.widthM, 0);
  const base = sides.flatMap((row) => zoned(`base${row}`, 'base', Math.max(s.lengthM - doorsIn(row === 'A' ? 'left' : 'right'), 0), 'field', 'edge', stripM));
  const eave = shape.leftLegM > 0 ? sides.flatMap((row) => zoned(`eave${row}`, 'eave', s.lengthM, 'edge', 'corner', stripM)) : [];
  // The lean-to's film ends on its host wall: that upper edge is a run of its own.
  const ridge = s.kind === 'leanTo' ? zoned('ridge', 'ridge', s.lengthM, 'edge', 'corner', stripM) : [];
  const slopes = s.kind === 'gableCanopy' ? [shape.roofLineM / 2, shape.roofLineM / 2] : [shape.roofLineM];
  const ends = (['front', 'back'] as const).flatMap((wall) => {
    const legs = [shape.leftLegM, shape.rightLegM]
      .filter((l) => l > 0)
      .map((lengthM, i): BattenRun => ({ runId: `${wall}-leg${i + 1}`, along: 'endProfile', zone: 'edge', lengthM }));
    const roof = slopes.flatMap((lengthM, i) => zoned(`${wall}-roof${i + 1}`, 'endProfile', lengthM, 'edge', 'corner', stripM));
    return [...legs, ...roof, ...zoned(`${wall}-sill`, 'endSill', Math.max(s.widthM - doorsIn(wall), 0), 'field', 'edge', stripM)];
  });
  return [...base, ...eave, ...ridge, ...ends, ...openings.flatMap((o) => openingRuns(s, o, stripM))];
};
