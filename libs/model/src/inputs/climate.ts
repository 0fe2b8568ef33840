import { Type, type Static } from '@sinclair/typebox';
import { object, oneOf, orNull, quantity, text } from '../quantity.js';

/** One calendar month of a station's means. `null` is "no record" and stays so. */
export const ClimateMonthInputsSchema = object({
  tMaxC: orNull(quantity('degC', { minimum: -80, maximum: 60 })),
  tMinC: orNull(quantity('degC', { minimum: -90, maximum: 50 })),
  vapourPressurePa: orNull(quantity('Pa', { minimum: 0, maximum: 6000 })),
  precipitationMm: orNull(quantity('mm', { minimum: 0, maximum: 5000 })),
  sunshineH: orNull(quantity('h', { minimum: 0, maximum: 750, description: 'hours in the month' })),
  absoluteMinMeanC: orNull(quantity('degC', { minimum: -90, maximum: 50, description: "mean of the month's lowest night" })),
  /** Mean daily sun on the level, where the record has it: comes before sunshine hours and the range of temperature. */
  radiationMJPerM2: Type.Optional(orNull(quantity('MJ/m2', { minimum: 0, maximum: 45 }))),
  relativeHumidityFrac: Type.Optional(orNull(quantity('1', { minimum: 0, maximum: 1 }))),
  /** Standard deviation of the month's nights about their mean; not that of the months of one name from year to year. */
  nightDeviationK: Type.Optional(orNull(quantity('K', { minimum: 0, maximum: 20 }))),
});
export type ClimateMonthInputs = Static<typeof ClimateMonthInputsSchema>;

const dayNumber = () => quantity('d', { minimum: 1, maximum: 365, description: 'day of the year, 1 January is 1' });
const frostDay = () => object({ p10: orNull(dayNumber()), p50: orNull(dayNumber()), p90: orNull(dayNumber()) });

/**
 * Frost dates as a station's publisher prints them. `lastDayD.p90` is passed by one year's last frost in ten; one year's
 * first frost in ten comes before `firstDayD.p10`. Days run over the year's end, so that p90 may be the smaller number.
 */
export const FrostDatesInputsSchema = object({
  thresholdC: quantity('degC', { minimum: -10, maximum: 5 }),
  lastDayD: frostDay(),
  firstDayD: frostDay(),
  publisher: text(120),
});
export type FrostDatesInputs = Static<typeof FrostDatesInputsSchema>;

/** The cold end of a file of hours: the temperature that `coldShareFrac` of its hours lie under. */
export const HourlyLowInputsSchema = object({
  lowC: quantity('degC', { minimum: -90, maximum: 50 }),
  coldShareFrac: quantity('1', { minimum: 0.003, maximum: 0.005 }),
  hoursCount: Type.Integer({ minimum: 8000, maximum: 1_000_000 }),
  years: oneOf('typical', 'real'),
});
export type HourlyLowInputs = Static<typeof HourlyLowInputsSchema>;

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
  frostDates: Type.Optional(orNull(FrostDatesInputsSchema)),
  hourlyLow: Type.Optional(orNull(HourlyLowInputsSchema)),
});
export type ClimateInputs = Static<typeof ClimateInputsSchema>;
