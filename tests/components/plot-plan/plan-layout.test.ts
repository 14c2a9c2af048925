import { describe, expect, it } from "vitest";
import { freePlace, overlap } from "@/components/plot-plan/free-place";
import { type Plan, type PlanNeighbour, planReaches, roundUp } from "@/components/plot-plan/plan";
import { lineLayout, planLayout, planSide } from "@/components/plot-plan/plan-layout";
import { bearings } from "@/lib/science/isolation/bearings";

const neighbour = (number: number, more: Partial<PlanNeighbour> = {}): PlanNeighbour => ({
  id: `n${number}`,
  number,
  distanceMetres: 60,
  bearing: "E",
  sizeM2: 100,
  weight: "marginal",
  grade: "counted",
  ...more,
});
const plan = (neighbours: readonly PlanNeighbour[], more: Partial<Plan> = {}): Plan => ({
  plotM2: 400,
  rings: [
    { metres: 50, name: "50 m" },
    { metres: 200, name: "200 m" },
  ],
  neighbours,
  ...more,
});
const middle = planSide / 2;

describe("a plan to scale", () => {
  it("holds the plot's 20 m, a neighbour's 10 m and the 60 m between their edges, in one scale", () => {
    const { unitsPerMetre: scale, plot, placed } = planLayout(plan([neighbour(1)]), 100);
    expect(plot).toMatchObject({ toScale: true, known: true });
    expect(plot.side / scale).toBeCloseTo(20, 6);
    const [drawn] = placed;
    expect((drawn?.side ?? 0) / scale).toBeCloseTo(10, 6);
    const gap = (drawn?.at.x ?? 0) - middle - plot.side / 2 - (drawn?.side ?? 0) / 2;
    expect(gap / scale).toBeCloseTo(60, 6);
    expect(drawn?.at.y).toBeCloseTo(middle, 6);
  });

  it("has north up and the eight bearings clockwise from it", () => {
    const { placed } = planLayout(plan(bearings.map((bearing, index) => neighbour(index + 1, { bearing }))), 100);
    const turns = placed.map(({ at }) => Math.round((Math.atan2(at.x - middle, middle - at.y) * 4) / Math.PI + 8) % 8);
    expect(turns).toEqual([0, 1, 2, 3, 4, 5, 6, 7]);
  });

  it("draws rings at their distance from the edge of the plot, and none beyond its reach", () => {
    const { rings, unitsPerMetre: scale } = planLayout(plan([]), 100);
    expect(rings.map((ring) => ring.name)).toEqual(["50 m"]);
    expect((rings[0]?.half ?? 0) / scale).toBeCloseTo(60, 6);
    expect((rings[0]?.radius ?? 0) / scale).toBeCloseTo(50, 6);
  });

  it("all of it lies within the drawing, also a large field at the very rim", () => {
    const { placed } = planLayout(plan([neighbour(1, { distanceMetres: 100, sizeM2: 400 })]), 150);
    const [drawn] = placed;
    expect((drawn?.at.x ?? 0) + (drawn?.side ?? 0) / 2).toBeLessThanOrEqual(planSide);
  });

  it("what is too small to be seen, or of unknown size, is drawn larger and not called to scale", () => {
    const { placed, plot } = planLayout(plan([neighbour(1, { sizeM2: 0.25 }), neighbour(2, { sizeM2: null })]), 1000);
    expect(placed.map(({ toScale, side }) => [toScale, side])).toEqual([
      [false, 7],
      [false, 7],
    ]);
    expect(plot.toScale).toBe(false);
    expect(planLayout(plan([], { plotM2: null }), 100).plot).toEqual({ side: 7, toScale: false, known: false });
  });

  it("invents no place: without a bearing a neighbour is not on the plan, without a distance it is a line outwards", () => {
    const lost = neighbour(1, { bearing: null });
    const ray = neighbour(2, { distanceMetres: null, bearing: "S" });
    const { placed, rays } = planLayout(plan([lost, ray]), 100);
    expect(placed).toEqual([]);
    expect(rays.map(({ neighbour: { number }, to }) => [number, Math.round(to.x), to.y > middle + 100])).toEqual([
      [2, middle, true],
    ]);
  });

  it("names what lies farther out than it reaches", () => {
    const { placed, beyond } = planLayout(plan([neighbour(1), neighbour(2, { distanceMetres: 900 })]), 100);
    expect([placed.length, beyond.map((each) => each.number)]).toEqual([1, [2]]);
  });

  it("its bar is a round length in the same scale: of 543 m that a third of it would hold, 500", () => {
    const { bar, unitsPerMetre } = planLayout(plan([]), 800);
    expect([bar.metres, bar.length / unitsPerMetre]).toEqual([500, 500]);
  });
});

describe("how far it reaches", () => {
  it("a twenty-fifth beyond the outer ring or the far edge of the farthest neighbour", () => {
    expect(planReaches(plan([]))).toEqual([208]);
    expect(planReaches(plan([neighbour(1, { distanceMetres: 700, sizeM2: 2500 })]))).toEqual([780]);
    expect(roundUp(140)).toBe(150);
    expect(roundUp(150)).toBe(150);
  });

  it("a second drawing shows what stands so near that the first would lose it", () => {
    const rings = [{ metres: 1600, name: "1,600 m" }];
    expect(planReaches(plan([neighbour(1, { distanceMetres: 25 })], { rings }))).toEqual([1664, 40]);
    expect(planReaches(plan([neighbour(1, { distanceMetres: 500 })], { rings }))).toEqual([1664]);
  });
});

describe("the line of those whose side is not known", () => {
  it("places them by distance alone, those without one at its end, none on another", () => {
    const lost = [30, 30, 200, null].map((distanceMetres, index) =>
      neighbour(index + 1, { bearing: null, distanceMetres }),
    );
    const { metres, marks } = lineLayout(plan(lost), 0, 334);
    expect(metres).toBe(200);
    expect(marks.map(({ neighbour: { number }, x, row }) => [number, x, row])).toEqual([
      [1, 45, 0],
      [2, 45, 1],
      [3, 300, 0],
      [4, 326, 0],
    ]);
  });
});

describe("the place of a number", () => {
  it("is the first about the mark that covers nothing", () => {
    const first = freePlace({ x: 100, y: 100 }, 12, 1, [], 340);
    expect(first.at).toEqual({ x: 112, y: 100 });
    const second = freePlace({ x: 100, y: 100 }, 12, 1, [first.box], 340);
    expect(overlap(first.box, second.box)).toBe(false);
  });

  it("keeps twelve neighbours that stand on one spot apart, within the drawing", () => {
    const crowd = Array.from({ length: 12 }, (_, index) => neighbour(index + 1, { bearing: "NE" }));
    const numbers = planLayout(plan(crowd), 100).placed.map(({ number }) => number);
    for (const [index, one] of numbers.entries()) {
      expect(one.x > 0 && one.x < planSide && one.y > 0 && one.y < planSide).toBe(true);
      for (const other of numbers.slice(0, index)) {
        expect(Math.abs(one.x - other.x) > 7 || Math.abs(one.y - other.y) > 12).toBe(true);
      }
    }
  });
});
