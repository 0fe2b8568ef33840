import { readFileSync } from 'node:fs';
import { expect, test } from '@jest/globals';
import { Ajv } from 'ajv';
import { ClimateInputsSchema } from '@lathwork/model';
import { climateInputsOf, parseStations } from '@lathwork/formats';

const text = readFileSync('prisma/seed/stations.csv', 'utf8');
const lines = text.split('\n');
const header = lines.findIndex((l) => l.startsWith('id,'));
const names = (lines[header] ?? '').split(',');
/** The table's head and one station, with some fields changed. */
const withFields = (changes: Record<string, string>): string => {
  const fields = (lines[header + 1] ?? '').split(',');
  for (const [name, value] of Object.entries(changes)) fields[names.indexOf(name)] = value;
  return [...lines.slice(0, header + 1), fields.join(',')].join('\n');
};

test('the table holds 2,104 stations without a fault, each fit for a plan', () => {
  const { stations, faults } = parseStations(text);
  expect(faults).toEqual([]);
  expect(stations).toHaveLength(2104);
  const valid = new Ajv({ strict: false }).compile(ClimateInputsSchema);
  expect(stations.filter((s) => !valid(climateInputsOf(s, 1000)))).toEqual([]);
});

test('the credit and the period stand on top, and it is not called normals', () => {
  const head = lines.slice(0, header).join('\n');
  expect(head).toContain('Datenbasis: Deutscher Wetterdienst, Einzelwerte gemittelt');
  expect(head).toContain('2003-2021 means');
  const { stations } = parseStations(text);
  const inputs = climateInputsOf(
    stations[0] ??
      (() => {
        throw new Error('empty');
      })(),
    12,
  );
  expect([inputs.kind, inputs.period, inputs.distanceM]).toEqual(['means', '2003-2021 means', 12]);
});

test('figures arrive as printed, in pascals, and no record is null', () => {
  const jan = parseStations(text).stations.find((s) => s.stationId === '01001');
  expect(jan).toMatchObject({
    name: 'Jan Mayen',
    country: 'Norway',
    latitudeDeg: 70.94,
    longitudeDeg: -8.67,
    elevationM: 9,
    yearsCount: 18,
    annualExtremeMinC: null,
  });
  expect(jan?.months[0]).toEqual({ tMaxC: 0.1, tMinC: -3.8, vapourPressurePa: 460, precipitationMm: 63, sunshineH: null, absoluteMinMeanC: -9.8 });
  expect(jan?.months[3]?.absoluteMinMeanC).toBeNull();
});

test('a place under the sea is read', () => {
  expect(Math.min(...parseStations(text).stations.map((s) => s.elevationM))).toBe(-350);
});

test('every fault of a line is told with its number, and the line gives no station', () => {
  const { stations, faults } = parseStations(withFields({ latitude_deg: '97', t_max_c_02: 'warm', country: '', t_min_c_03: '-1e3' }));
  expect(stations).toEqual([]);
  expect(faults.map((f) => [f.line, f.column, f.code])).toEqual([
    [header + 2, 'country', 'empty'],
    [header + 2, 'latitude_deg', 'out-of-range'],
    [header + 2, 't_max_c_02', 'not-a-number'],
    [header + 2, 't_min_c_03', 'not-a-number'],
  ]);
});

test.each([
  ['a missing column', text.replace('t_max_c_07', 't_max_c_7'), 'missing-column', header + 1],
  [
    'a cut line',
    withFields({})
      .slice(0, -30)
      .replace(/,[^,]*$/, ''),
    'field-count',
    header + 2,
  ],
  ['a station twice', `${withFields({})}\n${lines[header + 1] ?? ''}`, 'duplicate', header + 3],
  ['an open quote', withFields({ name: '"Jan' }), 'unclosed-quote', header + 2],
  ['nothing at all', '', 'no-header', 1],
])('%s is a fault with its line', (_, file, code, line) => {
  expect(parseStations(file).faults[0]).toMatchObject({ code, line });
});

test('a byte-order mark, carriage returns and quoted commas do no harm', () => {
  const { stations, faults } = parseStations('\uFEFF' + withFields({ country: '"Moldova, ""Rep."" Of"' }).replaceAll('\n', '\r\n'));
  expect(faults).toEqual([]);
  expect(stations[0]?.country).toBe('Moldova, "Rep." Of');
});
