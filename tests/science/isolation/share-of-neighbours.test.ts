import { describe, expect, it } from "vitest";
import { type Bearing, bearings, directionOf } from "@/lib/science/isolation/bearings";
import { pollenModelOf } from "@/lib/science/isolation/pollen-models";
import {
  type CrossingSource,
  type NeighbourhoodOfPlot,
  shareOfNeighbours,
} from "@/lib/science/isolation/share-of-neighbours";
import { centreAtGap } from "@/lib/science/isolation/squares-apart";
import { answered, refusalsOf } from "../agreement";

const source = (
  id: string,
  distanceMetres: number | null,
  sizeM2: number | null,
  more: Partial<CrossingSource> = {},
) => ({
  id,
  distanceMetres,
  sizeM2,
  plants: null,
  factor: 1,
  pollen: null,
  ...more,
});
const maize = (sources: readonly CrossingSource[], more: Partial<NeighbourhoodOfPlot> = {}) =>
  shareOfNeighbours({ cropKey: "maize-field", plotM2: 400, plants: null, stigma: null, sources, ...more });

describe("the worked example of three maize neighbours", () => {
  // looked at in 9 × 9 places there, in 5 × 5 here, which misses the nearest edge: within a tenth
  // 20 × 20 m; A 1 ha at 150 m, 4 days later, sd 2.5 both; B 36 m² at 40 m; C 100 m² at 60 m, 10 days later: 0.045 %, said 0.01–0.22 %
  const stigma = { peak: 0, sd: 2.5 };
  const given = answered(
    maize(
      [
        source("A", 150, 10_000, { pollen: { peak: 4, sd: 2.5 } }),
        source("B", 40, 36, { pollen: { peak: 0, sd: 2.5 } }),
        source("C", 60, 100, { pollen: { peak: 10, sd: 2.5 } }),
      ],
      { stigma },
    ),
  );

  it("gives about 0.045 %, between 0.01 and 0.22 %, the field far off the largest", () => {
    expect(given.risk.foreignShare).toBeGreaterThan(0.00045 * 0.9);
    expect(given.risk.foreignShare).toBeLessThan(0.00045 * 1.1);
    expect(given.risk.range.high).toBeGreaterThan(0.0022 * 0.9);
    expect(given.risk.range.low).toBeCloseTo(0.0001, 4);
    expect(given.risk.largest).toBe("A");
  });

  it("without the timing of the sources 0.086 %, and says that they were taken to be in time", () => {
    const untimed = answered(maize([source("A", 150, 10_000), source("B", 40, 36), source("C", 60, 100)]));
    expect(untimed.risk.foreignShare).toBeGreaterThan(0.00086 * 0.9);
    expect(untimed.risk.foreignShare).toBeLessThan(0.00086 * 1.1);
    expect(untimed.takenInTime).toEqual(["A", "B", "C"]);
  });
});

it("faba bean of 30 m², 60 m² at 150 m: 1.5 %, 0.15 to 15 % (the reference's second example)", () => {
  const place = { cropKey: "bean-broad", plotM2: 30, plants: null, stigma: null };
  const { risk } = answered(shareOfNeighbours({ ...place, sources: [source("a", 150, 60)] }));
  expect(risk.foreignShare).toBeCloseTo(0.0155, 4);
  expect(risk.range.low).toBeCloseTo(0.00155, 5);
  expect(risk.range.high).toBeCloseTo(0.155, 3);
});

describe("no number", () => {
  const code = (outcome: ReturnType<typeof shareOfNeighbours>) => refusalsOf(outcome).map((each) => each.code);

  it("for a crop without a kernel or a measured curve", () => {
    for (const cropKey of ["beet", "rye", "onion", "squash-pepo", "carrot", "tomato"]) {
      expect(pollenModelOf(cropKey)).toBeNull();
      expect(code(maize([source("a", 9, 9)], { cropKey }))).toEqual(["no-model"]);
    }
  });

  it("without sources, a distance, a size or the plot's own", () => {
    expect(code(maize([]))).toEqual(["no-sources"]);
    expect(code(maize([source("a", null, 9)]))).toEqual(["distance"]);
    expect(code(maize([source("a", 9, null)]))).toEqual(["size"]);
    expect(code(maize([source("a", 9, 9)], { plotM2: null }))).toEqual(["plot-size"]);
  });

  it("for a source far beyond what a curve was measured for; a mark where it lies a little beyond", () => {
    const faba = (metres: number) =>
      shareOfNeighbours({
        cropKey: "bean-broad",
        plotM2: 30,
        plants: null,
        stigma: null,
        sources: [source("a", metres, 60)],
      });
    expect(answered(faba(100)).beyondData).toEqual([]);
    expect(answered(faba(400)).beyondData).toEqual(["a"]);
    expect(code(faba(600))).toEqual(["beyond-data"]);
  });
});

it("plants are compared with plants where all are counted, else ground with ground", () => {
  const place = { cropKey: "bean-broad", plotM2: 30, plants: 200, stigma: null };
  const counted = answered(shareOfNeighbours({ ...place, sources: [source("a", 150, null, { plants: 400 })] }));
  expect(counted.risk.foreignShare).toBeCloseTo(0.0155, 4);
  const mixed = shareOfNeighbours({ ...place, sources: [source("a", 150, null, { plants: 400 }), source("b", 9, 9)] });
  expect(refusalsOf(mixed).map((each) => each.code)).toEqual(["size"]);
});

describe("a square that stands off another", () => {
  it("has the gap from edge to edge on every bearing", () => {
    for (const bearing of bearings) {
      const { east, north } = centreAtGap(20, 6, 40, bearing);
      const gap = Math.hypot(Math.max(0, Math.abs(east) - 13), Math.max(0, Math.abs(north) - 13));
      expect(gap).toBeCloseTo(40, 8);
      const way = directionOf(bearing as Bearing);
      expect(Math.atan2(east, north)).toBeCloseTo(Math.atan2(way.east, way.north), 9);
    }
  });

  it("east of it its centre lies half of both sides and the gap away; touching at a gap of 0", () => {
    expect(centreAtGap(20, 6, 40, "E").east).toBeCloseTo(53, 8);
    expect(centreAtGap(20, 6, 0, "S").north).toBeCloseTo(-13, 6);
  });
});
