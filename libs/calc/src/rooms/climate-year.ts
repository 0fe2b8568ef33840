import type { ClimateInputs, SiteInputs } from '@lathwork/model';
import { airAtHourC } from '../physics/air.js';
import { seededGenerator } from '../physics/sampling.js';
import { clearDayMJPerM2, cloudFracOfSun, writeHourlySun } from '../physics/sky.js';
import { daylightH, extraterrestrialDayMJPerM2 } from '../physics/sun.js';
import { dailyCurve, MONTH_DAYS, MONTH_STARTS, YEAR_DAYS } from '../physics/weather-normal.js';
import { chain, clearnessOfDays, DAY_MEMORY } from '../physics/weather-sequence.js';
import { cited } from '../sources/cite.js';
import { nightSpreads } from './climate-frost.js';
import { siteMonths, type SiteMonth } from './climate-months.js';

/** 8,760 hours of solar time, hour 0 first, values at the middle of each hour; a year without a leap day. */
export interface SyntheticYear {
  seed: number;
  airC: Float64Array;
  dewPointC: Float64Array;
  globalWPerM2: Float64Array;
  beamNormalWPerM2: Float64Array;
  diffuseWPerM2: Float64Array;
  /** Share of the sky under cloud, one value a day held over its 24 hours. */
  cloudFrac: Float64Array;
}

export interface NoYear {
  /** Months without a temperature, a dew point or a sun: no year is made up around them. */
  missingMonths: number[];
}

const HOURS = YEAR_DAYS * 24;
/** Moist air comes with warm air, but not in full. */
const DEW_FOLLOWS_FRAC = cited(0.9, '1', 'CLIMATE-JUDGEMENT', 'change of a dew point as a share of the change of the air in a spell', { min: 0.5, max: 1.1 });
/** A day's range swings less than the root of its clearness would have it where wind and rain come with clear skies too. */
const RANGE_FOLLOWS = cited(0.5, '1', 'FAO-56', 'eq. 50 turned round: range goes with the square of clearness; half of that power is kept', {
  min: 0.25,
  max: 2,
});

interface Days {
  lowC: Float64Array;
  highC: Float64Array;
  dewC: Float64Array;
}

const known = (m: SiteMonth): boolean => m.month.hasRecord && m.month.dewPointC !== null && m.month.sunMJPerM2 !== null;
const eachDay = (month: number, act: (day: number) => void): void => {
  for (let d = MONTH_STARTS[month] ?? 0; d < (MONTH_STARTS[month + 1] ?? YEAR_DAYS); d++) act(d);
};

/**
 * Gives: level sun of 365 days, MJ/m2, whose months have the means asked for. Model: clearness of each day as
 * clearnessOfDays has it, times the sun above the air, scaled to the month's mean; a day scaled over the clear sky is held
 * there and the rest is shared out among the others, in rounds.
 */
const sunOfDays = (place: Pick<SiteInputs, 'latitudeDeg' | 'elevationM'>, months: readonly SiteMonth[], random: () => number) => {
  const [sun, clear] = [new Float64Array(YEAR_DAYS), new Float64Array(YEAR_DAYS)];
  months.forEach(({ month }, m) => {
    const start = MONTH_STARTS[m] ?? 0;
    const count = MONTH_DAYS[m] ?? 30;
    let above = 0;
    eachDay(m, (d) => {
      const ra = extraterrestrialDayMJPerM2(place.latitudeDeg, d + 1);
      clear[d] = clearDayMJPerM2(ra, place.elevationM);
      above += ra;
    });
    const wanted = (month.sunMJPerM2 ?? 0) * count;
    const kt = clearnessOfDays(count, above > 0 ? wanted / above : 0, random);
    eachDay(m, (d) => (sun[d] = (kt[d - start] ?? 0) * extraterrestrialDayMJPerM2(place.latitudeDeg, d + 1)));
    for (let round = 0; round < 30; round++) {
      let [free, held] = [0, 0];
      eachDay(m, (d) => ((sun[d] ?? 0) < (clear[d] ?? 0) ? (free += sun[d] ?? 0) : (held += sun[d] ?? 0)));
      if (free <= 0 || Math.abs(wanted - held - free) < 1e-9) break;
      const scale = Math.max(0, (wanted - held) / free);
      eachDay(m, (d) => {
        if ((sun[d] ?? 0) < (clear[d] ?? 0)) sun[d] = Math.min(clear[d] ?? 0, scale * (sun[d] ?? 0));
      });
    }
    // A month as clear as the formula's mean day may ask for a little more than its days add up to.
    let total = 0;
    eachDay(m, (d) => (total += sun[d] ?? 0));
    eachDay(m, (d) => (sun[d] = total > 0 ? ((sun[d] ?? 0) * wanted) / total : 0));
  });
  return { sun, clear };
};

