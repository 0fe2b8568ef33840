import { Type, type Static } from '@sinclair/typebox';
import { AmountUnitSchema, MaterialKeySchema } from '../materials.js';
import { isoDate, list, MoneySchema, object, oneOf, orNull, orUnknown, quantity, text } from '../quantity.js';

export const STOCK_KINDS = ['door', 'window', 'barrel', 'frame', 'tube', 'board', 'batten', 'sheet', 'film', 'anchor', 'hardware', 'other'] as const;

export const HAZARDS = [
  'leadPaintAssumed',
  'leadPaintFound',
  'treatedWoodOld',
  'treatedWoodCopper',
  'creosote',
  'glassUnknown',
  'glassAnnealed',
  'barrelContentsUnknown',
  'mould',
  'asbestosPuttyPossible',
  'nails',
  'pvcContact',
] as const;
export type Hazard = (typeof HAZARDS)[number];

/** One thing, or one lot of alike things, from the pile. Sizes are actual millimetres as measured. */
export const StockItemSchema = object({
  stockId: Type.String({ format: 'uuid' }),
  tag: text(20),
  kind: oneOf(...STOCK_KINDS),
  /** Which need it can meet. */
  material: MaterialKeySchema,
  grade: oneOf('A', 'B', 'C', 'X'),
  hazards: list(oneOf(...HAZARDS), 12),
  /** How many pieces there are of it, each of the size below. */
  count: Type.Integer({ minimum: 1, maximum: 10_000 }),
  widthMm: orNull(quantity('mm', { minimum: 1, maximum: 20_000 })),
  heightMm: orNull(quantity('mm', { minimum: 1, maximum: 20_000 })),
  thicknessMm: orNull(quantity('mm', { minimum: 0.05, maximum: 1000 })),
  lengthMm: orNull(quantity('mm', { minimum: 1, maximum: 100_000 })),
  /** Length that is left when splits, rot and nail holes at the ends are off. */
  usableLengthMm: orNull(quantity('mm', { minimum: 0, maximum: 100_000 })),
  volumeL: orNull(quantity('L', { minimum: 0.1, maximum: 5000 })),
  ageY: orNull(orUnknown(quantity('a', { minimum: 0, maximum: 200 }))),
  replacement: orNull(MoneySchema),
});
export type StockItem = Static<typeof StockItemSchema>;

/** One price somebody read somewhere on a day. A price without a date is allowed and flagged. */
export const PriceSchema = object({
  priceId: Type.String({ format: 'uuid' }),
  material: MaterialKeySchema,
  unit: AmountUnitSchema,
  /** How much one pack holds, in `unit`. */
  packAmount: Type.Number({ exclusiveMinimum: 0, maximum: 100_000 }),
  packPrice: MoneySchema,
  /** Width and length of one piece where it matters: a roll, a board. */
  pieceWidthM: orNull(quantity('m', { minimum: 0.001, maximum: 100 })),
  pieceLengthM: orNull(quantity('m', { minimum: 0.01, maximum: 1000 })),
  readOn: orNull(isoDate()),
  supplier: text(80),
});
export type Price = Static<typeof PriceSchema>;

export const ExchangeRateSchema = object({
  from: Type.String({ pattern: '^[A-Z]{3}$' }),
  to: Type.String({ pattern: '^[A-Z]{3}$' }),
  rate: Type.Number({ exclusiveMinimum: 0, maximum: 1e9, description: 'units of `to` for one unit of `from`' }),
  readOn: isoDate(),
});
export type ExchangeRate = Static<typeof ExchangeRateSchema>;
