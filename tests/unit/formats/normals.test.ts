import { readFileSync } from 'node:fs';
import { describe, expect, test } from '@jest/globals';
import { readClimateFile, toClimateInputs, type AnnualFile, type ClimateFile, type MonthlyFile, type ReadOptions, type ReadResult } from '@lathwork/formats';
import { dataFile } from '../../support/data-folder.js';
import { reported } from './support.js';

/* Published normals, one real file of each layout; the figures beside them were read off the files by hand. */
const FOLDER = 'climate/formats/';
const real = (name: string): { text: string | null } => {
  const { path, skip } = dataFile(`${FOLDER}${name}`);
  return { text: skip === undefined ? readFileSync(path, 'utf8') : reported(skip) };
};
const records = (result: ReadResult): ClimateFile => {
  if (result.outcome !== 'records') throw new Error(JSON.stringify(result.faults, null, 1));
  return result.file;
};
const monthly = (text: string, options: ReadOptions = {}): MonthlyFile => {
  const file = records(readClimateFile(text, options));
  if (file.kind !== 'monthly') throw new Error(file.kind);
  return file;
};
const annual = (text: string): AnnualFile => {
  const file = records(readClimateFile(text));
  if (file.kind !== 'annual') throw new Error(file.kind);
  return file;
};
const codes = (result: ReadResult): string[] => (result.outcome === 'faults' ? result.faults.map((f) => `${f.line} ${f.code}`) : []);

const lebanon = real('mly-1991-2020_USW00094765.csv').text;
const lebanon15 = real('mly-2006-2020_USW00094765.csv').text;
const richmond = real('mly-1981-2010_USW00013740.csv').text;
const lebanonYear = real('annseas-1991-2020_USW00094765.csv').text;
const westchester = real('annseas-2006-2020_USW00094745.csv').text;
const banff = real('BANFF_CS.csv').text;
const sable = real('SABLE_ISLAND.csv').text;
const stornoway = real('raw_metoffice_stornowaydata.txt').text;

const with_ = (text: string | null) => (text === null ? test.skip : test);

