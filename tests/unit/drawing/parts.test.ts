import { describe, expect, test } from '@jest/globals';
import {
  DRAWING_CSS,
  lineKey,
  markIcon,
  northOnPaperDeg,
  pickScale,
  SCALES,
  scaleBar,
  spread,
  tape,
  textWidth,
  windOnPaperDeg,
  DoesNotFitError,
  escapeXml,
  hatchLines,
} from '@lathwork/drawing';
import { readSvg } from './svg-reader.js';

describe('parts of a drawing', () => {
  test('only three line widths, in the ratio 1 : 2 : 4 within rounding, and black', () => {
    const widths = [...DRAWING_CSS.matchAll(/stroke-width:([\d.]+)/g)].map((m) => Number(m[1]));
    expect([...new Set(widths)].sort()).toEqual([0.18, 0.35, 0.7]);
    expect([...DRAWING_CSS.matchAll(/#[0-9a-f]{3,6}/g)].map((m) => m[0]).filter((c) => c !== '#000' && c !== '#fff')).toEqual([]);
    const sizes = [...DRAWING_CSS.matchAll(/(?:500|700) ([\d.]+)px|font-size:([\d.]+)px/g)].map((m) => Number(m[1] ?? m[2]));
    // 9 pt is the floor: 3.175 mm.
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual(3.175);
  });

  test('the tape shows exactly 100 mm', () => {
    const bars = readSvg(tape({ widthMm: 178, note: 'Check' }).svg).filter((t) => (t.attributes['class'] ?? '').startsWith('box'));
    const xs = bars.flatMap((t) => [...(t.attributes['d'] ?? '').matchAll(/[ML]([\d.]+) /g)].map((m) => Number(m[1])));
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(100, 6);
  });

  test('a scale bar is as long as it says', () => {
    const d = scaleBar({ scale: { denominator: 24, text: '1:24' }, widthMm: 66 });
    const feet = Number(/>(\d+) ft</.exec(d.svg)?.[1]);
    const xs = readSvg(d.svg)
      .filter((t) => (t.attributes['class'] ?? '').startsWith('box'))
      .slice(0, feet);
    const all = xs.flatMap((t) => [...(t.attributes['d'] ?? '').matchAll(/[ML]([\d.]+) /g)].map((m) => Number(m[1])));
    // Half an inch of paper to the foot.
    expect(Math.max(...all) - Math.min(...all)).toBeCloseTo(feet * 12.7, 2);
  });

  test('the largest scale that fits is taken from the series of the unit', () => {
    expect(pickScale('us', (k) => 3.048 * k <= 130)?.text).toBe('1:24');
    expect(pickScale('metric', (k) => 3.048 * k <= 130)?.text).toBe('1:25');
    expect(pickScale('metric', () => false)).toBeNull();
    expect(SCALES.us.slice(0, 7)).toEqual([12, 16, 24, 32, 48, 64, 96]);
  });

  test('north and storm wind on a plan with its front at the bottom', () => {
    // The front faces east, so up on paper is west and north is to the right.
    expect(northOnPaperDeg(90, false)).toBe(90);
    // Front to the south: up on paper is north.
    expect(northOnPaperDeg(180, false)).toBe(0);
    // Front to the south, wind from the west blows to the right.
    expect(windOnPaperDeg(180, 270, false) % 360).toBe(90);
    // The plan turned on its side turns both by a quarter.
    expect(northOnPaperDeg(180, true)).toBe(90);
  });

  test('figures are half an em wide, and a stranger letter only gets more room', () => {
    expect(textWidth('0000', 'let')).toBeCloseTo(4 * 0.505 * 3.788, 6);
    expect(textWidth('漢', 'let')).toBeGreaterThan(textWidth('w', 'let'));
    expect(textWidth('W1', 'let b')).toBeGreaterThan(textWidth('W1', 'let'));
  });

  test('what people wrote is escaped', () => {
    expect(escapeXml('<b>"A" & B</b>\u0001')).toBe('&lt;b&gt;&quot;A&quot; &amp; B&lt;/b&gt;');
    const d = markIcon('<&"', 'pile');
    expect(readSvg(d.svg).some((t) => t.text === '<&"')).toBe(true);
  });

  test('the line key shows only the types it is given', () => {
    const d = lineKey({ types: ['cut', 'axis'], widthMm: 53 });
    expect(
      readSvg(d.svg)
        .filter((t) => t.name === 'path')
        .map((t) => t.attributes['class']),
    ).toEqual(['cut', 'axis']);
    expect(d.usedLineTypes).toEqual(['cut', 'axis']);
  });

  test('tag and ring differ by their outline', () => {
    expect(readSvg(markIcon('D1', 'pile').svg).some((t) => t.name === 'path' && t.attributes['class'] === 'tag')).toBe(true);
    expect(readSvg(markIcon('D1', 'buy').svg).some((t) => t.name === 'circle' && t.attributes['class'] === 'tag')).toBe(true);
  });

  test('labels beside a chart keep their distance, stay inside and near their place', () => {
    expect(spread([10, 11, 40], 8, 0, 60)).toEqual([6.5, 14.5, 40]);
    const at = spread([58, 59, 60, 2], 8, 0, 60);
    expect(Math.max(...at)).toBeLessThanOrEqual(60);
    const sorted = [...at].sort((a, b) => a - b);
    sorted.slice(1).forEach((v, i) => expect(v - (sorted[i] ?? 0)).toBeGreaterThanOrEqual(8 - 1e-9));
    expect(() => spread([1, 2, 3], 8, 0, 10)).toThrow(DoesNotFitError);
  });

  test('hatch strokes stay inside their polygon, an L included', () => {
    const shape = [
      [0, 0],
      [20, 0],
      [20, 10],
      [10, 10],
      [10, 20],
      [0, 20],
    ] as const;
    const pieces = hatchLines(shape, { angleDeg: 45, gapMm: 1.1 });
    expect(pieces.length).toBeGreaterThan(10);
    for (const [a, b] of pieces) {
      const [x, y] = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
      expect(x >= -0.01 && y >= -0.01 && x <= 20.01 && y <= 20.01 && !(x > 10.01 && y > 10.01)).toBe(true);
    }
  });
});
