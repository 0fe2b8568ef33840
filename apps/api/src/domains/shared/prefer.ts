import { setTimeout as pause } from 'node:timers/promises';
import type { Request } from 'express';

/** How long the caller wants to wait for the end of a job (RFC 7240), at most `limitMs`; null when it does not want to. */
export const waitedFor = (request: Request, limitMs: number): number | null => {
  const wanted = /(?:^|[,;\s])wait\s*=\s*"?(\d{1,6})"?/i.exec(request.get('prefer') ?? '')?.[1];
  const ms = wanted === undefined ? 0 : Math.min(Number(wanted) * 1000, limitMs);
  return ms > 0 ? ms : null;
};

const STEP_MS = 100;

/** Asks again and again until it is done or the time is over; tells whether it is done. */
export const waitUntil = async (ms: number, isDone: () => Promise<boolean>): Promise<boolean> => {
  const end = performance.now() + ms;
  for (;;) {
    if (await isDone()) return true;
    if (performance.now() + STEP_MS > end) return false;
    await pause(STEP_MS);
  }
};
