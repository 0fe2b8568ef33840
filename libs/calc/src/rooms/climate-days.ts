import type { ClimateMonth, HourlyDay, SiteInputs } from '@lathwork/model';
import { hourlyAirC } from '../physics/air.js';
import { hourlySun } from '../physics/sky.js';
import { extraterrestrialDayMJPerM2, MEAN_DAYS } from '../physics/sun.js';
import { cited } from '../sources/cite.js';
import { clearHourlyDay } from './climate-months.js';

/** What passes a sky that is overcast all day. */
const OVERCAST_FRAC = cited(0.25, '1', 'FAO-56', 'eq. 35 with no hour of sunshine', { min: 0.15, max: 0.35 });

export type DayKind = 'mean' | 'clearDay' | 'clearNight' | 'cloudy';
type Place = Pick<SiteInputs, 'latitudeDeg' | 'elevationM'>;

const dayOf = (place: Place, month: ClimateMonth, air: { lowC: number; highC: number }, dayMJPerM2: number, dewPointC: number): HourlyDay => {
  const dayOfYear = MEAN_DAYS[month.month - 1] ?? 1;
  return {
    month: month.month,
    dayOfYear,
    airC: hourlyAirC({ latitudeDeg: place.latitudeDeg, dayOfYear, maxC: air.highC, minC: air.lowC }),
    dewPointC: Math.min(dewPointC, air.lowC),
    ...hourlySun({ latitudeDeg: place.latitudeDeg, dayOfYear, dayMJPerM2 }),
  };
};

/**
 * Gives: 24 mid-hours of one kind of day of a month, or null where the month has no record of what it needs.
 * Model: mean: the month's mean night, day and sun. clearDay: warm sunny maximum, the month's range under it, clear sun.
 *   clearNight: the cold night, the month's range over it, clear sun. cloudy: a quarter of the sun above the air (FAO-56
 *   eq. 35), about the month's middle temperature, its range drawn in with the root of the sun it gets against the mean (FAO-56 eq. 50).
 * Assumptions: the mean day of IQBAL-1983 stands for its month. Validity: every latitude.
 */
export const typicalDay = (place: Place, month: ClimateMonth, kind: DayKind): HourlyDay | null => {
  if (!month.hasRecord || month.tMaxC === null || month.tMinC === null) return null;
  const rangeK = month.tMaxC - month.tMinC;
  const dew = month.dewPointC ?? month.tMinC;
  if (kind === 'clearDay') return month.sunnyDayMaxC === null ? null : clearHourlyDay(place, month, month.sunnyDayMaxC - rangeK, month.sunnyDayMaxC);
  if (kind === 'clearNight') return month.coldNightC === null ? null : clearHourlyDay(place, month, month.coldNightC, month.coldNightC + rangeK);
  if (month.sunMJPerM2 === null) return null;
  if (kind === 'mean') return dayOf(place, month, { lowC: month.tMinC, highC: month.tMaxC }, month.sunMJPerM2, dew);
  const overcast = Math.min(month.sunMJPerM2, OVERCAST_FRAC * extraterrestrialDayMJPerM2(place.latitudeDeg, MEAN_DAYS[month.month - 1] ?? 1));
  const halfK = (rangeK / 2) * (month.sunMJPerM2 > 0 ? Math.sqrt(overcast / month.sunMJPerM2) : 1);
  const middleC = (month.tMaxC + month.tMinC) / 2;
  return dayOf(place, month, { lowC: middleC - halfK, highC: middleC + halfK }, overcast, dew);
};