describe('U.S. normals by station', () => {
  with_(lebanon)('1991-2020: Fahrenheit and inches become SI, the place and the period stand', () => {
    const file = monthly(lebanon ?? '');
    expect(file.place).toMatchObject({
      stationId: 'USW00094765',
      stationName: 'LEBANON MUNI AP, NH US',
      latitudeDeg: 43.6264,
      longitudeDeg: -72.3047,
      elevationM: 182.3,
    });
    expect(file.source.period).toBe('1991-2020');
    // January 30.3 and 9.3 F, 2.29 in, 29.8 days; July 82.7 and 57.8 F, 3.99 in.
    expect(file.months[0]).toMatchObject({ tMaxC: -0.94, tMinC: -12.61, precipitationMm: 58.17, frostDaysD: 29.8, yearsCount: 22 });
    expect(file.months[6]).toMatchObject({ tMaxC: 28.17, tMinC: 14.33, precipitationMm: 101.35, frostDaysD: 0 });
    // 6.1 F is the spread of Januaries from year to year: it must never become the spread of nights.
    expect(file.months[0]).toMatchObject({ tMinYearToYearK: 3.39, nightDeviationK: null });
  });

  with_(lebanon15)('2006-2020 is told apart from 1991-2020 by the years behind the figures', () => {
    const file = monthly(lebanon15 ?? '');
    expect(file.source.period).toBe('2006-2020');
    // January 31.7 and 11.3 F, 2.14 in.
    expect(file.months[0]).toMatchObject({ tMaxC: -0.17, tMinC: -11.5, precipitationMm: 54.36 });
  });

  with_(richmond)('1981-2010: tenths of a degree, hundredths of an inch of rain, tenths of an inch of snow, tenths of a day', () => {
    const file = monthly(richmond ?? '');
    expect(file.source.period).toBe('1981-2010');
    // January 474 = 47.4 F, 283 = 28.3 F, 304 = 3.04 in, snow 39 = 3.9 in, 205 = 20.5 days.
    expect(file.months[0]).toMatchObject({ tMaxC: 8.56, tMinC: -2.06, precipitationMm: 77.22, snowfallMm: 99.06, frostDaysD: 20.5 });
    // July 897 = 89.7 F.
    expect(file.months[6]?.tMaxC).toBe(32.06);
  });

  with_(lebanonYear)('frost dates: the chance of a last freeze is of one on or after the date', () => {
    const file = annual(lebanonYear ?? '');
    const at32 = file.frost.find((t) => t.thresholdC === 0);
    expect(at32?.lastSpring.map((d) => [d.chanceFrac, d.month, d.day]).filter(([p]) => p === 0.1 || p === 0.9)).toEqual([
      [0.1, 5, 24],
      [0.9, 4, 27],
    ]);
    expect(at32?.firstAutumn.map((d) => [d.chanceFrac, d.month, d.day]).filter(([p]) => p === 0.1 || p === 0.5)).toEqual([
      [0.1, 9, 23],
      [0.5, 10, 6],
    ]);
    expect(at32?.seasons.filter((s) => s.chanceFrac === 0.9)).toEqual([{ chanceFrac: 0.9, lengthD: 128 }]);
    expect([file.tMinC, file.frostDaysD, file.precipitationMm]).toEqual([1.44, 163.3, 966.98]);
    expect(file.frost.map((t) => t.thresholdC)).toEqual([-8.89, -6.67, -4.44, -2.22, 0, 2.22]);
  });

  with_(lebanonYear)('frost dates reach the plan the right way round: p90 of the last is the 10 % date', () => {
    const result = toClimateInputs(monthly(lebanon ?? ''), { distanceM: 1200, annual: annual(lebanonYear ?? '') });
    if (result.outcome !== 'inputs') throw new Error(result.reason);
    // 27 April, 9 May, 24 May; 23 September, 6 October, 19 October.
    expect(result.inputs.frostDates).toMatchObject({ lastDayD: { p10: 117, p50: 129, p90: 144 }, firstDayD: { p10: 266, p50: 279, p90: 292 } });
    expect(result.inputs).toMatchObject({ kind: 'normals', annualExtremeMinC: null, hourlyLow: null, distanceM: 1200 });
    expect(toClimateInputs(monthly(richmond ?? ''), { distanceM: 0, annual: annual(lebanonYear ?? '') })).toEqual({
      outcome: 'notUsable',
      reason: 'annual-of-another-station',
    });
  });

  with_(westchester)('a first freeze after New Year belongs to the autumn before, so that dates still rise with the chance', () => {
    const file = annual(westchester ?? '');
    expect(file.source.period).toBe('2006-2020');
    const at16 = file.frost.find((t) => t.thresholdC === -8.89);
    expect(at16?.firstAutumn.filter((d) => d.chanceFrac === 0.5 || d.chanceFrac === 0.8)).toEqual([
      { chanceFrac: 0.5, month: 12, day: 24, day365: 358 },
      { chanceFrac: 0.8, month: 1, day: 7, day365: 372 },
    ]);
  });
});

