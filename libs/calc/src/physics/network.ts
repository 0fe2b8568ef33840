import { solveBordered } from './linear-solve.js';

/** Taken once: looked up millions of times in a plan. */
const { abs } = Math;

/**
 * Gives: one backward (implicit) Euler step of a network of heat stores and conductances.
 * Model: (C/dt + G) T_new = C/dt T_old + gains; backward Euler is L-stable, so a film that reacts in seconds may be
 * stepped by a quarter of an hour without ringing (Hairer and Wanner, Solving ODEs II, IV.3). The first stores may be
 * held: columns whose conductances stay the same over many steps (soil). They are eliminated once, top-down along each
 * column (the tridiagonal algorithm, Golub and Van Loan section 4.3), and a step only carries their right side along.
 * Assumptions: conductances are held over the step (taken from the last step's temperatures).
 * Validity: capacities >= 0; every unknown has a capacity or a way out; a held store is linked to one later store only;
 * a flow that follows two slopes (vapour) ends at the last store, so that all the rest of the matrix is symmetric.
 * All work arrays are made once.
 * Fields: conductances W/K, capacities J/K, gains W, temperatures in one scale throughout.
 */
export class HeatNetwork {
  readonly temperature: Float64Array;
  readonly previous: Float64Array;
  private readonly a: Float64Array;
  private readonly lastRow: Float64Array;
  private readonly b: Float64Array;
  private readonly outflow: Float64Array;
  /** Capacity over the step's length, for the length it was last asked for. */
  private readonly storeWPerK: Float64Array;
  private stepS = 0;
  private inflowW = 0;
  private held = 0;
  private loose: Float64Array;
  private readonly next: Int32Array;
  private readonly linkWPerK: Float64Array;
  private readonly inverse: Float64Array;
  private readonly share: Float64Array;
  /** What the held columns add to the diagonal of the stores they end at, and to every store's inflow, outflow and total. */
  private readonly foot: Float64Array;
  private readonly heldIn: Float64Array;
  private readonly heldOut: Float64Array;
  private heldInflowW = 0;

  constructor(
    readonly size: number,
    readonly capacityJPerK: Float64Array,
  ) {
    this.temperature = new Float64Array(size);
    this.previous = new Float64Array(size);
    this.a = new Float64Array(size * size);
    this.lastRow = new Float64Array(size);
    this.b = new Float64Array(size);
    this.outflow = new Float64Array(size);
    this.storeWPerK = new Float64Array(size);
    this.loose = this.b;
    this.next = new Int32Array(size);
    this.linkWPerK = new Float64Array(size);
    this.inverse = new Float64Array(size);
    this.share = new Float64Array(size);
    this.foot = new Float64Array(size);
    this.heldIn = new Float64Array(size);
    this.heldOut = new Float64Array(size);
  }

  /** Starts anew with the first `count` stores held; give their links and boundaries next, then `fold`. */
  hold(count: number): void {
    this.held = count;
    this.loose = this.b.subarray(count);
    this.next.fill(-1);
    for (const held of [this.linkWPerK, this.foot, this.heldIn, this.heldOut]) held.fill(0);
    this.heldInflowW = 0;
  }

  /** The one link of a held store to a later one. */
  heldLink(i: number, later: number, conductanceWPerK: number): void {
    if (i >= this.held || later <= i || this.next[i] !== -1) throw new Error(`a held store has one link, to a later store: ${i} to ${later}`);
    this.next[i] = later;
    this.linkWPerK[i] = conductanceWPerK;
  }

  /** A way out of a held store to a given temperature. */
  heldBoundary(i: number, conductanceWPerK: number, temperature: number): void {
    this.heldOut[i] = this.heldOut[i]! + conductanceWPerK;
    this.heldIn[i] = this.heldIn[i]! + conductanceWPerK * temperature;
    this.heldInflowW += conductanceWPerK * temperature;
  }

  /** Eliminates the held columns for steps of this length. */
  fold(stepS: number): void {
    this.setStep(stepS);
    for (let i = 0; i < this.held; i++) {
      const g = this.linkWPerK[i]!;
      const pivot = this.storeWPerK[i]! + this.heldOut[i]! + g + this.foot[i]!;
      this.inverse[i] = 1 / pivot;
      this.share[i] = g / pivot;
      const to = this.next[i]!;
      if (to >= 0) this.foot[to] = this.foot[to]! + g - (g * g) / pivot;
    }
  }

  private setStep(stepS: number): void {
    if (stepS === this.stepS) return;
    this.stepS = stepS;
    for (let i = 0; i < this.size; i++) this.storeWPerK[i] = this.capacityJPerK[i]! / stepS;
  }

  /** Starts a step: stored heat and the held columns' share on the diagonal, everything else empty. */
  begin(stepS: number): void {
    this.setStep(stepS);
    const { b, held, size, temperature, previous } = this;
    const m = size - held;
    const { a, heldIn, heldOut, lastRow, outflow, storeWPerK } = this;
    const cells = m * m;
    for (let i = 0; i < cells; i++) a[i] = 0;
    for (let i = 0; i < m; i++) lastRow[i] = 0;
    this.inflowW = this.heldInflowW;
    for (let i = 0; i < size; i++) {
      const t = temperature[i]!;
      previous[i] = t;
      outflow[i] = heldOut[i]!;
      b[i] = storeWPerK[i]! * t + heldIn[i]!;
    }
    for (let i = held; i < size; i++) a[(i - held) * (m + 1)] = storeWPerK[i]! + this.foot[i]!;
    for (let i = 0; i < held; i++) {
      const to = this.next[i]!;
      if (to >= 0) b[to] = b[to]! + this.share[i]! * b[i]!;
    }
  }

