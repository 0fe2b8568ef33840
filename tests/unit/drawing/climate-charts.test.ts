import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { dateOfDay, ENGLISH, frostBar, sunHoursChart, type Drawing, type FrostDays } from '@lathwork/drawing';
import type { SunHours } from '@lathwork/model';
import { collisions, lettersOf, outside, readSvg } from './svg-reader.js';

const NONE: FrostDays = { p10: null, p50: null, p90: null };
const WIDTH_MM = 178;

interface Written {
  text: string;
  from: number;
}
const written = (svg: string): Written[] => lettersOf(svg).map((l) => ({ text: l.text, from: Math.min(...l.corners.map(([x]) => x)) }));

/** No letter leaves the paper, and none lies over another. */
function expectLettersHold({ svg, widthMm, heightMm }: Drawing): void {
  expect(collisions(svg)).toEqual([]);
  expect(outside(svg, widthMm, heightMm)).toEqual([]);
}

/** Level stretch that the hatch strokes of a bar cover. */
const hatched = (svg: string): [number, number][] =>
  readSvg(svg)
    .filter((t) => t.name === 'path' && t.attributes['class'] === 'thin' && (t.attributes['d'] ?? '').split('M').length > 3)
    .map((t) => {
      const xs = [...(t.attributes['d'] ?? '').matchAll(/[ML]([\d.-]+) /g)].map((m) => Number(m[1]));
      return [Math.min(...xs), Math.max(...xs)];
    });

describe('dates', () => {
  test('a day of the year is the same date as the calendar gives for a year of 365 days', () => {
    for (let day = 1; day <= 365; day += 1) {
      const date = new Date(Date.UTC(2023, 0, day));
      expect(dateOfDay(day, ENGLISH.months)).toBe(`${date.getUTCDate()} ${ENGLISH.months[date.getUTCMonth()] ?? ''}`);
    }
  });
  test('days run over the year\u2019s end', () => {
    expect(dateOfDay(366, ENGLISH.months)).toBe('1 Jan');
    expect(dateOfDay(0, ENGLISH.months)).toBe('31 Dec');
  });
});

describe('the frost bar', () => {
  // Printed dates of Lebanon NH: last frost 27 April, 9 May, 24 May; first 23 September, 6 October, 19 October.
  const lebanon = { lastDayD: { p10: 117, p50: 129, p90: 144 }, firstDayD: { p10: 266, p50: 279, p90: 292 } };

  test('writes the six dates and leaves the season without frost bare', () => {
    const { svg, alt } = frostBar({ ...lebanon, startMonth: 1, widthMm: WIDTH_MM });
    const said = written(svg).map((l) => l.text);
    for (const date of ['27 Apr', '9 May', '24 May', '23 Sep', '6 Oct', '19 Oct']) expect(said).toContain(date);
    expect(alt).toContain('50 % by 9 May');
    const perDay = (WIDTH_MM - 0.8) / 365;
    const [from, to] = [0.4 + (144 - 1) * perDay, 0.4 + (266 - 1) * perDay];
    for (const [a, b] of hatched(svg)) expect(b <= from + 0.05 || a >= to - 0.05).toBe(true);
    expectLettersHold(frostBar({ ...lebanon, startMonth: 1, widthMm: WIDTH_MM }));
  });

  test('a year of the south starts in July and runs over New Year', () => {
    const { svg } = frostBar({ lastDayD: { p10: 241, p50: 269, p90: 305 }, firstDayD: { p10: 84, p50: 119, p90: 148 }, startMonth: 7, widthMm: WIDTH_MM });
    const at = (text: string): number => written(svg).find((l) => l.text === text)?.from ?? NaN;
    expect(at('Jul')).toBeLessThan(at('Dec'));
    expect(at('Dec')).toBeLessThan(at('Jan'));
    expect(at('26 Sep')).toBeLessThan(at('29 Apr'));
    // Winter lies at both ends of the bar.
    expect(Math.min(...hatched(svg).map(([a]) => a))).toBeLessThan(1.5);
    expect(Math.max(...hatched(svg).map(([, b]) => b))).toBeGreaterThan(WIDTH_MM - 1.5);
  });

  test('dates that do not exist are not drawn', () => {
    const few = frostBar({ lastDayD: { ...NONE, p90: 45 }, firstDayD: { ...NONE, p10: 340 }, startMonth: 1, widthMm: WIDTH_MM });
    expect(written(few.svg).filter((l) => /^\d+ [A-Z]/.test(l.text))).toHaveLength(2);
    expect(frostBar({ lastDayD: NONE, firstDayD: NONE, startMonth: 1, widthMm: WIDTH_MM }).alt).toBe('none.');
  });

  test('no letter lies over another or leaves the paper, whatever the dates and the first month', () => {
    const day = fc.integer({ min: 1, max: 365 });
    const gap = fc.integer({ min: 0, max: 60 });
    const turn = (d: number): number => ((d - 1) % 365) + 1;
    const dates = fc.tuple(day, gap, gap).map(([p10, a, b]) => ({ p10, p50: turn(p10 + a), p90: turn(p10 + a + b) }));
    fc.assert(
      fc.property(dates, dates, fc.integer({ min: 1, max: 12 }), fc.constantFrom(178, 183.9), (lastDayD, firstDayD, startMonth, widthMm) => {
        expectLettersHold(frostBar({ lastDayD, firstDayD, startMonth, widthMm }));
      }),
      { numRuns: 200, seed: 4 },
    );
  });
});

