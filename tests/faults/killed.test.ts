import { describe, expect, it } from "vitest";
import { killRuns } from "./kill-runs";

// Drawn once; the moments of the kills, and what is written, follow from it.
const seed = 4711;

describe("a process that is killed while it writes", () => {
  it(`30 times (seed ${seed}) loses no acknowledged entry, leaves no change by half, and a registry that verifies`, async () => {
    const figures = await killRuns(30, seed);
    expect(figures.faults).toEqual([]);
    expect(figures.lost).toBe(0);
    // The kills really fell into the work, and there was something to lose.
    expect(figures.acknowledged).toBeGreaterThan(60);
    expect(Object.keys(figures.killedWhile).length).toBeGreaterThan(2);
    expect(figures.backups).toBeGreaterThan(0);
    // A minute or two on a machine of today; the fuse is for slow ones.
  }, 3_600_000);
});
