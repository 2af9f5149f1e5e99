export type Matrix = number[][];

/** Product of two matrices. */
export function product(a: Matrix, b: Matrix): Matrix {
  return a.map((row) => b[0]!.map((_, j) => row.reduce((sum, one, k) => sum + one * b[k]![j]!, 0)));
}

export function transposed(a: Matrix): Matrix {
  return a[0]!.map((_, j) => a.map((row) => row[j]!));
}

/** Solution of a·x = b by elimination with the largest pivot of each column; b may have columns. */
export function solved(a: Matrix, b: Matrix): Matrix {
  const n = a.length;
  const rows = a.map((row, i) => [...row, ...b[i]!]);
  for (let at = 0; at < n; at++) {
    let pivot = at;
    for (let i = at + 1; i < n; i++) {
      if (Math.abs(rows[i]![at]!) > Math.abs(rows[pivot]![at]!)) pivot = i;
    }
    [rows[at], rows[pivot]] = [rows[pivot]!, rows[at]!];
    for (let i = 0; i < n; i++) {
      if (i === at) continue;
      const times = rows[i]![at]! / rows[at]![at]!;
      for (let j = at; j < rows[i]!.length; j++) rows[i]![j]! -= times * rows[at]![j]!;
    }
  }
  return rows.map((row, i) => row.slice(n).map((value) => value / row[i]!));
}

/** Generalised least squares: coefficients and their covariance, for errors of a known covariance. */
export function leastSquares(x: Matrix, y: readonly number[], errors: Matrix) {
  const weighted = solved(
    errors,
    x.map((row, i) => [...row, y[i]!]),
  );
  const columns = x[0]!.length;
  const xt = transposed(x);
  const normal = product(
    xt,
    weighted.map((row) => row.slice(0, columns)),
  );
  const right = product(
    xt,
    weighted.map((row) => row.slice(columns)),
  );
  const identity = normal.map((_, i) => normal.map((__, j) => (i === j ? 1 : 0)));
  return {
    coefficients: solved(normal, right).map(([one]) => one!),
    covariance: solved(normal, identity),
  };
}

/** Where a function that changes sign between two places is 0, by halving. */
export function root(of: (x: number) => number, from: number, to: number): number {
  let low = from;
  let high = to;
  const side = Math.sign(of(low));
  for (let i = 0; i < 200; i++) {
    const middle = (low + high) / 2;
    if (middle === low || middle === high) break;
    if (Math.sign(of(middle)) === side) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