  /** Heat flows between two stores, neither of them held, in proportion to their difference. */
  link(i: number, j: number, conductanceWPerK: number): void {
    const { a, held } = this;
    const n = this.size - held;
    const r = (i < j ? i : j) - held;
    const q = (i < j ? j : i) - held;
    a[r * n + r] = a[r * n + r]! + conductanceWPerK;
    a[q * n + q] = a[q * n + q]! + conductanceWPerK;
    a[r * n + q] = a[r * n + q]! - conductanceWPerK;
    if (q === n - 1) this.lastRow[r] = this.lastRow[r]! - conductanceWPerK;
  }

  /** A flow from i to the last store that follows either's own slope: base + from*T_i - to*T_last (vapour from a wet face). */
  linkToLast(i: number, base: number, from: number, to: number): void {
    const { a, b, held, lastRow } = this;
    const n = this.size - held;
    const r = i - held;
    const corner = n * n - 1;
    const end = this.size - 1;
    a[r * n + r] = a[r * n + r]! + from;
    a[r * n + n - 1] = a[r * n + n - 1]! - to;
    a[corner] = a[corner]! + to;
    lastRow[r] = lastRow[r]! - from;
    b[i] = b[i]! - base;
    b[end] = b[end]! + base;
  }

  /** Heat flows to a place whose temperature is given (outside air, sky). */
  boundary(i: number, conductanceWPerK: number, temperature: number): void {
    this.boundaries(i, conductanceWPerK, conductanceWPerK * temperature);
  }

  /** Several such places at once: the sum of their conductances, and of each conductance times its temperature. */
  boundaries(i: number, conductanceWPerK: number, inflowW: number): void {
    const at = (i - this.held) * (this.size - this.held + 1);
    this.a[at] = this.a[at]! + conductanceWPerK;
    this.b[i] = this.b[i]! + inflowW;
    this.outflow[i] = this.outflow[i]! + conductanceWPerK;
    this.inflowW += inflowW;
  }

  gain(i: number, watts: number): void {
    this.b[i] = this.b[i]! + watts;
    this.inflowW += watts;
  }

  /** Ends a step: solves and takes over the new temperatures, last the held columns' from where they end downwards. */
  solve(): void {
    const { b, held } = this;
    solveBordered(this.a, this.lastRow, this.loose, this.size - held);
    for (let i = held - 1; i >= 0; i--) {
      const to = this.next[i]!;
      b[i] = (to >= 0 ? b[i]! + this.linkWPerK[i]! * b[to]! : b[i]!) * this.inverse[i]!;
    }
    this.temperature.set(b);
  }

  /**
   * Heat that cannot be accounted for over the step just solved, W: what came in from outside less what went out less
   * what the stores took up. Flows between stores cancel only if every link was entered evenly on both sides.
   */
  residualW(): number {
    const { outflow, previous, size, storeWPerK, temperature } = this;
    let left = this.inflowW;
    for (let i = 0; i < size; i++) {
      const t = temperature[i]!;
      left -= outflow[i]! * t + storeWPerK[i]! * (t - previous[i]!);
    }
    return abs(left);
  }
}

/**
 * Gives: steady heat loss of a shelter, W: cover, air and floor edge together.
 * Model: Q = sum(U A) dT + 0.333 N V dT + F P dT, the SI form of the handbook formula Q = UA dT + 0.018 N V dT + F P dT.
 * Assumptions: U already holds the surface resistances and an average sky; never add a sky term to it.
 * Validity: heater sizing only. Reference: NRAES-33 form, recalled.
 */
export const steadyLossW = (x: {
  uValueWPerM2K: number;
  coverM2: number;
  airChangesPerH: number;
  volumeM3: number;
  edgeWPerMK: number;
  perimeterM: number;
  differenceK: number;
}): number => (x.uValueWPerM2K * x.coverM2 + (AIR_HEAT_J_PER_M3K / 3600) * x.airChangesPerH * x.volumeM3 + x.edgeWPerMK * x.perimeterM) * x.differenceK;

/** Heat held by a cubic metre of air at the conditions behind the handbook's 0.018 Btu/(ft3 F). */
const AIR_HEAT_J_PER_M3K = 1206.8;

/** Steady rise of a ventilated sunny shelter, K: (1-E) tau I A / (U A_cover + rho cp V'). ASABE EP406 form, recalled. */
export const steadyRiseK = (x: {
  evaporatedFrac: number;
  transmittedFrac: number;
  sunWPerM2: number;
  floorM2: number;
  coverM2: number;
  uValueWPerM2K: number;
  flowM3PerS: number;
  airKgPerM3: number;
}): number => ((1 - x.evaporatedFrac) * x.transmittedFrac * x.sunWPerM2 * x.floorM2) / (x.uValueWPerM2K * x.coverM2 + x.airKgPerM3 * 1006 * x.flowM3PerS);
