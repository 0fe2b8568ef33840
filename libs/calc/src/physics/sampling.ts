/**
 * Gives: repeatable numbers in [0, 1) from a whole-number seed.
 * Model: mulberry32, a 32-bit counter mixed by multiplication and xor (public domain). Not for secrets.
 */
export const seededGenerator = (seed: number): (() => number) => {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296;
  };
};

/**
 * Gives: a Latin hypercube: `draws` rows of `inputs` shares in (0, 1), each column with one value in each of `draws` equal slices.
 * Model: McKay, Beckman and Conover 1979; slices in random order (Fisher-Yates), a random place inside each slice.
 */
export const latinHypercube = (draws: number, inputs: number, random: () => number): number[][] => {
  const columns = Array.from({ length: inputs }, () => {
    const order = Array.from({ length: draws }, (_, i) => i);
    for (let i = draws - 1; i > 0; i--) {
      const j = Math.floor(random() * (i + 1));
      [order[i], order[j]] = [order[j]!, order[i]!];
    }
    return order.map((slice) => (slice + random()) / draws);
  });
  return Array.from({ length: draws }, (_, d) => columns.map((c) => c[d]!));
};

/** Value of a triangular distribution at share p. */
export const triangularAt = (p: number, low: number, likely: number, high: number): number => {
  const split = (likely - low) / (high - low);
  return p < split ? low + Math.sqrt(p * (high - low) * (likely - low)) : high - Math.sqrt((1 - p) * (high - low) * (high - likely));
};

export const uniformAt = (p: number, low: number, high: number): number => low + p * (high - low);

/** Standard normal value at share p: rational approximation of Acklam (relative error below 1.2e-9). */
export const normalAt = (p: number): number => {
  const q = Math.min(Math.max(p, 1e-12), 1 - 1e-12);
  if (q < 0.02425) return tail(Math.sqrt(-2 * Math.log(q)));
  if (q > 1 - 0.02425) return -tail(Math.sqrt(-2 * Math.log(1 - q)));
  const r = q - 0.5;
  const s = r * r;
  const top =
    (((((-3.969683028665376e1 * s + 2.209460984245205e2) * s - 2.759285104469687e2) * s + 1.38357751867269e2) * s - 3.066479806614716e1) * s +
      2.506628277459239) *
    r;
  const base = ((((-5.447609879822406e1 * s + 1.615858368580409e2) * s - 1.556989798598866e2) * s + 6.680131188771972e1) * s - 1.328068155288572e1) * s + 1;
  return top / base;
};
const tail = (q: number): number =>
  (((((-7.784894002430293e-3 * q - 3.223964580411365e-1) * q - 2.400758277161838) * q - 2.549732539343734) * q + 4.374664141464968) * q + 2.938163982698783) /
  ((((7.784695709041462e-3 * q + 3.224671290700398e-1) * q + 2.445134137142996) * q + 3.754408661907416) * q + 1);

/** A factor with median 1 whose 5th and 95th percentiles are 1/spread and spread. */
export const lognormalFactorAt = (p: number, spread: number): number => Math.exp((normalAt(p) * Math.log(spread)) / 1.6448536269514722);

/** Percentile of a list by linear interpolation between ranks (the common definition, type 7). */
export const percentile = (values: readonly number[], p: number): number => {
  const sorted = Float64Array.from(values).sort();
  const at = p * (sorted.length - 1);
  const low = Math.floor(at);
  const high = Math.min(low + 1, sorted.length - 1);
  return sorted[low]! + (at - low) * (sorted[high]! - sorted[low]!);
};

/** The low, likely and high end that a plan prints. */
export const rangeOf = (values: readonly number[]): { p10: number; p50: number; p90: number } => ({
  p10: percentile(values, 0.1),
  p50: percentile(values, 0.5),
  p90: percentile(values, 0.9),
});

/** Rank correlation (Spearman): the ordinary correlation of ranks, ties sharing their mean rank; 0 when one side never changes. */
export const rankCorrelation = (x: readonly number[], y: readonly number[]): number => {
  const a = ranks(x);
  const b = ranks(y);
  const mean = (a.length + 1) / 2;
  let top = 0;
  let sa = 0;
  let sb = 0;
  for (let i = 0; i < a.length; i++) {
    top += (a[i]! - mean) * (b[i]! - mean);
    sa += (a[i]! - mean) ** 2;
    sb += (b[i]! - mean) ** 2;
  }
  return sa === 0 || sb === 0 ? 0 : top / Math.sqrt(sa * sb);
};

const ranks = (values: readonly number[]): number[] => {
  const order = values.map((v, i) => ({ v, i })).sort((p, q) => p.v - q.v);
  const out = new Array<number>(values.length).fill(0);
  for (let i = 0; i < order.length;) {
    let j = i;
    while (j + 1 < order.length && order[j + 1]!.v === order[i]!.v) j++;
    for (let k = i; k <= j; k++) out[order[k]!.i] = (i + j) / 2 + 1;
    i = j + 1;
  }
  return out;
};
