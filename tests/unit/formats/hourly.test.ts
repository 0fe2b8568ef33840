import { readFileSync } from 'node:fs';
import { describe, expect, test } from '@jest/globals';
import { hourlyLowOf, monthsOfHourlyFile, readClimateFile, toClimateInputs, type HourlyFile, type ReadOptions, type ReadResult } from '@lathwork/formats';
import { dataFile } from '../../support/data-folder.js';
import { airOf, EPW_HEAD, epwFile, epwRow, hoursOf, sunHeight, type Hour } from './hourly-files.js';
import { reported } from './support.js';

/* Years of hours: the real files, and a file by hand for each variant and each fault. */
const hourly = (file: string | Uint8Array, options: ReadOptions = {}): HourlyFile => {
  const result = readClimateFile(file, options);
  if (result.outcome !== 'records') throw new Error(JSON.stringify(result.faults.slice(0, 5), null, 1));
  if (result.file.kind !== 'hourly') throw new Error(result.file.kind);
  return result.file;
};
const codes = (result: ReadResult): string[] => (result.outcome === 'faults' ? result.faults.map((f) => `${f.line} ${f.code}`) : []);
const remarks = (result: ReadResult): string[] => result.remarks.map((r) => r.code);
const known = (list: readonly (number | null)[]): number[] => list.filter((v) => v !== null);
const mean = (list: readonly number[]): number => list.reduce((a, b) => a + b, 0) / list.length;

/** Extremes, mean and yearly sun as the data folder's README gives them, worked out there apart from this project; sun in kWh/m2. */
const REAL: readonly (readonly [name: string, min: number, mean: number, max: number, sun: number, offset: number, residual: number])[] = [
  ['USA_CO_Golden-NREL.724666_TMY3.epw', -25.0, 9.8, 36.0, 1620, -0.5, 5],
  ['USA_IL_Chicago-OHare.Intl.AP.725300_TMY3.epw', -22.8, 10.0, 35.0, 1407, -0.5, 5],
  ['USA_AK_Barrow.700260_TMY3.epw', -41.7, -11.8, 16.1, 713, -0.5, 5],
  ['PVGIS_tmy_45.000_8.000_2005_2023.epw', -2.3, 13.6, 34.3, 1436, 0.25, 30],
  ['TMY3_703165TY_SandPoint_AK.csv', -10.6, 4.4, 19.4, 829, -0.5, 5],
];

