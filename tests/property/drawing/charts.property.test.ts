import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import {
  budgetBars,
  climateChart,
  cutDiagrams,
  dayPeaks,
  monthlyNights,
  nightCurve,
  rangeStrip,
  ratioBars,
  type Drawing,
  type UnitSystem,
} from '@lathwork/drawing';
import type { ClimateMonth, CutBoard, NightRun, ThermalMonth } from '@lathwork/model';
import { collisions, outside, readSvg } from '../../unit/drawing/svg-reader.js';

const units = fc.constantFrom<UnitSystem>('us', 'metric');
const runs = { numRuns: 300, endOnFailure: true };
const sound = (d: Drawing): void => {
  readSvg(d.svg);
  expect(d.svg).not.toMatch(/NaN|Infinity|undefined|null/);
  expect(collisions(d.svg)).toEqual([]);
  expect(outside(d.svg, d.widthMm, d.heightMm)).toEqual([]);
  expect(d.alt.length).toBeGreaterThanOrEqual(5);
  expect(d.alt.length).toBeLessThanOrEqual(250);
};
const count = (d: Drawing, text: string): number => readSvg(d.svg).filter((t) => t.text === text).length;
const range = (low: number, spreadK: number): { p10: number; p50: number; p90: number } => ({ p10: low, p50: low + spreadK * 0.5, p90: low + spreadK });

const months = fc
  .record({
    mean: fc.double({ min: -30, max: 18, noNaN: true }),
    swing: fc.double({ min: 0, max: 20, noNaN: true }),
    gain: fc.double({ min: -2, max: 6, noNaN: true }),
    missing: fc.uniqueArray(fc.integer({ min: 1, max: 12 }), { maxLength: 4 }),
    covered: fc.uniqueArray(fc.integer({ min: 1, max: 12 }), { maxLength: 9 }),
  })
  .map((r) =>
    Array.from({ length: 12 }, (_, i): ThermalMonth => {
      const low = r.mean - r.swing * Math.cos((i / 12) * 2 * Math.PI);
      const gone = r.missing.includes(i + 1);
      return {
        month: i + 1,
        outsideLowC: gone ? null : low,
        insideLowC: gone ? null : range(low + r.gain - 1, 3),
        innerCoverLowC: gone || !r.covered.includes(i + 1) ? null : range(low + r.gain + 2, 4),
        outsideHighC: gone ? null : low + 12,
        closedHighC: gone ? null : range(low + 32, 14),
        openedHighC: gone ? null : range(low + 16, 6),
      };
    }),
  );
const limits = fc.array(
  fc.record({
    label: fc.constantFrom('Tomato stops growing', 'Lettuce leaves hurt', 'Spinach dies', 'Kale dies'),
    valueC: fc.double({ min: -15, max: 12, noNaN: true }),
  }),
  { maxLength: 4 },
);

