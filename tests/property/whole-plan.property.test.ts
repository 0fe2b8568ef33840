import { describe, expect, test } from '@jest/globals';
import { computePlan } from '@lathwork/calc';
import type { PlanInputs, PlanResult } from '@lathwork/model';
import fc from 'fast-check';
import { FOUR_GARDENS } from '../support/gardens.js';

/** Any write into the inputs throws. */
const deepFreeze = <T>(value: T): T => {
  if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    Object.values(value).forEach(deepFreeze);
  }
  return value;
};

const frozen = FOUR_GARDENS.map(([, inputs]) => deepFreeze(structuredClone(inputs)));
const gardenOf = (i: number): PlanInputs => {
  const inputs = frozen[i];
  if (!inputs) throw new Error(`no garden ${i}`);
  return inputs;
};
const compute = (inputs: PlanInputs): PlanResult => computePlan(inputs, { engineVersion: 'test' });

/**
 * What the seed may not touch: every room's figures but the thermal one's, and every note but those that print a figure
 * of it. The three risks are picked from all notes, those of the thermal room among them.
 */
const withoutHeat = (plan: PlanResult) => {
  const { thermal: _thermal, notes, risks: _risks, ...rest } = plan;
  return { ...rest, notes: notes.filter((n) => n.room !== 'thermal' && n.code !== 'safety.heat-inside') };
};

describe('a whole plan', () => {
  test('is the same for the same inputs, seed included, and the inputs are never written to', () => {
    expect(Object.isFrozen(gardenOf(0).structure.openings)).toBe(true);
    fc.assert(
      fc.property(fc.integer({ min: 0, max: frozen.length - 1 }), fc.integer({ min: 0, max: 4_294_967_295 }), (i, seed) => {
        const inputs = deepFreeze({ ...gardenOf(i), seed });
        const before = JSON.stringify(inputs);
        expect(compute(inputs)).toEqual(compute(inputs));
        expect(JSON.stringify(inputs)).toBe(before);
      }),
      { numRuns: 3, seed: 11 },
    );
  });

  test.each(FOUR_GARDENS.map(([name], i) => [name, i] as const))('%s: another seed moves thermal figures a little and nothing else', (_name, i) => {
    const one = compute(gardenOf(i));
    const other = compute(deepFreeze({ ...gardenOf(i), seed: gardenOf(i).seed + 1 }));
    expect(withoutHeat(other)).toEqual(withoutHeat(one));
    expect(other.thermal).not.toEqual(one.thermal);
    expect(other.thermal.designNights.length).toBe(3);
    other.thermal.designNights.forEach((night, n) =>
      expect(Math.abs(night.insideLowC.p50 - (one.thermal.designNights[n]?.insideLowC.p50 ?? NaN))).toBeLessThan(0.5),
    );
  });
});