describe('real files', () => {
  test.each(REAL)('%s: extremes, mean, sun of the year and where the sun stands', (name, min, middle, max, sun, offset, residual) => {
    const { path, skip } = dataFile(`weather/${name}`);
    if (skip !== undefined) return void reported(skip);
    const file = hourly(readFileSync(path), { sunHeight });
    const air = known(file.hours.airC);
    expect([file.slotsCount, file.rowsReadCount, file.missingHoursCount, air.length]).toEqual([8760, 8760, 0, 8760]);
    expect(Math.abs(Math.min(...air) - min)).toBeLessThanOrEqual(0.05);
    expect(Math.abs(Math.max(...air) - max)).toBeLessThanOrEqual(0.05);
    expect(Math.abs(mean(air) - middle)).toBeLessThanOrEqual(0.06);
    expect(Math.abs(known(file.hours.globalWPerM2).reduce((a, b) => a + b, 0) / 1000 - sun)).toBeLessThanOrEqual(1);
    expect(file.sunOffset.reason).toBe('found');
    expect(Math.abs((file.sunOffset.offsetH ?? NaN) - offset)).toBeLessThanOrEqual(0.15);
    expect(file.sunOffset.residualWPerM2).toBeLessThanOrEqual(residual);
  });

  test('minutes of 0 and of 60: one closes at the middle of the hour, the other at its beginning, and neither says so', () => {
    for (const [name, offset] of [
      ['725650TYCST.epw', -0.5],
      ['DRYCOLDTMY.epw', -1],
    ] as const) {
      const { path, skip } = dataFile(`weather/${name}`);
      if (skip !== undefined) return void reported(skip);
      const { sunOffset } = hourly(readFileSync(path), { sunHeight });
      expect(Math.abs((sunOffset.offsetH ?? NaN) - offset)).toBeLessThanOrEqual(0.1);
      // Closure is an identity of the file: at the right hour nothing but rounding is left.
      expect(sunOffset.residualWPerM2).toBeLessThanOrEqual(5);
    }
  });

  test('Denver: the first row, and the codes for missing (rain 999, visibility is not read)', () => {
    const { path, skip } = dataFile('weather/725650TYCST.epw');
    if (skip !== undefined) return void reported(skip);
    const file = hourly(readFileSync(path));
    const h = file.hours;
    expect([h.year[0], h.airC[0], h.dewPointC[0], h.relativeHumidityFrac[0], h.pressurePa[0], h.skyInfraredWPerM2[0], h.rainMm[0], h.albedoFrac[0]]).toEqual([
      1995,
      -18,
      -19.7,
      0.85,
      83700,
      181,
      null,
      0.22,
    ]);
    expect(file.place).toMatchObject({ stationId: '725650', latitudeDeg: 39.83, longitudeDeg: -104.65, zoneH: -7, elevationM: 1650 });
    expect(file.groundTemperatures[0]).toMatchObject({ depthM: 0.5, monthsC: [0.36, 2.33, 6.17, 9.79, 16.66, 20.28, 21.27, 19.44, 15.2, 9.93, 4.73, 1.3] });
    expect(file.sunOffset).toMatchObject({ offsetH: null, reason: 'no-sun-function' });
  });

  test('PVGIS: no cloud, snow or albedo in the whole file, no name and no station number', () => {
    const { path, skip } = dataFile('weather/PVGIS_tmy_45.000_8.000_2005_2023.epw');
    if (skip !== undefined) return void reported(skip);
    const result = readClimateFile(readFileSync(path));
    const file = hourly(readFileSync(path));
    expect(file.place).toMatchObject({ stationId: null, stationName: 'not named', country: null });
    expect(result.remarks.filter((r) => r.code === 'column-empty').map((r) => r.column)).toEqual(
      expect.arrayContaining(['totalCloudFrac', 'opaqueCloudFrac', 'snowDepthM', 'albedoFrac']),
    );
  });

  test('Sand Point: -9900 is missing, millibar become pascal, rain of a day is no hour of rain', () => {
    const { path, skip } = dataFile('weather/TMY3_703165TY_SandPoint_AK.csv');
    if (skip !== undefined) return void reported(skip);
    const result = readClimateFile(readFileSync(path));
    const h = hourly(readFileSync(path)).hours;
    expect([h.airC[0], h.dewPointC[0], h.pressurePa[0], h.windFromDeg[0], h.totalCloudFrac[0], h.year.at(-1), h.hourEnding.at(-1), h.airC.at(-1)]).toEqual([
      4, 3, 101_200, 320, 0.9, 1998, 24, -6,
    ]);
    expect(remarks(result)).toContain('not-believed');
    // 26 April, 03:00 has "508 mm" over 24 hours.
    expect(h.rainMm[115 * 24 + 2]).toBeNull();
  });

  test('Golden as the climate of a plan: the cold hours by a plain sort of the column', () => {
    const { path, skip } = dataFile('weather/USA_CO_Golden-NREL.724666_TMY3.epw');
    if (skip !== undefined) return void reported(skip);
    const text = readFileSync(path, 'latin1');
    const air = text
      .split('\n')
      .slice(8, 8768)
      .map((l) => Number(l.split(',')[6]))
      .sort((a, b) => a - b);
    const result = toClimateInputs(hourly(text), { distanceM: 0 });
    if (result.outcome !== 'inputs') throw new Error(result.reason);
    expect(result.inputs.hourlyLow).toMatchObject({ lowC: air[35], hoursCount: 8760, years: 'typical' });
    expect(result.inputs.hourlyLow?.coldShareFrac).toBeCloseTo(35 / 8760, 10);
    expect(result.inputs).toMatchObject({ kind: 'means', annualExtremeMinC: null, frostDates: null, stationElevationM: 1829 });
    // Twelve daily sums, weighted by days, are the sun of the year: 1,620 kWh/m2.
    const days = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
    const year = result.inputs.months.reduce((a, m, i) => a + (m.radiationMJPerM2 ?? NaN) * (days[i] ?? 0), 0) / 3.6;
    expect(Math.abs(year - 1620)).toBeLessThanOrEqual(2);
  });
});

