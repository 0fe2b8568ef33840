const SECOND_MS = 1000;
const HOUR_MS = 3_600_000;

/** How long after the try before each try is made: the ten steps of Standard Webhooks, 75.6 hours in all. */
export const WAITS_MS: readonly number[] = [
  0,
  5 * SECOND_MS,
  300 * SECOND_MS,
  0.5 * HOUR_MS,
  2 * HOUR_MS,
  5 * HOUR_MS,
  10 * HOUR_MS,
  14 * HOUR_MS,
  20 * HOUR_MS,
  24 * HOUR_MS,
];

/** At most so much longer, so that what failed together does not come back together. */
export const JITTER_FRAC = 0.2;

/** When the next try is due after so many that failed; null when that was the last. `spread` is between 0 and 1. */
export const nextTryAt = (failedCount: number, at: Date, spread: number): Date | null => {
  const wait = WAITS_MS[failedCount];
  return wait === undefined ? null : new Date(at.getTime() + Math.round(wait * (1 + JITTER_FRAC * spread)));
};
