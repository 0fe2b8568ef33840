import fc from 'fast-check';
import { describe, expect, test } from '@jest/globals';
import { ClimateReader, FORMAT_IDS, readClimateFile, recognise, toClimateInputs, type ReadResult } from '@lathwork/formats';

/* Whatever bytes come: an answer, never a throw; and the same answer however the bytes were cut. */
const own = (max: readonly (number | null)[]): string =>
  [
    'format,lathwork-months-1',
    'name,Made',
    'latitude_deg,45',
    'longitude_deg,5',
    'elevation_m,100',
    'period,2001-2010',
    'credit,made',
    'month,t_max_c,t_min_c',
    ...max.map((t, i) => `${i + 1},${t ?? ''},${t === null ? '' : t - 8}`),
    '',
  ].join('\n');
const SEEDS: readonly string[] = [
  own([3, 5, 10, 15, 20, 24, 27, 26, 22, 15, 9, 4]),
  'LOCATION,X,Y,USA,T,725300,42,-88,-6,200\nDATA PERIODS,1,1,Data,Sunday, 1/ 1,12/31\n1999,1,1,1,0,?,1,0,80,99000,0,0,280,0,0,0,0,0,0,0,180,3\n',
  'World Meteorological Organization Climate Normals for 1991-2020,,\nCountry_Name,X\nStation_Name,Y\nWMO_Number,Latitude,Longitude,Station_Height\n71122,51|11|37|N,115|33|09|W,1397\nParameter_Code,Parameter_Name,Units\n3,Daily_Maximum_Temperature,Deg_C\nWMO_Number,Parameter_Code,Calculation_Name,Calculation_Code,January\n71122,3,Mean,1,-3.5\n',
  'Hill\nLocation, Lat 52.1 Lon -3.2, 87m amsl\n   yyyy  mm   tmax    tmin      af    rain     sun\n              degC    degC    days      mm   hours\n   1991   1    8.0     2.0       3    60.0    50.0\n',
  '"STATION","DATE","LATITUDE","LONGITUDE","ELEVATION","NAME","month","MLY-TMAX-NORMAL","meas_flag_MLY-TMAX-NORMAL"\n"U","01","40","-80","1","N, PA US","01"," 30.0"," "\n',
  'STATION,LATITUDE,LONGITUDE,ELEVATION,NAME,ANN-TAVG-NORMAL,ANN-TMIN-PRBLST-T32FP50\nU,40,-80,1,N,50.0,05/01\n',
  '-BEGIN HEADER-\nLocation: Latitude  42.5   Longitude -88.25\nT2M     Temperature (C)\n-END HEADER-\nPARAMETER,JAN,FEB,MAR,APR,MAY,JUN,JUL,AUG,SEP,OCT,NOV,DEC,ANN\nT2M,1,2,3,4,5,6,7,8,9,10,11,12,6\n',
  '{"type":"Feature","geometry":{"coordinates":[5,45,100]},"properties":{"parameter":{"T2M":{"JAN":1}}},"parameters":{"T2M":{"units":"C"}}}',
  '703165,"SAND POINT",AK,-9.0,55.317,-160.517,7\nDate (MM/DD/YYYY),Time (HH:MM),GHI (W/m^2),DNI (W/m^2),DHI (W/m^2),Dry-bulb (C)\n01/01/1997,01:00,0,0,0,4\n',
];
const encode = (text: string): Uint8Array => new TextEncoder().encode(text);

/** A file that some bytes of were overwritten, cut out or doubled. */
const damaged = fc
  .record({
    seed: fc.constantFrom(...SEEDS),
    edits: fc.array(fc.record({ at: fc.nat(2000), cut: fc.nat(12), put: fc.uint8Array({ maxLength: 6 }) }), { maxLength: 5 }),
  })
  .map(({ seed, edits }) => {
    let list = [...encode(seed)];
    for (const { at, cut, put } of edits) {
      const from = at % (list.length + 1);
      list = [...list.slice(0, from), ...put, ...list.slice(from + cut)];
    }
    return Uint8Array.from(list);
  });
const anyFile = fc.oneof(fc.uint8Array({ maxLength: 400 }), damaged, fc.string({ maxLength: 300 }).map(encode));
const isWhole = (result: ReadResult): boolean =>
  result.outcome === 'records' ? result.file.kind.length > 0 : result.faults.length > 0 && result.faultsCount >= result.faults.length && !('file' in result);

describe('any bytes', () => {
  test('are records or faults with a message and a remedy, never a throw, whatever the format is said to be', () => {
    fc.assert(
      fc.property(anyFile, fc.option(fc.constantFrom(...FORMAT_IDS), { nil: undefined }), (file, formatId) => {
        const result = readClimateFile(file, formatId === undefined ? {} : { formatId });
        expect(isWhole(result)).toBe(true);
        if (result.outcome === 'faults')
          for (const f of result.faults)
            expect([f.message.length > 0, f.remedy.length > 0, f.line >= 0, f.line <= result.counted.linesCount + 1]).toEqual([true, true, true, true]);
      }),
      { numRuns: 1500 },
    );
  });

  test('recognise and the reader name the same format', () => {
    fc.assert(
      fc.property(anyFile, (file) => {
        const { formatId, reasons } = recognise(file);
        expect(reasons.length).toBeGreaterThan(0);
        if (!file.includes(0) && file.length > 0) expect(readClimateFile(file).formatId).toBe(formatId);
      }),
      { numRuns: 600 },
    );
  });

  test('give one answer, in one piece or in many', () => {
    fc.assert(
      fc.property(anyFile, fc.array(fc.integer({ min: 1, max: 40 }), { minLength: 1, maxLength: 20 }), (file, sizes) => {
        const reader = new ClimateReader();
        for (let at = 0, k = 0; at < file.length; k++) {
          const size = sizes[k % sizes.length] ?? 1;
          reader.push(file.slice(at, at + size));
          at += size;
        }
        const { counted: inPieces, ...pieces } = reader.end();
        const { counted, ...whole } = readClimateFile(file);
        expect(pieces).toEqual(whole);
        expect([inPieces.linesCount, inPieces.encoding]).toEqual([counted.linesCount, counted.encoding]);
      }),
      { numRuns: 800 },
    );
  });
});

test('a month without a record stays without one, and the others are untouched', () => {
  const temperature = fc.option(fc.integer({ min: 0, max: 25 }), { freq: 3, nil: null });
  fc.assert(
    fc.property(fc.array(temperature, { minLength: 12, maxLength: 12 }), (max) => {
      const result = readClimateFile(own(max), { answers: { coordinates: 'asWritten', temperatureUnit: 'celsius' } });
      if (max.every((t) => t === null)) return expect(result.outcome).toBe('faults');
      if (result.outcome !== 'records' || result.file.kind !== 'monthly') throw new Error(JSON.stringify(result));
      const inputs = toClimateInputs(result.file, { distanceM: 0 });
      if (inputs.outcome !== 'inputs') throw new Error(inputs.reason);
      expect(inputs.inputs.months.map((m) => m.tMaxC)).toEqual(max);
      expect(inputs.inputs.months.map((m) => m.tMinC)).toEqual(max.map((t) => (t === null ? null : t - 8)));
    }),
    { numRuns: 300 },
  );
});
