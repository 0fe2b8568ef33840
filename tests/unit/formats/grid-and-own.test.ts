import { readFileSync } from 'node:fs';
import { describe, expect, test } from '@jest/globals';
import { Ajv } from 'ajv';
import { ClimateInputsSchema } from '@lathwork/model';
import { readClimateFile, toClimateInputs, type MonthlyFile, type ReadOptions, type ReadResult } from '@lathwork/formats';
import { dataFile } from '../../support/data-folder.js';
import { airOf, hoursOf } from './hourly-files.js';
import { reported } from './support.js';

/* Climatology of a grid cell as CSV and JSON, and our own two forms as docs/formats/own-csv.md has them. */
const codes = (result: ReadResult): string[] => (result.outcome === 'faults' ? result.faults.map((f) => `${f.line} ${f.code}`) : []);
const monthly = (text: string, options: ReadOptions = {}): MonthlyFile => {
  const result = readClimateFile(text, options);
  if (result.outcome !== 'records') throw new Error(JSON.stringify(result.faults, null, 1));
  if (result.file.kind !== 'monthly') throw new Error(result.file.kind);
  return result.file;
};
const MONTHS = 'JAN,FEB,MAR,APR,MAY,JUN,JUL,AUG,SEP,OCT,NOV,DEC,ANN';
const T2M = [-4, -3, 2, 8, 14, 19, 22, 21, 16, 10, 4, -2];
const spreadOut = (list: readonly number[]): string => [...list, list.reduce((a, b) => a + b, 0) / 12].join(',');
const plus = (k: number): number[] => T2M.map((t) => t + k);

