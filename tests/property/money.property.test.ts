import { describe, expect, it } from '@jest/globals';
import currencyCodes from 'currency-codes';
import fc from 'fast-check';
import { computeBudget } from '@lathwork/calc';
import type { BudgetInputs, TakeOffLine } from '@lathwork/model';
import { currencyDigits, formatMoney } from '@lathwork/units';

const money = (currency: fc.Arbitrary<string>) => fc.record({ minor: fc.integer({ min: 0, max: 2_000_000_000 }), currency });

const line = (lineId: string, group: TakeOffLine['group'], cash: TakeOffLine['cash'], worth: TakeOffLine['cash']): TakeOffLine => ({
  lineId,
  group,
  material: 'rope',
  mark: null,
  unit: 'each',
  need: 1,
  wasteFrac: 0,
  wasteReason: 'none',
  wanted: 1,
  reclaimed: worth ? [{ tag: 'R1', amount: 1, worth }] : [],
  toBuy: 1,
  packs: 1,
  packAmount: 1,
  boughtAmount: 1,
  cash,
  priceId: null,
  supplier: null,
  priceReadOn: null,
  priceStale: false,
});

const BUDGET: BudgetInputs = {
  currency: 'EUR',
  capMinor: null,
  consumablesFrac: null,
  consumablesReason: null,
  contingencyFrac: null,
  contingencyReason: null,
  inKind: [],
  exchangeRates: [],
};

const GROUPS = ['frame', 'film', 'timber', 'openings', 'anchors', 'fixings', 'ground', 'water', 'sundries'] as const;
const lines = (currency: fc.Arbitrary<string>) =>
  fc
    .array(fc.tuple(fc.constantFrom(...GROUPS), fc.option(money(currency)), fc.option(money(currency))), { maxLength: 60 })
    .map((all) => all.map(([group, cash, worth], i) => line(`l${i}`, group, cash, worth)));

const bigSum = (values: readonly number[]): bigint => values.reduce((sum, value) => sum + BigInt(value), 0n);

describe('money', () => {
  it('A23: the rows of a budget add up to its totals to the last minor unit', () => {
    fc.assert(
      fc.property(lines(fc.constant('EUR')), fc.array(money(fc.constant('EUR')), { maxLength: 10 }), (all, help) => {
        const inKind = help.map((value, i) => ({ label: `h${i}`, value }));
        const { result } = computeBudget({ takeOff: { lines: all, unpricedCount: 0 }, budget: { ...BUDGET, inKind } });
        for (const [column, total] of [
          ['cashMinor', result.cashMinor],
          ['reclaimedMinor', result.reclaimedMinor],
          ['inKindMinor', result.inKindMinor],
        ] as const) {
          expect(bigSum(result.lines.map((one) => one[column]))).toBe(BigInt(total));
          for (const one of result.lines) expect(Number.isSafeInteger(one[column])).toBe(true);
        }
        const materials = result.lines.filter(({ group }) => (GROUPS as readonly string[]).includes(group));
        expect(bigSum(materials.map(({ cashMinor }) => cashMinor))).toBe(bigSum(all.map(({ cash }) => cash?.minor ?? 0)));
        expect(result.inKindMinor).toBe(Number(bigSum(help.map(({ minor }) => minor))));
      }),
      { numRuns: 300 },
    );
  });

  it('A23: other currencies are kept apart, one exact sum for each, and never added', () => {
    fc.assert(
      fc.property(lines(fc.constantFrom('EUR', 'USD', 'JPY', 'KWD')), (all) => {
        const { result } = computeBudget({ takeOff: { lines: all, unpricedCount: 0 }, budget: BUDGET });
        const of = (currency: string): bigint => bigSum(all.flatMap(({ cash }) => (cash?.currency === currency ? [cash.minor] : [])));
        const materials = result.lines.filter(({ group }) => (GROUPS as readonly string[]).includes(group));
        expect(bigSum(materials.map(({ cashMinor }) => cashMinor))).toBe(of('EUR'));
        const apart = Object.fromEntries(result.otherCurrencies.map(({ currency, minor }) => [currency, BigInt(minor)]));
        for (const currency of ['USD', 'JPY', 'KWD']) expect([currency, apart[currency] ?? 0n]).toEqual([currency, of(currency)]);
        expect('EUR' in apart).toBe(false);
        const { result: capped } = computeBudget({ takeOff: { lines: all, unpricedCount: 0 }, budget: { ...BUDGET, capMinor: Number.MAX_SAFE_INTEGER } });
        if (Object.keys(apart).length > 0) expect(capped.verdict).toBe('notAssessed');
      }),
      { numRuns: 300 },
    );
  });

  it('A23: the digits of every currency in the table are those of ISO 4217', () => {
    const known = currencyCodes.codes().filter((code) => currencyDigits(code) !== undefined);
    expect(known.length).toBeGreaterThan(70);
    expect(known.filter((code) => currencyDigits(code) !== currencyCodes.code(code)?.digits)).toEqual([]);
    expect([currencyDigits('JPY'), currencyDigits('USD'), currencyDigits('KWD'), currencyDigits('XXX')]).toEqual([0, 2, 3, undefined]);
  });

  it('A23: an amount that is printed is the amount, digit by digit, and a part of a minor unit is refused', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: Number.MAX_SAFE_INTEGER }), fc.constantFrom('JPY', 'USD', 'KWD'), (minor, currency) => {
        const digits = currencyDigits(currency) ?? 0;
        const printed = formatMoney(minor, currency).replaceAll(/[^\d.]/g, '');
        const whole = String(minor).padStart(digits + 1, '0');
        // Beyond 15 digits a double in whole units no longer holds every minor unit; a garden's books end long before.
        if (whole.length <= 15) expect(printed.replace('.', '')).toBe(whole);
      }),
    );
    expect(() => formatMoney(1.5, 'EUR')).toThrow('whole minor units');
  });
});
