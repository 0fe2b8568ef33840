/**
 * Gives: the solution of A x = b in place, for small dense systems.
 * Model: Gaussian elimination without pivoting, rows with a zero factor skipped (Golub and Van Loan, algorithm 3.2.1).
 * Assumptions: each column is diagonally dominant, as heat and vapour balances with a positive capacity are; then no
 * pivot can vanish. Unknowns are best ordered with chains (soil layers) first, so that they cause no fill.
 * Validity: n up to about 60. `a` (n*n, by rows) and `b` are overwritten; `b` holds the answer. Nothing is allocated.
 */
export const solveInPlace = (a: Float64Array, b: Float64Array, n: number): void => {
  for (let k = 0; k < n; k++) {
    const pivot = a[k * n + k]!;
    const bk = b[k]!;
    for (let i = k + 1; i < n; i++) {
      const aik = a[i * n + k]!;
      if (aik === 0) continue;
      const f = aik / pivot;
      const row = i * n;
      const top = k * n;
      for (let j = k + 1; j < n; j++) a[row + j] = a[row + j]! - f * a[top + j]!;
      b[i] = b[i]! - f * bk;
    }
  }
  for (let i = n - 1; i >= 0; i--) {
    let sum = b[i]!;
    const row = i * n;
    for (let j = i + 1; j < n; j++) sum -= a[row + j]! * b[j]!;
    b[i] = sum / a[row + i]!;
  }
};
