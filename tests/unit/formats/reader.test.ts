import { expect, test } from '@jest/globals';
import { ClimateReader, readClimateFile, recognise, type ReadResult } from '@lathwork/formats';
import { epwFile } from './hourly-files.js';

/* What is no climate file, what is too large, and how a file is recognised. */
const codes = (result: ReadResult): string[] => (result.outcome === 'faults' ? result.faults.map((f) => `${f.line} ${f.code}`) : []);
const bytes = (...list: number[]): Uint8Array => Uint8Array.from([...list, ...Array.from({ length: 40 }, (_, i) => (i * 37) % 256)]);

test.each([
  ['zip', bytes(0x50, 0x4b, 3, 4), 'not-text', 'zip'],
  ['gzip', bytes(0x1f, 0x8b, 8, 0), 'not-text', 'gzip'],
  ['PDF', bytes(0x25, 0x50, 0x44, 0x46), 'not-text', 'PDF'],
  ['UTF-16', Uint8Array.from([0xff, 0xfe, 0x4c, 0, 0x4f, 0, 0x43, 0, 0x41, 0]), 'wrong-encoding', 'UTF-16'],
  ['zero bytes', Uint8Array.from([65, 66, 67, 10, 65, 66, 67, 68, 69, 0, 1]), 'not-text', 'zero byte at byte 10'],
  ['nothing', new Uint8Array(0), 'empty', 'empty'],
  ['three bytes of gzip', Uint8Array.from([0x1f, 0x8b, 8]), 'not-text', 'gzip'],
])('%s is refused by its bytes, whole and byte by byte', (_name, file, code, word) => {
  const whole = readClimateFile(file);
  expect(whole.outcome === 'faults' && [whole.faults[0]?.code, whole.faults[0]?.message]).toEqual([code, expect.stringContaining(word)]);
  const reader = new ClimateReader();
  for (const b of file) reader.push(Uint8Array.of(b));
  expect(codes(reader.end())).toEqual(codes(whole));
});

test('a file over the limit is given up at once, and the rest is not wanted', () => {
  const reader = new ClimateReader({ bytesLimit: 1000 });
  const piece = new Uint8Array(600).fill(65).map((_, i) => (i % 60 === 59 ? 10 : 65));
  expect([reader.push(piece), reader.push(piece), reader.push(piece)]).toEqual([true, false, false]);
  expect(codes(reader.end()).map((c) => c.split(' ')[1])).toContain('too-large');
  expect(codes(readClimateFile(new Uint8Array(8 * 1024 * 1024 + 1).fill(65)))).toEqual(['1 too-large']);
});

test('500 MB sent in pieces: at the first piece over 8 MB the reader wants no more', () => {
  const reader = new ClimateReader();
  const head = new TextEncoder().encode(epwFile({ hours: [] }));
  const piece = new TextEncoder().encode('# nothing\n'.repeat(6554));
  reader.push(head);
  let pieces = 0;
  while (pieces < 8000 && reader.push(piece)) pieces++;
  expect(pieces).toBeLessThanOrEqual(128);
});

test('a line without an end is given up', () => {
  expect(codes(readClimateFile(new Uint8Array(600_000).fill(65)))).toEqual(['1 line-too-long']);
});

test('progress is told by lines and bytes, and once at the end', () => {
  const seen: number[] = [];
  const text = epwFile();
  readClimateFile(text, { progressEveryLines: 2000, onProgress: (at) => seen.push(at.linesCount) });
  expect(seen).toEqual([2000, 4000, 6000, 8000, 8768]);
});

test('the same buffer may be filled again by the caller', () => {
  const text = new TextEncoder().encode(epwFile());
  const reader = new ClimateReader();
  const buffer = new Uint8Array(1000);
  for (let i = 0; i < text.length; i += buffer.length) {
    const piece = text.subarray(i, i + buffer.length);
    buffer.set(piece);
    reader.push(buffer.subarray(0, piece.length));
    buffer.fill(0);
  }
  expect(reader.end()).toEqual(readClimateFile(text));
});

test('faults are told up to the limit and counted beyond it', () => {
  const result = readClimateFile(epwFile().replaceAll(',99000,', ',x,'), { faultsLimit: 3 });
  expect(result.outcome === 'faults' && [result.faults.length, result.faultsCount]).toEqual([3, 8760]);
});

test('a format may be named instead of recognised; the wrong one gives faults, not figures', () => {
  expect(readClimateFile(epwFile(), { formatId: 'epw' }).outcome).toBe('records');
  for (const formatId of [
    'tmy3',
    'wmo-clino',
    'metoffice-historic',
    'ncei-normals-monthly',
    'ncei-normals-annual',
    'own-hours',
    'own-months',
    'nasa-power-csv',
    'nasa-power-json',
  ] as const)
    expect([formatId, readClimateFile(epwFile(), { formatId }).outcome]).toEqual([formatId, 'faults']);
});

test.each([
  ['LOCATION,X,Y', 'epw'],
  ['703165,"SAND POINT",AK,-9.0,55.317,-160.517,7\nDate (MM/DD/YYYY),Time (HH:MM),ETR (W/m^2)', 'tmy3'],
  ['World Meteorological Organization Climate Normals for 1991-2020,,,', 'wmo-clino'],
  ['Oxford\nLocation: 450900E 207200N\n   yyyy  mm   tmax    tmin      af    rain     sun', 'metoffice-historic'],
  ['"STATION","DATE","LATITUDE","LONGITUDE","MLY-TAVG-NORMAL","meas_flag_MLY-T', 'ncei-normals-monthly'],
  ['"STATION","LATITUDE","LONGITUDE","ANN-TAVG-NORMAL"', 'ncei-normals-annual'],
  ['-BEGIN HEADER-\nx\n-END HEADER-\nPARAMETER,JAN,FEB,MAR', 'nasa-power-csv'],
  ['{"type":"Feature","properties":{"parameter":{}}}', 'nasa-power-json'],
  ['format,lathwork-months-1', 'own-months'],
  ['\uFEFF# remark\nformat,lathwork-hours-1,,,', 'own-hours'],
])('recognise: %j is %s', (head, expected) => {
  expect(recognise(head)).toMatchObject({ formatId: expected, remedy: null });
});

test.each([
  ['time(UTC),T2m,RH,G(h)', 'PVGIS'],
  ['Source,Location ID,City', 'NSRDB'],
  ['GHCN_ID,month,day,hour', 'by variable'],
  ['<!DOCTYPE html><html>', 'web page'],
  ['a,b,c\n1,2,3', 'no known header'],
  ['PK\u0003\u0004xxxx', 'zip'],
  ['', 'empty'],
])('recognise: %j is none, for a reason and with a remedy', (head, word) => {
  const seen = recognise(head);
  expect([seen.formatId, seen.reasons.join(' '), (seen.remedy ?? '').length > 10]).toEqual([null, expect.stringContaining(word), true]);
});
