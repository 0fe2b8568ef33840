import { RESULT_SCHEMA_VERSION, type Note, type PlanInputs, type PlanResult, type RoomName } from '@lathwork/model';
import { computeAnchorage } from '../rooms/anchorage.js';
import { computeBudget } from '../rooms/budget.js';
import { computeClimate } from '../rooms/climate.js';
import { computeCutting } from '../rooms/cutting.js';
import { computeFastening } from '../rooms/fastening.js';
import { computeGeometry } from '../rooms/geometry.js';
import type { RoomOutput } from '../rooms/room.js';
import { computeSafety } from '../rooms/safety.js';
import { computeSchedule } from '../rooms/schedule.js';
import { computeSnow } from '../rooms/snow.js';
import { computeTakeOff } from '../rooms/takeoff.js';
import { computeThermal } from '../rooms/thermal.js';
import { computeWind } from '../rooms/wind.js';
import { sourcesOf, type SourceId } from '../sources/bibliography.js';
import { mergeNotes, threeRisks } from './merge.js';

export interface ComputeOptions {
  engineVersion: string;
  /** Told before and after each room; for progress and timings. */
  onRoom?: (room: RoomName, phase: 'start' | 'end') => void;
}

/** The corridor: one finished value from one frozen value. It knows the order of the rooms and nothing else. */
export const computePlan = (inputs: PlanInputs, options: ComputeOptions): PlanResult => {
  const notes: Note[] = [];
  const sources: SourceId[] = [];
  const walk = <T>(room: RoomName, compute: () => RoomOutput<T>): T => {
    options.onRoom?.(room, 'start');
    const out = compute();
    notes.push(...out.notes);
    sources.push(...out.sources);
    options.onRoom?.(room, 'end');
    return out.result;
  };
  const { site, structure, stock, prices, wishes, crew, budget: wallet, seed, asOf } = inputs;

  const geometry = walk('geometry', () => computeGeometry({ structure }));
  const climate = walk('climate', () => computeClimate({ site, climate: inputs.climate }));
  const thermal = walk('thermal', () => computeThermal({ site, climate, structure, geometry, wishes, seed }));
  const wind = walk('wind', () => computeWind({ site, structure, geometry }));
  const snow = walk('snow', () => computeSnow({ site, structure, geometry }));
  const anchorage = walk('anchorage', () => computeAnchorage({ site, structure, geometry, wind }));
  const fastening = walk('fastening', () => computeFastening({ structure, geometry, wind }));
  const cutting = walk('cutting', () => computeCutting({ structure, geometry, stock, prices }));
  const takeOff = walk('takeoff', () =>
    computeTakeOff({ structure, geometry, fastening, anchorage, cutting, stock, prices, asOf, currency: wallet.currency, rates: wallet.exchangeRates }),
  );
  const budget = walk('budget', () => computeBudget({ takeOff, budget: wallet }));
  const schedule = walk('schedule', () => computeSchedule({ structure, geometry, takeOff, crew }));
  walk('safety', () => computeSafety({ site, structure, geometry, stock, climate, wind, snow, anchorage, thermal }));

  const merged = mergeNotes(notes);
  const verdicts = { thermal: thermal.verdict, wind: wind.verdict, snow: snow.verdict, anchorage: anchorage.verdict, fastening: fastening.verdict };
  return {
    schemaVersion: RESULT_SCHEMA_VERSION,
    engineVersion: options.engineVersion,
    planId: inputs.planId,
    revision: inputs.revision,
    geometry,
    climate,
    thermal,
    wind,
    snow,
    anchorage,
    fastening,
    takeOff,
    cutting,
    budget,
    schedule,
    notes: merged,
    risks: threeRisks(merged, verdicts),
    reviewBlocked: merged.some((n) => n.severity === 'stop'),
    sources: sourcesOf(sources),
  };
};
