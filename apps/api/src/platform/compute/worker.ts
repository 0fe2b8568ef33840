import { performance } from 'node:perf_hooks';
import { parentPort } from 'node:worker_threads';
import { computePlan } from '@lathwork/calc';
import type { PlanInputs, PlanResult, RoomName } from '@lathwork/model';
import { workerData } from 'piscina';

const settings = workerData as { engineVersion: string };

/** Sent to the pool at the beginning of each room. */
export interface RoomBegun {
  planId: string;
  room: RoomName;
  /** Rooms that are behind. */
  doneCount: number;
}

/** Runs on a thread of the compute pool: the pure chain, with the clock held beside it. */
export const compute = (inputs: PlanInputs): { result: PlanResult; timingsMs: Partial<Record<RoomName, number>> } => {
  const timingsMs: Partial<Record<RoomName, number>> = {};
  let last = performance.now();
  let doneCount = 0;
  const onRoom = (room: RoomName, phase: 'start' | 'end'): void => {
    if (phase === 'end') doneCount += 1;
    else parentPort?.postMessage({ planId: inputs.planId, room, doneCount } satisfies RoomBegun);
    const now = performance.now();
    timingsMs[room] = (timingsMs[room] ?? 0) + (now - last);
    last = now;
  };
  return { result: computePlan(inputs, { onRoom, engineVersion: settings.engineVersion }), timingsMs };
};
