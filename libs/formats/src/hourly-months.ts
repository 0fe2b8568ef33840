import type { HourlyFile, HourlyValue, MonthRecord } from './climate-file.js';
import { DAYS_IN_MONTH, rounded } from './csv.js';
import { emptyMonth } from './parser.js';

/**
 * Gives: twelve months out of a year of hours. Mean highest, mean lowest and their spread from whole days; humidity and
 * vapour pressure as means of the hours; sun of the mean day from the mean of each of its 24 hours, so that an absent night
 * does not weigh like an absent noon. Assumptions: days by the file's clock. Validity: at least 20 whole days (22 hours
 * each) for temperatures, 20 values at each hour for the sun, nine tenths of the hours for the other means; all hours for
 * rain, which is a sum. Less gives null. The lowest hour of one typical month is no mean of lowest nights, and is not given.
 * References: saturation over water after Magnus with the constants of WMO-No. 8, annex 4.B (6.112 hPa, 17.62, 243.12 C).
 */
const WHOLE_DAY_HOURS = 22;
const LEAST_DAYS = 20;
const LEAST_SHARE = 0.9;
const MJ_PER_WH = 0.0036;

export const vapourPressurePa = (dewPointC: number): number => 611.2 * Math.exp((17.62 * dewPointC) / (243.12 + dewPointC));

const mean = (list: readonly number[]): number => list.reduce((a, b) => a + b, 0) / list.length;

/** Standard deviation about the mean, of a sample. */
const spread = (list: readonly number[]): number => {
  const middle = mean(list);
  return Math.sqrt(list.reduce((a, b) => a + (b - middle) ** 2, 0) / (list.length - 1));
};

const rowsOfMonth = (file: HourlyFile, month: number): number[] => file.hours.month.flatMap((m, i) => (m === month ? [i] : []));

const known = (file: HourlyFile, rows: readonly number[], name: HourlyValue): number[] =>
  rows.map((i) => file.hours[name][i]).filter((v): v is number => typeof v === 'number');

const wholeDays = (file: HourlyFile, rows: readonly number[]): number[][] => {
  const days = new Map<number, number[]>();
  for (const i of rows) {
    const [t, day] = [file.hours.airC[i], file.hours.day[i] ?? 0];
    if (typeof t !== 'number') continue;
    const list = days.get(day);
    if (list) list.push(t);
    else days.set(day, [t]);
  }
  return [...days.values()].filter((d) => d.length >= WHOLE_DAY_HOURS);
};

const radiationOf = (file: HourlyFile, rows: readonly number[]): number | null => {
  const byHour: number[][] = Array.from({ length: 24 }, () => []);
  for (const i of rows) {
    const sun = file.hours.globalWPerM2[i];
    if (typeof sun === 'number') byHour[(file.hours.hourEnding[i] ?? 1) - 1]?.push(sun);
  }
  if (byHour.some((h) => h.length < LEAST_DAYS)) return null;
  return rounded(byHour.map(mean).reduce((a, b) => a + b, 0) * MJ_PER_WH, 2);
};

const vapourOf = (file: HourlyFile, rows: readonly number[], needed: number): number | null => {
  const { airC, dewPointC, relativeHumidityFrac } = file.hours;
  const list = rows.flatMap((i) => {
    const [air, dew, humidity] = [airC[i], dewPointC[i], relativeHumidityFrac[i]];
    if (typeof dew === 'number') return [vapourPressurePa(dew)];
    return typeof air === 'number' && typeof humidity === 'number' ? [humidity * vapourPressurePa(air)] : [];
  });
  return list.length < needed ? null : Math.round(mean(list));
};

const monthOf = (file: HourlyFile, month: number): MonthRecord => {
  const rows = rowsOfMonth(file, month);
  const needed = LEAST_SHARE * 24 * (DAYS_IN_MONTH[month - 1] ?? 31);
  const days = wholeDays(file, rows);
  const nights = days.map((d) => Math.min(...d));
  const enough = days.length >= LEAST_DAYS;
  const meanOf = (name: HourlyValue, decimals: number): number | null => {
    const list = known(file, rows, name);
    return list.length < needed ? null : rounded(mean(list), decimals);
  };
  const rain = known(file, rows, 'rainMm');
  return {
    ...emptyMonth(),
    tMaxC: enough ? rounded(mean(days.map((d) => Math.max(...d))), 2) : null,
    tMinC: enough ? rounded(mean(nights), 2) : null,
    tMeanC: enough ? rounded(mean(days.map(mean)), 2) : null,
    nightDeviationK: enough ? rounded(Math.min(20, spread(nights)), 2) : null,
    frostDaysD: days.length === rows.length / 24 ? nights.filter((t) => t <= 0).length : null,
    vapourPressurePa: vapourOf(file, rows, needed),
    relativeHumidityFrac: meanOf('relativeHumidityFrac', 4),
    windMPerS: meanOf('windMPerS', 2),
    radiationMJPerM2: radiationOf(file, rows),
    precipitationMm:
      rain.length === rows.length
        ? rounded(
            rain.reduce((a, b) => a + b, 0),
            1,
          )
        : null,
    yearsCount: 1,
  };
};

export const monthsOfHourlyFile = (file: HourlyFile): MonthRecord[] => Array.from({ length: 12 }, (_, m) => monthOf(file, m + 1));
