import { solveInPlace } from './linear-solve.js';

/** Taken once: looked up millions of times in a plan. */
const { abs } = Math;

/**
 * Gives: one backward (implicit) Euler step of a network of heat stores and conductances.
 * Model: (C/dt + G) T_new = C/dt T_old + gains; backward Euler is L-stable, so a film that reacts in seconds may be
 * stepped by a quarter of an hour without ringing (Hairer and Wanner, Solving ODEs II, IV.3).
 * Assumptions: conductances are held over the step (taken from the last step's temperatures).
 * Validity: capacities >= 0; every unknown has a capacity or a way out. All work arrays are made once.
 * Fields: conductances W/K, capacities J/K, gains W, temperatures in one scale throughout.
 */
export class HeatNetwork {
  readonly temperature: Float64Array;
  readonly previous: Float64Array;
  private readonly a: Float64Array;
  private readonly b: Float64Array;
  private readonly outflow: Float64Array;
  private inflowW = 0;

  constructor(
    readonly size: number,
    readonly capacityJPerK: Float64Array,
  ) {
    this.temperature = new Float64Array(size);
    this.previous = new Float64Array(size);
    this.a = new Float64Array(size * size);
    this.b = new Float64Array(size);
    this.outflow = new Float64Array(size);
  }

  /** Starts a step: stored heat on the diagonal, everything else empty. */
  begin(stepS: number): void {
    this.a.fill(0);
    this.outflow.fill(0);
    this.inflowW = 0;
    for (let i = 0; i < this.size; i++) {
      const c = this.capacityJPerK[i]! / stepS;
      this.previous[i] = this.temperature[i]!;
      this.a[i * this.size + i] = c;
      this.b[i] = c * this.temperature[i]!;
    }
  }

  /** Heat flows between two stores in proportion to their difference. */
  link(i: number, j: number, conductanceWPerK: number): void {
    const n = this.size;
    this.a[i * n + i] = this.a[i * n + i]! + conductanceWPerK;
    this.a[j * n + j] = this.a[j * n + j]! + conductanceWPerK;
    this.a[i * n + j] = this.a[i * n + j]! - conductanceWPerK;
    this.a[j * n + i] = this.a[j * n + i]! - conductanceWPerK;
  }

  /** A flow from i to j that follows i's own slope and j's own slope: base + from*T_i - to*T_j (vapour between wet things). */
  linkAffine(i: number, j: number, base: number, from: number, to: number): void {
    const n = this.size;
    this.a[i * n + i] = this.a[i * n + i]! + from;
    this.a[i * n + j] = this.a[i * n + j]! - to;
    this.b[i] = this.b[i]! - base;
    this.a[j * n + j] = this.a[j * n + j]! + to;
    this.a[j * n + i] = this.a[j * n + i]! - from;
    this.b[j] = this.b[j]! + base;
  }

  /** Heat flows to a place whose temperature is given (outside air, sky, deep soil). */
  boundary(i: number, conductanceWPerK: number, temperature: number): void {
    const n = this.size;
    this.a[i * n + i] = this.a[i * n + i]! + conductanceWPerK;
    this.b[i] = this.b[i]! + conductanceWPerK * temperature;
    this.outflow[i] = this.outflow[i]! + conductanceWPerK;
    this.inflowW += conductanceWPerK * temperature;
  }

  gain(i: number, watts: number): void {
    this.b[i] = this.b[i]! + watts;
    this.inflowW += watts;
  }

  /** Ends a step: solves and takes over the new temperatures. */
  solve(): void {
    solveInPlace(this.a, this.b, this.size);
    this.temperature.set(this.b);
  }

  /**
   * Heat that cannot be accounted for over the step just solved, W: what came in from outside less what went out less
   * what the stores took up. Flows between stores cancel only if every link was entered evenly on both sides.
   */
  residualW(stepS: number): number {
    let left = this.inflowW;
    for (let i = 0; i < this.size; i++) {
      left -= this.outflow[i]! * this.temperature[i]! + (this.capacityJPerK[i]! * (this.temperature[i]! - this.previous[i]!)) / stepS;
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
