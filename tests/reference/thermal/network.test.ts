import { createRequire } from 'node:module';
import { referenceTable, type ReferenceCheck } from '../../support/reference.js';
import { SOIL_LAYERS_M } from '../../../libs/calc/src/physics/ground.js';
import { HeatNetwork } from '../../../libs/calc/src/physics/network.js';
import { normalAt, percentile, rankCorrelation, seededGenerator } from '../../../libs/calc/src/physics/sampling.js';

/** The package ships its own source as types, which strict checking refuses; only what is used is declared here. */
interface Integrator {
  absoluteTolerance: number;
  relativeTolerance: number;
  solve: (slope: (x: number, y: number[]) => number[], from: number, start: number[], to: number) => { y: number[] };
}
const { Solver } = createRequire(import.meta.url)('odex') as { Solver: new (size: number) => Integrator };

const worked = { room: 'thermal' as const, kind: 'worked' as const };

/** Two stores, one of them losing to 0 degC, stepped to an hour. */
const twoNodes = (stepS: number): number[] => {
  const n = new HeatNetwork(2, Float64Array.from([5e4, 8e5]));
  n.temperature.fill(20);
  for (let t = 0; t < 3600; t += stepS) {
    n.begin(stepS);
    n.link(0, 1, 60);
    n.boundary(0, 120, 0);
    n.solve();
  }
  return [...n.temperature];
};

const oneNode = (stepS: number): number => {
  const n = new HeatNetwork(1, Float64Array.from([200 * 4186]));
  n.temperature.fill(20);
  for (let t = 0; t < 12 * 3600; t += stepS) {
    n.begin(stepS);
    n.boundary(0, 5, 0);
    n.solve();
  }
  return n.temperature[0]!;
};

/** Swing left at the middle of a soil layer when the surface swings by 1 K over a day: finite layers against exp(-z/d). */
const soilSwing = (layer: number): number => {
  const k = 1.2;
  const c = 2.2e6;
  const n = new HeatNetwork(
    SOIL_LAYERS_M.length,
    Float64Array.from(SOIL_LAYERS_M, (d) => d * c),
  );
  let high = -Infinity;
  let low = Infinity;
  for (let s = 0; s < 20 * 288; s++) {
    n.begin(300);
    n.boundary(0, k / (SOIL_LAYERS_M[0] / 2), Math.sin((2 * Math.PI * (s + 1)) / 288));
    for (let i = 0; i + 1 < SOIL_LAYERS_M.length; i++) n.link(i, i + 1, k / ((SOIL_LAYERS_M[i]! + SOIL_LAYERS_M[i + 1]!) / 2));
    n.solve();
    if (s >= 19 * 288) {
      high = Math.max(high, n.temperature[layer]!);
      low = Math.min(low, n.temperature[layer]!);
    }
  }
  return (high - low) / 2;
};

