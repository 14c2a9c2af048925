/**
 * x of A·x = b for a symmetric positive definite A, by Cholesky's factors. Source: Golub & Van Loan 2013, Matrix Computations, 4.2.
 */
export function solved(a: readonly (readonly number[])[], b: readonly number[]): number[] {
  const n = b.length;
  const lower = Array.from({ length: n }, () => new Float64Array(n));
  const at = (row: number, column: number) => lower[row]?.[column] ?? 0;
  for (let row = 0; row < n; row++) {
    for (let column = 0; column <= row; column++) {
      let left = a[row]?.[column] ?? 0;
      for (let k = 0; k < column; k++) left -= at(row, k) * at(column, k);
      const line = lower[row];
      if (line) line[column] = row === column ? Math.sqrt(left) : left / at(column, column);
    }
  }
  const y = new Float64Array(n);
  for (let row = 0; row < n; row++) {
    let left = b[row] ?? 0;
    for (let k = 0; k < row; k++) left -= at(row, k) * (y[k] ?? 0);
    y[row] = left / at(row, row);
  }
  const x = new Array<number>(n).fill(0);
  for (let row = n - 1; row >= 0; row--) {
    let left = y[row] ?? 0;
    for (let k = row + 1; k < n; k++) left -= at(k, row) * (x[k] ?? 0);
    x[row] = left / at(row, row);
  }
  return x;
}
