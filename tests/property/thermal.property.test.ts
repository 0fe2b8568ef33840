import { describe, expect, test } from '@jest/globals';
import { computeThermal } from '@lathwork/calc';
import type { ThermalResult } from '@lathwork/model';
import fc from 'fast-check';
import { canopy, canopyGeometry, clearDay, climate, site, thermalInput, wishes } from '../support/thermal-fixture.js';
import { solveBordered } from '../../libs/calc/src/physics/linear-solve.js';
import { HeatNetwork } from '../../libs/calc/src/physics/network.js';
import { latinHypercube, rangeOf, seededGenerator, triangularAt } from '../../libs/calc/src/physics/sampling.js';
import { CENTRAL } from '../../libs/calc/src/rooms/thermal-draws.js';
import { forcingOf } from '../../libs/calc/src/rooms/thermal-forcing.js';
import { ThermalRun } from '../../libs/calc/src/rooms/thermal-run.js';
import { shelterOf } from '../../libs/calc/src/rooms/thermal-shelter.js';

const GROUND = { meanC: 9, swingK: 12, coldestDayD: 15 };
const NIGHT = clearDay({ month: 1, latitudeDeg: 40, lowC: -14, highC: -3 });
const water = (volumeL: number, count: number) => [{ stockTag: null, volumeL, count, colour: 'dark' as const }];

/** One central run without the months around it: fast enough to be asked a hundred times. */
const lowest = (structure: ReturnType<typeof canopy>, day = NIGHT, latitudeDeg = 40) => {
  const shelter = shelterOf(site({ latitudeDeg }), structure, canopyGeometry());
  const run = new ThermalRun(shelter, { secondFilm: structure.cover.secondFilm, innerCover: structure.cover.innerCover, water: true }, 'never');
  const forcing = forcingOf(shelter, latitudeDeg, day);
  run.start(forcing, GROUND);
  const trace = run.run(forcing, GROUND, CENTRAL, 8);
  return { airC: Math.min(...trace.airC), leafC: Math.min(...trace.leafC), peakC: Math.max(...trace.airC), residualW: trace.largestResidualW };
};

const numbersIn = (v: unknown): number[] =>
  typeof v === 'number' ? [v] : Array.isArray(v) ? v.flatMap(numbersIn) : v !== null && typeof v === 'object' ? Object.values(v).flatMap(numbersIn) : [];
const planned = (r: ThermalResult) => r.designNights.find((n) => n.variant === 'asPlanned')!;

