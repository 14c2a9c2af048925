import { describe, expect, it } from "vitest";
import { type LineageLot, layLineage } from "@/components/lineage";
import { lotInWords } from "@/components/lineage/lineage-words";
import { byDescent, placedYears } from "@/components/lineage/lots";
import { stemOutline } from "@/components/lineage/stem-outline";

const at = (year: number) => ({ first: year, last: year });
const of = (...ids: string[]) => ids.map((id) => ({ id, share: 1 / ids.length }));
const lot = (id: string, year: number | null, parents: string[], more: Partial<LineageLot> = {}): LineageLot => ({
  id,
  name: id,
  years: year === null ? null : at(year),
  parents: of(...parents),
  kind: parents.length === 0 ? "founder" : parents.length === 1 ? "harvest" : "blend",
  effectiveSize: { low: 20, high: 20 },
  ...more,
});
const family = [
  lot("blend", 2015, ["left", "right"]),
  lot("left", 2008, ["old"]),
  lot("right", 2008, ["old"]),
  lot("old", 1999, ["first"]),
  lot("first", 1990, []),
];

describe("the order of descent", () => {
  it("puts every lot after its parents, in whatever order they were typed", () => {
    const order = byDescent(family).map((each) => each.id);
    for (const each of family)
      for (const parent of each.parents) expect(order.indexOf(parent.id)).toBeLessThan(order.indexOf(each.id));
  });

  it("ends with lots that would be their own ancestors", () => {
    const ring = [lot("a", 1990, ["b"]), lot("b", 1991, ["a"])];
    expect(byDescent(ring)).toHaveLength(2);
  });

  it("places a lot without a year after its parents, or before its children", () => {
    const years = placedYears(
      byDescent([lot("first", null, []), lot("second", 1990, ["first"]), lot("third", null, ["second"])]),
    );
    expect(years.get("first")).toEqual(at(1988));
    expect(years.get("third")).toEqual(at(1991));
  });
});

describe("the layout", () => {
  const layout = layLineage(family, 700);
  const place = (id: string) => {
    const found = layout.lots.find((each) => each.lot.id === id);
    if (!found) throw new Error(id);
    return found;
  };

  it("runs from left to right by year, and a child always stands right of its parents", () => {
    expect(place("first").x).toBeLessThan(place("old").x);
    for (const each of layout.lots)
      for (const parent of each.lot.parents) expect(place(parent.id).x).toBeLessThan(each.x);
  });

  it("gives two children of one year two lanes", () => {
    expect(place("left").x).toBe(place("right").x);
    expect(place("left").y).not.toBe(place("right").y);
  });

  it("draws one stem for each parent, and none to a lot that is not shown", () => {
    expect(layout.stems).toHaveLength(5);
    expect(layLineage([lot("a", 2000, ["elsewhere"])], 400).stems).toHaveLength(0);
  });

  it("lets no two names of a lane overlap on the same side, on a phone neither", () => {
    for (const width of [700, 328]) {
      const narrow = layLineage([...family, lot("next", 2016, ["blend"]), lot("after", 2017, ["next"])], width);
      const sides = new Map<string, number[]>();
      for (const each of narrow.lots) {
        const side = `${each.lane}:${each.above}`;
        sides.set(side, [...(sides.get(side) ?? []), each.x]);
      }
      for (const places of sides.values()) {
        const sorted = [...places].sort((a, b) => a - b);
        sorted.slice(1).forEach((x, index) => {
          expect(x - (sorted[index] ?? 0)).toBeGreaterThan(40);
        });
      }
    }
  });

  it("keeps all within its own width", () => {
    for (const each of layout.lots) expect(each.x).toBeLessThanOrEqual(layout.width);
  });

  it("is the same for the same lots", () => {
    expect(layLineage(family, 700)).toEqual(layout);
  });

  it("draws an unknown size open, a told lot dotted, a span with a sleeve", () => {
    const drawn = layLineage(
      [
        lot("a", 1990, []),
        lot("b", 1995, ["a"], { effectiveSize: null }),
        lot("c", 2000, ["b"], { told: true }),
        lot("d", 2005, ["c"], { effectiveSize: { low: 5, high: 50 } }),
      ],
      700,
    ).stems;
    expect(drawn.map((stem) => stem.kind)).toEqual(["unknown", "told", "known"]);
    expect(drawn[2]?.sleeve).not.toBeNull();
    expect(drawn[0]?.sleeve).toBeNull();
  });
});

describe("a stem", () => {
  // The chance change of one grow-out goes by 1/√Ne (Wright 1931): a twentieth of the size is √20 times the drift and as much thinner.
  it("is as wide as in the stem chart: by the square root of the size", () => {
    const across = (size: number) => {
      const made = {
        name: "B",
        parents: [{ id: "A", share: 1 }],
        kind: "harvest" as const,
        years: { first: 2004, last: 2004 },
      };
      const from = { id: "A", name: "A", parents: [], kind: "founder" as const, years: { first: 2000, last: 2000 } };
      const lots = [
        { ...from, effectiveSize: null },
        { id: "B", ...made, effectiveSize: { low: size, high: size } },
      ];
      const ys = [...(layLineage(lots, 600).stems[0]?.core ?? "").matchAll(/[\d.]+ (-?[\d.]+)/g)].map(([, y]) =>
        Number(y),
      );
      return Math.max(...ys) - Math.min(...ys);
    };
    expect(across(200) / across(10)).toBeCloseTo(Math.sqrt(20), 0);
  });

  it("has its width across the stem also where it climbs", () => {
    const { path } = stemOutline({ x: 0, y: 0 }, { x: 100, y: 200 }, 10, 10);
    const points = [...path.matchAll(/(-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)] as const);
    const half = points.length / 2;
    for (let index = 0; index < half; index++) {
      const upper = points[index];
      const lower = points[points.length - 1 - index];
      if (!upper || !lower) throw new Error("a point is missing");
      expect(Math.hypot(upper[0] - lower[0], upper[1] - lower[1])).toBeCloseTo(10, 0);
    }
  });
});

it("a lot is said in words with parents, shares and effective size", () => {
  const names = new Map(family.map((each) => [each.id, each.name]));
  const words = lotInWords(family[0] as LineageLot, names).replaceAll("\u00a0", " ");
  expect(words).toBe("blend, 2015: blended from left (50 %) and right (50 %).");
  expect(lotInWords(lot("a", null, []), names)).toBe("a, year unknown: parents not on record.");
  expect(lotInWords(lot("b", 1995, ["first"], { effectiveSize: null }), names)).toBe(
    "b, 1995: harvested from first; effective size unknown.",
  );
  expect(lotInWords(lot("c", 1995, [], { kind: "harvest", parentsLeftOut: true }), names)).toBe(
    "c, 1995: its own parents are not drawn here; effective size 20.",
  );
});
