import { Type, type Static } from '@sinclair/typebox';
import { object, orNull, quantity, text } from '../quantity.js';

/** One calendar month of a station's means. `null` is "no record" and stays so. */
export const ClimateMonthInputsSchema = object({
  tMaxC: orNull(quantity('degC', { minimum: -80, maximum: 60 })),
  tMinC: orNull(quantity('degC', { minimum: -90, maximum: 50 })),
  vapourPressurePa: orNull(quantity('Pa', { minimum: 0, maximum: 6000 })),
  precipitationMm: orNull(quantity('mm', { minimum: 0, maximum: 5000 })),
  sunshineH: orNull(quantity('h', { minimum: 0, maximum: 750, description: 'hours in the month' })),
  absoluteMinMeanC: orNull(quantity('degC', { minimum: -90, maximum: 50, description: "mean of the month's lowest night" })),
});
export type ClimateMonthInputs = Static<typeof ClimateMonthInputsSchema>;

export const ClimateInputsSchema = object({
  stationId: text(40),
  stationName: text(120),
  country: text(80),
  stationLatitudeDeg: quantity('deg', { minimum: -90, maximum: 90 }),
  stationLongitudeDeg: quantity('deg', { minimum: -180, maximum: 180 }),
  stationElevationM: quantity('m', { minimum: -430, maximum: 9000 }),
  distanceM: quantity('m', { minimum: 0, maximum: 20_100_000 }),
  period: text(40),
  /** `means` are averages of a stated run of years; `normals` are official 30-year normals. */
  kind: Type.Union([Type.Literal('means'), Type.Literal('normals')]),
  credit: text(200),
  months: Type.Array(ClimateMonthInputsSchema, { minItems: 12, maxItems: 12, description: 'January to December' }),
  annualExtremeMinC: orNull(quantity('degC', { minimum: -90, maximum: 50, description: 'mean of the coldest night of each year' })),
  annualExtremeMinYearsCount: orNull(Type.Integer({ minimum: 1, maximum: 300 })),
});
export type ClimateInputs = Static<typeof ClimateInputsSchema>;
