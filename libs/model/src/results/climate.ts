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
  sunBasis: oneOf('sunshineHours', 'temperatureRange', 'none'),
  clearSkyMJPerM2: quantity('MJ/m2'),
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
      basis: oneOf('annualExtremeMinimum', 'monthlyAbsoluteMinimum', 'monthlyMeanLessSpread'),
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
});
export type ClimateResult = Static<typeof ClimateResultSchema>;
