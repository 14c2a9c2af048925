import { describe, expect, it } from "vitest";
import { overlap } from "@/components/stem-chart/layout/boxes";
import { layStems, orderTree } from "@/components/stem-chart/layout/lay-stems";
import type { Measures, StemPicture } from "@/components/stem-chart/layout/position";
import { widthOfSize } from "@/components/stem-chart/layout/width-of-size";
import type { StemTree } from "@/components/stem-chart/stem";
import { chances, lot, randomTree, tree } from "./trees";

const measures = (more: Partial<Measures> = {}): Measures => ({
  width: 900,
  zoom: 1,
  selected: null,
  compared: null,
  traced: null,
  ...more,
});
const drawn = (of: StemTree, more: Partial<Measures> = {}) => layStems(orderTree(of), measures(more));
const placed = (picture: StemPicture, id: string) => {
  const found = picture.lots.find(({ grown }) => grown.lot.id === id);
  if (!found) throw new Error(`${id} is not drawn`);
  return found;
};
const zooms = [1, 1.5, 2.5, 4, 7, 12];

/** What must hold of every picture, in sentences; none where all is well. */
function broken(of: StemTree, picture: StemPicture, selected: string | null): string[] {
  const faults: string[] = [];
  const numbers = picture.lots.flatMap(({ x, y, left, right }) => [x, y, left, right]);
  if (numbers.some((each) => !Number.isFinite(each))) faults.push("a lot stands nowhere");
  if (
    picture.stems.some(
      ({ pieces, middle }) => pieces.some(({ path }) => /NaN|undefined/.test(path)) || /NaN/.test(middle),
    )
  )
    faults.push("a stem leads nowhere");
  if (picture.lots.length !== of.lots.length) faults.push("a lot is missing");
  for (const [place, label] of picture.labels.entries())
    for (const other of picture.labels.slice(place + 1))
      if (overlap(label, other)) faults.push(`${label.id} lies over ${other.id}`);
  for (const label of picture.labels)
    if (label.left < 0 || label.right > picture.width) faults.push(`${label.id} leaves the picture`);
  if (selected && !picture.labels.some(({ id, kind }) => id === selected && kind === "lot"))
    faults.push(`${selected} has no name`);
  const bands = new Map(picture.bands.map((band) => [band.band.key, band]));
  for (const { grown, y, x, left, right } of picture.lots) {
    const band = bands.get(grown.lot.band);
    if (!band || y <= band.top || y >= band.bottom) faults.push(`${grown.lot.id} stands outside its band`);
    if (x < Math.min(left, right) - 1e-6 || x > Math.max(left, right) + 1e-6)
      faults.push(`${grown.lot.id} left its span`);
  }
  return faults;
}