describe('U.S. normals by hand', () => {
  const quantities =
    'MLY-TMAX-NORMAL,meas_flag_MLY-TMAX-NORMAL,comp_flag_MLY-TMAX-NORMAL,years_MLY-TMAX-NORMAL,MLY-TMIN-NORMAL,comp_flag_MLY-TMIN-NORMAL,meas_flag_MLY-TMIN-NORMAL,years_MLY-TMIN-NORMAL,MLY-PRCP-NORMAL,meas_flag_MLY-PRCP-NORMAL,comp_flag_MLY-PRCP-NORMAL,years_MLY-PRCP-NORMAL';
  const row = (month: number, x: { tail?: string; max?: string } = {}): string =>
    `"US1","${String(month).padStart(2, '0')}","40","-80","100","HAND MADE, PA US","  ${x.max ?? '50.0'}"," ","S","30"," 32.0","S"," ","30",${x.tail ?? '"  1.00"," ","S","30"'}`;
  const file = (rows: string[]): string => [`STATION,DATE,LATITUDE,LONGITUDE,ELEVATION,NAME,${quantities}`, ...rows, ''].join('\n');
  const twelve = (change: Record<number, string> = {}): string[] => Array.from({ length: 12 }, (_, i) => change[i + 1] ?? row(i + 1));

  test('padding, quotes and the order of the two flags do not matter', () => {
    expect(monthly(file(twelve())).months[3]).toMatchObject({ tMaxC: 10, tMinC: 0, precipitationMm: 25.4 });
  });

  test.each([
    ['M', '-9999.0', null],
    ['Y', '', null],
    ['Z', '4.00', null],
    ['X', '-7777.0', 0],
    ['X', '0.00', 0],
    [' ', '-9999.0', null],
  ])('flag %s beside %s gives %s', (flag, value, expected) => {
    const months = monthly(file(twelve({ 5: row(5, { tail: `"${value}","${flag}","S","30"` }) }))).months;
    expect([months[4]?.precipitationMm, months[3]?.precipitationMm]).toEqual([expected, 25.4]);
  });

  test('a month without figures stays so and is remarked', () => {
    const result = readClimateFile(file(twelve({ 5: row(5, { max: '-9999.0' }) })));
    expect(result.outcome).toBe('records');
    expect(monthly(file(twelve({ 5: row(5, { max: '-9999.0' }) }))).months[4]?.tMaxC).toBeNull();
    expect(result.remarks).toContainEqual(expect.objectContaining({ code: 'missing-months', message: expect.stringContaining('month 5') }));
  });

  test.each([
    ['an unknown flag', file(twelve({ 2: row(2, { tail: '"1.00","Q9","S","30"' }) })), ['3 unknown-flag']],
    ['a word for a number', file(twelve({ 2: row(2, { max: 'warm' }) })), ['3 not-a-number']],
    ['a month twice', file([...twelve(), row(4)]), ['14 duplicate-row']],
    ['a thirteenth month', file([...twelve(), row(13)]), ['14 not-a-date']],
    ['a second station', file([...twelve().slice(0, 11), row(12).replace('US1', 'US2')]), ['13 several-stations', '12 truncated']],
    ['a row cut off within a quote', file(twelve()).slice(0, -3), ['13 unclosed-quote', '12 truncated']],
    ['a file cut off after June', file(twelve().slice(0, 6)), ['7 truncated']],
    ['a column twice', file(twelve()).replace('NAME,', 'NAME,NAME,'), ['1 duplicate-column']],
    ['no column of latitude', file(twelve()).replace('LATITUDE', 'LAT'), ['1 not-recognised']],
  ])('%s', (_name, text, expected) => {
    expect(codes(readClimateFile(text)).slice(0, expected.length)).toEqual(expected);
  });

  test('a file of degrees Celsius under this heading is asked about, and the answer is kept to', () => {
    // 10 to 27 C in Pennsylvania, read as Fahrenheit, would be a year at -8 C.
    const text = file(twelve().map((r, i) => r.replace('50.0', String(10 + Math.min(i, 11 - i) * 3)).replace(' 32.0', String(2 + Math.min(i, 11 - i) * 3))));
    const asked = readClimateFile(text);
    expect(codes(asked)).toEqual(['0 maybe-celsius']);
    expect(asked.outcome === 'faults' && asked.faults[0]?.ask).toEqual({ answer: 'temperatureUnit', choices: ['celsius', 'fahrenheit'] });
    expect(monthly(text, { answers: { temperatureUnit: 'celsius' } }).months[0]).toMatchObject({ tMaxC: 10, tMinC: 2 });
  });

  test('risk of frost all year is no date', () => {
    const head =
      'STATION,LATITUDE,LONGITUDE,ELEVATION,NAME,ANN-TAVG-NORMAL,meas_flag_ANN-TAVG-NORMAL,comp_flag_ANN-TAVG-NORMAL,years_ANN-TAVG-NORMAL,ANN-TMIN-PRBLST-T32FP50,meas_flag_ANN-TMIN-PRBLST-T32FP50,comp_flag_ANN-TMIN-PRBLST-T32FP50,ANN-TMIN-PRBFST-T32FP50,meas_flag_ANN-TMIN-PRBFST-T32FP50,comp_flag_ANN-TMIN-PRBFST-T32FP50';
    const cold = annual(`${head}\nUS1,71,-156,10,"COLD, AK US",12.0, ,S,30,-9999,V,S,,V,S\n`);
    expect(cold.frost).toEqual([{ thresholdC: 0, lastSpring: [], firstAutumn: [], seasons: [], frostAllYear: true }]);
    expect(codes(readClimateFile(`${head}\nUS1,41,-86,10,"ODD, IN US",52.0, ,S,30,13/01, ,S,10/10, ,S\n`))).toEqual(['2 not-a-date']);
  });

  test('dates that do not fall as the chance rises are not taken', () => {
    const columns = ['10', '50', '90'].map((p) => `ANN-TMIN-PRBLST-T32FP${p}`);
    const head = `STATION,LATITUDE,LONGITUDE,ELEVATION,NAME,ANN-TAVG-NORMAL,${columns.join(',')}`;
    expect(codes(readClimateFile(`${head}\nUS1,41,-86,10,X,52.0,04/10,04/20,05/01\n`))).toEqual(['2 not-in-order']);
    expect(codes(readClimateFile(`${head}\nUS1,41,-86,10,X,52.0,05/01,04/20,04/10\n`))).toEqual([]);
  });
});