describe('climatology of a grid cell, CSV', () => {
  const UNITS = [
    'T2M     MERRA-2 Temperature at 2 Meters (C)',
    'T2M_MAX     MERRA-2 Temperature at 2 Meters Maximum (C)',
    'T2M_MIN     MERRA-2 Temperature at 2 Meters Minimum (C)',
    'T2M_RANGE     MERRA-2 Temperature at 2 Meters Range (C)',
    'RH2M     MERRA-2 Relative Humidity at 2 Meters (%)',
    'WS10M     MERRA-2 Wind Speed at 10 Meters (m/s)',
    'ALLSKY_SFC_SW_DWN     CERES SYN1deg All Sky Surface Shortwave Downward Irradiance (kW-hr/m^2/day)',
    'PRECTOTCORR     MERRA-2 Precipitation Corrected (mm/day)',
    'PRECTOTCORR_SUM     MERRA-2 Precipitation Corrected Sum (mm)',
    'TS     MERRA-2 Earth Skin Temperature (C)',
  ];
  const file = (rows: string[], units = UNITS): string =>
    [
      '-BEGIN HEADER-',
      'NASA/POWER Source Native Resolution Climatology in LST',
      '20-year Meteorological and Solar Monthly & Annual Climatologies (January 2001 - December 2020) ',
      'Location: Latitude  42.5   Longitude -88.25 ',
      'Elevation from MERRA-2: Average for 0.5 x 0.625 degree lat/lon region = 251.5 meters',
      'The value for missing source data that cannot be computed or is outside of the sources availability range: -999 ',
      'Parameter(s): ',
      ...units,
      '-END HEADER-',
      `PARAMETER,${MONTHS}`,
      ...rows,
      '',
    ].join('\r\n');
  const means = [`T2M,${spreadOut(T2M)}`, `T2M_MAX,${spreadOut(plus(5))}`, `T2M_MIN,${spreadOut(plus(-5))}`, `T2M_RANGE,${spreadOut(T2M.map(() => 10))}`];

  test('the service answer in the data folder: latitude, height, twelve means', () => {
    const { path, skip } = dataFile('misc/nasa_power_climatology_response.json');
    if (skip !== undefined) return void reported(skip);
    const stored = JSON.parse(readFileSync(path, 'utf8')) as { http_interactions: { response: { body: { string: string } } }[] };
    const text = stored.http_interactions[0]?.response.body.string ?? '';
    const read = monthly(text);
    expect(read.place).toMatchObject({ latitudeDeg: -89.5, longitudeDeg: -179.5, elevationM: 2885.03 });
    expect(read.months.map((m) => m.tMeanC)).toEqual([-29.27, -40.91, -52.73, -57.05, -57.91, -59.51, -62.05, -61.4, -60.12, -52.12, -38.58, -28.55]);
    expect(read.source).toMatchObject({ period: '2001-2020', kind: 'means' });
    expect(read.months[0]).toMatchObject({ tMaxC: null, tMinC: null });
  });

  test('kilowatt-hours become megajoules, per cent a share, a daily rate a month', () => {
    const read = monthly(
      file([
        ...means,
        `RH2M,${spreadOut(T2M.map(() => 75))}`,
        `WS10M,${spreadOut(T2M.map(() => 4.5))}`,
        `ALLSKY_SFC_SW_DWN,${spreadOut(T2M.map(() => 2.5))}`,
        `PRECTOTCORR,${spreadOut(T2M.map(() => 2))}`,
      ]),
    );
    expect(read.months[0]).toMatchObject({
      tMeanC: -4,
      tMaxC: 1,
      tMinC: -9,
      relativeHumidityFrac: 0.75,
      windMPerS: 4.5,
      radiationMJPerM2: 9,
      precipitationMm: 62,
    });
    expect(
      monthly(
        file(
          [...means, `ALLSKY_SFC_SW_DWN,${spreadOut(T2M.map(() => 9))}`],
          UNITS.map((u) => u.replace('kW-hr', 'MJ')),
        ),
      ).months[0]?.radiationMJPerM2,
    ).toBe(9);
  });

  test('-999 is missing', () => {
    expect(monthly(file([means[0]?.replace('-4,', '-999,') ?? '', ...means.slice(1)])).months[0]?.tMeanC).toBeNull();
  });

  test('highest and lowest: settled by the range, asked without it, kept apart as records when they are extremes', () => {
    const without = file(means.slice(0, 3));
    expect(codes(readClimateFile(without))).toEqual(['21 maybe-extremes']);
    expect(monthly(without, { answers: { powerMaxMin: 'dailyMean' } }).months[0]).toMatchObject({ tMaxC: 1, recordMaxC: null });
    expect(monthly(without, { answers: { powerMaxMin: 'monthExtreme' } }).months[0]).toMatchObject({ tMaxC: null, recordMaxC: 1, recordMinC: -9 });
    const extremes = file([
      `T2M,${spreadOut(T2M)}`,
      `T2M_MAX,${spreadOut(plus(14))}`,
      `T2M_MIN,${spreadOut(plus(-15))}`,
      `T2M_RANGE,${spreadOut(T2M.map(() => 10))}`,
    ]);
    expect(monthly(extremes).months[0]).toMatchObject({ tMaxC: null, tMinC: null, recordMaxC: 10, recordMinC: -19 });
  });

  test('a monthly sum of rain ten times its rate, or with no rate, is left out and told', () => {
    const both = readClimateFile(file([...means, `PRECTOTCORR,${spreadOut(T2M.map(() => 2))}`, `PRECTOTCORR_SUM,${spreadOut(T2M.map(() => 610))}`]));
    expect(both.remarks.map((r) => r.code)).toContain('power-rain-sum');
    const alone = monthly(file([...means, `PRECTOTCORR_SUM,${spreadOut(T2M.map(() => 610))}`]));
    expect(alone.months[0]?.precipitationMm).toBeNull();
  });

  test.each([
    [
      'an unknown unit',
      file(
        means,
        UNITS.map((u) => u.replace('2 Meters (C)', '2 Meters (K)')),
      ),
      '20 unknown-unit',
    ],
    ['no unit', file(means, UNITS.slice(1)), '19 unknown-unit'],
    ['a parameter twice', file([...means, means[0] ?? '']), '24 duplicate-row'],
    ['a row cut off', file(means).slice(0, -30), '23 field-count'],
    ['no place', file(means).replace('Latitude', 'Lat'), '1 missing-header'],
  ])('%s', (_name, text, expected) => {
    expect(codes(readClimateFile(text))).toContain(expected);
  });
});