const sun = (open: (i: number) => number, lost: (i: number) => number, cloud: (i: number) => number | null): SunHours[] =>
  Array.from({ length: 12 }, (_, i) => {
    const share = cloud(i);
    const clearedH = open(i) * (1 - lost(i));
    return { month: i + 1, openH: open(i), clearedH, brightH: share === null ? null : clearedH * share, lostFrac: lost(i) };
  });
const draw = (hours: SunHours[], hMm = 52) => sunHoursChart({ hours, startMonth: 8, boxMm: { wMm: WIDTH_MM, hMm }, leftMm: 31 });

describe('the sun-hours chart', () => {
  test('bars start at zero and are as tall as their hours', () => {
    const { svg } = draw(
      sun(
        (i) => 4 + i,
        () => 0,
        () => null,
      ),
    );
    const tops = readSvg(svg)
      .filter((t) => t.name === 'path' && t.attributes['class'] === 'vis' && (t.attributes['d'] ?? '').endsWith('Z'))
      .map((t) => [...(t.attributes['d'] ?? '').matchAll(/[ML]([\d.]+) ([\d.]+)/g)].map((m) => [Number(m[1]), Number(m[2])] as const))
      .map((points) => ({ x: points[0]?.[0] ?? 0, mm: Math.max(...points.map((p) => p[1])) - Math.min(...points.map((p) => p[1])) }))
      .sort((a, b) => a.x - b.x);
    expect(tops).toHaveLength(12);
    // August stands first: its bar is 11 hours to January's 4.
    const perHour = (tops[0]?.mm ?? 0) / 11;
    tops.forEach(({ mm }, i) => expect(mm).toBeCloseTo(perHour * (4 + ((7 + i) % 12)), 1));
  });

  test('names each kind of bar that is there, and no other', () => {
    const names = (hours: SunHours[]): string[] => written(draw(hours).svg).map((l) => l.text);
    const shaded = names(
      sun(
        () => 10,
        () => 0.4,
        () => 0.5,
      ),
    );
    expect(shaded).toEqual(expect.arrayContaining([ENGLISH.freeHorizon, ENGLISH.pastObstacles, ENGLISH.sunToExpect]));
    const open = names(
      sun(
        () => 10,
        () => 0,
        () => null,
      ),
    );
    expect(open).toContain(ENGLISH.freeHorizon);
    expect(open).not.toContain(ENGLISH.pastObstacles);
    expect(open).not.toContain(ENGLISH.sunToExpect);
  });

  test('a month without a record says so, a night of months has no bar', () => {
    const { svg, alt } = draw(
      sun(
        (i) => (i === 11 ? 0 : 12),
        () => 0,
        (i) => (i === 5 ? null : 0.5),
      ),
      70,
    );
    expect(readSvg(svg).filter((t) => t.text === ENGLISH.noRecord)).toHaveLength(1);
    expect(alt).toContain('0 in Dec to 12');
  });

  test('every name finds a place and no letter lies over another at any latitude\u2019s day lengths', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 11.9, noNaN: true }),
        fc.double({ min: 0, max: 0.95, noNaN: true }),
        fc.double({ min: 0.2, max: 0.9, noNaN: true }),
        (swing, lost, cloud) => {
          const drawing = draw(
            sun(
              (i) => 12 + swing * Math.cos(((i - 5) * Math.PI) / 6),
              (i) => (i < 3 ? lost : 0),
              () => cloud,
            ),
          );
          expect(drawing.unplaced).toEqual([]);
          expectLettersHold(drawing);
        },
      ),
      { numRuns: 60, seed: 4 },
    );
  });
});
