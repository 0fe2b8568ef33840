import { describe, expect, test } from '@jest/globals';
import { computeBudget } from '@lathwork/calc';
import type { BudgetInputs, TakeOffLine, TakeOffResult } from '@lathwork/model';
import fc from 'fast-check';
import { FOUR_GARDENS } from '../../support/gardens.js';
import { takeOffOf } from '../../support/material-rooms.js';

const line = (over: Partial<TakeOffLine>): TakeOffLine => ({
  lineId: 'x',
  group: 'fixings',
  material: 'rope',
  mark: null,
  unit: 'each',
  need: 1,
  wasteFrac: 0,
  wasteReason: 'none',
  wanted: 1,
  reclaimed: [],
  toBuy: 1,
  packs: 1,
  packAmount: 1,
  boughtAmount: 1,
  cash: { minor: 10_000, currency: 'USD' },
  priceId: null,
  supplier: null,
  priceReadOn: '2026-01-01',
  priceStale: false,
  ...over,
});
const list = (...lines: TakeOffLine[]): TakeOffResult => ({ lines, unpricedCount: lines.filter((l) => l.cash === null).length });
const budget = (over: Partial<BudgetInputs> = {}): BudgetInputs => ({
  currency: 'USD',
  capMinor: null,
  consumablesFrac: null,
  consumablesReason: null,
  contingencyFrac: null,
  contingencyReason: null,
  inKind: [],
  exchangeRates: [],
  ...over,
});
const reclaimed = (minor: number) =>
  line({ toBuy: 0, packs: 0, cash: { minor: 0, currency: 'USD' }, priceReadOn: null, reclaimed: [{ tag: 'A', amount: 1, worth: { minor, currency: 'USD' } }] });

describe('budget', () => {
  test('new material: ten per cent and at least thirty, then ten per cent contingency', () => {
    // Bought 1000.00: consumables 100.00, contingency 10 % of 1100.00.
    const { result } = computeBudget({ takeOff: list(line({ cash: { minor: 100_000, currency: 'USD' } })), budget: budget() });
    expect(result).toMatchObject({ cashLowMinor: 110_000, cashMinor: 121_000, cashHighMinor: 132_000, verdict: 'noCap' });
    // Bought 100.00: ten per cent would be 10.00, so the least of 30.00 stands; contingency 13.00.
    expect(computeBudget({ takeOff: list(line({})), budget: budget() }).result.cashMinor).toBe(10_000 + 3_000 + 1_300);
  });

  test('a salvage plan carries more contingency', () => {
    const { result } = computeBudget({ takeOff: list(line({}), { ...reclaimed(20_000), lineId: 'y' }), budget: budget() });
    expect(result.contingencyFrac).toBe(0.25);
    expect(result.reclaimedMinor).toBe(20_000);
  });

  test('cap zero passes with a plan wholly from the pile, and both lines still stand', () => {
    const { result, notes } = computeBudget({ takeOff: list(reclaimed(50_000)), budget: budget({ capMinor: 0 }) });
    expect(result).toMatchObject({ verdict: 'withinCap', cashMinor: 0, overCapMinor: 0 });
    expect(result.lines.map((l) => l.group)).toEqual(['fixings', 'consumables', 'contingency', 'inKind']);
    expect(notes.map((n) => n.code)).toEqual(['budget.nothing-bought']);
  });

  test('over the cap says by how much', () => {
    const { result, notes } = computeBudget({ takeOff: list(line({})), budget: budget({ capMinor: 10_000 }) });
    expect(result).toMatchObject({ verdict: 'overCap', overCapMinor: 4_300 });
    expect(notes[0]).toMatchObject({ code: 'budget.over-cap', params: { overCapMinor: 4_300 } });
  });

  test('a cap is not called kept while a price is missing or foreign', () => {
    expect(computeBudget({ takeOff: list(line({ cash: null })), budget: budget({ capMinor: 99_999 }) }).result.verdict).toBe('notAssessed');
    const foreign = computeBudget({
      takeOff: list(line({ cash: { minor: 700, currency: 'AUD' } }), line({ lineId: 'y', cash: { minor: 300, currency: 'AUD' } })),
      budget: budget({ capMinor: 99_999 }),
    }).result;
    expect(foreign).toMatchObject({ verdict: 'notAssessed', otherCurrencies: [{ minor: 1_000, currency: 'AUD' }], cashMinor: 0 });
  });

  test('a lowered share needs a reason, and never removes the line', () => {
    const without = computeBudget({ takeOff: list(line({})), budget: budget({ contingencyFrac: 0 }) });
    expect(without.notes.map((n) => n.code)).toContain('budget.share-lowered-without-reason');
    expect(without.result.lines.map((l) => l.group)).toContain('contingency');
    const reasoned = computeBudget({ takeOff: list(line({})), budget: budget({ consumablesFrac: 0, consumablesReason: 'the shop gives them' }) });
    expect(reasoned.notes.find((n) => n.code === 'budget.share-lowered')?.params['reason']).toBe('the shop gives them');
    expect(reasoned.result.cashMinor).toBe(11_000);
  });

  test.each(FOUR_GARDENS)('%s: totals are the sums of the lines, to the cent', (_name, inputs) => {
    const { result } = computeBudget({ takeOff: takeOffOf(inputs).result, budget: inputs.budget });
    for (const key of ['cashMinor', 'reclaimedMinor', 'inKindMinor'] as const) expect(result.lines.reduce((sum, l) => sum + l[key], 0)).toBe(result[key]);
    expect(result.cashLowMinor).toBeLessThan(result.cashMinor);
    expect(result.cashMinor).toBeLessThan(result.cashHighMinor);
  });

  test('whatever the lines: whole minor units, exact sums, dearer lines never make a cheaper plan', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 5_000_000 }), { minLength: 1, maxLength: 20 }), fc.integer({ min: 1, max: 100_000 }), (minors, more) => {
        const of = (list_: number[]) =>
          computeBudget({
            takeOff: list(...list_.map((minor, i) => line({ lineId: String(i), group: i % 2 ? 'film' : 'timber', cash: { minor, currency: 'USD' } }))),
            budget: budget(),
          }).result;
        const r = of(minors);
        expect(r.lines.reduce((sum, l) => sum + l.cashMinor, 0)).toBe(r.cashMinor);
        expect(r.lines.every((l) => Number.isInteger(l.cashMinor))).toBe(true);
        expect(of([...minors, more]).cashMinor).toBeGreaterThan(r.cashMinor);
      }),
    );
  });
});