describe('world normals, one station', () => {
  with_(banff)('Banff: blocks by code and name, an empty month of rain stays empty', () => {
    const file = monthly(banff ?? '');
    expect(file.place).toMatchObject({
      stationId: '71122',
      stationName: 'BANFF CS',
      country: 'CANADA',
      latitudeDeg: 51.19361,
      longitudeDeg: -115.5525,
      elevationM: 1397,
    });
    expect(file.months[0]).toMatchObject({
      tMaxC: -3.5,
      tMinC: -13.5,
      tMeanC: -8.5,
      precipitationMm: 18.8,
      frostDaysD: 30.2,
      recordMinC: -44.2,
      yearsCount: 30,
    });
    expect([file.months[4]?.precipitationMm, file.months[5]?.precipitationMm]).toEqual([null, 73.3]);
    expect(file.source).toMatchObject({ period: '1991-2020', kind: 'normals' });
  });

  with_(sable)('Sable Island: no rain at all in the file, warmest month August', () => {
    const file = monthly(sable ?? '');
    expect(file.months.map((m) => m.precipitationMm)).toEqual(Array.from({ length: 12 }, () => null));
    expect(file.months[7]).toMatchObject({ tMaxC: 21.1, tMinC: 15.8 });
  });

  with_(banff)('faults of a world file: unit, coordinates, row cut off, block cut off', () => {
    const text = banff ?? '';
    expect(codes(readClimateFile(text.replace('3,Daily_Maximum_Temperature,Deg_C', '3,Daily_Maximum_Temperature,Deg_F')))).toEqual(['38 unknown-unit']);
    expect(codes(readClimateFile(text.replace('51|11|37|N', '51|61|37|N')))[0]).toBe('10 not-a-number');
    const at = text.indexOf('71122,4,Mean,1,-13.5');
    expect(codes(readClimateFile(text.slice(0, at + 30)))).toEqual(['50 field-count', '49 truncated']);
    expect(codes(readClimateFile(text.slice(0, at)))).toEqual(['49 truncated']);
  });

  with_(banff)('latitude and longitude that change places are read by their letters', () => {
    expect(monthly((banff ?? '').replace('51|11|37|N,115|33|09|W', '115|33|09|W,51|11|37|N')).place).toMatchObject({
      latitudeDeg: 51.19361,
      longitudeDeg: -115.5525,
    });
  });

  with_(banff)('a height over sea in the wrong hemisphere is asked about', () => {
    expect(codes(readClimateFile((banff ?? '').replace('51|11|37|N', '51|11|37|S')))).toContain('0 wrong-hemisphere');
  });
});

