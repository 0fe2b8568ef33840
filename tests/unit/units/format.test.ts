import { expect, test } from '@jest/globals';
import {
  currencyDigits,
  formatFeetInches,
  formatLength,
  formatMoney,
  formatNumber,
  formatQuantity,
  formatRange,
  formatTemperature,
  formatTemperatureRange,
  roundChain,
  unitOfName,
} from '@lathwork/units';

const NB = '\u00a0';

test.each([
  [3.048, '10′-0″'],
  [2.0955, '6′-10 1/2″'],
  [0.18415, '7 1/4″'],
  [0.003175, '1/8″'],
  [0, '0″'],
  [0.3048, '1′-0″'],
  [0.317, '1′-0 1/2″'],
  [-0.0762, '−3″'],
  [-0.0001, '0″'],
  [3.04799, '10′-0″'],
])('%d m in feet and inches is %s', (m, text) => expect(formatFeetInches(m)).toBe(text));

test('lengths, areas, forces, pressures, speeds and temperatures in both systems', () => {
  expect([formatLength(2.108, 'metric'), formatLength(2.1082, 'us')]).toEqual([`2108${NB}mm`, '6′-11″']);
  expect([formatQuantity('area', 18.580608, 'metric'), formatQuantity('area', 18.580608, 'us')]).toEqual([`18.6${NB}m²`, `200${NB}sq ft`]);
  expect([formatQuantity('force', 2224.11, 'metric'), formatQuantity('force', 2224.11, 'us')]).toEqual([`2.22${NB}kN`, `500${NB}lb`]);
  expect([formatQuantity('pressure', 1436.4, 'metric'), formatQuantity('pressure', 1436.4, 'us')]).toEqual([`1.44${NB}kPa`, `30.0${NB}psf`]);
  expect([formatQuantity('speed', 46.94, 'metric'), formatQuantity('speed', 46.94, 'us')]).toEqual([`169${NB}km/h`, `105${NB}mph`]);
  expect([formatTemperature(-24.7, 'metric'), formatTemperature(-24.7, 'us')]).toEqual([`−25${NB}°C`, `−12${NB}°F`]);
  expect(formatQuantity('temperatureDifference', 5, 'us')).toBe(`9${NB}°F`);
});

test('a zero has no sign and halves go away from zero on both sides', () => {
  expect([formatNumber(-0), formatNumber(-0.4), formatNumber(2.5), formatNumber(-2.5), formatNumber(1.005, 2)]).toEqual(['0', '0', '3', '−3', '1.01']);
});

test('what is not a number stops the printing', () => {
  for (const bad of [NaN, Infinity, -Infinity]) {
    expect(() => formatNumber(bad)).toThrow('figure to print');
    expect(() => formatFeetInches(bad)).toThrow();
    expect(() => formatTemperature(bad, 'us')).toThrow();
  }
});

test('a range is in words, and one number where both ends print alike', () => {
  expect([formatRange(18, 24), formatRange(18.2, 18.4), formatTemperatureRange(-3, 1, 'metric')]).toEqual(['18 to 24', '18', `−3 to 1${NB}°C`]);
});

test('marks of the locale', () => {
  const comma = { decimal: ',', group: '.' };
  expect([formatNumber(12345.678, 1, comma), formatNumber(1234, 0, comma), formatMoney(123450, 'EUR', comma)]).toEqual([
    '12.345,7',
    '1234',
    `EUR${NB}1.234,50`,
  ]);
});

test('money has the decimals of its currency (ISO 4217)', () => {
  expect([formatMoney(123450, 'USD'), formatMoney(1234, 'JPY'), formatMoney(1234, 'KWD'), formatMoney(-5, 'NZD')]).toEqual([
    `USD${NB}1,234.50`,
    `JPY${NB}1,234`,
    `KWD${NB}1.234`,
    `NZD${NB}−0.05`,
  ]);
  expect([currencyDigits('USD'), currencyDigits('CLP'), currencyDigits('TND'), currencyDigits('XXZ')]).toEqual([2, 0, 3, undefined]);
  expect(() => formatMoney(1, 'XXZ')).toThrow('XXZ');
  expect(() => formatMoney(1.5, 'USD')).toThrow('minor');
});

test('the unit of a field name is its longest suffix', () => {
  expect(['spanM', 'floorAreaM2', 'lossWPerK', 'speedMPerS', 'tiltDeg', 'ageY', 'priceMinor', 'sunMJPerM2'].map(unitOfName)).toEqual([
    'm',
    'm2',
    'W/K',
    'm/s',
    'deg',
    'a',
    '{minor currency unit}',
    'MJ/m2',
  ]);
  expect(['height', 'M', 'ITEM', 'name'].map(unitOfName)).toEqual([undefined, undefined, undefined, undefined]);
});

test('the chain of the sample sheet: an overall of ten feet in millimetres', () => {
  const inches = [8, 28, 7, 34, 9, 24, 10];
  const chain = roundChain(
    inches.map((i) => i * 0.0254),
    3.048,
    'mm',
    [false, true, false, true, false, true, false],
  );
  expect(chain).toMatchObject({ parts: [203, 711, 178, 864, 229, 610, 253], total: 3048, withinSixteenthInch: true });
});

test('a chain that cannot be closed says so', () => {
  expect(() => roundChain([0.0104, 0.0104, 0.0104], 0.0312, 'mm', [true, true, true])).toThrow('every part is fixed');
  expect(() => roundChain([1, 1], 3, 'mm', [false, false])).toThrow('add up');
  expect(() => roundChain([1], 1, 'mm', [])).toThrow('fixed');
  expect(() => roundChain([NaN], NaN, 'mm', [false])).toThrow('not a length');
});
