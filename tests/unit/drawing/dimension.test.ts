import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { chainTexts, DoesNotFitError, layoutChain, lengthPair, pairText, stationsOf, type ChainPart } from '@lathwork/drawing';

const gap = (lengthM: number): ChainPart => ({ lengthM, kind: 'gap' });
const opening = (lengthM: number): ChainPart => ({ lengthM, kind: 'opening' });
const IN = 0.0254;

/** Eighths of an inch of a printed length: 6′-10 1/2″ is 660. */
const eighths = (text: string): number => {
  const m = /^(?:(\d+)′-)?(?:(\d+))?(?: ?(\d)\/(\d))?″$/.exec(text);
  if (!m) throw new Error(`not a length: ${text}`);
  // "1/2″" alone: the pattern reads its first figure as inches, so it is taken apart by hand.
  const alone = /^(\d)\/(\d)″$/.exec(text);
  if (alone) return (8 * Number(alone[1])) / Number(alone[2]);
  return Number(m[1] ?? 0) * 96 + Number(m[2] ?? 0) * 8 + (m[3] ? (8 * Number(m[3])) / Number(m[4]) : 0);
};

describe('dimension chains', () => {
  test('the chain of the house style adds up in both units: 203 + 711 + 178 + 864 + 229 + 610 + 253 = 3048', () => {
    const parts = [gap(8 * IN), opening(28 * IN), gap(7 * IN), opening(34 * IN), gap(9 * IN), opening(24 * IN), gap(10 * IN)];
    const texts = chainTexts(parts, 'us');
    expect(texts.map((t) => t[0])).toEqual(['8″', '2′-4″', '7″', '2′-10″', '9″', '2′-0″', '10″']);
    const mm = texts.map((t) => Number(t[1]));
    expect(mm.reduce((a, b) => a + b, 0)).toBe(3048);
    // The openings keep their own rounding; only gaps carry the rest.
    expect([mm[1], mm[3], mm[5]]).toEqual([711, 864, 610]);
  });

  test('random chains: parts add up to the overall in millimetres and in eighths of an inch, openings stay as they round', () => {
    const part = fc.record({
      lengthM: fc.integer({ min: 20_000, max: 3_000_000 }).map((v) => v / 1e6),
      kind: fc.constantFrom('gap' as const, 'opening' as const),
    });
    fc.assert(
      fc.property(
        fc.array(part, { minLength: 1, maxLength: 12 }).filter((p) => p.some((x) => x.kind === 'gap')),
        (parts) => {
          const total = parts.reduce((s, p) => s + p.lengthM, 0);
          const metric = chainTexts(parts, 'metric');
          expect(metric.reduce((s, t) => s + Number(t[0]), 0)).toBe(Math.round(total * 1000));
          expect(metric.reduce((s, t) => s + eighths(t[1]), 0)).toBe(Math.round((total / IN) * 8));
          parts.forEach((p, i) => {
            if (p.kind === 'opening') expect(Number(metric[i]?.[0])).toBe(Math.round(p.lengthM * 1000));
          });
        },
      ),
      { seed: 6 },
    );
  });

  test('both units on one line, then one above the other, then moved out with a leader', () => {
    const kinds = (k: number, lengths: readonly number[]): string[] => {
      const parts = lengths.map((l) => gap(l));
      return layoutChain(stationsOf(0, parts, k), parts, 'metric', [-30, 400]).places.map((p) => p.kind);
    };
    expect(kinds(40, [1.0, 0.5, 0.09])).toEqual(['one', 'stacked', 'out']);
  });

  test('moved-out labels never share a row with one they would touch, and the chain asks for the room', () => {
    const parts = [0.06, 0.09, 0.07, 0.08, 2].map((l) => gap(l));
    const layout = layoutChain(stationsOf(0, parts, 40), parts, 'us', [-40, 200]);
    const out = layout.places.filter((p) => p.kind === 'out');
    expect(out).toHaveLength(4);
    expect(new Set(out.map((p) => p.row)).size).toBeGreaterThan(1);
    expect(layout.extraMm).toBeGreaterThan(8);
  });

  test('many equal bays become one label; bays that differ by their rounding say their sum', () => {
    const even = Array.from({ length: 20 }, () => gap(0.6));
    const labels = (parts: ChainPart[]): string[] =>
      layoutChain(stationsOf(0, parts, 10), parts, 'metric', [-20, 200]).places.map((p) => (p.kind === 'stacked' ? p.first : p.text));
    expect(labels(even)[0]).toMatch(/^20 × 600/);
    const uneven = Array.from({ length: 3 }, (_, i) => gap(i === 1 ? 0.668 : 0.667));
    expect(labels(uneven)[0]).toMatch(/^3 equal, 2002/);
  });

  test('a label wider than its drawing is refused: letters never shrink', () => {
    expect(() => layoutChain([0, 4], [gap(0.1)], 'us', [0, 6])).toThrow(DoesNotFitError);
  });

  test('pairs read first unit first', () => {
    expect(lengthPair(2.032, 'us')).toBe('6′-8″ [2032]');
    expect(lengthPair(2.032, 'metric')).toBe('2032 [6′-8″]');
    expect(pairText(['1', '2'])).toBe('1 [2]');
  });
});
