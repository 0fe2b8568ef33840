import { describe, expect, test } from '@jest/globals';
import { computeCutting, computeGeometry, packFirstFit } from '@lathwork/calc';
import type { CuttingResult, PlanInputs } from '@lathwork/model';
import fc from 'fast-check';
import { FOUR_GARDENS, inlandCanopy } from '../../support/gardens.js';

const cut = (inputs: PlanInputs) =>
  computeCutting({
    structure: inputs.structure,
    geometry: computeGeometry({ structure: inputs.structure }).result,
    stock: inputs.stock,
    prices: inputs.prices,
  });

/** Written apart from the room: adds up every board and every part again and says what does not agree. */
const faults = (result: CuttingResult, inputs: PlanInputs): string[] => {
  const out: string[] = [];
  for (const b of result.boards) {
    const used = b.cuts.reduce((sum, c) => sum + c.lengthMm, 0) + (b.cuts.length - 1) * b.kerfMm;
    if (used > b.lengthMm + 0.001) out.push(`${b.boardId}: ${used} mm from ${b.lengthMm} mm`);
    if (b.offcutMm < 0 || used + b.offcutMm > b.lengthMm + 0.001) out.push(`${b.boardId}: offcut ${b.offcutMm} does not remain`);
    if (b.stockTag === null) {
      if (!inputs.prices.some((p) => p.material === b.material && Math.abs((p.pieceLengthM ?? 0) * 1000 - b.lengthMm) < 1))
        out.push(`${b.boardId}: nobody sells ${b.lengthMm} mm`);
      continue;
    }
    const item = inputs.stock.find((i) => i.tag === b.stockTag);
    if (!item || item.material !== b.material) out.push(`${b.boardId}: ${b.stockTag} is not such a board`);
    else if (item.grade === 'X' || b.lengthMm > (item.usableLengthMm ?? item.lengthMm ?? 0))
      out.push(`${b.boardId}: ${b.stockTag} cannot give ${b.lengthMm} mm`);
    else if (result.boards.filter((o) => o.stockTag === b.stockTag).length > item.count) out.push(`${b.stockTag} is cut more often than it exists`);
  }
  for (const part of result.parts) {
    const placed = result.boards.flatMap((b) =>
      b.cuts.filter((c) => c.letter === part.letter && c.lengthMm === part.lengthMm && b.material === part.material),
    ).length;
    const left = result.unplaced.filter((u) => u.letter === part.letter).reduce((sum, u) => sum + u.count, 0);
    if (placed + left !== part.count) out.push(`part ${part.letter}: ${placed} cut and ${left} left of ${part.count}`);
  }
  const letters = result.parts.map((p) => p.letter);
  if (new Set(letters).size !== letters.length) out.push('a letter stands twice');
  return out;
};

describe('cutting', () => {
  test.each(FOUR_GARDENS)('%s: an independent count of boards and parts agrees, reclaimed boards are used', (_name, inputs) => {
    const { result } = cut(inputs);
    expect(faults(result, inputs)).toEqual([]);
    expect(result.unplaced).toEqual([]);
    expect(result.boards.some((b) => b.stockTag !== null)).toBe(true);
    expect(result.boughtBoards).toBe(result.boards.filter((b) => b.stockTag === null).length);
    expect(result.boughtBoards).toBeGreaterThanOrEqual(result.lowerBoundBoards);
    expect(result.wasteFrac).toBeGreaterThan(0);
    expect(result.wasteFrac).toBeLessThan(0.3);
  });

  test('every header is two board thicknesses longer than its opening is wide', () => {
    const { result } = cut(inlandCanopy);
    const headers = result.parts.filter((p) => p.use === 'header').map((p) => [p.forOpening, p.lengthMm]);
    expect(headers).toEqual([
      ['D1', 865 + 76],
      ['W1', 650 + 76],
      ['W2', 650 + 76],
    ]);
  });

  test('rejected, creosoted and old treated boards are never cut and say so', () => {
    const poisoned: PlanInputs = {
      ...inlandCanopy,
      stock: inlandCanopy.stock
        .map((i) => (i.material === 'board.38x89' ? { ...i, hazards: ['creosote'] as const } : i))
        .map((i) => ({ ...i, hazards: [...i.hazards] })),
    };
    const out = cut(poisoned);
    expect(out.result.boards.filter((b) => b.material === 'board.38x89' && b.stockTag !== null)).toEqual([]);
    expect(out.notes.filter((n) => n.code === 'cutting.board-refused').map((n) => n.params['reason'])).toEqual(Array.from({ length: 9 }, () => 'creosote'));
  });

  test('without a pile or a price every part is listed as unplaced, none is dropped', () => {
    const bare = { ...inlandCanopy, stock: [], prices: [] };
    const out = cut(bare);
    expect(out.result.boards).toEqual([]);
    expect(out.result.unplaced.reduce((s, u) => s + u.count, 0)).toBe(out.result.parts.reduce((s, u) => s + u.count, 0));
    expect(out.notes.filter((n) => n.code === 'cutting.part-unplaced')).toHaveLength(out.result.unplaced.length);
  });

  test('a kerf stands between two cuts and none after the last', () => {
    const pieces = [
      { key: 'A', lengthMm: 1000 },
      { key: 'B', lengthMm: 997 },
    ];
    expect(packFirstFit(pieces, [], 2000, 3).boughtCount).toBe(1);
    expect(packFirstFit(pieces, [], 1999, 3).boughtCount).toBe(2);
  });

  test('whatever the pile: nothing is lost, boards are not overcut, and no fewer are bought than the bound', () => {
    const lengths = fc.array(fc.integer({ min: 100, max: 2400 }), { minLength: 1, maxLength: 40 });
    fc.assert(
      fc.property(lengths, fc.array(fc.integer({ min: 50, max: 3000 }), { maxLength: 10 }), fc.integer({ min: 0, max: 5 }), (wanted, pile, kerfMm) => {
        const pieces = wanted.map((lengthMm, i) => ({ key: `P${i}`, lengthMm }));
        const out = packFirstFit(
          pieces,
          pile.map((lengthMm, i) => ({ tag: `T${i}`, lengthMm })),
          2400,
          kerfMm,
        );
        expect(
          out.sticks
            .flatMap((s) => s.pieces.map((p) => p.key))
            .concat(out.unplaced.map((u) => u.key))
            .sort(),
        ).toEqual(pieces.map((p) => p.key).sort());
        for (const s of out.sticks) expect(s.pieces.reduce((sum, p) => sum + p.lengthMm, 0) + (s.pieces.length - 1) * kerfMm).toBeLessThanOrEqual(s.lengthMm);
        expect(out.boughtCount).toBeGreaterThanOrEqual(out.lowerBoundCount);
        // First fit leaves at most one bought board that is less than half full.
        expect(out.sticks.filter((s) => s.tag === null && s.pieces.reduce((sum, p) => sum + p.lengthMm + kerfMm, 0) <= 1200).length).toBeLessThanOrEqual(1);
      }),
    );
  });
});