describe("a stem chart of a named tree", () => {
  const chain = tree([lot("a", 1990, []), lot("b", 1994, ["a"]), lot("c", 1999, ["b"]), lot("d", 2003, ["c"])]);

  it("keeps an unbranched line on one lane, in the order of the years", () => {
    const picture = drawn(chain);
    const all = ["a", "b", "c", "d"].map((id) => placed(picture, id));
    expect(new Set(all.map(({ y }) => y)).size).toBe(1);
    expect(all.map(({ x }) => x)).toEqual(all.map(({ x }) => x).sort((one, other) => one - other));
  });

  it("gives the same year the same place, whoever holds the lot", () => {
    const picture = drawn(tree([lot("a", 1990, []), lot("b", 1994, ["a"]), lot("c", 1994, ["a"], { band: "Bo" })]));
    expect(placed(picture, "b").x).toBe(placed(picture, "c").x);
    expect(placed(picture, "b").y).toBeLessThan(placed(picture, "c").y);
  });

  it("puts two children of one year under one another", () => {
    const picture = drawn(tree([lot("a", 1990, []), lot("b", 1994, ["a"]), lot("c", 1994, ["a"])]));
    expect(placed(picture, "b").y).not.toBe(placed(picture, "c").y);
    expect(picture.labels.filter(({ kind }) => kind === "lot")).toHaveLength(3);
  });

  it("lets a child stand after its parent within the days that it can have", () => {
    const given = lot("given", null, ["a"], { kind: "split", at: { first: 1990.9, last: 1990.9 } });
    const picture = drawn(tree([lot("a", 1990, []), given]));
    expect(placed(picture, "given").x).toBeGreaterThan(placed(picture, "a").x);
  });

  it("draws a year that is not sharp as wide as it is, and a lot without a year by its kin", () => {
    const picture = drawn(
      tree([lot("a", null, [], { at: { first: 1985, last: 1995 } }), lot("b", null, ["a"]), lot("c", 2004, ["b"])]),
    );
    const [a, b] = [placed(picture, "a"), placed(picture, "b")];
    expect((a.right - a.left) / picture.pixelsAYear).toBeCloseTo(10, 6);
    expect(b.grown.byKin).toBe(true);
    expect(b.x).toBeGreaterThan(a.x);
    expect(b.x).toBeLessThan(placed(picture, "c").x);
  });

  it("counts harvests as generations, and neither splits nor blends", () => {
    const { grown } = orderTree(
      tree([
        lot("a", 1990, []),
        lot("b", 1992, ["a"]),
        lot("s", 1993, ["b"], { kind: "split", band: "Bo" }),
        lot("m", 1996, ["b", "s"], { kind: "blend" }),
        lot("c", 1997, ["m"]),
      ]),
    );
    expect(grown.lots.map(({ lot: { id }, generation }) => [id, generation])).toEqual([
      ["a", 0],
      ["b", 1],
      ["s", 1],
      ["m", 1],
      ["c", 2],
    ]);
  });

  it("does not change with the order in which the lots come", () => {
    const mixed = { ...chain, lots: [...chain.lots].reverse() };
    expect(drawn(mixed)).toEqual(drawn(chain));
  });

  it("folds the inside of an unbranched run where it is too close, and opens it when it is near enough", () => {
    const long = tree([
      lot("0", 1980, []),
      ...Array.from({ length: 40 }, (_, place) => lot(String(place + 1), 1981 + place, [String(place)])),
    ]);
    const far = drawn(long);
    expect(far.folds).toHaveLength(1);
    // all but the founder and the newest
    expect(far.folds[0]?.lots).toHaveLength(39);
    expect(drawn(long, { selected: "20" }).folds.map(({ lots }) => lots.length)).toEqual([19, 19]);
    expect(drawn(long, { zoom: 12 }).folds).toEqual([]);
  });
});

describe("widths", () => {
  // sqrt(10 / 200) = 0.2236068
  it("go by the square root, so that half the width is twice the drift", () => {
    expect(widthOfSize(200, 20)).toBe(20);
    expect(widthOfSize(10, 20)).toBeCloseTo(4.472136, 6);
    expect(widthOfSize(50, 20)).toBe(10);
    expect(widthOfSize(5000, 20)).toBe(40);
    expect(widthOfSize(0, 20)).toBe(1.8);
  });
});

describe("what is not one figure", () => {
  const span = tree([
    lot("a", 1990, [], { kept: null }),
    lot("b", 1996, ["a"], { size: { low: 2, high: 90 }, kept: { low: 0.5, high: 0.9 }, living: true }),
    lot("c", 2006, ["b"], { size: { low: 12, high: 12 } }),
  ]);
  const labels = drawn(span).labels.map(({ id, kind, figure }) => [id, kind, figure]);

  it("stands as a span behind a name, never as the middle of it", () => {
    expect(labels).toContainEqual(["b", "lot", "50–90\u00a0%"]);
  });

  it("names no waist: the narrowest of those that were counted is named", () => {
    expect(labels.filter(([, kind]) => kind === "waist")).toEqual([["c", "waist", "12"]]);
  });

  it("has no tone, whatever its kin have", () => {
    expect(drawn(span).stems.find(({ child }) => child === "b")?.tones[0]).toBeNull();
  });
});