describe('night model', () => {
  test('more water does not lower the night minimum', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 10 }),
        fc.integer({ min: 1, max: 10 }),
        fc.constantFrom(20, 100, 208),
        fc.constantFrom('sealed', 'ordinary', 'gappy'),
        (few, more, volumeL, airLeaks) => {
          const with_ = (count: number) => lowest(canopy({ airLeaks: airLeaks as 'sealed', waterStores: count > 0 ? water(volumeL, count) : [] })).airC;
          expect(with_(few + more)).toBeGreaterThanOrEqual(with_(few) - 0.1);
        },
      ),
      { numRuns: 25, seed: 1 },
    );
  });

  test('sealing leaks does not lower the night minimum of a shelter with mass', () => {
    fc.assert(
      fc.property(fc.integer({ min: 3, max: 20 }), (count) => {
        const with_ = (airLeaks: 'sealed' | 'ordinary' | 'gappy') => lowest(canopy({ airLeaks, waterStores: water(208, count) })).airC;
        expect(with_('ordinary')).toBeGreaterThanOrEqual(with_('gappy') - 0.1);
        expect(with_('sealed')).toBeGreaterThanOrEqual(with_('ordinary') - 0.1);
      }),
      { numRuns: 12, seed: 2 },
    );
  });

  test('heat is accounted for in every step, whatever the shelter', () => {
    fc.assert(
      fc.property(
        fc.record({
          secondFilm: fc.boolean(),
          innerCover: fc.boolean(),
          floorMoist: fc.boolean(),
          floor: fc.constantFrom('soil', 'mulch', 'gravel', 'brick', 'decking'),
          count: fc.integer({ min: 0, max: 48 }),
          lowC: fc.integer({ min: -40, max: 15 }),
          month: fc.integer({ min: 1, max: 12 }),
        }),
        (x) => {
          const structure = canopy({
            floor: x.floor as 'soil',
            floorMoist: x.floorMoist,
            waterStores: x.count > 0 ? water(208, x.count) : [],
            cover: { ...canopy().cover, secondFilm: x.secondFilm, innerCover: x.innerCover },
          });
          const r = lowest(structure, clearDay({ month: x.month, latitudeDeg: 40, lowC: x.lowC, highC: x.lowC + 12 }));
          expect(r.residualW).toBeLessThan(1e-6);
          expect(Number.isFinite(r.airC) && Number.isFinite(r.leafC) && Number.isFinite(r.peakC)).toBe(true);
        },
      ),
      { numRuns: 40, seed: 3 },
    );
  });

  test('with everything outside at one temperature, a black sky as warm as the air and no sun, nothing changes', () => {
    const shelter = shelterOf(
      site(),
      canopy({ floorMoist: false, waterStores: water(208, 2), cover: { ...canopy().cover, secondFilm: true, innerCover: true } }),
      canopyGeometry(),
    );
    const run = new ThermalRun(shelter, { secondFilm: true, innerCover: true, water: true }, 'never');
    const day = { ...clearDay({ month: 1, latitudeDeg: 40, lowC: 5, highC: 5, dark: true }), airC: new Array<number>(24).fill(5), dewPointC: -20 };
    const forcing = forcingOf(shelter, 40, day);
    forcing.skyC.fill(5);
    forcing.skySpreadK.fill(0);
    const ground = { meanC: 5, swingK: 0, coldestDayD: 15 };
    run.start(forcing, ground);
    const trace = run.run(forcing, ground, CENTRAL, 3);
    for (const t of [...trace.airC, ...trace.leafC]) expect(Math.abs(t - 5)).toBeLessThan(1e-9);
  });

  test("the integrator stays bounded at steps far beyond the air's own time constant", () => {
    // 150 s is the time constant of the air of a 44.5 m3 shelter at 357 W/K; an explicit step diverges beyond 301 s.
    const n = new HeatNetwork(1, Float64Array.from([44.5 * 1.2 * 1006]));
    n.temperature.fill(30);
    let last = 30;
    for (let i = 0; i < 50; i++) {
      n.begin(3600);
      n.boundary(0, 357, 0);
      n.solve();
      expect(n.temperature[0]!).toBeGreaterThanOrEqual(0);
      expect(n.temperature[0]!).toBeLessThan(last);
      last = n.temperature[0]!;
    }
  });
});

