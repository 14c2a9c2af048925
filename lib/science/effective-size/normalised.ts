/** Numbers of any unit scaled to sum 1. The largest is divided out first, so that no sum overflows. */
export function normalised(numbers: readonly number[]): number[] {
  const largest = numbers.reduce((most, number) => Math.max(most, number), 0);
  const scaled = numbers.map((number) => number / largest);
  const total = scaled.reduce((sum, number) => sum + number, 0);
  return scaled.map((number) => number / total);
}

export function sumOfSquares(shares: readonly number[]): number {
  return shares.reduce((sum, share) => sum + share * share, 0);
}
