import { Type, type Static } from '@sinclair/typebox';
import { list, object, oneOf, orNull, quantity } from '../quantity.js';

export const ClimateMonthSchema = object({
  month: Type.Integer({ minimum: 1, maximum: 12 }),
  hasRecord: Type.Boolean(),
  tMaxC: orNull(quantity('degC')),
  tMinC: orNull(quantity('degC')),
  dewPointC: orNull(quantity('degC')),
  /** A cold night to expect in this month: the mean of the month's lowest night, or an estimate from its spread. */
  coldNightC: orNull(quantity('degC')),
  coldNightBasis: oneOf('recorded', 'estimated', 'none'),
  /** A warm sunny day of this month. */
  sunnyDayMaxC: orNull(quantity('degC')),
  daylightH: quantity('h'),
  /** Mean daily sun on the flat, and how it was found. */
  sunMJPerM2: orNull(quantity('MJ/m2')),
  sunBasis: oneOf('radiation', 'sunshineHours', 'temperatureRange', 'none'),
  clearSkyMJPerM2: quantity('MJ/m2'),
  /** Doubt of the sun as a share of it, by its basis. */
  sunDoubtFrac: Type.Optional(orNull(quantity('1'))),
  dewPointBasis: Type.Optional(oneOf('vapourPressure', 'relativeHumidity', 'nightRule', 'none')),
  dewPointDoubtK: Type.Optional(orNull(quantity('K'))),
});
export type ClimateMonth = Static<typeof ClimateMonthSchema>;

/** Twenty-four hours, solar time, hour 0 first, values at the middle of each hour. */
export const HourlyDaySchema = object({
  month: Type.Integer({ minimum: 1, maximum: 12 }),
  dayOfYear: Type.Integer({ minimum: 1, maximum: 366 }),
  airC: Type.Array(quantity('degC'), { minItems: 24, maxItems: 24 }),
  dewPointC: quantity('degC'),
  globalWPerM2: Type.Array(quantity('W/m2'), { minItems: 24, maxItems: 24 }),
  beamNormalWPerM2: Type.Array(quantity('W/m2'), { minItems: 24, maxItems: 24 }),
  diffuseWPerM2: Type.Array(quantity('W/m2'), { minItems: 24, maxItems: 24 }),
});
export type HourlyDay = Static<typeof HourlyDaySchema>;

const frostDay = () => object({ p10: orNull(quantity('d')), p50: orNull(quantity('d')), p90: orNull(quantity('d')) });

/**
 * When frost ends and comes back. Over all years, those without a frost counted: one year in ten has a frost after
 * `lastDayD.p90` and one in ten a frost before `firstDayD.p10`. Days of the year, 1 January is 1, run over the year's end.
 * A member is null where so few years have a frost that the date does not exist.
 */
export const FrostSchema = object({
  thresholdC: quantity('degC'),
  basis: oneOf('published', 'monthlyDistribution'),
  pattern: oneOf('everyYear', 'someYears', 'never', 'allYear'),
  /** Share of years that have a frost at all. */
  yearsWithFrostFrac: quantity('1'),
  lastDayD: frostDay(),
  firstDayD: frostDay(),
  freeD: frostDay(),
  /** How far a date may be off for want of daily records. */
  doubtD: quantity('d'),
});
export type Frost = Static<typeof FrostSchema>;

/** Class of winter cold by the mean of each year's coldest night, in the published steps of 10 degF with halves a and b. */
export const HardinessSchema = object({
  hardinessClass: Type.String({ pattern: '^([1-9]|1[0-3])[ab]$', maxLength: 3 }),
  classMinC: quantity('degC'),
  classMaxC: quantity('degC'),
  /** The classes at the two ends of the doubt. */
  coldestClass: Type.String({ pattern: '^([1-9]|1[0-3])[ab]$', maxLength: 3 }),
  mildestClass: Type.String({ pattern: '^([1-9]|1[0-3])[ab]$', maxLength: 3 }),
});
export type Hardiness = Static<typeof HardinessSchema>;

/** Sums over the year of kelvins under or over a base; null where a month has no record. */
export const DegreeDaysSchema = object({
  heatingBaseC: quantity('degC'),
  heatingKD: orNull(quantity('K.d')),
  growingBaseC: quantity('degC'),
  growingKD: orNull(quantity('K.d')),
});
export type DegreeDays = Static<typeof DegreeDaysSchema>;

/** Hours of direct sun on the plot on the mean day of a month. */
export const SunHoursSchema = object({
  month: Type.Integer({ minimum: 1, maximum: 12 }),
  /** Sun over a free horizon, and sun that clears the obstacles. */
  openH: quantity('h'),
  clearedH: quantity('h'),
  /** Sun to be expected: what clears the obstacles, times the share of daylight that is bright. */
  brightH: orNull(quantity('h')),
  /** Share of the day's direct sun that the obstacles take. */
  lostFrac: quantity('1'),
});
export type SunHours = Static<typeof SunHoursSchema>;

export const ClimateResultSchema = object({
  hemisphere: oneOf('north', 'south', 'equatorial'),
  /** First month of a chart that shows winter whole: 8 in the north, 2 in the south. */
  chartStartMonth: Type.Integer({ minimum: 1, maximum: 12 }),
  months: Type.Array(ClimateMonthSchema, { minItems: 12, maxItems: 12 }),
  monthsWithRecordCount: Type.Integer({ minimum: 0, maximum: 12 }),
  coldestMonth: Type.Union([Type.Integer({ minimum: 1, maximum: 12 }), Type.Null()]),
  hottestMonth: Type.Union([Type.Integer({ minimum: 1, maximum: 12 }), Type.Null()]),
  /** The design cold night, or null when the missing month is likely the coldest: then no night is promised. */
  designNight: orNull(
    object({
      basis: oneOf('annualExtremeMinimum', 'hourlyPercentile', 'monthlyAbsoluteMinimum', 'monthlyMeanLessSpread'),
      lowC: quantity('degC'),
      doubtK: quantity('K'),
      day: HourlyDaySchema,
    }),
  ),
  /** A clear day of the month with the greatest risk of cooking plants while nights still ask for a closed shelter. */
  clearDay: orNull(HourlyDaySchema),
  /** One clear day for each month with a record, for the month-by-month chart. */
  clearDays: list(HourlyDaySchema, 12),
  /** Same for cold clear nights. */
  coldNights: list(HourlyDaySchema, 12),
  stationDistanceM: quantity('m'),
  /** Site height minus station height, and the correction already applied to the temperatures. */
  heightDifferenceM: quantity('m'),
  heightCorrectionK: quantity('K'),
  stationFit: oneOf('near', 'far', 'tooFar'),
  /** How far a cold night at the site may lie from the station's, by distance and by height; it is part of every doubt above. */
  stationDoubtK: Type.Optional(quantity('K')),
  frost: Type.Optional(orNull(FrostSchema)),
  hardiness: Type.Optional(orNull(HardinessSchema)),
  degreeDays: Type.Optional(DegreeDaysSchema),
  sunHours: Type.Optional(Type.Array(SunHoursSchema, { minItems: 12, maxItems: 12 })),
  /** Whether the sun hours know the plot's obstacles. */
  sunHoursBasis: Type.Optional(oneOf('obstacles', 'freeHorizon')),
  /** The month most likely to cook plants while nights still ask for a closed shelter; `nightsShut` false: no month has such nights. */
  overheating: Type.Optional(orNull(object({ month: Type.Integer({ minimum: 1, maximum: 12 }), nightsShut: Type.Boolean() }))),
});
export type ClimateResult = Static<typeof ClimateResultSchema>;
