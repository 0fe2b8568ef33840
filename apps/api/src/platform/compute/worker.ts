import { performance } from 'node:perf_hooks';
import { computePlan } from '@lathwork/calc';
import type { PlanInputs, PlanResult, RoomName } from '@lathwork/model';
import { workerData } from 'piscina';

const settings = workerData as { engineVersion: string };

/** Runs on a thread of the compute pool: the pure chain, with the clock held beside it. */
export const compute = (inputs: PlanInputs): { result: PlanResult; timingsMs: Partial<Record<RoomName, number>> } => {
  const timingsMs: Partial<Record<RoomName, number>> = {};
  let last = performance.now();
  const onRoom = (room: RoomName): void => {
    const now = performance.now();
    timingsMs[room] = (timingsMs[room] ?? 0) + (now - last);
    last = now;
  };
  return { result: computePlan(inputs, { onRoom, engineVersion: settings.engineVersion }), timingsMs };
};