/** Night and day of 365 days: the season, spells with memory, and a range that opens on clear days. */
const airOfDays = (months: readonly SiteMonth[], climate: ClimateInputs, sun: Float64Array, random: () => number): Days => {
  const curve = (of: (m: SiteMonth, i: number) => number) => dailyCurve(months.map(of));
  const low = curve((m) => m.month.tMinC ?? 0);
  const high = curve((m) => m.month.tMaxC ?? 0);
  const dew = curve((m) => m.month.dewPointC ?? 0);
  const spreads = nightSpreads(months, climate);
  const spread = curve((_, i) => spreads[i] ?? 0);
  const spell = chain(new Float64Array(YEAR_DAYS), DAY_MEMORY.temperature, random);
  const out: Days = { lowC: low, highC: high, dewC: dew };
  months.forEach((_, m) => {
    const count = MONTH_DAYS[m] ?? 30;
    let [mean, opening] = [0, 0];
    eachDay(m, (d) => {
      mean += (spell[d] ?? 0) / count;
      opening += (sun[d] ?? 0) ** RANGE_FOLLOWS / count;
    });
    eachDay(m, (d) => {
      const off = ((spell[d] ?? 0) - mean) * (spread[d] ?? 0);
      const open = opening > 0 ? (sun[d] ?? 0) ** RANGE_FOLLOWS / opening : 1;
      const middle = ((low[d] ?? 0) + (high[d] ?? 0)) / 2 + off;
      const half = Math.max(0, (((high[d] ?? 0) - (low[d] ?? 0)) / 2) * open);
      low[d] = middle - half;
      high[d] = middle + half;
      dew[d] = (dew[d] ?? 0) + DEW_FOLLOWS_FRAC * off;
    });
  });
  return out;
};

/** Times of the course of a day near the poles, where no sun marks them: as the fixed fractions of ASHRAE-F09-14 have them. */
const POLAR = { sunriseH: 5.5, sunsetH: 18.5 };

interface Course {
  /** Place between the branch's ends, 0 to 1, and those ends. */
  share: Float64Array;
  fromC: Float64Array;
  toC: Float64Array;
}

/**
 * The 8,760 hours as shares of the way from a night to a day (CESARACCIO-2001). The hours before dawn belong to the fall from
 * the day before, so that one day runs into the next without a step.
 */
const courseOf = (latitudeDeg: number, days: Days): Course => {
  const out: Course = { share: new Float64Array(HOURS), fromC: new Float64Array(HOURS), toC: new Float64Array(HOURS) };
  const unit = { maxC: 1, minC: 0, nextMinC: 0, sunriseH: 0, sunsetH: 0, peakH: 0 };
  for (let d = 0; d < YEAR_DAYS; d++) {
    const light = daylightH(latitudeDeg, d + 1);
    const polar = light < 7 || light > 20;
    unit.sunriseH = Math.round((polar ? POLAR.sunriseH : 12 - light / 2) - 0.5) + 0.5;
    unit.sunsetH = polar ? POLAR.sunsetH : 12 + light / 2;
    unit.peakH = Math.round(unit.sunsetH - 4 - 0.5) + 0.5;
    const [today, before, after] = [d, (d + YEAR_DAYS - 1) % YEAR_DAYS, (d + 1) % YEAR_DAYS];
    for (let h = 0; h < 24; h++) {
      const hour = h + 0.5;
      const at = d * 24 + h;
      out.share[at] = Math.min(1, Math.max(0, airAtHourC(hour, unit)));
      out.fromC[at] = days.lowC[hour <= unit.peakH ? today : after] ?? 0;
      out.toC[at] = days.highC[hour < unit.sunriseH ? before : today] ?? 0;
    }
  }
  return out;
};

const hourC = (c: Course, at: number, bend: number): number => {
  const from = c.fromC[at] ?? 0;
  return from + ((c.toC[at] ?? 0) - from) * (c.share[at] ?? 0) ** bend;
};