describe("a tree that cannot be", () => {
  it("with a ring is cut where it is earliest, and says so", () => {
    const ring = tree([lot("a", 1990, ["c"]), lot("b", 1992, ["a"]), lot("c", 1995, ["b"])]);
    const ordered = orderTree(ring);
    expect(ordered.faults.map(({ code, path }) => [code, path[1]])).toEqual([["cycle", "a"]]);
    expect(broken(ring, layStems(ordered, measures()), null)).toEqual([]);
    expect(placed(layStems(ordered, measures()), "a").grown.gap).toBe(true);
  });

  it("with a parent that is not on record, or itself, has a gap there", () => {
    const gaps = tree([lot("a", 1990, ["lost"]), lot("b", 1994, ["b"]), lot("c", 1996, ["a", "nowhere"])]);
    const ordered = orderTree(gaps);
    expect(ordered.faults.map(({ code }) => code)).toEqual(["unknown-parent", "unknown-parent", "unknown-parent"]);
    expect(ordered.grown.lots.filter(({ gap }) => gap).map(({ lot: { id } }) => id)).toEqual(["a", "b", "c"]);
    expect(broken(gaps, layStems(ordered, measures()), null)).toEqual([]);
  });

  it("with shares that do not sum to 1 is drawn in proportion, and says so", () => {
    const parents = [
      { id: "a", share: 0.6 },
      { id: "b", share: 0.6 },
    ];
    const ordered = orderTree(
      tree([lot("a", 1990, []), lot("b", 1990, []), lot("c", 1994, [], { kind: "blend", parents })]),
    );
    expect(ordered.faults.map(({ code, given }) => [code, given])).toEqual([["shares-not-whole", 1.2]]);
    expect(ordered.grown.byId.get("c")?.links.map(({ share }) => share)).toEqual([0.5, 0.5]);
  });

  it("with one name twice keeps the first", () => {
    const ordered = orderTree(tree([lot("a", 1990, []), lot("a", 1995, [])]));
    expect(ordered.grown.lots).toHaveLength(1);
    expect(ordered.faults.map(({ code }) => code)).toEqual(["repeated-id"]);
  });

  it("without any lot is an empty picture", () => {
    const picture = drawn(tree([]));
    expect(picture.lots).toEqual([]);
    expect(Number.isFinite(picture.height)).toBe(true);
  });
});

describe("two hundred trees by chance", () => {
  it("keep every rule at six zooms, on a phone and on a desk", { timeout: 600_000 }, () => {
    const faults: string[] = [];
    for (let seed = 1; seed <= 200; seed += 1) {
      const of = randomTree(seed);
      const ordered = orderTree(of);
      const chance = chances(seed * 31);
      for (const [place, zoom] of zooms.entries()) {
        const selected = of.lots[Math.floor(chance() * of.lots.length)]?.id ?? null;
        const picture = layStems(ordered, measures({ zoom, selected, width: place % 2 === 0 ? 340 : 1180 }));
        faults.push(...broken(of, picture, selected).map((fault) => `tree ${seed} at ${zoom}: ${fault}`));
      }
    }
    expect(faults).toEqual([]);
  });

  it("keep the order of their lanes at every zoom", () => {
    for (let seed = 1; seed <= 40; seed += 1) {
      const ordered = orderTree(randomTree(seed));
      const ranks = zooms.map((zoom) => {
        const { lots } = layStems(ordered, measures({ zoom }));
        return [...lots]
          .sort((a, b) => a.y - b.y || (a.grown.lot.id < b.grown.lot.id ? -1 : 1))
          .map(({ grown }) => grown.lot.id);
      });
      for (const each of ranks) expect(each).toEqual(ranks[0]);
    }
  });

  it("lay six hundred lots out with no label over another", () => {
    const of = randomTree(7, 4);
    const many = Array.from({ length: 12 }, (_, place) => randomTree(place + 300, 53).lots).flatMap((lots, place) =>
      lots.map((each) => ({
        ...each,
        id: `${place}/${each.id}`,
        number: `${place}/${each.number}`,
        parents: each.parents.map((parent) => ({ ...parent, id: `${place}/${parent.id}` })),
      })),
    );
    const whole = tree([...of.lots, ...many]);
    expect(broken(whole, drawn(whole), null)).toEqual([]);
  });
});
