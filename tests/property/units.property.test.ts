import { expect, test } from '@jest/globals';
import fc from 'fast-check';
import { formatFeetInches, formatMillimetres, formatNumber, parseLength, parseQuantity, roundChain } from '@lathwork/units';

const read = (typed: string): number => {
  const r = parseLength(typed);
  if (!r.ok) throw new Error(r.message);
  expect(r).not.toHaveProperty('warning');
  return r.value;
};

test('what is printed in feet and inches reads back to within a sixteenth of an inch', () => {
  fc.assert(
    fc.property(fc.double({ min: -100, max: 100, noNaN: true }), (m) =>
      expect(Math.abs(read(formatFeetInches(m)) - m)).toBeLessThanOrEqual(0.0254 / 16 + 1e-9),
    ),
  );
});

test('what is printed in millimetres reads back to within half of one', () => {
  fc.assert(
    fc.property(fc.double({ min: -9, max: 9, noNaN: true }), (m) =>
      expect(Math.abs(read(`${formatMillimetres(m)} mm`) - m)).toBeLessThanOrEqual(0.0005 + 1e-9),
    ),
  );
});

test('a number typed in any unit and read back is the same number', () => {
  const units = fc.constantFrom(
    ['m', 'ft', 0.3048],
    ['N', 'lb', 4.4482216152605],
    ['Pa', 'psf', 4.4482216152605 / 0.09290304],
    ['L', 'gal', 3.785411784],
    ['m/s', 'mph', 0.44704],
  ) as fc.Arbitrary<['m' | 'N' | 'Pa' | 'L' | 'm/s', string, number]>;
  fc.assert(
    fc.property(units, fc.integer({ min: -999_999, max: 999_999 }), ([unit, name, factor], thousandths) => {
      const r = parseQuantity(unit, `${thousandths / 1000} ${name}`);
      expect(r.ok && r.value).toBeCloseTo((thousandths / 1000) * factor, 6);
    }),
  );
});

test('no text whatever makes the reader throw or give a number that is not one', () => {
  fc.assert(
    fc.property(fc.oneof(fc.string(), fc.stringMatching(/^[-0-9 .,/'"ftinm½]{0,15}$/)), (typed) => {
      const r = parseLength(typed);
      expect(r.ok ? Number.isFinite(r.value) && !Object.is(r.value, -0) : r.message.length > 0).toBe(true);
    }),
    { numRuns: 2000 },
  );
});

test('a printed number never has a signed zero', () => {
  fc.assert(
    fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), fc.integer({ min: 0, max: 3 }), (v, digits) =>
      expect(formatNumber(v, digits)).not.toMatch(/^\u22120(\.0+)?$/),
    ),
  );
});

const chain = fc
  .array(fc.record({ m: fc.double({ min: 0.05, max: 3, noNaN: true }), fixed: fc.boolean() }), { minLength: 1, maxLength: 12 })
  .filter((parts) => parts.some((p) => !p.fixed));

test('a chain adds up exactly and no opening moves; in millimetres with a gap to each opening no part is seen to be off', () => {
  fc.assert(
    fc.property(chain, fc.constantFrom('mm' as const, 'eighthInch' as const), (parts, step) => {
      const lengths = parts.map((p) => p.m);
      const total = lengths.reduce((a, v) => a + v, 0);
      const size = step === 'mm' ? 0.001 : 0.003175;
      const out = roundChain(
        lengths,
        total,
        step,
        parts.map((p) => p.fixed),
      );
      expect(out.parts.reduce((a, v) => a + v, 0)).toBe(out.total);
      expect(Math.abs(out.total * size - total)).toBeLessThanOrEqual(size / 2 + 1e-12);
      parts.forEach((p, i) => p.fixed && expect(out.parts[i]).toBe(Math.round(p.m / size)));
      const gaps = parts.filter((p) => !p.fixed).length;
      if (step === 'mm' && gaps * 2 >= parts.length) expect(out.withinSixteenthInch).toBe(true);
      expect(out.withinSixteenthInch).toBe(out.worstOffM <= 0.0254 / 16 + 1e-9);
    }),
    { numRuns: 500 },
  );
});