/** Mean of the hours, of the highest and of the lowest hour of each day of a month, with its hours bent. */
const meansOf = (c: Course, month: number, bend: number): { mean: number; high: number; low: number } => {
  const out = { mean: 0, high: 0, low: 0 };
  eachDay(month, (d) => {
    let [high, low] = [-Infinity, Infinity];
    for (let at = d * 24; at < d * 24 + 24; at++) {
      const t = hourC(c, at, bend);
      out.mean += t;
      if (t > high) high = t;
      if (t < low) low = t;
    }
    out.high += high;
    out.low += low;
  });
  const days = MONTH_DAYS[month] ?? 30;
  return { mean: out.mean / days / 24, high: out.high / days, low: out.low / days };
};

/**
 * Writes a month's air so that its mean highest and lowest hour are those asked for and the mean of its hours lies half way:
 * the middle is what most services print as the mean. The bend moves the hours between the two ends, which stay; the stretch
 * moves both ends.
 */
const writeMonth = (airC: Float64Array, c: Course, month: number, wanted: { high: number; low: number }): void => {
  let [a, b] = [0.1, 8];
  for (let i = 0; i < 11; i++) {
    const bend = (a + b) / 2;
    const m = meansOf(c, month, bend);
    if (m.mean > (m.high + m.low) / 2) a = bend;
    else b = bend;
  }
  const bend = (a + b) / 2;
  const m = meansOf(c, month, bend);
  const stretch = m.high - m.low > 1e-9 ? (wanted.high - wanted.low) / (m.high - m.low) : 1;
  eachDay(month, (d) => {
    for (let at = d * 24; at < d * 24 + 24; at++) airC[at] = wanted.low + stretch * (hourC(c, at, bend) - m.low);
  });
};

/**
 * Gives: a year of hours that has the site's monthly means, for places without a file of hours; or the months that forbid it.
 * Model: clearness of days by BENDT-1981 dealt out with memory; spells of temperature by a chain with memory, as wide as the
 *   station's nights are; the day's range opens with its sun; hours by CESARACCIO-2001 and COLLARES-RABL-1979, beam and
 *   diffuse by ERBS-1982. Then each month is moved so that means of daily highest, daily lowest and all hours, and the sun,
 *   are those of the record. Cloud by KASTEN-CZEPLAK-1980.
 * Assumptions: warm spells and clear days come independently; solar time; no wind, for the means have none.
 * Validity: every latitude; all twelve months on record. Where day and night differ by less than 2 to 3 K the spells part the
 *   extremes, and the mean of the hours may lie some tenths off the middle. One seed gives one year, on every machine.
 * Fields: degC at the site's height, W/m2 on the level (beam: facing the sun).
 */
export const syntheticYear = (x: { site: Pick<SiteInputs, 'latitudeDeg' | 'elevationM'>; climate: ClimateInputs; seed: number }): SyntheticYear | NoYear => {
  const months = siteMonths(x.site, x.climate);
  const missingMonths = months.filter((m) => !known(m)).map((m) => m.month.month);
  if (missingMonths.length > 0) return { missingMonths };
  const random = seededGenerator(x.seed);
  const { sun, clear } = sunOfDays(x.site, months, random);
  const days = airOfDays(months, x.climate, sun, random);
  const course = courseOf(x.site.latitudeDeg, days);
  const list = () => new Float64Array(HOURS);
  const out: SyntheticYear = {
    seed: x.seed,
    airC: list(),
    dewPointC: list(),
    globalWPerM2: list(),
    beamNormalWPerM2: list(),
    diffuseWPerM2: list(),
    cloudFrac: list(),
  };
  months.forEach(({ month }, m) => writeMonth(out.airC, course, m, { high: month.tMaxC ?? 0, low: month.tMinC ?? 0 }));
  for (let d = 0; d < YEAR_DAYS; d++) {
    writeHourlySun(out, d * 24, { latitudeDeg: x.site.latitudeDeg, dayOfYear: d + 1, dayMJPerM2: sun[d] ?? 0 });
    out.cloudFrac.fill(cloudFracOfSun(sun[d] ?? 0, clear[d] ?? 0), d * 24, d * 24 + 24);
    for (let at = d * 24; at < d * 24 + 24; at++) out.dewPointC[at] = Math.min(days.dewC[d] ?? 0, out.airC[at] ?? 0);
  }
  return out;
};