const solver: ReferenceCheck[] = [
  {
    ...worked,
    id: 'mass-decay',
    source: '20 exp(-12 h x 5 W/K / (200 L x 4186 J/LK))',
    unit: 'degC',
    expected: 15.452,
    tolerance: { abs: 0.005, why: 'implicit Euler at 60 s lags by less than this' },
    got: () => oneNode(60),
  },
  {
    ...worked,
    id: 'solver-2node',
    source: 'eigen-solution of two stores after one hour',
    unit: 'degC',
    expected: [5.732, 16.9587],
    tolerance: { abs: 0.002, why: 'implicit Euler at 5 s' },
    got: () => twoNodes(5),
  },
  {
    ...worked,
    id: 'solver-2node-60s',
    source: 'implicit Euler of the same by an independent program',
    unit: 'degC',
    expected: [5.734, 16.963],
    tolerance: { abs: 0.001, why: 'three decimals' },
    got: () => twoNodes(60),
  },
  {
    ...worked,
    id: 'solver-2node-300s',
    source: 'implicit Euler of the same by an independent program',
    unit: 'degC',
    expected: [5.741, 16.981],
    tolerance: { abs: 0.001, why: 'three decimals' },
    got: () => twoNodes(300),
  },
  {
    ...worked,
    id: 'solver-2node-900s',
    source: 'implicit Euler of the same by an independent program',
    unit: 'degC',
    expected: [5.794, 17.024],
    tolerance: { abs: 0.001, why: 'three decimals' },
    got: () => twoNodes(900),
  },
  {
    ...worked,
    id: 'soil-swing-4cm',
    source: 'semi-infinite solid: exp(-z/d), d 0.1225 m, z 0.04 m',
    unit: 'K',
    expected: Math.exp(-0.04 / 0.12246),
    tolerance: { rel: 0.05, why: 'layers of 2 to 40 cm instead of a continuum' },
    got: () => soilSwing(1),
  },
  {
    ...worked,
    id: 'soil-swing-10cm',
    source: 'semi-infinite solid: exp(-z/d), z 0.10 m',
    unit: 'K',
    expected: Math.exp(-0.1 / 0.12246),
    tolerance: { rel: 0.08, why: 'layers of 2 to 40 cm instead of a continuum' },
    got: () => soilSwing(2),
  },
  {
    ...worked,
    id: 'frostdate-norm',
    source: 'normal distribution, mean 125, sd 10, 10 % later: z 1.2816',
    unit: 'd',
    expected: 137.8,
    tolerance: { abs: 0.1, why: 'one decimal' },
    got: () => 125 + 10 * normalAt(0.9),
  },
  {
    room: 'thermal',
    kind: 'published',
    id: 'spearman-iq-tv',
    fromMemory: true,
    source: 'textbook example of rank correlation, IQ against hours of television: -29/165',
    unit: '1',
    expected: -29 / 165,
    tolerance: { abs: 1e-9, why: 'an exact fraction' },
    got: () => rankCorrelation([106, 86, 100, 101, 99, 103, 97, 113, 112, 110], [7, 0, 27, 50, 28, 29, 20, 12, 6, 17]),
  },
  {
    room: 'thermal',
    kind: 'worked',
    id: 'quantile-type-7',
    source: '1 + 0.9 x 9 over 1..10, the default definition of common statistics packages',
    unit: '1',
    expected: 9.1,
    tolerance: { abs: 1e-12, why: 'arithmetic by hand' },
    got: () => percentile([10, 9, 8, 7, 6, 5, 4, 3, 2, 1], 0.9),
  },
];

/** A random network of six stores, a chain and some cross links, two of them open to places of given temperature. */
const randomNetwork = (seed: number) => {
  const r = seededGenerator(seed);
  const capacity = Array.from({ length: 6 }, () => 2e4 + 3e5 * r());
  const start = Array.from({ length: 6 }, () => -10 + 40 * r());
  const links: [number, number, number][] = [];
  for (let i = 0; i < 6; i++) for (let j = i + 1; j < 6; j++) if (j === i + 1 || r() < 0.4) links.push([i, j, 5 + 60 * r()]);
  const open: [number, number, number][] = [
    [0, 5 + 80 * r(), -5 + 10 * r()],
    [5, 5 + 20 * r(), 10 * r()],
  ];
  const gains = Array.from({ length: 6 }, () => 100 * r());
  return { capacity, start, links, open, gains };
};

const byOdex = (seed: number): number[] => {
  const { capacity, start, links, open, gains } = randomNetwork(seed);
  const s = new Solver(6);
  s.absoluteTolerance = s.relativeTolerance = 1e-10;
  const slope = (_: number, y: number[]): number[] => {
    const q = [...gains];
    for (const [i, j, g] of links) {
      q[i] = q[i]! + g * (y[j]! - y[i]!);
      q[j] = q[j]! + g * (y[i]! - y[j]!);
    }
    for (const [i, g, t] of open) q[i] = q[i]! + g * (t - y[i]!);
    return q.map((v, i) => v / capacity[i]!);
  };
  return s.solve(slope, 0, start, 7200).y;
};

const byNetwork = (seed: number): number[] => {
  const { capacity, start, links, open, gains } = randomNetwork(seed);
  const n = new HeatNetwork(6, Float64Array.from(capacity));
  n.temperature.set(start);
  for (let t = 0; t < 7200; t += 2) {
    n.begin(2);
    for (const [i, j, g] of links) n.link(i, j, g);
    for (const [i, g, c] of open) n.boundary(i, g, c);
    gains.forEach((w, i) => n.gain(i, w));
    n.solve();
  }
  return [...n.temperature];
};

referenceTable('solver, soil layers and statistics', solver);
referenceTable(
  'random networks against an extrapolation integrator',
  [11, 12, 13, 14, 15, 16].map((seed): ReferenceCheck => ({
    room: 'thermal',
    kind: 'cross-check',
    id: `solver-odex-${seed}`,
    source: 'odex 2.0.4, Gragg-Bulirsch-Stoer, tolerance 1e-10',
    unit: 'degC',
    expected: byOdex(seed),
    tolerance: { abs: 0.02, why: 'first-order steps of 2 s against a high-order integrator' },
    got: () => byNetwork(seed),
  })),
);
