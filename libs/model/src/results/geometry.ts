import { Type, type Static } from '@sinclair/typebox';
import { OpeningSchema } from '../inputs/structure.js';
import { list, object, oneOf, quantity, text } from '../quantity.js';

/** A point in the shelter's own axes (x across, y front to back, z up), metres. */
export const PointSchema = object({ xM: quantity('m'), yM: quantity('m'), zM: quantity('m') });
export type Point = Static<typeof PointSchema>;

export const FACE_IDS = ['front', 'back', 'left', 'right', 'roofLeft', 'roofRight', 'arch'] as const;

export const FaceSchema = object({
  faceId: oneOf(...FACE_IDS),
  role: oneOf('roof', 'wall'),
  /** True bearing of the outward normal, and its tilt from horizontal (0 flat roof, 90 wall). The arch gives its mean. */
  azimuthDeg: quantity('deg'),
  tiltDeg: quantity('deg'),
  grossM2: quantity('m2'),
  openingsM2: quantity('m2'),
  netM2: quantity('m2'),
  corners: list(PointSchema, 80),
});
export type Face = Static<typeof FaceSchema>;

/** A post or bow foot that an anchor holds. `row` A is the left side, B the right; numbers run from the front. */
export const PostSchema = object({
  postId: Type.String({ pattern: '^[AB][0-9]{1,2}$' }),
  row: oneOf('A', 'B'),
  number: Type.Integer(),
  at: PointSchema,
  /** Length of the shelter (along y) this post answers for. */
  tributaryM: quantity('m'),
});

export const MemberSchema = object({
  memberId: text(20),
  role: oneOf('leg', 'rafter', 'bow', 'ridge', 'eave', 'knee', 'brace', 'sill', 'stud', 'header', 'jamb', 'openingSill', 'nailer'),
  from: PointSchema,
  to: PointSchema,
  lengthM: quantity('m'),
});
export type Member = Static<typeof MemberSchema>;

export const FilmSheetSchema = object({
  sheetId: text(20),
  covers: oneOf('overTheTop', 'roof', 'leftWall', 'rightWall', 'front', 'back'),
  lengthM: quantity('m'),
  widthM: quantity('m'),
  /** Strips cut from the roll for this sheet, and the laps that join them, shingled downhill. */
  strips: Type.Integer(),
  seams: Type.Integer(),
  seamLapM: quantity('m'),
  cutAreaM2: quantity('m2'),
});

/** A straight run of batten that clamps film. The take-off, the fastening room and the drawings read the same runs. */
export const BattenRunSchema = object({
  runId: text(30),
  along: oneOf('base', 'eave', 'endProfile', 'opening', 'endSill', 'ridge'),
  zone: oneOf('field', 'edge', 'corner'),
  lengthM: quantity('m'),
});

export const PlacedOpeningSchema = Type.Composite(
  [
    OpeningSchema,
    object({
      fits: Type.Boolean(),
      /** Height of wall available above the opening's outer corners, measured at the lower one. */
      headroomM: quantity('m'),
      areaM2: quantity('m2'),
      freeAreaM2: quantity('m2'),
      corners: list(PointSchema, 4),
    }),
  ],
  { additionalProperties: false },
);
export type PlacedOpening = Static<typeof PlacedOpeningSchema>;

export const GeometryResultSchema = object({
  footprintM2: quantity('m2'),
  perimeterM: quantity('m'),
  volumeM3: quantity('m3'),
  coverM2: quantity('m2', { description: 'all film-covered surface, openings not taken off' }),
  eaveM: quantity('m'),
  ridgeM: quantity('m'),
  meanRoofHeightM: quantity('m'),
  roofSlopeDeg: quantity('deg', { description: 'mean slope eave to ridge' }),
  /** Over the top of one bow, ground to ground: measured with a string in the field. */
  girthM: quantity('m'),
  groundDiagonalM: quantity('m'),
  closureResidualM: quantity('m', { description: 'by how much the measured rafters fail to meet; 0 when not measured' }),
  bowSpacingMaxM: quantity('m'),
  faces: list(FaceSchema, 8),
  posts: list(PostSchema, 120),
  members: list(MemberSchema, 600),
  /** The outline of a bow in its own plane, from the left foot to the right foot (y = 0). */
  bowProfile: list(PointSchema, 80),
  openings: list(PlacedOpeningSchema, 40),
  filmSheets: list(FilmSheetSchema, 20),
  battenRuns: list(BattenRunSchema, 300),
});
export type GeometryResult = Static<typeof GeometryResultSchema>;
