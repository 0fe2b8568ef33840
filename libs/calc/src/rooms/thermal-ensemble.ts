import type { HourlyDay } from '@lathwork/model';
import type { GroundYear } from '../physics/ground.js';
import { percentile } from '../physics/sampling.js';
import { CENTRAL, type Draw } from './thermal-draws.js';
import { forcingOf, STEP_MIN, STEPS_PER_DAY } from './thermal-forcing.js';
import { ThermalRun, type Opening } from './thermal-run.js';
import type { Shelter, Variant } from './thermal-shelter.js';

/** Days that the central guess repeats the design day, and the days each draw adds from there (the last is read). */
export interface SpinUp {
  centralDays: number;
  drawDays: number;
}

export const DESIGN_SPIN_UP: SpinUp = { centralDays: 10, drawDays: 3 };
export const MONTH_SPIN_UP: SpinUp = { centralDays: 6, drawDays: 2 };

/** What all draws of one day and one way of running leave behind. */
export interface Ensemble {
  airMinC: number[];
  airMaxC: number[];
  leafMinC: number[];
  /** Air at the middle of each hour, one row per draw. */
  hourC: number[][];
  largestResidualW: number;
  nodes: number;
}

const HOUR_STEPS = Array.from({ length: 24 }, (_, h) => Math.round(((h + 0.5) * 60) / STEP_MIN) - 1);

/**
 * Runs one day over all draws. The central guess settles first from the year's soil wave; every draw starts from where
 * it ended and repeats the day, so that a cold spell of some days is meant and not a winter without end.
 */
export const ensembleOf = (x: {
  shelter: Shelter;
  variant: Variant;
  opening: Opening;
  latitudeDeg: number;
  day: HourlyDay;
  ground: GroundYear;
  draws: readonly Draw[];
  spinUp: SpinUp;
}): Ensemble => {
  const run = new ThermalRun(x.shelter, x.variant, x.opening);
  const forcing = forcingOf(x.shelter, x.latitudeDeg, x.day);
  run.start(forcing, x.ground);
  run.run(forcing, x.ground, CENTRAL, x.spinUp.centralDays);
  const settled = Float64Array.from(run.network.temperature);
  const out: Ensemble = { airMinC: [], airMaxC: [], leafMinC: [], hourC: [], largestResidualW: run.trace.largestResidualW, nodes: run.nodes.size };
  for (const draw of x.draws) {
    run.startFrom(settled, draw.deepSoilK);
    const trace = run.run(forcing, x.ground, draw, x.spinUp.drawDays);
    let min = Infinity;
    let max = -Infinity;
    let leaf = Infinity;
    for (let k = 0; k < STEPS_PER_DAY; k++) {
      min = Math.min(min, trace.airC[k]!);
      max = Math.max(max, trace.airC[k]!);
      leaf = Math.min(leaf, trace.leafC[k]!);
    }
    out.airMinC.push(min);
    out.airMaxC.push(max);
    out.leafMinC.push(leaf);
    out.hourC.push(HOUR_STEPS.map((k) => trace.airC[k]!));
    out.largestResidualW = Math.max(out.largestResidualW, trace.largestResidualW);
  }
  return out;
};

/** Percentile curves, hour by hour. */
export const curveOf = (day: HourlyDay, e: Ensemble) => {
  const at = (p: number) =>
    Array.from({ length: 24 }, (_, h) =>
      percentile(
        e.hourC.map((row) => row[h]!),
        p,
      ),
    );
  return { outsideC: [...day.airC], p10C: at(0.1), p50C: at(0.5), p90C: at(0.9) };
};
