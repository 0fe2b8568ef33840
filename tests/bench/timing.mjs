// Small helpers for benches: several runs after a warm-up, the median to quote, two things in turn for a ratio.
export const median = (list) => [...list].sort((a, b) => a - b)[Math.floor(list.length / 2)];
export const quantile = (list, q) => [...list].sort((a, b) => a - b)[Math.min(list.length - 1, Math.floor(list.length * q))];

export async function timed(work, { runs = 15, warmUp = 3 } = {}) {
  const times = [];
  for (let i = -warmUp; i < runs; i++) {
    const started = performance.now();
    await work();
    if (i >= 0) times.push(performance.now() - started);
  }
  return times;
}

/** A and B in turn, so that a machine that slows down slows both; the ratio is the median of the pairs. */
export async function paired(a, b, { runs = 15, warmUp = 3 } = {}) {
  const [ta, tb, ratios] = [[], [], []];
  for (let i = -warmUp; i < runs; i++) {
    const s0 = performance.now();
    await a();
    const s1 = performance.now();
    await b();
    const s2 = performance.now();
    if (i < 0) continue;
    ta.push(s1 - s0);
    tb.push(s2 - s1);
    ratios.push((s1 - s0) / (s2 - s1));
  }
  return { value: median(ta), baseline: median(tb), ratio: median(ratios) };
}