describe('climatology of a grid cell, JSON', () => {
  const names = MONTHS.split(',');
  const byMonth = (list: readonly number[]): Record<string, number> => Object.fromEntries(names.map((n, i) => [n, list[i] ?? 0]));
  const value = (change: object = {}): object => ({
    type: 'Feature',
    geometry: { type: 'Point', coordinates: [-88.25, 42.5, 251.5] },
    properties: {
      parameter: {
        T2M: byMonth(T2M),
        T2M_MAX: byMonth(plus(5)),
        T2M_MIN: byMonth(plus(-5)),
        T2M_RANGE: byMonth(T2M.map(() => 10)),
        ALLSKY_SFC_SW_DWN: byMonth(T2M.map(() => -999)),
      },
    },
    header: { title: 'NASA/POWER Source Native Resolution Climatology', fill_value: -999, start: '20010101', end: '20201231' },
    parameters: {
      T2M: { units: 'C' },
      T2M_MAX: { units: 'C' },
      T2M_MIN: { units: 'C' },
      T2M_RANGE: { units: 'C' },
      ALLSKY_SFC_SW_DWN: { units: 'kW-hr/m^2/day' },
    },
    ...change,
  });

  test.each([0, 2])('on one line and spread out (indent %i)', (indent) => {
    const read = monthly(JSON.stringify(value(), null, indent));
    expect(read.place).toMatchObject({ latitudeDeg: 42.5, longitudeDeg: -88.25, elevationM: 251.5 });
    expect(read.months[6]).toMatchObject({ tMeanC: 22, tMaxC: 27, tMinC: 17, radiationMJPerM2: null });
    expect(read.source.period).toBe('2001-2020');
  });

  test('faults: cut off, not JSON, a word for a number, no place, no unit', () => {
    const text = JSON.stringify(value(), null, 1);
    expect(codes(readClimateFile(text.slice(0, -40))).join()).toContain('truncated');
    expect(codes(readClimateFile(text.replace('"JAN": -4', '"JAN" -4')))).toEqual(['14 not-json']);
    expect(codes(readClimateFile(text.replace('"JAN": -4', '"JAN": "cold"')))).toEqual(['13 not-a-number']);
    expect(codes(readClimateFile(JSON.stringify(value({ geometry: null }))))).toEqual(['1 not-json']);
    expect(codes(readClimateFile(JSON.stringify(value({ parameters: {} }))))).toContain('1 unknown-unit');
    expect(codes(readClimateFile('{"parameter": {}}'))).toEqual(['1 not-json']);
  });
});

const DOCUMENT = readFileSync('docs/formats/own-csv.md', 'utf8');
const example = (n: number): string => {
  const found = [...DOCUMENT.matchAll(/```csv\n([\s\S]*?)```/g)][n]?.[1];
  if (found === undefined) throw new Error(`no example ${n} in docs/formats/own-csv.md`);
  return found;
};

describe('our own months', () => {
  const text = example(0);

  test('the documented example is read and suits the climate of a plan', () => {
    const read = monthly(text);
    expect(read.place).toMatchObject({
      stationName: 'Allotment field, north gate',
      country: 'United Kingdom',
      latitudeDeg: 52.4,
      longitudeDeg: -1.9,
      elevationM: 140,
    });
    expect(read.months[0]).toMatchObject({ tMaxC: 7.1, tMinC: 1.3, sunshineH: 52, relativeHumidityFrac: 0.87 });
    expect(read.months[4]).toMatchObject({ tMaxC: null, tMinC: null, precipitationMm: 58 });
    expect([read.annualExtremeMinC, read.annualExtremeMinYearsCount]).toEqual([-6.4, 12]);
    const result = toClimateInputs(read, { distanceM: 0 });
    if (result.outcome !== 'inputs') throw new Error(result.reason);
    const valid = new Ajv({ strict: false }).compile(ClimateInputsSchema);
    expect([valid(result.inputs), valid.errors]).toEqual([true, null]);
    expect(result.inputs).toMatchObject({ period: '2010-2021', kind: 'means', annualExtremeMinC: -6.4 });
  });

  test('columns in customary units are converted by their name', () => {
    const table = [
      'month,t_max_f,t_min_f,precipitation_in,relative_humidity_percent',
      ...Array.from({ length: 12 }, (_, i) => `${i + 1},${50 + i},41,1,60`),
    ].join('\n');
    const read = monthly(`${text.slice(0, text.indexOf('month,'))}${table}\n`.replace('52.4', '42'));
    expect(read.months[0]).toMatchObject({ tMaxC: 10, tMinC: 5, precipitationMm: 25.4, relativeHumidityFrac: 0.6 });
  });

  test('Fahrenheit in a column of Celsius is asked about, and the answer converts', () => {
    const hot = ['month,t_max_c,t_min_c', ...[45, 47, 52, 60, 68, 75, 80, 79, 72, 62, 52, 46].map((t, i) => `${i + 1},${t},${t - 15}`)].join('\n');
    const wrong = `${text.slice(0, text.indexOf('month,'))}${hot}\n`;
    const result = readClimateFile(wrong);
    expect(codes(result)).toEqual(['0 maybe-fahrenheit']);
    expect(result).not.toHaveProperty('file');
    expect(monthly(wrong, { answers: { temperatureUnit: 'fahrenheit' } }).months[6]).toMatchObject({ tMaxC: 26.67, tMinC: 18.33 });
    expect(codes(readClimateFile(wrong, { answers: { temperatureUnit: 'celsius' } }))).toContain('18 out-of-range');
  });

  test.each([
    ['an unknown column', text.replace('sunshine_h', 'sunshine'), 'unknown-column'],
    ['an unknown key', text.replace('country,', 'land,'), 'unknown-column'],
    ['a required key absent', text.replace(/^credit,.*\n/m, ''), 'missing-header'],
    ['a later version', text.replace('months-1', 'months-9'), 'format-not-read'],
    ['two units of one figure', text.replace('t_min_c', 't_max_f'), 'duplicate-column'],
    ['a decimal comma', text.replace('\n1,7.1,', '\n1,"7,1",'), 'not-a-number'],
    ['a month twice', text.replace('\n2,', '\n1,'), 'duplicate-row'],
    ['month 0', text.replace('\n2,', '\n0,'), 'not-a-date'],
    ['cut off after June', text.slice(0, text.indexOf('\n7,') + 1), 'truncated'],
    ['latitude 90.0001', text.replace('latitude_deg,52.4', 'latitude_deg,90.0001'), 'out-of-range'],
    ['coordinates interchanged', text.replace('latitude_deg,52.4', 'latitude_deg,-104.9').replace('longitude_deg,-1.9', 'longitude_deg,39.7'), 'maybe-swapped'],
    ['a relative humidity in per cent under a share', text.replace(',0.87,', ',87,'), 'out-of-range'],
    ['lowest over highest', text.replace('\n1,7.1,1.3', '\n1,1.3,7.1'), 'min-over-max'],
    ['neither means nor normals', text.replace('kind,means', 'kind,guess'), 'out-of-range'],
  ])('%s', (_name, wrong, expected) => {
    const result = readClimateFile(wrong);
    expect(codes(result).map((c) => c.split(' ')[1])).toContain(expected);
    expect(result).not.toHaveProperty('file');
  });

  test('a latitude of 52 south under British figures is asked about', () => {
    expect(codes(readClimateFile(text.replace('latitude_deg,52.4', 'latitude_deg,-52.4')))).toEqual(['0 wrong-hemisphere']);
  });
});

