import { cited } from '../sources/cite.js';
import { normalAt } from './sampling.js';

/** Runs of days that keep a month's mean: how clear they are and how warm. Random numbers come from the caller's seeded generator. */

/** Day-to-day memory of temperature and of cloud. */
export const DAY_MEMORY = {
  temperature: cited(0.7, '1', 'CLIMATE-JUDGEMENT', 'correlation of one day with the next, 0.6 to 0.8 in most places', { min: 0.5, max: 0.85 }),
  clearness: cited(0.3, '1', 'CLIMATE-JUDGEMENT', 'correlation of one day with the next, 0.15 to 0.4 in most places', { min: 0, max: 0.5 }),
} as const;

const DARKEST_KT = cited(0.05, '1', 'BENDT-1981', 'least daily clearness; DUFFIE-BECKMAN-5 section 2.9', { min: 0, max: 0.1 });

/** Clearest day of a month by its mean clearness: 0.6313 + 0.267 K - 11.9 (K - 0.75)^8 (DUFFIE-BECKMAN-5 eq. 2.9.6). 0.5: 0.765. */
export const clearestKt = (meanKt: number): number => 0.6313 + 0.267 * meanKt - 11.9 * (meanKt - 0.75) ** 8;

/**
 * Gives: the clearness that a share of a month's days lie under. Model: BENDT-1981 as DUFFIE-BECKMAN-5 eq. 2.9.4 and 2.9.5
 *   turned round: an exponential held between the darkest and the clearest day, whose slope follows from the mean.
 * Validity: mean clearness 0.15 to 0.72; outside it the nearer end is used and the caller's scaling keeps the mean.
 * Worked line: mean 0.5, share 0.5: 0.54.
 */
export const clearnessAt = (shareFrac: number, meanKt: number): number => {
  const mean = Math.min(0.72, Math.max(0.15, meanKt));
  const top = clearestKt(mean);
  const xi = (top - DARKEST_KT) / (top - mean);
  const slope = -1.498 + (1.184 * xi - 27.182 * Math.exp(-1.5 * xi)) / (top - DARKEST_KT);
  if (Math.abs(slope) < 1e-6) return DARKEST_KT + shareFrac * (top - DARKEST_KT);
  return Math.log((1 - shareFrac) * Math.exp(slope * DARKEST_KT) + shareFrac * Math.exp(slope * top)) / slope;
};

/** Fills `out` with a chain of standard normal numbers, each remembering the last one. */
export const chain = (out: Float64Array, memory: number, random: () => number): Float64Array => {
  const fresh = Math.sqrt(1 - memory * memory);
  let last = normalAt(random());
  for (let i = 0; i < out.length; i++) {
    last = memory * last + fresh * normalAt(random());
    out[i] = last;
  }
  return out;
};

/**
 * Gives: one clearness for each day of a month, in an order with memory. Model: the month's days take evenly spaced shares of
 * clearnessAt, and are dealt out by the ranks of a remembering chain, so that every month has its clear and its dark days.
 */
export const clearnessOfDays = (count: number, meanKt: number, random: () => number): Float64Array => {
  const order = chain(new Float64Array(count), DAY_MEMORY.clearness, random);
  const ranks = Array.from({ length: count }, (_, i) => i).sort((a, b) => (order[a] ?? 0) - (order[b] ?? 0));
  const out = new Float64Array(count);
  ranks.forEach((day, rank) => (out[day] = clearnessAt((rank + 0.5) / count, meanKt)));
  return out;
};
