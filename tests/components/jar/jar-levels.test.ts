import { describe, expect, it } from "vitest";
import { type JarContents, jarLevels, partLabels } from "@/components/jar/jar-levels";

const full: JarContents = {
  grams: 100,
  seeds: { value: 900, low: 800, high: 1000, grade: "counted" },
  alive: { value: 500, low: 400, high: 600, grade: "counted" },
  reserved: 200,
  free: { value: 300, grade: "counted" },
};

describe("the levels of the jar", () => {
  it("stand in proportion to the seeds, the largest amount at nine tenths of the glass", () => {
    // the glass is 1000 high, so the most (1000 seeds) stands 900 above the bottom
    const levels = jarLevels(full, 0, 1000);
    expect(levels).toEqual({ onHand: 190, alive: 550, aliveLow: 640, aliveHigh: 460, reserved: 820, short: false });
  });

  it("say when more is to be kept back than is alive", () => {
    expect(jarLevels({ ...full, reserved: 501 }, 0, 1000).short).toBe(true);
    expect(jarLevels({ ...full, reserved: 500 }, 0, 1000).short).toBe(false);
    expect(jarLevels({ ...full, alive: null }, 0, 1000).short).toBe(false);
  });

  it("are not drawn for what is not known", () => {
    const unknown: JarContents = { grams: null, seeds: null, alive: null, reserved: null, free: null };
    expect(jarLevels(unknown, 0, 1000)).toEqual({
      onHand: null,
      alive: null,
      aliveLow: null,
      aliveHigh: null,
      reserved: null,
      short: false,
    });
    expect(jarLevels({ ...unknown, grams: 4 }, 0, 1000).onHand).toBe(400);
    expect(jarLevels({ ...unknown, grams: 0 }, 0, 1000).onHand).toBe(1000);
  });

  it("take the middle of a span that has no value", () => {
    const levels = jarLevels({ ...full, alive: { value: null, low: 0, high: 1000, grade: "unknown" } }, 0, 1000);
    expect(levels.alive).toBe(550);
  });
});

describe("labels", () => {
  it("stay where they belong if there is room", () => {
    expect(partLabels([10, 100, 200], 40, 300)).toEqual([10, 100, 200]);
  });

  it("are parted without changing their order, and never pass the last line", () => {
    const places = partLabels([290, 280, 285], 40, 300);
    expect(places[1]).toBeLessThan(places[2] ?? 0);
    expect(places[2]).toBeLessThan(places[0] ?? 0);
    expect(Math.max(...places)).toBeLessThanOrEqual(300);
    const sorted = [...places].sort((a, b) => a - b);
    expect((sorted[1] ?? 0) - (sorted[0] ?? 0)).toBeGreaterThanOrEqual(40);
    expect((sorted[2] ?? 0) - (sorted[1] ?? 0)).toBeGreaterThanOrEqual(40);
  });
});