describe('variants by hand', () => {
  test('a plain year', () => {
    const result = readClimateFile(epwFile());
    expect([result.outcome, result.counted.linesCount, remarks(result)]).toEqual(['records', 8768, []]);
  });

  test('8,784 rows: the 29 February is kept and told', () => {
    const result = readClimateFile(epwFile({ hours: hoursOf(true) }));
    const file = hourly(epwFile({ hours: hoursOf(true) }));
    expect([file.slotsCount, file.missingHoursCount, file.hours.day[59 * 24]]).toEqual([8784, 0, 29]);
    expect(remarks(result)).toEqual(['leap-day']);
  });

  test('a year in which each month is of another year, later before earlier', () => {
    const result = readClimateFile(epwFile({ row: (h) => epwRow(h, { year: 2010 - h.month }) }));
    expect([result.outcome, remarks(result)]).toEqual(['records', ['mixed-years']]);
  });

  test('a year that begins in July is put in order', () => {
    const all = hoursOf();
    const from = all.findIndex((h) => h.month === 7);
    const file = hourly(epwFile({ hours: [...all.slice(from), ...all.slice(0, from)] }));
    expect([file.hours.month[0], file.hours.airC[0], file.missingHoursCount]).toEqual([1, airOf(all[0] ?? ({} as Hour)), 0]);
  });

  test.each([
    ['quoted place and padding', ['LOCATION,"HAND, MADE", XX ,USA,TMY3,725300,  42.0, -88.0 ,-6.0, 200.0', ...EPW_HEAD.slice(1)]],
    ['a zone of climate put into the place', ['LOCATION,HAND MADE,XX,USA,TMY3,725300,5A,42.0,-88.0,-6.0,200.0', ...EPW_HEAD.slice(1)]],
    ['holidays without an S', EPW_HEAD.map((l) => l.replace('SAVINGS', 'SAVING'))],
    ['ground without figures', EPW_HEAD.map((l) => (l.startsWith('GROUND') ? 'GROUND TEMPERATURES,,,,,,' : l))],
    ['dates with a year', EPW_HEAD.map((l) => l.replace(' 1/ 1,12/31', '1/ 1/2009,12/31/2009'))],
    ['quoted comments with commas', EPW_HEAD.map((l) => (l.startsWith('COMMENTS 1') ? 'COMMENTS 1,"a, ""b"", c"' : l))],
  ])('%s', (_name, head) => {
    expect(hourly(epwFile({ head })).place).toMatchObject({ latitudeDeg: 42, longitudeDeg: -88, zoneH: -6, elevationM: 200 });
  });

  test('Latin-1 in a comment is read and told, UTF-8 is left as it is', () => {
    const latin = Uint8Array.from(Buffer.from(epwFile({ head: EPW_HEAD.map((l) => l.replace('by hand', 'Orléans')) }), 'latin1'));
    const result = readClimateFile(latin);
    expect([result.counted.encoding, remarks(result)]).toEqual(['latin-1', ['latin-1']]);
    expect(hourly(latin).source.statements).toEqual(['Orléans']);
    expect(hourly(epwFile({ head: EPW_HEAD.map((l) => l.replace('by hand', 'Orléans')) })).source.statements).toEqual(['Orléans']);
  });

  test.each(['\r\n', '\r'])('line ends %j and no end on the last line', (end) => {
    expect(hourly(epwFile({ end: '' }).replaceAll('\n', end)).rowsReadCount).toBe(8760);
  });

  test.each(['0', '00', '60'])('minute %s is let pass without a word', (minute) => {
    expect(remarks(readClimateFile(epwFile({ row: (h) => epwRow(h, { minute }) })))).toEqual([]);
  });

  test('values at or over the code for missing are missing, each in its column', () => {
    const file = hourly(
      epwFile({ row: (h) => epwRow(h, h.month === 3 && h.day === 1 ? { air: '99.9', dew: '99.9', humidity: '999', rain: '999.0,99.0' } : {}) }),
    );
    expect([file.missingValues.airC, file.missingValues.dewPointC, file.missingValues.relativeHumidityFrac, file.missingValues.rainMm]).toEqual([
      24, 24, 24, 24,
    ]);
    expect([file.hours.airC[59 * 24], file.hours.pressurePa[59 * 24]]).toEqual([null, 99_000]);
  });

  test('forty absent hours stay absent, are counted and told where', () => {
    const all = hoursOf();
    const file = hourly(epwFile({ hours: [...all.slice(0, 2000), ...all.slice(2040)] }));
    const first = all[2000];
    expect([file.rowsReadCount, file.missingHoursCount, file.hours.airC[2000], file.hours.airC.length]).toEqual([8720, 40, null, 8760]);
    expect(file.gaps).toEqual([{ afterLine: 2008, hoursCount: 40, month: first?.month, day: first?.day, hourEnding: first?.hour }]);
  });

  test('the sun is found where it stands, not where the minute says: a file made for +0.2 h closes at +0.2 h', () => {
    const sunAt = (h: Hour): [number, number, number] => {
      const up = Math.max(0, sunHeight({ latitudeDeg: 42, longitudeDeg: -88, zoneH: -6, dayOfYear: h.dayOfYear, clockH: h.hour + 0.2 }));
      const beam = up > 0.05 ? 700 : 0;
      return [Math.round(beam * up + 60), beam, 60];
    };
    const file = hourly(epwFile({ row: (h) => epwRow(h, { minute: '30', sun: sunAt(h) }) }), { sunHeight });
    expect(file.sunOffset).toMatchObject({ offsetH: 0.2, reason: 'found' });
    expect(file.sunOffset.residualMidHourWPerM2).toBeGreaterThan(20);
  });

  test('radiation that closes nowhere gives no offset and says so', () => {
    const file = hourly(epwFile({ row: (h) => epwRow(h, { sun: h.hour > 8 && h.hour < 18 ? [((h.day * h.hour * 37) % 600) + 150, 700, 60] : [0, 0, 0] }) }), {
      sunHeight,
    });
    expect(file.sunOffset).toMatchObject({ offsetH: null, reason: 'does-not-close' });
  });

  test('months out of hours, by hand: highest 4 over and lowest 4 under the day, sun of 12 hours at 500', () => {
    const flat = (h: Hour): string =>
      epwRow(h, { air: h.hour === 15 ? '24.0' : h.hour === 6 ? '16.0' : '20.0', dew: '10.0', sun: h.hour > 6 && h.hour <= 18 ? [500, 0, 500] : [0, 0, 0] });
    const months = monthsOfHourlyFile(hourly(epwFile({ row: flat })));
    // 12 h x 500 W/m2 = 6 kWh = 21.6 MJ; saturation at 10 C is 1,228 Pa in the tables (WMO-No. 8).
    expect(months[3]).toMatchObject({
      tMaxC: 24,
      tMinC: 16,
      tMeanC: 20,
      radiationMJPerM2: 21.6,
      relativeHumidityFrac: 0.8,
      windMPerS: 3,
      precipitationMm: 0,
      nightDeviationK: 0,
      absoluteMinMeanC: null,
    });
    expect(Math.abs((months[3]?.vapourPressurePa ?? NaN) - 1228)).toBeLessThanOrEqual(2);
  });

  test('a month with too few whole days stays without temperatures', () => {
    const file = hourly(epwFile({ row: (h) => epwRow(h, h.month === 2 && h.day > 15 ? { air: '99.9', dew: '99.9', humidity: '999' } : {}) }));
    const months = monthsOfHourlyFile(file);
    expect([months[1]?.tMinC, months[1]?.vapourPressurePa, months[0]?.tMinC === null]).toEqual([null, null, false]);
    expect(hourlyLowOf(file)?.hoursCount).toBe(8760 - 13 * 24);
  });
});

