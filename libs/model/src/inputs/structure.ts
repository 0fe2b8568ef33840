import { Type, type Static } from '@sinclair/typebox';
import { list, object, oneOf, orUnknown, quantity, text } from '../quantity.js';

export const STRUCTURE_KINDS = ['gableCanopy', 'roundArch', 'leanTo'] as const;
export type StructureKind = (typeof STRUCTURE_KINDS)[number];

export const WALLS = ['front', 'back', 'left', 'right'] as const;
export type WallName = (typeof WALLS)[number];

/** A rough opening in a wall. `offsetM` runs from the wall's left end as seen from outside. */
export const OpeningSchema = object({
  openingId: Type.String({ pattern: '^[DWV][0-9]{1,2}$' }),
  kind: oneOf('door', 'window', 'vent'),
  wall: oneOf(...WALLS),
  offsetM: quantity('m', { minimum: 0, maximum: 100 }),
  bottomM: quantity('m', { minimum: 0, maximum: 6, description: 'lower edge above the ground line' }),
  widthM: quantity('m', { minimum: 0.1, maximum: 6 }),
  heightM: quantity('m', { minimum: 0.1, maximum: 6 }),
  hinge: oneOf('left', 'right', 'top', 'none'),
  /** Share of the opening that is free when it stands open: a top-hung sash gives far less than its area. */
  freeOpenFrac: quantity('1', { minimum: 0, maximum: 1 }),
  glazing: oneOf('none', 'tempered', 'laminated', 'annealed', 'wired', 'plastic', 'unknown'),
  largestPaneM2: orUnknown(quantity('m2', { minimum: 0, maximum: 10 })),
  /** Tag of the salvaged thing that goes in, or null: to be bought or made. */
  stockTag: Type.Union([text(20), Type.Null()]),
});
export type Opening = Static<typeof OpeningSchema>;

export const TubeSchema = object({
  shape: oneOf('round', 'square'),
  outsideMm: orUnknown(quantity('mm', { minimum: 8, maximum: 200 })),
  wallMm: orUnknown(quantity('mm', { minimum: 0.3, maximum: 12 })),
  rust: oneOf('none', 'surface', 'pitted', 'unknown'),
});
export type Tube = Static<typeof TubeSchema>;

export const FILM_KINDS = ['polyethylene', 'polyethyleneInfrared', 'utility', 'found'] as const;

export const CoverSchema = object({
  film: oneOf(...FILM_KINDS),
  thicknessMm: quantity('mm', { minimum: 0.03, maximum: 1 }),
  ageY: orUnknown(quantity('a', { minimum: 0, maximum: 30 })),
  rollWidthM: quantity('m', { minimum: 0.5, maximum: 20 }),
  wrapM: quantity('m', { minimum: 0, maximum: 1.5, description: 'extra film at each edge to roll round a batten' }),
  secondFilm: Type.Boolean(),
  innerCover: Type.Boolean({ description: 'a row cover over the crop on cold nights' }),
  shadeFrac: quantity('1', { minimum: 0, maximum: 0.95 }),
});

export const ANCHOR_KINDS = ['none', 'drivenPipe', 'auger', 'concretePier', 'ballast', 'groundPost'] as const;
export type AnchorKind = (typeof ANCHOR_KINDS)[number];

/** The hold-down chosen for every post. Only the fields of its kind are read. */
export const AnchorSchema = object({
  kind: oneOf(...ANCHOR_KINDS),
  perPostCount: Type.Integer({ minimum: 0, maximum: 4 }),
  depthM: orUnknown(quantity('m', { minimum: 0, maximum: 3 })),
  diameterM: orUnknown(quantity('m', { minimum: 0, maximum: 1.5 })),
  installTorqueNm: orUnknown(quantity('N.m', { minimum: 0, maximum: 20_000 })),
  pulledToN: orUnknown(quantity('N', { minimum: 0, maximum: 100_000, description: 'measured by a pull check on this ground' })),
  ballastKg: orUnknown(quantity('kg', { minimum: 0, maximum: 5000 })),
  /** Water barrels hold down only when they are full. */
  ballastIsWater: Type.Boolean(),
});
export type Anchor = Static<typeof AnchorSchema>;

export const WaterStoreSchema = object({
  stockTag: Type.Union([text(20), Type.Null()]),
  volumeL: quantity('L', { minimum: 1, maximum: 5000 }),
  count: Type.Integer({ minimum: 1, maximum: 200 }),
  colour: oneOf('dark', 'mid', 'light'),
});

/**
 * The shelter. x runs across from the left side as seen from the front (outside), y from front to back along the
 * ridge, z up. All heights are above the ground line of the frame.
 *
 * gableCanopy: eave and ridge heights. roundArch: `eaveM` is the straight leg below the arch (0 = from the ground),
 * `ridgeM` the crown. leanTo: `eaveM` is the low side (left), `ridgeM` the high side (right, against a wall).
 */
export const StructureInputsSchema = object({
  structureId: Type.String({ format: 'uuid' }),
  kind: oneOf(...STRUCTURE_KINDS),
  widthM: quantity('m', { minimum: 0.9, maximum: 12 }),
  lengthM: quantity('m', { minimum: 0.9, maximum: 60 }),
  eaveM: quantity('m', { minimum: 0, maximum: 4 }),
  ridgeM: quantity('m', { minimum: 0.9, maximum: 7 }),
  /** True bearing that the front end wall faces, clockwise from north. */
  frontFacesDeg: quantity('deg', { minimum: 0, maximum: 360 }),
  /** Stations of the bows or posts along y, from 0 to the length. */
  bowsAtM: Type.Array(quantity('m', { minimum: 0, maximum: 60 }), { minItems: 2, maxItems: 60 }),
  /** Measured lengths of the two rafters where they were measured: they must close. */
  measuredRaftersM: Type.Union([
    object({ leftM: quantity('m', { minimum: 0.1, maximum: 12 }), rightM: quantity('m', { minimum: 0.1, maximum: 12 }) }),
    Type.Null(),
  ]),
  tube: TubeSchema,
  frameMassKg: orUnknown(quantity('kg', { minimum: 1, maximum: 5000 })),
  frameStockTag: Type.Union([text(20), Type.Null()]),
  braced: oneOf('none', 'endBays', 'everyBay', 'unknown'),
  openings: list(OpeningSchema, 40),
  cover: CoverSchema,
  floor: oneOf('soil', 'mulch', 'gravel', 'brick', 'decking'),
  floorMoist: Type.Boolean(),
  bedsM2: quantity('m2', { minimum: 0, maximum: 700 }),
  airLeaks: oneOf('sealed', 'ordinary', 'gappy'),
  waterStores: list(WaterStoreSchema, 20),
  anchor: AnchorSchema,
  /** Lean-to only: what it leans on. */
  hostWall: Type.Union([
    object({
      material: oneOf('masonry', 'timber', 'unknown'),
      heightM: quantity('m', { minimum: 1, maximum: 30 }),
      roofShedsOntoIt: oneOf('yes', 'no', 'unknown'),
    }),
    Type.Null(),
  ]),
});
export type StructureInputs = Static<typeof StructureInputsSchema>;
