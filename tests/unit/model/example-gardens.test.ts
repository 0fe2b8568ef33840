import { describe, expect, test } from '@jest/globals';
import { PlanInputsSchema, STOCK_KINDS } from '@lathwork/model';
import { Ajv } from 'ajv';
import addFormatsModule from 'ajv-formats';
import { EXAMPLE_GARDENS, FOUR_GARDENS, exampleGarden } from '../../support/gardens.js';

const ajv = new Ajv({ allErrors: true, strict: false });
(addFormatsModule as unknown as { default?: (a: Ajv) => void } & ((a: Ajv) => void))(ajv);
const validate = ajv.compile(PlanInputsSchema);

describe('the invented example gardens', () => {
  test.each(FOUR_GARDENS)('%s is a whole and valid PlanInputs', (_name, inputs) => {
    validate(inputs);
    expect(validate.errors ?? []).toEqual([]);
    expect(inputs.stock.length).toBeGreaterThan(10);
  });

  test.each(EXAMPLE_GARDENS)('%s: tags are unique, each is claimed once at most, every claim exists', (name) => {
    const garden = exampleGarden(name);
    const tags = garden.stock.map((i) => i.tag);
    expect(new Set(tags).size).toBe(tags.length);
    const claims = garden.builds.flatMap((b) => b.claims);
    expect(new Set(claims).size).toBe(claims.length);
    expect(claims.filter((c) => !tags.includes(c))).toEqual([]);
    for (const build of garden.builds) {
      const used = build.structure.openings
        .flatMap((o) => o.stockTag ?? [])
        .concat(
          build.structure.waterStores.flatMap((w) => w.stockTag ?? []),
          build.structure.frameStockTag ?? [],
        );
      expect(used.filter((t) => !build.claims.includes(t))).toEqual([]);
      expect(garden.documents.map((d) => d.build)).toContain(build.name);
    }
    expect(garden.garden.invented).toBe(true);
  });

  test('the inland pile holds about sixty items of every grade, with hazards', () => {
    const { stock } = exampleGarden('cold-inland');
    expect(stock.length).toBeGreaterThanOrEqual(55);
    expect([...new Set(stock.map((i) => i.grade))].sort()).toEqual(['A', 'B', 'C', 'X']);
    expect(new Set(stock.flatMap((i) => i.hazards)).size).toBeGreaterThanOrEqual(8);
    expect(STOCK_KINDS.filter((k) => !stock.some((i) => i.kind === k))).toEqual([]);
  });
});
