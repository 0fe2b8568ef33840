import { Type, type Static } from '@sinclair/typebox';
import { CropKeySchema } from '../materials.js';
import { list, object, oneOf, orNull, quantity, range } from '../quantity.js';
import { VerdictSchema } from '../notes.js';

const HourCurve = () => Type.Array(quantity('degC'), { minItems: 24, maxItems: 24 });

/** One way of running the shelter: bare film, with the inner cover over the crop. */
export const NightRunSchema = object({
  variant: oneOf('bare', 'asPlanned', 'innerCover'),
  outsideLowC: quantity('degC'),
  insideLowC: range('degC'),
  leafLowC: range('degC'),
  /** Inside minimum less outside minimum. It may be below zero. */
  liftK: range('K'),
  curve: object({ outsideC: HourCurve(), p10C: HourCurve(), p50C: HourCurve(), p90C: HourCurve() }),
});
export type NightRun = Static<typeof NightRunSchema>;

export const DayRunSchema = object({
  variant: oneOf('closed', 'opened'),
  outsideHighC: quantity('degC'),
  insideHighC: range('degC'),
  riseK: range('K'),
  curve: object({ outsideC: HourCurve(), p10C: HourCurve(), p50C: HourCurve(), p90C: HourCurve() }),
});
export type DayRun = Static<typeof DayRunSchema>;

export const ThermalMonthSchema = object({
  month: Type.Integer({ minimum: 1, maximum: 12 }),
  outsideLowC: orNull(quantity('degC')),
  /** The shelter as planned but without an inner cover over the crop, and with one. */
  insideLowC: orNull(range('degC')),
  innerCoverLowC: orNull(range('degC')),
  outsideHighC: orNull(quantity('degC')),
  closedHighC: orNull(range('degC')),
  openedHighC: orNull(range('degC')),
});
export type ThermalMonth = Static<typeof ThermalMonthSchema>;

export const CropLimitSchema = object({
  crop: CropKeySchema,
  kind: oneOf('damageBegins', 'usuallyKilled', 'heatHurts'),
  limitC: quantity('degC'),
  /** Share of the draws in which the leaf of the design night falls below the limit (cold limits only). */
  belowFrac: orNull(quantity('1')),
});

export const ThermalResultSchema = object({
  verdict: VerdictSchema,
  draws: Type.Integer(),
  seed: Type.Integer(),
  nodes: Type.Integer(),
  stepMin: quantity('min'),
  designNights: list(NightRunSchema, 6),
  clearDays: list(DayRunSchema, 4),
  months: list(ThermalMonthSchema, 12),
  crops: list(CropLimitSchema, 60),
  /** The inputs that the night result hangs on most, with their rank correlation to it. */
  drivers: list(
    object({ input: oneOf('airLeaks', 'wind', 'sky', 'filmState', 'soilConductivity', 'deepSoil', 'solarCapture', 'massCoupling'), rankRatio: quantity('1') }),
    8,
  ),
  vents: object({
    freeM2: quantity('m2'),
    topM2: quantity('m2'),
    lowM2: quantity('m2'),
    floorFrac: quantity('1', { description: 'free opening over floor area' }),
    wantedFrac: quantity('1'),
  }),
  /** Conductance of cover, air and floor edge at the central values, for the reader who wants one number. */
  lossWPerK: quantity('W/K'),
  leakageAirChangesPerH: quantity('1/h'),
  /** Heat that could not be accounted for in any step of any run: near zero or the solver is wrong. */
  largestResidualW: quantity('W'),
});
export type ThermalResult = Static<typeof ThermalResultSchema>;
