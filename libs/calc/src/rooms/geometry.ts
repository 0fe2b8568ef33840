/**
 * Geometry: the shelter as a solid, its frame and wood, its openings in place, its film and its battens.
 *
 * Gives: areas, volume, girth, posts, members, placed openings, film sheets and batten runs of one structure.
 * Model: a prism whose section is a gable, an arc of one circle on straight legs, or a lean-to's trapezoid
 *   (PLANE-GEOMETRY). Film by the girth method: once over the top with wrap at each edge, and a sheet for each end.
 * Assumes: vertical end walls, level ground lines, straight tubes; the arch of every bow alike.
 * Validity: see MODEL; a shape outside of it is still drawn and noted.
 * Fields: lengths m, areas m2, angles degrees, bearings clockwise from true north.
 * References: PLANE-GEOMETRY; ASCE7-16 30.1 for the width of the edge strips; LOW-COST-PRACTICE for wrap and lap.
 */
import type { Face, GeometryResult, Note, PlacedOpening, Point, StructureInputs } from '@lathwork/model';
import { battenRuns, filmSheets } from './geometry-film.js';
import { closure, membersOf, postsOf, stations } from './geometry-frame.js';
import { placeOpenings } from './geometry-openings.js';
import { shapeOf, type Shape } from './geometry-shape.js';
import { outsideValidity, type RoomModel, type RoomOutput } from './room.js';

export const GEOMETRY_MODEL = {
  room: 'geometry',
  title: 'Prism with a gable, arch or lean-to section',
  ranges: {
    roofSlopeDeg: { unit: 'deg', min: 10, max: 75, sourceId: 'JUDGEMENT-MATERIALS', safety: false },
    bowSpacingM: { unit: 'm', min: 0.3, max: 3.1, sourceId: 'JUDGEMENT-MATERIALS', safety: false },
  },
  sources: ['PLANE-GEOMETRY', 'ASCE7-16', 'LOW-COST-PRACTICE', 'JUDGEMENT-MATERIALS', 'PS20-20'],
} as const satisfies RoomModel<'roofSlopeDeg' | 'bowSpacingM'>;

const turned = (deg: number): number => ((deg % 360) + 360) % 360;

const face = (
  faceId: Face['faceId'],
  role: Face['role'],
  azimuthDeg: number,
  tiltDeg: number,
  grossM2: number,
  corners: Point[],
): Omit<Face, 'openingsM2' | 'netM2'> => ({
  faceId,
  role,
  azimuthDeg: turned(azimuthDeg),
  tiltDeg,
  grossM2,
  corners,
});

/** Walls and roof planes that carry film. The left side faces 90 degrees clockwise of the front, seen from outside. */
const bareFaces = (s: StructureInputs, shape: Shape): Omit<Face, 'openingsM2' | 'netM2'>[] => {
  const { widthM: w, lengthM: l, frontFacesDeg: front } = s;
  const end = (y: number): Point[] => shape.profile.map((q) => ({ xM: q.xM, yM: y, zM: q.zM }));
  const strip = (from: { xM: number; zM: number }, to: { xM: number; zM: number }): Point[] => [
    { ...from, yM: 0 },
    { ...from, yM: l },
    { ...to, yM: l },
    { ...to, yM: 0 },
  ];
  const at = (x: number, z = shape.topAt(x)) => ({ xM: x, zM: z });
  const walls = [face('front', 'wall', front, 90, shape.sectionM2, end(0)), face('back', 'wall', front + 180, 90, shape.sectionM2, end(l))];
  const left = shape.leftLegM > 0 ? [face('left', 'wall', front + 90, 90, shape.leftLegM * l, strip(at(0, 0), at(0, shape.leftLegM)))] : [];
  const right =
    shape.rightLegM > 0 && s.kind !== 'leanTo' ? [face('right', 'wall', front + 270, 90, shape.rightLegM * l, strip(at(w, 0), at(w, shape.rightLegM)))] : [];
  if (s.kind === 'roundArch') {
    const arc = shape.profile.filter((q) => q.zM > 0 || shape.leftLegM === 0);
    const skin = [...arc.map((q) => ({ ...q, yM: 0 })), ...[...arc].reverse().map((q) => ({ ...q, yM: l }))];
    return [...walls, ...left, ...right, face('arch', 'roof', front + 90, shape.meanTiltDeg, shape.roofLineM * l, skin)];
  }
  if (s.kind === 'leanTo') return [...walls, ...left, face('roofLeft', 'roof', front + 90, shape.meanTiltDeg, shape.roofLineM * l, strip(at(0), at(w)))];
  const half = (shape.roofLineM / 2) * l;
  return [
    ...walls,
    ...left,
    ...right,
    face('roofLeft', 'roof', front + 90, shape.meanTiltDeg, half, strip(at(0), at(w / 2))),
    face('roofRight', 'roof', front + 270, shape.meanTiltDeg, half, strip(at(w), at(w / 2))),
  ];
};