describe('faults by hand', () => {
  const all = hoursOf();
  const whole = epwFile();
  test.each([
    ['cut off within a row', whole.slice(0, whole.indexOf('\n1999,7,1,1,') + 40), ['4353 field-count', '4352 truncated']],
    ['cut off at a line end', whole.slice(0, whole.indexOf('\n1999,7,1,1,') + 1), ['4352 truncated']],
    ['a stub of 16 rows', epwFile({ hours: all.slice(0, 16) }), ['24 truncated']],
    ['header only', `${EPW_HEAD.join('\n')}\n`, ['0 truncated']],
    ['many holes', epwFile({ hours: all.filter((h, i) => h.hour % 6 !== 0 || i > 8700) }), ['13 not-a-year']],
    ['the same hour twice', epwFile({ hours: [...all.slice(0, 10), ...all.slice(9, -1)] }), ['19 duplicate-row']],
    ['rows out of order', epwFile({ hours: [...all.slice(0, 10), ...all.slice(11, 12), ...all.slice(10, 11), ...all.slice(12)] }), ['20 not-in-order']],
    ['two years', epwFile({ hours: [...all, ...all] }), ['8769 too-many-rows']],
    ['month 13', epwFile().replace('1999,2,1,1,', '1999,13,1,1,'), ['753 not-a-date']],
    ['hour 0', epwFile().replace('1999,2,1,1,', '1999,2,1,0,'), ['753 not-a-date']],
    ['a word for a temperature', epwFile().replace('?9?9,', '?9?9,cold'), ['9 not-a-number']],
    ['pressure in hPa', epwFile({ row: (h) => epwRow(h).replace(',99000,', ',990,') }), ['9 out-of-range']],
    ['latitude 90.0001', whole.replace(',42.0,', ',90.0001,'), ['1 out-of-range']],
    ['no data periods', epwFile({ head: EPW_HEAD.slice(0, -1) }), ['8 missing-header']],
    ['four rows an hour', whole.replace('DATA PERIODS,1,1', 'DATA PERIODS,1,4'), ['8 not-hourly']],
    ['an open quote', whole.replace('by hand', '"by hand'), ['6 unclosed-quote']],
  ])('%s', (_name, text, expected) => {
    const result = readClimateFile(text);
    expect(codes(result).slice(0, expected.length)).toEqual(expected);
    expect(result).not.toHaveProperty('file');
  });

  test('a truncated file tells the last good line', () => {
    const result = readClimateFile(whole.slice(0, whole.indexOf('\n1999,7,1,1,') + 40));
    expect(result.outcome === 'faults' && [result.lastGoodLine, result.faults[1]?.message]).toEqual([
      4352,
      'the file ends within line 4353; line 4352 is the last good one',
    ]);
  });

  test('Fahrenheit under the name of Celsius is asked about; the answer converts it', () => {
    const text = epwFile({ row: (h) => epwRow(h, { air: (airOf(h) * 1.8 + 32).toFixed(1), dew: ((airOf(h) - 3) * 1.8 + 32).toFixed(1) }) });
    expect(codes(readClimateFile(text))).toContain('0 maybe-fahrenheit');
    const file = hourly(text, { answers: { temperatureUnit: 'fahrenheit' } });
    const first = all[0];
    expect(Math.abs((file.hours.airC[0] ?? NaN) - (first ? airOf(first) : NaN))).toBeLessThanOrEqual(0.03);
  });

  test('Fahrenheit in a mild place is caught by humidity, air and dew point', () => {
    // 50 F to 61 F all year: as 10 to 16 C nothing odd at 42 N; as Celsius 50 would be. Here the air is -5 to 5 C, so 23 to 41.
    const cold = (h: Hour): number => Math.round((airOf(h) - 10) * 0.4 * 10) / 10;
    const f = (c: number): string => (c * 1.8 + 32).toFixed(1);
    const humidity = (t: number, dew: number): string => String(Math.round(100 * Math.exp((17.62 * dew) / (243.12 + dew) - (17.62 * t) / (243.12 + t))));
    const text = epwFile({ row: (h) => epwRow(h, { air: f(cold(h)), dew: f(cold(h) - 8), humidity: humidity(cold(h), cold(h) - 8) }) });
    expect(codes(readClimateFile(text)).some((c) => c === '0 maybe-fahrenheit')).toBe(true);
  });

  test('interchanged coordinates: out of range, by the season, or by the zone, each is asked', () => {
    const at = (latitude: string, longitude: string, zone: string, row?: (h: Hour) => string): string =>
      epwFile({ head: [`LOCATION,HAND MADE,XX,USA,TMY3,-,${latitude},${longitude},${zone},200.0`, ...EPW_HEAD.slice(1)], ...(row ? { row } : {}) });
    expect(codes(readClimateFile(at('-104.65', '39.83', '-7.0')))).toEqual(['1 maybe-swapped']);
    expect(codes(readClimateFile(at('-88.0', '42.0', '-6.0')))).toEqual(expect.arrayContaining(['1 zone-far-from-longitude']));
    expect(codes(readClimateFile(at('-42.0', '-88.0', '-6.0')))).toEqual(['0 wrong-hemisphere']);
    expect(
      readClimateFile(at('-42.0', '-88.0', '-6.0', (h) => epwRow(h, { air: airOf(h, true).toFixed(1), dew: (airOf(h, true) - 3).toFixed(1) }))).outcome,
    ).toBe('records');
    expect(hourly(at('-88.0', '42.0', '-6.0'), { answers: { coordinates: 'interchanged' } }).place).toMatchObject({ latitudeDeg: 42, longitudeDeg: -88 });
  });

  test('a station number of another part of the world is remarked', () => {
    const result = readClimateFile(epwFile({ head: ['LOCATION,TOKYO,-,JPN,X,724120,35.7,139.8,9.0,5.0', ...EPW_HEAD.slice(1)] }));
    expect([result.outcome, remarks(result)]).toEqual(['records', ['station-number-elsewhere']]);
  });

  test('licensed design conditions are not kept', () => {
    const result = readClimateFile(epwFile({ head: EPW_HEAD.map((l) => (l.startsWith('DESIGN') ? 'DESIGN CONDITIONS,1,Some Handbook,,Heating,1,-18.8' : l)) }));
    expect(remarks(result)).toEqual(['design-conditions-left-out']);
    expect(JSON.stringify(result)).not.toContain('Handbook');
  });
});

