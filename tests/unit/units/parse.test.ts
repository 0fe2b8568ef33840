import { describe, expect, test } from '@jest/globals';
import { exampleOf, parseFilmThickness, parseLength, parseQuantity, parseTemperature, parseTemperatureDifference, type UnitSymbol } from '@lathwork/units';

const valueOf = (unit: UnitSymbol, typed: string): number => {
  const r = parseQuantity(unit, typed);
  if (!r.ok) throw new Error(`${typed}: ${r.code} ${r.message}`);
  expect(r.asTyped).toBe(typed);
  return r.value;
};
const codeOf = (unit: UnitSymbol, typed: string): string => {
  const r = parseQuantity(unit, typed);
  if (r.ok) return `read as ${r.value}`;
  expect(r.message.length).toBeGreaterThan(20);
  return r.code;
};

test.each([
  [`6' 4-1/2"`, 1.9431],
  ['6ft4.5', 1.9431],
  ['6′-4 1/2″', 1.9431],
  ['6’ 4½”', 1.9431],
  ['76½ in', 1.9431],
  ['76 1/2 in.', 1.9431],
  ['1,94 m', 1.94],
  ['12 ft', 3.6576],
  [`10'-0"`, 3.048],
  ["10'", 3.048],
  ['3.048 m', 3.048],
  ['304.8 cm', 3.048],
  ['3048mm', 3.048],
  ['0,125 m', 0.125],
  ['1,234.5 mm', 1.2345],
  ['1.234,5 mm', 1.2345],
  ['½ in', 0.0127],
  ['1/2"', 0.0127],
  ['−3 in', -0.0762],
  ['4 yd', 3.6576],
])('a length of %s', (typed, expected) => expect(valueOf('m', typed)).toBeCloseTo(expected, 12));

test.each([
  ['m2', '200 sq ft', 18.580608],
  ['m2', '200 ft²', 18.580608],
  ['m3', '1 ft3', 0.028316846592],
  ['L', '55 gal', 208.19764812],
  ['L', '55 gal US', 208.19764812],
  ['L', '10 imp gal', 45.4609],
  ['L', '0.2 m³', 200],
  ['kg', '40 lb', 18.1436948],
  ['N', '1 lb', 4.4482216152605],
  ['N', '2.2 kN', 2200],
  ['Pa', '1 psf', 47.88025898],
  ['Pa', '1 psi', 6894.7572931684],
  ['Pa', '1.44 kPa', 1440],
  ['m/s', '105 mph', 46.9392],
  ['m/s', '36 km/h', 10],
  ['m/s', '10 kn', 5.144444444],
  ['N.m', '1 ft-lb', 1.3558179483],
  ['N.m', '340 N·m', 340],
  ['deg', '30°', 30],
  ['deg', '0.5 rad', 28.6478897565],
  ['m3/s', '800 cfm', 0.37755795456],
  ['N/m', '1 plf', 14.59390294],
  ['1', '25 %', 0.25],
  ['1', '0.25', 0.25],
] as const)('%s: %s', (unit, typed, expected) => expect(valueOf(unit, typed)).toBeCloseTo(expected, 7));

test('a film in mil or millimetres', () => {
  expect(parseFilmThickness('6 mil')).toMatchObject({ ok: true });
  expect(valueOf('mm', '6 mil')).toBeCloseTo(0.1524, 12);
  expect(valueOf('mm', '150 µm')).toBeCloseTo(0.15, 12);
});

test('a temperature and a difference of temperatures are two things', () => {
  expect(valueOf('degC', '28 °F')).toBeCloseTo(-2.2222222, 6);
  expect(valueOf('degC', '-40 degF')).toBeCloseTo(-40, 12);
  expect(valueOf('degC', '-2 degC')).toBe(-2);
  expect(valueOf('K', '9 degF')).toBeCloseTo(5, 12);
  expect(parseTemperature('18 F')).not.toEqual(parseTemperatureDifference('18 F'));
});

describe('refused, with a reason and a remedy', () => {
  test.each([
    ['m', '1.94', 'no-unit'],
    ['N', '300', 'no-unit'],
    ['m', '', 'empty'],
    ['m', '   ', 'empty'],
    ['m', 'ten feet', 'not-a-number'],
    ['m', '1/0 in', 'not-a-number'],
    ['m', '1.2.3 m', 'not-a-number'],
    ['m', '5 kg', 'unknown-unit'],
    ['m', '5 ft2ish', 'unknown-unit'],
    ['Pa', '30 lb', 'unknown-unit'],
    ['m', '1,234 m', 'ambiguous'],
    ['m', `6.5' 3"`, 'ambiguous'],
    ['m', '9'.repeat(30) + ' m', 'out-of-range'],
    ['m', 'NaN m', 'not-a-number'],
    ['m', '1e3 m', 'unknown-unit'],
  ] as const)('%s: "%s" is %s', (unit, typed, code) => expect(codeOf(unit, typed)).toBe(code));

  test('the message says what to type', () => {
    const r = parseLength('1.94');
    expect(r).toMatchObject({ ok: false, message: expect.stringContaining('"10 ft"') });
  });
});

test('twelve inches or more after feet are read, and asked back in the usual form', () => {
  const r = parseLength(`5' 14"`);
  expect(r).toMatchObject({ ok: true, warning: { code: 'confirm-reading', reading: '6′-2″' } });
  expect(r.ok && r.value).toBeCloseTo(1.8796, 12);
  expect(parseLength(`5' 11 7/8"`)).not.toHaveProperty('warning');
});

test('minus nothing is nothing, without a sign', () => expect(Object.is(valueOf('m', '-0 m'), 0)).toBe(true));

test.each(['m', 'mm', 'm2', 'L', 'kg', 'N', 'N/m', 'N.m', 'Pa', 'm/s', 'm3/s', 'degC', 'K', 'deg', '1', 's', 'h', 'a', 'W', 'kg/m3', 'W/(m2.K)'] as const)(
  'the example given for %s can be read',
  (unit) => expect(Number.isFinite(valueOf(unit, exampleOf(unit)))).toBe(true),
);
