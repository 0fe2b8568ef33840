/**
 * Gives: the solution of A x = b in place, for small dense systems that are symmetric but for their last row and column.
 * Model: Gaussian elimination without pivoting; what is left of a symmetric block stays symmetric, so only its upper half
 * is kept and worked on (Golub and Van Loan, section 4.1.2), and the last row is carried beside it.
 * Assumptions: each column is diagonally dominant, as heat and vapour balances with a positive capacity are; then no
 * pivot can vanish.
 * Validity: n up to about 60. `a` (n*n, by rows) is read on and above its diagonal; `lastRow` holds what stands left of
 * the diagonal in the last row. All three are overwritten; `b` holds the answer. Nothing is allocated.
 */
export const solveBordered = (a: Float64Array, lastRow: Float64Array, b: Float64Array, n: number): void => {
  const end = n - 1;
  const corner = n * n - 1;
  for (let k = 0; k < end; k++) {
    const top = k * n;
    const inverse = 1 / a[top + k]!;
    const bk = b[k]!;
    // The pivot's place keeps its inverse: the way back multiplies by it.
    a[top + k] = inverse;
    const last = lastRow[k]! * inverse;
    for (let i = k + 1; i < end; i++) {
      const aki = a[top + i]!;
      if (aki === 0) continue;
      const row = i * n;
      const f = aki * inverse;
      for (let j = i; j < n; j++) a[row + j] = a[row + j]! - f * a[top + j]!;
      lastRow[i] = lastRow[i]! - last * aki;
      b[i] = b[i]! - f * bk;
    }
    a[corner] = a[corner]! - last * a[top + end]!;
    b[end] = b[end]! - last * bk;
  }
  b[end] = b[end]! / a[corner]!;
  for (let i = end - 1; i >= 0; i--) {
    let sum = b[i]!;
    const row = i * n;
    for (let j = i + 1; j < n; j++) sum -= a[row + j]! * b[j]!;
    b[i] = sum * a[row + i]!;
  }
};