describe('TMY3 by hand', () => {
  const head = [
    '725300,"HAND, MADE",IL,-6.0,42.0,-88.0,200',
    'Date (MM/DD/YYYY),Time (HH:MM),GHI (W/m^2),DNI (W/m^2),DHI (W/m^2),Dry-bulb (C),Dew-point (C),RHum (%),Pressure (mbar),Lprecip depth (mm),Lprecip quantity (hr)',
  ];
  const two = (n: number): string => String(n).padStart(2, '0');
  const row = (h: Hour, time = `${two(h.hour)}:00`): string => `${two(h.month)}/${two(h.day)}/1999,${time},0,0,0,${airOf(h).toFixed(1)},-9900,80,990,2,1`;
  const file = (rows: string[]): string => [...head, ...rows, ''].join('\n');
  const all = hoursOf();

  test('24:00 is the last hour of its day; -9900 is missing', () => {
    const result = hourly(file(all.map((h) => row(h))));
    expect([
      result.hours.hourEnding[23],
      result.hours.day[23],
      result.missingValues.dewPointC,
      result.hours.pressurePa[0],
      result.hours.rainMm[0],
      result.place.stationName,
    ]).toEqual([24, 1, 8760, 99_000, 2, 'HAND, MADE, IL']);
  });

  test.each([
    ['00:00 for 24:00', file(all.map((h) => row(h, h.hour === 24 ? '00:00' : undefined))), '26 not-a-date'],
    ['half hours', file(all.map((h) => row(h, `${two(h.hour)}:30`))), '3 not-hourly'],
    ['a date of another form', file(all.map((h) => row(h).replace(/^(\d\d)\/(\d\d)\/(\d{4})/, '$3-$1-$2'))), '3 not-a-date'],
    ['no station line', file(all.map((h) => row(h))).replace(head[0] ?? '', 'a,b,c'), '1 not-a-number'],
    ['no column of radiation', file(all.map((h) => row(h))).replace('GHI', 'Global'), '2 missing-column'],
    [
      'a row cut off',
      file(all.map((h) => row(h)))
        .slice(0, 4000)
        .trimEnd(),
      'truncated',
    ],
  ])('%s', (_name, text, expected) => {
    expect(codes(readClimateFile(text)).join(' | ')).toContain(expected);
  });
});
