import { readFileSync } from 'node:fs';
import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { ClimateReader, FORMAT_IDS, parseStations, readClimateFile, recognise, type ReadResult } from '@lathwork/formats';

/* What must hold of any bytes at all: no throw, records or faults, no number that is none, pieces of any size. */
const MONTHS = Array.from({ length: 12 }, (_, m) => m + 1);
const NCEI = [
  'STATION,DATE,LATITUDE,LONGITUDE,ELEVATION,NAME,MLY-TMAX-NORMAL,meas_flag_MLY-TMAX-NORMAL,comp_flag_MLY-TMAX-NORMAL,years_MLY-TMAX-NORMAL,MLY-TMIN-NORMAL',
  ...MONTHS.map(
    (m) => `"USW00000001","${String(m).padStart(2, '0')}"," 43.6"," -72.3"," 182.3","SOMEWHERE, NH US","  ${40 + m}.0"," ","S","30","   ${20 + m}.5"`,
  ),
].join('\n');
const HISTORIC = [
  'Somewhere',
  'Location: 146400E 933200N, Lat 58.214 Lon -6.318, 15 metres amsl',
  '   yyyy  mm   tmax    tmin      af    rain     sun',
  '              degC    degC    days      mm   hours',
  ...Array.from({ length: 12 }, (_, y) => MONTHS.map((m) => `   ${1995 + y}  ${m}   1${m % 7}.5     ${m % 5}.1       2   64.1*   31.2#`)).flat(),
].join('\r\n');
const WEATHER = [
  'LOCATION,Caf\u00e9,-,XYZ,TMY,unknown,45.0,8.0,1,250',
  'DESIGN CONDITIONS,0',
  'TYPICAL/EXTREME PERIODS,0',
  'GROUND TEMPERATURES,0',
  'HOLIDAYS/DAYLIGHT SAVING,No,0,0,0',
  'COMMENTS 1,none',
  'COMMENTS 2,none',
  'DATA PERIODS,1,1,Data,Sunday, 1/ 1,12/31',
  ...Array.from(
    { length: 48 },
    (_, h) =>
      `2018,1,${1 + Math.floor(h / 24)},${1 + (h % 24)},0,?,2.0,1.2,94,99870,9999,9999,283,0,0,0,999999,999999,999999,9999,257,0.7,99,99,9999,99999,9,999999999,999,0.999,999,99,999,999,99`,
  ),
].join('\n');
const POWER = [
  '-BEGIN HEADER-',
  'NASA/POWER Source Native Resolution Climatology in LST',
  '20-year Meteorological and Solar Monthly & Annual Climatologies (January 2001 - December 2020) ',
  'Location: Latitude  45.0   Longitude 8.0 ',
  'Elevation from MERRA-2: Average for 0.5 x 0.625 degree lat/lon region = 250.0 meters',
  'The value for missing source data that cannot be computed or is outside of the sources availability range: -999 ',
  'Parameter(s): ',
  'T2M     MERRA-2 Temperature at 2 Meters (C) ',
  '-END HEADER-',
  'PARAMETER,JAN,FEB,MAR,APR,MAY,JUN,JUL,AUG,SEP,OCT,NOV,DEC,ANN',
  'T2M,1.2,3.1,8.0,12.1,16.9,21.0,23.4,22.8,18.1,12.7,6.6,2.3,12.4',
].join('\r\n');
const SAMPLES = [NCEI, HISTORIC, WEATHER, POWER].map((text) => Uint8Array.from(Buffer.from(text, text === WEATHER ? 'latin1' : 'utf8')));

const finite = (value: unknown): boolean =>
  typeof value === 'number' ? Number.isFinite(value) : value === null || typeof value !== 'object' || Object.values(value).every(finite);

const sound = (result: ReadResult): void => {
  expect(finite(result)).toBe(true);
  if (result.outcome === 'records') return;
  expect(result.faults.length).toBeGreaterThan(0);
  expect(result.faultsCount).toBeGreaterThanOrEqual(result.faults.length);
  for (const fault of result.faults) {
    expect(fault.message.length * fault.remedy.length).toBeGreaterThan(0);
    expect(fault.message).not.toMatch(/NaN|undefined/);
    expect(fault.line).toBeLessThanOrEqual(result.counted.linesCount + 1);
  }
  expect('file' in result).toBe(false);
};

/** A sample with some bytes changed, and perhaps cut short. */
const damaged = fc
  .record({
    sample: fc.constantFrom(...SAMPLES),
    changes: fc.array(
      fc.record({
        at: fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true }),
        to: fc.oneof(fc.integer({ min: 1, max: 255 }), fc.constantFrom(44, 10, 13, 34, 45, 57)),
      }),
      { maxLength: 20 },
    ),
    keep: fc.oneof({ weight: 3, arbitrary: fc.constant(1) }, fc.double({ min: 0, max: 1, noNaN: true })),
  })
  .map(({ sample, changes, keep }) => {
    const bytes = sample.slice(0, Math.ceil(sample.length * keep));
    for (const { at, to } of changes) bytes[Math.floor(at * bytes.length)] = to;
    return bytes;
  });