const withOpenings = (bare: Omit<Face, 'openingsM2' | 'netM2'>[], openings: readonly PlacedOpening[]): Face[] =>
  bare.map((f) => {
    const openingsM2 = openings.filter((o) => o.fits && o.wall === f.faceId).reduce((sum, o) => sum + o.areaM2, 0);
    return { ...f, openingsM2, netM2: f.grossM2 - openingsM2 };
  });

const shapeNotes = (s: StructureInputs, shape: Shape): Note[] => {
  const about = { room: 'geometry', beforeTask: 'erect' } as const;
  const notes: Note[] = [];
  if (s.ridgeM <= s.eaveM) notes.push({ ...about, code: 'geometry.ridge-not-above-eave', severity: 'stop', params: { ridgeM: s.ridgeM, eaveM: s.eaveM } });
  if (shape.bulgeM > 0.01) notes.push({ ...about, code: 'geometry.arch-wider-than-feet', severity: 'care', params: { bulgeM: shape.bulgeM } });
  return notes;
};

export const computeGeometry = ({ structure: s }: { structure: StructureInputs }): RoomOutput<GeometryResult> => {
  const shape = shapeOf(s);
  const bows = stations(s);
  const placed = placeOpenings(s, shape);
  const film = filmSheets(s, shape);
  const rafters = closure(s);
  const faces = withOpenings(bareFaces(s, shape), placed.openings);
  const spacings = bows.atM.slice(1).map((y, i) => y - (bows.atM[i] ?? 0));
  const bowSpacingMaxM = spacings.length > 0 ? Math.max(...spacings) : 0;
  const result: GeometryResult = {
    footprintM2: s.widthM * s.lengthM,
    perimeterM: 2 * (s.widthM + s.lengthM),
    volumeM3: shape.sectionM2 * s.lengthM,
    coverM2: faces.reduce((sum, f) => sum + f.grossM2, 0),
    eaveM: s.eaveM,
    ridgeM: s.ridgeM,
    meanRoofHeightM: (s.eaveM + s.ridgeM) / 2,
    roofSlopeDeg: shape.slopeDeg,
    girthM: shape.girthM,
    groundDiagonalM: Math.hypot(s.widthM, s.lengthM),
    closureResidualM: rafters.residualM,
    bowSpacingMaxM,
    faces,
    posts: postsOf(s, bows.atM),
    members: membersOf(s, shape, bows.atM, placed.openings),
    bowProfile: shape.profile.map((q) => ({ ...q, yM: 0 })),
    openings: placed.openings,
    filmSheets: film.sheets,
    battenRuns: battenRuns(s, shape, placed.openings),
  };
  const validity = outsideValidity(GEOMETRY_MODEL, { roofSlopeDeg: shape.slopeDeg, bowSpacingM: bowSpacingMaxM });
  return {
    result,
    notes: [...shapeNotes(s, shape), ...bows.notes, ...rafters.notes, ...placed.notes, ...film.notes, ...validity],
    sources: [...GEOMETRY_MODEL.sources],
  };
};