describe('our own hours', () => {
  const head = example(1).split('\n').slice(0, 10).join('\n');
  const row = (h: { month: number; day: number; hour: number; dayOfYear: number }): string =>
    `2021,${h.month},${h.day},${h.hour},${airOf(h).toFixed(1)},80,0,3.0,0.2`;
  const file = (rows: readonly string[]): string => `${head}\n${rows.join('\n')}\n`;

  test('the documented head and a whole year of rows', () => {
    const result = readClimateFile(file(hoursOf().map(row)));
    if (result.outcome !== 'records' || result.file.kind !== 'hourly') throw new Error(JSON.stringify(result));
    expect(result.file.place).toMatchObject({ zoneH: 0, latitudeDeg: 52.4 });
    expect([result.file.hours.airC[0], result.file.hours.relativeHumidityFrac[0], result.file.hours.rainMm[0]]).toEqual([
      airOf(hoursOf()[0] ?? { dayOfYear: 1, month: 1, day: 1, hour: 1 }),
      0.8,
      0.2,
    ]);
    const inputs = toClimateInputs(result.file, { distanceM: 0 });
    expect(inputs.outcome === 'inputs' && inputs.inputs.hourlyLow?.years).toBe('real');
    // 0.2 mm in each of 31 x 24 hours.
    expect(inputs.outcome === 'inputs' && inputs.inputs.months[0]?.precipitationMm).toBe(148.8);
  });

  test('the example of the document ends after three hours and says so', () => {
    expect(codes(readClimateFile(example(1)))).toEqual(['13 truncated']);
  });

  test.each([
    ['no zone', file(hoursOf().map(row)).replace(/^zone_h,.*\n/m, ''), 'missing-header'],
    ['no air', file(hoursOf().map(row)).replace('air_c', 'dew_point_c'), 'missing-column'],
    ['an hour 25', file(hoursOf().map(row)).replace('\n2021,1,1,3,', '\n2021,1,1,25,'), 'not-a-date'],
  ])('%s', (_name, wrong, expected) => {
    expect(codes(readClimateFile(wrong)).map((c) => c.split(' ')[1])).toContain(expected);
  });
});
