import { readFileSync } from 'node:fs';
import { describe, expect, test } from '@jest/globals';
import { readClimateFile } from '@lathwork/formats';
import { OWN_HOUR_COLUMNS } from '../../../libs/formats/src/own-hours.js';
import { OWN_MONTH_COLUMNS } from '../../../libs/formats/src/own-months.js';

/* The page of our own forms: its examples are read as they stand, and it lists what the parsers take, no more and no less. */
const page = readFileSync('docs/formats/own-csv.md', 'utf8');
const [months = '', hours = ''] = [...page.matchAll(/```csv\n([\s\S]*?)```/g)].map((m) => m[1] ?? '');
const [, monthsPart = '', hoursPart = ''] = page.split(/^## (?:Twelve months|A year of hours|Questions)/m);
const columnsOf = (part: string): string[] =>
  part
    .split('\n')
    .filter((l) => l.startsWith('| `'))
    .flatMap((l) => [...(l.split('|')[1] ?? '').matchAll(/`([a-z0-9_]+)`/g)].map((m) => m[1] ?? ''));

describe('the page of our own forms', () => {
  test('lists every column of the two forms', () => {
    expect(columnsOf(monthsPart).sort()).toEqual([...OWN_MONTH_COLUMNS.map((c) => c.name), 'years_count'].sort());
    expect(columnsOf(hoursPart).sort()).toEqual(OWN_HOUR_COLUMNS.map((c) => c.name).sort());
  });

  test('its twelve months are read as they stand', () => {
    const result = readClimateFile(months);
    if (result.outcome !== 'records' || result.file.kind !== 'monthly') throw new Error(JSON.stringify(result));
    const { file } = result;
    expect(file.place).toEqual({
      stationId: null,
      stationName: 'Upper field',
      country: null,
      latitudeDeg: 43.63,
      longitudeDeg: -72.3,
      elevationM: 182,
      zoneH: null,
    });
    expect(file.source).toMatchObject({ formatId: 'own-months', period: '2014-2024', kind: 'means', credit: 'Own thermometer at the upper field' });
    expect([file.annualExtremeMinC, file.annualExtremeMinYearsCount]).toEqual([-27.5, 11]);
    expect(file.months.map((m) => m.tMinC)).toEqual([-12.6, -11.3, -5.9, 0.2, 6.4, 11.9, 14.6, 13.4, 8.9, 2.8, -2.4, -8.3]);
    expect(file.months.map((m) => m.precipitationMm)[9]).toBeNull();
  });

  test('a key that the page does not list is refused by its name', () => {
    const result = readClimateFile(months.replace('period,', 'peroid,'));
    expect(result.outcome === 'faults' && result.faults.map((f) => [f.line, f.code, f.column])).toEqual([
      [6, 'unknown-column', 'peroid'],
      [10, 'missing-header', 'period'],
    ]);
  });

  test('its two hours are the beginning of a year, and too little of one', () => {
    const result = readClimateFile(hours);
    expect(result.formatId).toBe('own-hours');
    expect(result.outcome === 'faults' && result.faults.map((f) => [f.line, f.code])).toEqual([[11, 'truncated']]);
  });

  test('its two hours are read where that little is asked for', () => {
    const result = readClimateFile(hours, { missingHoursLimit: 8760 });
    if (result.outcome !== 'records' || result.file.kind !== 'hourly') throw new Error(JSON.stringify(result));
    expect(result.file.hours.airC.slice(0, 3)).toEqual([-4.1, -4.6, null]);
    expect(result.file.hours.relativeHumidityFrac.slice(0, 2)).toEqual([0.88, 0.9]);
    expect([result.file.missingHoursCount, result.file.place.zoneH]).toEqual([8758, -5]);
  });

  test('customary units are the same figures', () => {
    const customary = months
      .replace('t_max_c,t_min_c,precipitation_mm', 't_max_f,t_min_f,precipitation_in')
      .replace(/^(\d+),(-?[\d.]+),(-?[\d.]+),([\d.]*),/gm, (_, m: string, max: string, min: string, rain: string) => {
        const f = (c: string): string => (Number(c) * 1.8 + 32).toFixed(2);
        return `${m},${f(max)},${f(min)},${rain === '' ? '' : (Number(rain) / 25.4).toFixed(4)},`;
      });
    const [a, b] = [readClimateFile(months), readClimateFile(customary)];
    if (a.outcome !== 'records' || b.outcome !== 'records' || a.file.kind !== 'monthly' || b.file.kind !== 'monthly') throw new Error(JSON.stringify([a, b]));
    for (const [i, month] of a.file.months.entries()) {
      expect(b.file.months[i]?.tMaxC).toBeCloseTo(month.tMaxC ?? NaN, 1);
      expect(b.file.months[i]?.tMinC).toBeCloseTo(month.tMinC ?? NaN, 1);
      if (month.precipitationMm === null) expect(b.file.months[i]?.precipitationMm).toBeNull();
      else expect(b.file.months[i]?.precipitationMm).toBeCloseTo(month.precipitationMm, 1);
    }
  });
});
