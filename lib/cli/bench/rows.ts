/** One measured row: what, how much of it, how long, and what it may take. */
export interface BenchRow {
  readonly what: string;
  readonly measured: string;
  readonly bound: string;
  readonly within: boolean;
  /** not within, but so quick that it does not matter */
  readonly quick?: boolean;
}

export function printRows(title: string, rows: readonly BenchRow[]): void {
  console.log(`\n${title}`);
  for (const row of rows)
    console.log(
      `  ${row.within ? " " : row.quick ? "~" : "!"} ${row.what.padEnd(44)} ${row.measured.padStart(34)}   (${row.bound})`,
    );
}

export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
}

/** Milliseconds that some work takes, the median of several runs after one that is not counted. */
export async function medianMilliseconds(runs: number, work: () => unknown): Promise<number> {
  const times: number[] = [];
  for (let run = 0; run <= runs; run += 1) {
    const from = performance.now();
    await work();
    if (run > 0) times.push(performance.now() - from);
  }
  return median(times);
}
