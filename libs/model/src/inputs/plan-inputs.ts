import { Type, type Static } from '@sinclair/typebox';
import { CropKeySchema } from '../materials.js';
import { isoDate, list, MoneySchema, object, oneOf, orNull, quantity, text } from '../quantity.js';
import { ClimateInputsSchema } from './climate.js';
import { SiteInputsSchema } from './site.js';
import { ExchangeRateSchema, PriceSchema, StockItemSchema } from './stock.js';
import { StructureInputsSchema } from './structure.js';

export const WishesSchema = object({
  purpose: oneOf('seedStarting', 'overwintering', 'longerSeason', 'rainShelter', 'teaching'),
  nightTargetC: orNull(quantity('degC', { minimum: -40, maximum: 30 })),
  crops: list(CropKeySchema, 14),
  /** Who opens the vents on a sunny day. Nobody is an honest answer. */
  ventsOpenedBy: oneOf('nobody', 'someoneAtNine', 'someoneAllDay'),
});

export const CrewSchema = object({
  people: Type.Integer({ minimum: 1, maximum: 60 }),
  experience: oneOf('novice', 'mixed', 'skilled'),
  startOn: orNull(isoDate()),
});

export const BudgetInputsSchema = object({
  currency: Type.String({ pattern: '^[A-Z]{3}$' }),
  /** Null: no cap set. Zero is a cap, and an all-reclaimed plan can keep it. */
  capMinor: orNull(Type.Integer({ minimum: 0 })),
  consumablesFrac: orNull(quantity('1', { minimum: 0, maximum: 0.5, description: 'share of bought materials; null takes the default' })),
  consumablesReason: orNull(text(200)),
  contingencyFrac: orNull(quantity('1', { minimum: 0, maximum: 0.6 })),
  contingencyReason: orNull(text(200)),
  inKind: list(object({ label: text(80), value: MoneySchema }), 40),
  exchangeRates: list(ExchangeRateSchema, 20),
});

export const INPUTS_SCHEMA_VERSION = 1;

/**
 * Everything the corridor needs, read once and frozen. It holds ids, tags and a coarse place only: names and exact
 * coordinates are joined when something is printed, so that erasing a person never edits history.
 */
export const PlanInputsSchema = Type.Object(
  {
    schemaVersion: Type.Literal(INPUTS_SCHEMA_VERSION),
    planId: Type.String({ format: 'uuid' }),
    buildId: Type.String({ format: 'uuid' }),
    gardenId: Type.String({ format: 'uuid' }),
    revision: Type.Integer({ minimum: 1, maximum: 100_000 }),
    /** The day the plan is made for: ages of prices and films are counted from it. */
    asOf: isoDate(),
    site: SiteInputsSchema,
    climate: ClimateInputsSchema,
    structure: StructureInputsSchema,
    wishes: WishesSchema,
    crew: CrewSchema,
    stock: list(StockItemSchema, 2000),
    prices: list(PriceSchema, 2000),
    budget: BudgetInputsSchema,
    /** Seed of every random draw, stored so that the same inputs give the same plan. */
    seed: Type.Integer({ minimum: 0, maximum: 4_294_967_295 }),
  },
  { additionalProperties: false, $id: 'PlanInputs' },
);
export type PlanInputs = Static<typeof PlanInputsSchema>;
export type Wishes = Static<typeof WishesSchema>;
export type Crew = Static<typeof CrewSchema>;
export type BudgetInputs = Static<typeof BudgetInputsSchema>;
