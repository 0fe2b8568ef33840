import { Type, type Static } from '@sinclair/typebox';
import { AmountUnitSchema, MaterialKeySchema } from '../materials.js';
import { isoDate, list, MoneySchema, object, oneOf, orNull, quantity, text } from '../quantity.js';

export const TAKE_OFF_GROUPS = ['frame', 'film', 'timber', 'openings', 'anchors', 'fixings', 'ground', 'water', 'sundries'] as const;

export const TakeOffLineSchema = object({
  lineId: text(40),
  group: oneOf(...TAKE_OFF_GROUPS),
  material: MaterialKeySchema,
  /** Mark on the drawings (F1, C1, G1 …), or null. */
  mark: orNull(text(6)),
  unit: AmountUnitSchema,
  need: Type.Number({ minimum: 0, description: 'net amount, in `unit`' }),
  wasteFrac: quantity('1', { minimum: 0 }),
  wasteReason: oneOf('none', 'cuttingEnds', 'reclaimedDefects', 'wrapAndLap', 'spares', 'compaction', 'breakage'),
  wanted: Type.Number({ minimum: 0, description: 'need with waste, in `unit`' }),
  reclaimed: list(object({ tag: text(20), amount: Type.Number({ minimum: 0 }), worth: orNull(MoneySchema) }), 200),
  toBuy: Type.Number({ minimum: 0 }),
  packs: Type.Integer({ minimum: 0 }),
  packAmount: orNull(Type.Number()),
  boughtAmount: Type.Number({ minimum: 0, description: 'packs times pack, in `unit`' }),
  /** Null prints as "price unknown". It is never zero unless nothing is bought. */
  cash: orNull(MoneySchema),
  priceId: orNull(Type.String({ format: 'uuid' })),
  supplier: orNull(text(80)),
  priceReadOn: orNull(isoDate()),
  priceStale: Type.Boolean(),
});
export type TakeOffLine = Static<typeof TakeOffLineSchema>;

export const TakeOffResultSchema = object({ lines: list(TakeOffLineSchema, 200), unpricedCount: Type.Integer() });
export type TakeOffResult = Static<typeof TakeOffResultSchema>;

export const CutPartSchema = object({
  letter: text(4),
  partId: text(60),
  use: oneOf('header', 'jamb', 'stud', 'openingSill', 'sill', 'nailer', 'baseboard', 'batten'),
  forOpening: orNull(text(4)),
  material: MaterialKeySchema,
  lengthMm: quantity('mm'),
  count: Type.Integer({ minimum: 1 }),
});
export type CutPart = Static<typeof CutPartSchema>;

export const CutBoardSchema = object({
  boardId: text(30),
  /** Tag of the reclaimed board, or null for a bought one. */
  stockTag: orNull(text(20)),
  material: MaterialKeySchema,
  lengthMm: quantity('mm', { description: 'usable length' }),
  kerfMm: quantity('mm'),
  cuts: list(object({ letter: text(4), lengthMm: quantity('mm') }), 100),
  offcutMm: quantity('mm'),
});
export type CutBoard = Static<typeof CutBoardSchema>;

export const CuttingResultSchema = object({
  parts: list(CutPartSchema, 200),
  boards: list(CutBoardSchema, 400),
  unplaced: list(CutPartSchema, 200),
  method: oneOf('firstFitDecreasing'),
  wasteFrac: quantity('1'),
  lowerBoundBoards: Type.Integer({ description: 'no plan can use fewer bought boards than this' }),
  boughtBoards: Type.Integer(),
});
export type CuttingResult = Static<typeof CuttingResultSchema>;

export const BudgetLineSchema = object({
  group: oneOf(...TAKE_OFF_GROUPS, 'consumables', 'contingency', 'inKind'),
  reclaimedMinor: Type.Integer(),
  cashMinor: Type.Integer(),
  inKindMinor: Type.Integer(),
});

export const BudgetResultSchema = object({
  verdict: VerdictWord(),
  currency: Type.String({ pattern: '^[A-Z]{3}$' }),
  lines: list(BudgetLineSchema, 20),
  consumablesFrac: quantity('1'),
  contingencyFrac: quantity('1'),
  reclaimedMinor: Type.Integer(),
  cashMinor: Type.Integer(),
  inKindMinor: Type.Integer(),
  /** Cash range: without the contingency, with it, and with it spent twice over. */
  cashLowMinor: Type.Integer(),
  cashHighMinor: Type.Integer(),
  capMinor: orNull(Type.Integer()),
  overCapMinor: Type.Integer({ minimum: 0 }),
  unpricedCount: Type.Integer(),
  /** Amounts in other currencies that no dated rate converts: kept apart, never added. */
  otherCurrencies: list(MoneySchema, 20),
  oldestPriceOn: orNull(isoDate()),
});
export type BudgetResult = Static<typeof BudgetResultSchema>;

function VerdictWord() {
  return oneOf('withinCap', 'overCap', 'noCap', 'notAssessed');
}
