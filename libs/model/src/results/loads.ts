import { Type, type Static } from '@sinclair/typebox';
import { VerdictSchema } from '../notes.js';
import { list, object, oneOf, orNull, quantity, text } from '../quantity.js';

export const WindCaseSchema = object({
  caseId: text(60),
  direction: oneOf('normalFromLeft', 'normalFromRight', 'parallel'),
  enclosure: oneOf('enclosed', 'partiallyEnclosed'),
  /** Strength-level totals on the whole shelter; uplift is positive upward. */
  upliftN: quantity('N'),
  shearN: quantity('N'),
  overturningNm: quantity('N.m'),
  surfaces: list(object({ surface: text(40), cp: Type.Number({ description: 'external pressure coefficient, dimensionless' }), netPa: quantity('Pa') }), 20),
});

export const PostLoadSchema = object({
  postId: text(4),
  /** Net uplift to hold, service level: 0.6 wind less 0.6 dead, worst case. Zero or more. */
  upliftN: quantity('N'),
  horizontalN: quantity('N'),
  governedBy: text(60),
});

export const WindResultSchema = object({
  verdict: VerdictSchema,
  standard: oneOf('ASCE 7-16', 'EN 1991-1-4', 'none'),
  /** The 3-second ultimate gust used, and what the user's value was converted by. */
  gustMPerS: orNull(quantity('m/s')),
  conversion: text(200),
  velocityPressurePa: orNull(quantity('Pa')),
  meanRoofHeightM: quantity('m'),
  deadLoadN: orNull(quantity('N')),
  cases: list(WindCaseSchema, 20),
  posts: list(PostLoadSchema, 120),
  totalUpliftN: orNull(quantity('N')),
  /** The gust at which the shelter's own weight no longer holds it, with nothing anchored. */
  liftsUnanchoredAtMPerS: orNull(quantity('m/s')),
  /** Service-level suction on film by zone, for the fastening room. */
  zones: list(object({ zone: oneOf('field', 'edge', 'corner'), surface: oneOf('wall', 'roof'), suctionPa: quantity('Pa') }), 8),
});
export type WindResult = Static<typeof WindResultSchema>;

export const SnowResultSchema = object({
  verdict: VerdictSchema,
  standard: oneOf('ASCE 7-16', 'EN 1991-1-3', 'none'),
  groundPa: orNull(quantity('Pa')),
  flatRoofPa: orNull(quantity('Pa')),
  slopedPa: orNull(quantity('Pa')),
  unbalancedPa: orNull(quantity('Pa')),
  factors: object({ exposure: Type.Number(), thermal: Type.Number(), importance: Type.Number(), slope: Type.Number() }),
  /** Bending of one bow or rafter pair under the unbalanced load, and what the tube can take. Null: tube unknown. */
  bowMomentNm: orNull(quantity('N.m')),
  bowCapacityNm: orNull(quantity('N.m')),
  /** Depth on the roof at which to clear; null prints as "clear at any build-up". */
  clearAt: orNull(object({ lightM: quantity('m'), wetM: quantity('m') })),
  driftFlag: Type.Boolean(),
});
export type SnowResult = Static<typeof SnowResultSchema>;

export const PostAnchorSchema = object({
  postId: text(4),
  demandN: orNull(quantity('N')),
  capacityN: orNull(quantity('N')),
  demandRatio: orNull(quantity('1')),
  verdict: VerdictSchema,
});

export const AnchorageResultSchema = object({
  verdict: VerdictSchema,
  rated: Type.Boolean({ description: 'false prints the "unrated" banner and blocks a review' }),
  anchorKind: text(20),
  capacityEachN: orNull(quantity('N')),
  factorOfSafety: orNull(Type.Number()),
  capacityBasis: oneOf('pullCheck', 'torque', 'weight', 'published', 'none'),
  posts: list(PostAnchorSchema, 120),
  /** What would hold the worst post, for each common kind: the reader can choose. */
  wouldHold: list(
    object({
      kind: oneOf('augerTorque', 'concretePier', 'ballast', 'drivenPipe'),
      torqueNm: orNull(quantity('N.m')),
      massKg: orNull(quantity('kg')),
      count: orNull(Type.Integer()),
    }),
    6,
  ),
  slidingForceN: orNull(quantity('N')),
  worstPostId: orNull(text(4)),
  worstDemandN: orNull(quantity('N')),
});
export type AnchorageResult = Static<typeof AnchorageResultSchema>;

export const FastenZoneSchema = object({
  zone: oneOf('field', 'edge', 'corner'),
  suctionPa: orNull(quantity('Pa')),
  lineLoadNPerM: orNull(quantity('N/m')),
  screwCapacityN: quantity('N'),
  spacingMm: quantity('mm'),
  cappedBy: oneOf('strength', 'practice'),
  runM: quantity('m', { description: 'length of batten in this zone' }),
  screws: Type.Integer(),
});

export const FasteningResultSchema = object({
  verdict: VerdictSchema,
  screw: object({ diameterMm: quantity('mm'), lengthMm: quantity('mm'), threadInWoodMm: quantity('mm'), gauge: text(10) }),
  woodGravityRatio: quantity('1', { description: 'specific gravity assumed for the wood that holds' }),
  zones: list(FastenZoneSchema, 6),
  screwsCount: Type.Integer(),
  battenM: quantity('m'),
  /** Tube screws that hold the nailers to the frame. */
  tubeScrewsCount: Type.Integer(),
});
export type FasteningResult = Static<typeof FasteningResultSchema>;