describe('the whole room', () => {
  test('the same seed gives the same result, another seed another one', () => {
    const a = computeThermal(thermalInput());
    expect(computeThermal(thermalInput())).toEqual(a);
    expect(computeThermal(thermalInput({ seed: 8 })).result.designNights).not.toEqual(a.result.designNights);
  });

  test('polar night at 89 degrees: no sun, no gain, no NaN', () => {
    const polar = climate({ latitudeDeg: 89, meanC: -18, swingK: 16, rangeK: 4, designLowC: -40, clearMonth: 1 });
    const { result } = computeThermal(thermalInput({ site: site({ latitudeDeg: 89 }), climate: polar }));
    expect(numbersIn(result).every(Number.isFinite)).toBe(true);
    const gains = forcingOf(shelterOf(site({ latitudeDeg: 89 }), canopy(), canopyGeometry()), 89, polar.coldNights[0]!);
    expect(Math.max(...gains.floorWPerM2, ...gains.airW, ...gains.roofW)).toBe(0);
    expect(result.clearDays.find((d) => d.variant === 'closed')!.riseK.p50).toBeLessThan(10);
  });

  test('no vents at all and ten tonnes of water still give numbers, and opening nothing changes nothing', () => {
    const { result, notes } = computeThermal(thermalInput({ geometry: canopyGeometry([]), structure: canopy({ waterStores: water(5000, 2) }) }));
    expect(numbersIn(result).every(Number.isFinite)).toBe(true);
    expect(result.vents.freeM2).toBe(0);
    expect(result.clearDays[0]!.insideHighC).toEqual(result.clearDays[1]!.insideHighC);
    expect(notes.map((n) => n.code)).toContain('thermal.vents-too-small');
    expect(planned(result).liftK.p50).toBeGreaterThan(0);
  });

  test('ranges are in order and the crop share falls with the limit', () => {
    const { result } = computeThermal(thermalInput());
    const ranges = [
      ...result.designNights.flatMap((n) => [n.insideLowC, n.leafLowC, n.liftK]),
      ...result.clearDays.map((d) => d.insideHighC),
      ...result.months.flatMap((m) => [m.insideLowC!, m.closedHighC!, m.openedHighC!]),
    ];
    for (const r of ranges) expect(r.p10 <= r.p50 && r.p50 <= r.p90).toBe(true);
    for (const crop of wishes().crops) {
      const of = (kind: string) => result.crops.find((c) => c.crop === crop && c.kind === kind)!.belowFrac!;
      expect(of('usuallyKilled')).toBeLessThanOrEqual(of('damageBegins'));
    }
  });
});

describe('sampling and solving', () => {
  test('a Latin hypercube has one value in every slice of every column', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 200 }), fc.integer({ min: 1, max: 10 }), fc.integer(), (draws, inputs, seed) => {
        const rows = latinHypercube(draws, inputs, seededGenerator(seed));
        for (let c = 0; c < inputs; c++)
          expect(rows.map((r) => Math.floor(r[c]! * draws)).sort((a, b) => a - b)).toEqual(Array.from({ length: draws }, (_, i) => i));
      }),
      { numRuns: 50, seed: 4 },
    );
  });

  test('a triangular value stays in its range and rises with its share', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }), (p, q) => {
        const [a, b] = [triangularAt(Math.min(p, q), 0.3, 1.2, 3.5), triangularAt(Math.max(p, q), 0.3, 1.2, 3.5)];
        expect(a >= 0.3 - 1e-12 && b <= 3.5 + 1e-12 && a <= b + 1e-12).toBe(true);
      }),
      { seed: 5 },
    );
    expect(rangeOf([1, 2, 3])).toEqual({ p10: 1.2, p50: 2, p90: 2.8 });
  });

  test('the solver leaves no remainder on column-dominant systems, symmetric but for the last row and column', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 30 }), fc.integer(), (n, seed) => {
        const r = seededGenerator(seed);
        const a = new Float64Array(n * n);
        for (let i = 0; i < n; i++)
          for (let j = 0; j < i; j++) {
            if (r() >= 0.5) continue;
            a[i * n + j] = -100 * r();
            a[j * n + i] = i === n - 1 ? -100 * r() : a[i * n + j]!;
          }
        for (let j = 0; j < n; j++) a[j * n + j] = Array.from({ length: n }, (_, i) => (i === j ? 0 : -a[i * n + j]!)).reduce((p, q) => p + q, 0.01 + r());
        const b = Float64Array.from({ length: n }, () => 1000 * (r() - 0.5));
        const x = Float64Array.from(b);
        const upper = Float64Array.from(a, (v, at) => (at % n >= Math.floor(at / n) ? v : NaN));
        solveBordered(upper, Float64Array.from(a.subarray(n * n - n)), x, n);
        for (let i = 0; i < n; i++)
          expect(Math.abs(Array.from({ length: n }, (_, j) => a[i * n + j]! * x[j]!).reduce((p, q) => p + q, 0) - b[i]!)).toBeLessThan(
            1e-5 * (1 + Math.max(...x.map(Math.abs)) * 1e2),
          );
      }),
      { numRuns: 60, seed: 6 },
    );
  });
});
