import { describe, expect, it } from "vitest";
import { along, curveBetween, type Point } from "@/components/stem-chart/layout/curve";
import { stalkWay } from "@/components/stem-chart/layout/stalk-way";

const from = { x: 100, y: 50 };
const to = { x: 900, y: 420 };

function nearest(curve: ReturnType<typeof stalkWay>, mark: Point): number {
  const points = Array.from({ length: 400 }, (_, place) => along(curve, place / 399));
  return Math.min(...points.map(({ x, y }) => Math.hypot(x - mark.x, y - mark.y)));
}

describe("the way of a stalk", () => {
  it("is a stem's where it is short, stays in its lane, or meets nobody", () => {
    const near = { x: 180, y: 200 };
    expect(stalkWay(from, near, [{ x: 140, y: 120 }])).toEqual(curveBetween(from, near));
    const level = { x: 900, y: 60 };
    expect(stalkWay(from, level, [{ x: 500, y: 52 }])).toEqual(curveBetween(from, level));
    expect(stalkWay(from, to, [from, to])).toEqual(curveBetween(from, to));
  });

  it("keeps clear of the lots by which a stem's would pass", () => {
    const plain = curveBetween(from, to);
    for (const at of [0.3, 0.5, 0.7]) {
      const mark = along(plain, at);
      expect(nearest(plain, mark)).toBeLessThan(2);
      expect(nearest(stalkWay(from, to, [from, to, mark]), mark)).toBeGreaterThanOrEqual(18);
    }
  });

  it("begins and ends at its lots also upwards, and is the same for lots in any order", () => {
    const marks = [along(curveBetween(to, from), 0.4), { x: 500, y: 240 }, { x: 640, y: 300 }];
    const up = stalkWay({ x: 100, y: 420 }, { x: 900, y: 50 }, marks);
    expect([up[0], up[3]]).toEqual([
      { x: 100, y: 420 },
      { x: 900, y: 50 },
    ]);
    expect(stalkWay({ x: 100, y: 420 }, { x: 900, y: 50 }, marks.toReversed())).toEqual(up);
  });
});
