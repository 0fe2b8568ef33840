import { describe, expect, it } from '@jest/globals';
import ucum from '@lhncbc/ucum-lhc';
import fc from 'fast-check';
import { formatNumber, formatTemperature, parseQuantity, ucumOfSuffix, ucumOfUnit, UNIT_BY_SUFFIX, type UnitSuffix, type UnitSymbol } from '@lathwork/units';

const oracle = ucum.UcumLhcUtils.getInstance();
const SUFFIXES = Object.keys(UNIT_BY_SUFFIX) as UnitSuffix[];

const convert = (from: string, value: number, to: string): number => {
  const { status, toVal, msg } = oracle.convertUnitTo(from, value, to);
  if (status !== 'succeeded' || toVal === null) throw new Error(`${value} ${from} to ${to}: ${msg.join(' ')}`);
  return toVal;
};

/** What people type, with the UCUM code of the same unit. */
const TYPED: readonly (readonly [UnitSymbol, string, string])[] = [
  ['m', 'ft', '[ft_i]'],
  ['m', 'in', '[in_i]'],
  ['m', 'yd', '[yd_i]'],
  ['m', 'cm', 'cm'],
  ['m', 'km', 'km'],
  ['mm', 'mil', '[mil_i]'],
  ['mm', 'in', '[in_i]'],
  ['m2', 'sq ft', '[sft_i]'],
  ['m2', 'sq yd', '[syd_i]'],
  ['m3', 'cu ft', '[cft_i]'],
  ['m3', 'cu yd', '[cyd_i]'],
  ['L', 'gal', '[gal_us]'],
  ['L', 'gal imp', '[gal_br]'],
  ['L', 'm3', 'm3'],
  ['kg', 'lb', '[lb_av]'],
  ['kg', 'oz', '[oz_av]'],
  ['kg', 't', 't'],
  ['kg/m', 'lb/ft', '[lb_av]/[ft_i]'],
  ['kg/m3', 'pcf', '[lb_av]/[ft_i]3'],
  ['N', 'lbf', '[lbf_av]'],
  ['N', 'kgf', 'kgf'],
  ['N', 'kn', 'kN'],
  ['N/m', 'plf', '[lbf_av]/[ft_i]'],
  ['N.m', 'ft-lb', '[lbf_av].[ft_i]'],
  ['N.m', 'in-lb', '[lbf_av].[in_i]'],
  ['Pa', 'psf', '[lbf_av]/[ft_i]2'],
  ['Pa', 'psi', '[psi]'],
  ['Pa', 'hPa', 'hPa'],
  ['Pa', 'mbar', 'mbar'],
  ['m/s', 'mph', '[mi_i]/h'],
  ['m/s', 'km/h', 'km/h'],
  ['m/s', 'kt', '[kn_i]'],
  ['m/s', 'ft/s', '[ft_i]/s'],
  ['m3/s', 'cfm', '[cft_i]/min'],
  ['m3/s', 'm3/h', 'm3/h'],
  ['m3/s', 'L/s', 'L/s'],
  ['degC', 'degF', '[degF]'],
  ['degC', 'K', 'K'],
  ['deg', 'rad', 'rad'],
  ['h', 'min', 'min'],
  ['d', 'weeks', 'wk'],
  ['a', 'months', 'mo_j'],
  ['W', 'Btu/h', '[Btu_IT]/h'],
  ['1', '%', '%'],
];

const parsed = (unit: UnitSymbol, text: string): number => {
  const read = parseQuantity(unit, text);
  if (!read.ok) throw new Error(`${text}: ${read.message}`);
  return read.value;
};

describe('units for other programs', () => {
  it('A24: every suffix has a code that the UCUM library knows, and the list is closed', () => {
    expect(SUFFIXES.length).toBeGreaterThan(40);
    for (const suffix of SUFFIXES)
      expect([suffix, ucumOfSuffix(suffix), oracle.validateUnitString(ucumOfSuffix(suffix)).status]).toEqual([suffix, ucumOfSuffix(suffix), 'valid']);
  });

  it('A24: the library does refuse codes that look right', () => {
    for (const wrong of ['kWh', 'degC', '[BTU_IT]', 'W/m2K', 'sqft', 'psf', '{minor currency unit}'])
      expect([wrong, oracle.validateUnitString(wrong).status]).not.toEqual([wrong, 'valid']);
  });

  it('A24: what is typed in forty units is read to the value of the UCUM library, within 1e-9, and back', () => {
    expect(TYPED.length).toBeGreaterThanOrEqual(40);
    for (const [unit, name, code] of TYPED) {
      const si = ucumOfUnit(unit);
      fc.assert(
        fc.property(fc.integer({ min: 1, max: 9_999_999 }), (thousandths) => {
          const value = thousandths / 1000;
          const ours = parsed(unit, `${value} ${name}`);
          const theirs = convert(code, value, si);
          const scale = Math.max(Math.abs(theirs), 1e-3);
          expect(Math.abs(ours - theirs) / scale).toBeLessThanOrEqual(1e-9);
          const back = convert(si, ours, code);
          expect(Math.abs(back - value) / value).toBeLessThanOrEqual(1e-9 * Math.max(1, 300 / value));
        }),
        { numRuns: 25 },
      );
    }
  });

  it('A24: what is shown is rounded after converting: 32 degF is 0 degC and nothing behind it', () => {
    expect(convert('[degF]', 32, 'Cel')).not.toBe(0);
    expect(formatTemperature(convert('[degF]', 32, 'Cel'), 'metric')).toBe(formatTemperature(0, 'metric'));
    expect(formatTemperature(parsed('degC', '32 degF'), 'metric')).toBe(formatTemperature(0, 'metric'));
    expect(formatNumber(parsed('m', '10 ft'), 3)).toBe('3.048');
  });
});