describe('reading climate files', () => {
  test('the samples themselves are read, so that damage is damage to something', () => {
    expect(SAMPLES.map((s) => readClimateFile(s)).map((r) => [r.formatId, r.outcome, r.outcome === 'faults' ? r.faults.map((f) => f.code) : []])).toEqual([
      ['ncei-normals-monthly', 'records', []],
      ['metoffice-historic', 'records', []],
      ['epw', 'faults', ['truncated']],
      ['nasa-power-csv', 'records', []],
    ]);
  });

  test('any bytes, as any format: no throw, records or faults', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 600 }), fc.option(fc.constantFrom(...FORMAT_IDS), { nil: undefined }), (bytes, formatId) => {
        sound(readClimateFile(bytes, formatId === undefined ? {} : { formatId }));
        expect(typeof recognise(bytes).reasons[0]).toBe('string');
      }),
      { numRuns: 600 },
    );
  });

  test('any text, as any format and as a table of stations', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 400 }), fc.constantFrom(...FORMAT_IDS), (text, formatId) => {
        sound(readClimateFile(text, { formatId }));
        expect(parseStations(text).stations).toEqual([]);
      }),
      { numRuns: 400 },
    );
  });

  test('damaged files: no throw, records or faults', () => {
    fc.assert(
      fc.property(damaged, (bytes) => sound(readClimateFile(bytes))),
      { numRuns: 500 },
    );
  });

  test('in pieces of any size as at once', () => {
    fc.assert(
      fc.property(damaged, fc.array(fc.integer({ min: 1, max: 300 }), { minLength: 1, maxLength: 30 }), (bytes, sizes) => {
        const reader = new ClimateReader();
        let at = 0;
        for (let k = 0; at < bytes.length; k++) {
          const size = sizes[k % sizes.length] ?? 1;
          if (!reader.push(bytes.subarray(at, at + size))) break;
          at += size;
        }
        // How far an unwanted file was read depends on the pieces; what was found does not.
        const { counted: _pieces, ...inPieces } = reader.end();
        const { counted: _whole, ...atOnce } = readClimateFile(bytes);
        expect(inPieces).toEqual(atOnce);
      }),
      { numRuns: 300 },
    );
  });

  test('no file is larger than the limit, wherever the pieces are cut', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 3000 }), fc.integer({ min: 1, max: 500 }), (bytesLimit, size) => {
        const reader = new ClimateReader({ bytesLimit });
        let pushed = 0;
        while (pushed < 4000 && reader.push(new Uint8Array(size).fill(65))) pushed += size;
        const result = reader.end();
        expect(pushed).toBeLessThanOrEqual(bytesLimit);
        expect(result.outcome === 'faults' && result.faults.some((f) => f.code === 'too-large')).toBe(true);
      }),
    );
  });
});

describe('places and temperatures of the table of stations', () => {
  const { stations } = parseStations(readFileSync('prisma/seed/stations.csv', 'utf8'));
  const toFahrenheit = (t: number): number => Math.round((t * 1.8 + 32) * 10) / 10;
  const asFile = (s: (typeof stations)[number], x: { fahrenheit?: boolean; latitudeDeg?: number; longitudeDeg?: number } = {}): string =>
    [
      'STATION,month,LATITUDE,LONGITUDE,ELEVATION,NAME,MLY-TMAX-NORMAL,MLY-TMIN-NORMAL',
      ...s.months.map((m, i) => {
        // The format is Fahrenheit; figures written in Fahrenheit twice are what a wrong label gives.
        const write = (t: number | null): string => (t === null ? '' : String(toFahrenheit(x.fahrenheit ? toFahrenheit(t) : t)));
        return `${s.stationId},${i + 1},${x.latitudeDeg ?? s.latitudeDeg},${x.longitudeDeg ?? s.longitudeDeg},${s.elevationM},x,${write(m.tMaxC)},${write(m.tMinC)}`;
      }),
    ].join('\n');
  const codesOf = (text: string): string[] => {
    const result = readClimateFile(text);
    return result.outcome === 'faults' ? result.faults.map((f) => f.code) : [];
  };

  test('no station of 2,104 is asked about', () => {
    expect(stations.flatMap((s) => codesOf(asFile(s)).map((code) => `${s.name} ${code}`))).toEqual([]);
  });

  test('the same stations in Fahrenheit are asked about, all but the ice of the highest latitudes', () => {
    const missed = stations.filter((s) => !codesOf(asFile(s, { fahrenheit: true })).some((code) => code === 'maybe-fahrenheit' || code === 'out-of-range'));
    expect(missed.filter((s) => Math.abs(s.latitudeDeg) < 65).map((s) => s.name)).toEqual([]);
    expect(missed.length).toBeLessThan(20);
  });

  test('the other hemisphere is asked about away from the tropics', () => {
    const outside = stations.filter((s) => Math.abs(s.latitudeDeg) >= 35);
    const asked = outside.filter((s) => codesOf(asFile(s, { latitudeDeg: -s.latitudeDeg })).length > 0);
    expect(outside.length).toBeGreaterThan(1000);
    expect(asked.length / outside.length).toBeGreaterThan(0.98);
  });
});