describe('charts of random years', () => {
  test('nights and days: letters stay apart and on the paper, each month without a record says so', () => {
    fc.assert(
      fc.property(months, limits, units, fc.constantFrom(2, 8), (m, l, u, startMonth) => {
        const missing = m.filter((x) => x.outsideLowC === null).length;
        const nights = monthlyNights({ months: m, limits: l, units: u, startMonth, boxMm: { wMm: 178, hMm: 68 } });
        sound(nights);
        expect(count(nights, 'no record')).toBe(missing);
        const days = dayPeaks({ months: m, limits: [{ label: 'Tomato drops flowers', valueC: 38 }], units: u, startMonth, boxMm: { wMm: 178, hMm: 52 } });
        sound(days);
        expect(count(days, 'no record')).toBe(missing);
        expect(count(nights, '°F')).toBe(1);
        expect(count(nights, '°C')).toBe(1);
      }),
      { ...runs, seed: 11 },
    );
  });

  test('the year at the station', () => {
    fc.assert(
      fc.property(months, units, fc.constantFrom(2, 8), fc.double({ min: 0, max: 400, noNaN: true }), (m, u, startMonth, rain) => {
        const year = m.map((x): ClimateMonth => ({
          month: x.month,
          hasRecord: x.outsideLowC !== null,
          tMaxC: x.outsideHighC,
          tMinC: x.outsideLowC === null ? null : x.outsideLowC + 3,
          dewPointC: null,
          coldNightC: x.outsideLowC,
          coldNightBasis: 'recorded',
          sunnyDayMaxC: null,
          daylightH: 12,
          sunMJPerM2: x.outsideLowC === null ? null : 11.4,
          sunBasis: 'sunshineHours',
          clearSkyMJPerM2: 20,
        }));
        sound(
          climateChart({
            months: year,
            precipitationMm: m.map((x) => (x.outsideLowC === null ? null : rain)),
            units: u,
            startMonth,
            boxMm: { wMm: 178, hMm: 130 },
          }),
        );
      }),
      { ...runs, seed: 12 },
    );
  });

  test('night curve, range strip, budget and ratio bars, cut boards', () => {
    const curve = (f: (h: number) => number): number[] => Array.from({ length: 24 }, (_, h) => f(h));
    fc.assert(
      fc.property(
        fc.double({ min: -35, max: 10, noNaN: true }),
        fc.double({ min: -1, max: 6, noNaN: true }),
        units,
        fc.array(fc.integer({ min: 60, max: 900 }), { minLength: 1, maxLength: 9 }),
        (low, gain, u, lengths) => {
          const out = (h: number): number => low + 5 - 5 * Math.cos(((h - 5) / 24) * 2 * Math.PI);
          const run: NightRun = {
            variant: 'bare',
            outsideLowC: low,
            insideLowC: range(low + gain, 3),
            leafLowC: range(low + gain, 3),
            liftK: range(gain, 3),
            curve: { outsideC: curve(out), p10C: curve((h) => out(h) + gain), p50C: curve((h) => out(h) + gain + 1), p90C: curve((h) => out(h) + gain + 3) },
          };
          sound(nightCurve({ run, limits: [{ label: 'Lettuce leaves hurt', valueC: -2 }], units: u, boxMm: { wMm: 178, hMm: 64 } }));
          sound(
            rangeStrip({
              rows: [{ lowC: low, likelyC: low + 1, highC: low + 3 }, null, { lowC: low + 20, likelyC: low + 30, highC: low + 40 }],
              limits: [
                { label: 'frost', valueC: 0 },
                { label: 'flowers drop', valueC: 38 },
              ],
              widthMm: 61,
              rowHeightMm: 5.8,
              units: u,
            }),
          );
          sound(ratioBars({ rows: lengths.map((v, i) => ({ label: `A${i + 1}`, ratio: v % 5 === 0 ? null : v / 400 })), boxMm: { wMm: 110, hMm: 90 } }));
          sound(
            budgetBars({
              rows: lengths.map((v, i) => ({ label: `group ${i}`, reclaimedMinor: v, cashMinor: (v * 7) % 900, inKindMinor: i % 3 === 0 ? v : 0 })),
              money: (minor) => `USD ${minor}`,
              boxMm: { wMm: 130, hMm: 90 },
            }),
          );
          const cuts = lengths.map((lengthMm, i) => ({ letter: String.fromCharCode(65 + i), lengthMm }));
          const used = lengths.reduce((a, b) => a + b + 3, 0);
          const board: CutBoard = {
            boardId: 'b1',
            stockTag: null,
            material: 'board.38x89',
            lengthMm: Math.max(used, 2400),
            kerfMm: 3,
            cuts,
            offcutMm: Math.max(used, 2400) - used,
          };
          for (const d of cutDiagrams({ boards: [board, board, board], units: u, widthMm: 178, maxHeightMm: 120 })) {
            sound(d);
            for (const c of cuts) expect(readSvg(d.svg).some((t) => t.text.startsWith(`${c.letter}  `))).toBe(true);
          }
        },
      ),
      { ...runs, seed: 13 },
    );
  });
});