describe('historic station, United Kingdom', () => {
  with_(stornoway)('the means of 1991-2020 are those worked out independently from the same file', () => {
    const file = monthly(stornoway ?? '');
    expect(file.place).toMatchObject({ stationName: 'Stornoway', latitudeDeg: 58.214, longitudeDeg: -6.318, elevationM: 15 });
    const { path, skip } = dataFile('climate/uk_metoffice_normals_1991-2020.csv');
    if (skip !== undefined) return void reported(skip);
    const [head = '', ...rows] = readFileSync(path, 'utf8').split(/\r?\n/);
    const names = head.split(',');
    const row = rows.find((r) => r.startsWith('Stornoway'))?.split(',') ?? [];
    const published = (name: string, m: number): number => Number(row[names.indexOf(`${name}_${String(m + 1).padStart(2, '0')}`)]);
    file.months.forEach((month, m) => {
      for (const [name, value] of [
        ['tmax_c', month.tMaxC],
        ['tmin_c', month.tMinC],
        ['air_frost_days', month.frostDaysD],
        ['rain_mm', month.precipitationMm],
        ['sun_h', month.sunshineH],
      ] as const)
        expect(Math.abs((value ?? NaN) - published(name, m))).toBeLessThanOrEqual(0.0501);
    });
  });

  with_(stornoway)('the series begins in July 1873 and its provisional months stay out of the means', () => {
    const result = readClimateFile(stornoway ?? '');
    const { series } = monthly(stornoway ?? '');
    expect(series[0]).toEqual({
      year: 1873,
      month: 7,
      tMaxC: 16.7,
      tMinC: 9.9,
      frostDaysD: 0,
      precipitationMm: 110.5,
      sunshineH: null,
      estimated: false,
      provisional: false,
    });
    expect(series.at(-1)).toMatchObject({ year: 2025, month: 9, sunshineH: 96, provisional: true });
    expect(result.remarks).toContainEqual(expect.objectContaining({ code: 'provisional-left-out', count: 9 }));
  });

  const head =
    'Hill End\nLocation 4138E 3206N, Lat 52.1 Lon -3.2, 87m amsl (to Dec 1999) \n& 4200E 3300N, Lat 52.25 Lon -3.10, 110m amsl (from Jan 2000)\nEstimated data is marked with a * after the value.\n   yyyy  mm   tmax    tmin      af    rain     sun\n              degC    degC    days      mm   hours\n';
  const rows = (from: number, to: number): string =>
    Array.from(
      { length: (to - from + 1) * 12 },
      (_, i) =>
        `   ${from + Math.floor(i / 12)}  ${String((i % 12) + 1).padStart(2)}   ${(8 + (i % 12)).toFixed(1)}     2.0       3    60.0    ${i % 12 === 0 ? '---' : '50.0#'}`,
    ).join('\n');

  test('a station that moved stands at its last place; "---" is missing; few years give no mean', () => {
    const file = monthly(`${head}${rows(1991, 2000)}\n`);
    expect(file.place).toMatchObject({ latitudeDeg: 52.25, longitudeDeg: -3.1, elevationM: 110 });
    expect(file.months[0]).toMatchObject({ tMaxC: 8, sunshineH: null, yearsCount: 10 });
    expect(file.months[1]).toMatchObject({ sunshineH: 50 });
    expect(codes(readClimateFile(`${head}${rows(1991, 1995)}\n`))).toEqual(['0 nothing-usable']);
    expect(monthly(`${head}${rows(1991, 1995)}\n`, { meansLeastYears: 5 }).months[2]?.tMaxC).toBe(10);
  });

  test.each([
    ['a row that is cut off', `${head}${rows(1991, 2000)}\n   2001   1   8.0`, '127 field-count'],
    ['a month twice', `${head}${rows(1991, 2000)}\n   2000  12   8.0     2.0       3    60.0    50.0\n`, '127 duplicate-row'],
    ['a month 13', `${head}${rows(1991, 2000)}\n   2001  13   8.0     2.0       3    60.0    50.0\n`, '127 not-a-date'],
    ['another unit', `${head}${rows(1991, 2000)}\n`.replace('degC', 'degF'), '6 unknown-unit'],
    ['a minimum over the maximum', `${head}${rows(1991, 2000).replaceAll('2.0       3', '18.0      3')}\n`, '115 min-over-max'],
  ])('%s', (_name, text, expected) => {
    expect(codes(readClimateFile(text))).toContain(expected);
  });
});
