import { describe, expect, it } from "vitest";
import { readStemAddress, stemAddress } from "@/components/stem-chart/address";
import { layStems, orderTree } from "@/components/stem-chart/layout/lay-stems";
import { toneOf, toneScale } from "@/components/stem-chart/layout/tones";
import { nearestLot, neighbour } from "@/components/stem-chart/nearest";
import { followed, kinOf, sharedAncestors, traced } from "@/components/stem-chart/trace";
import { zoomToOpen } from "@/components/stem-chart/zoom-to-open";
import { lot, tree } from "./trees";

//  a ── b ── c ── e          d is a gift of b, f was blended of c and d
//        └── d ──┘ f
const family = tree([
  lot("a", 1990, []),
  lot("b", 1994, ["a"]),
  lot("c", 1998, ["b"]),
  lot("d", 1995, ["b"], { kind: "split", band: "Bo" }),
  lot("e", 2002, ["c"]),
  lot("f", 2004, ["c", "d"], { kind: "blend" }),
]);
const kin = kinOf(family);
const sorted = (ids: Iterable<string> | null) => [...(ids ?? [])].sort();

describe("following a lot", () => {
  it("leads back to its founders and forward to all that came of it", () => {
    expect(sorted(followed("f", kin.parents))).toEqual(["a", "b", "c", "d", "f"]);
    expect(sorted(followed("b", kin.children))).toEqual(["b", "c", "d", "e", "f"]);
    expect(sorted(followed("e", kin.children))).toEqual(["e"]);
  });

  it("finds what two lots share, and where they parted", () => {
    const { all, nearest } = sharedAncestors(kin, "e", "d");
    expect(sorted(all)).toEqual(["a", "b"]);
    expect(nearest).toEqual(["b"]);
    expect(sharedAncestors(kin, "c", "f").nearest).toEqual(["c"]);
    const apart = kinOf(tree([lot("x", 1990, []), lot("y", 1990, [])]));
    expect(sharedAncestors(apart, "x", "y").all.size).toBe(0);
  });

  it("keeps in the picture what was asked, and everything where nothing was", () => {
    expect(traced(kin, null, "back", null)).toBeNull();
    expect(traced(kin, "not here", "back", null)).toBeNull();
    expect(sorted(traced(kin, "d", "back", null))).toEqual(["a", "b", "d"]);
    expect(sorted(traced(kin, "d", "forward", null))).toEqual(["d", "f"]);
    expect(sorted(traced(kin, "e", "shared", "d"))).toEqual(["a", "b", "c", "d", "e"]);
    expect(sorted(traced(kin, "e", "shared", null))).toEqual(["a", "b", "c", "e"]);
  });

  it("ends in a ring, and passes over a parent that is not there", () => {
    const ring = kinOf(tree([lot("a", 1990, ["b"]), lot("b", 1991, ["a", "lost"])]));
    expect(sorted(followed("a", ring.parents))).toEqual(["a", "b"]);
  });
});

describe("the address", () => {
  it("comes back as it was written", () => {
    for (const asked of [
      { lot: null, way: "back", with: null, zoom: 1 },
      { lot: "x", way: "forward", with: null, zoom: 3.5 },
      { lot: "x", way: "shared", with: "y", zoom: 1 },
    ] as const) {
      const text = stemAddress("/lineage", asked);
      expect(readStemAddress(Object.fromEntries(new URLSearchParams(text.split("?")[1] ?? "")))).toEqual(asked);
    }
    expect(stemAddress("/lineage", { lot: null, way: "back", with: null, zoom: 1 })).toBe("/lineage");
  });

  it("takes what it does not understand as if it were not there", () => {
    const usual = { lot: null, way: "back", with: null, zoom: 1 };
    expect(readStemAddress({ zoom: "-4", way: "sideways", lot: "" })).toEqual(usual);
    expect(readStemAddress({ lot: ["a", "b"], zoom: "1e9" })).toEqual(usual);
  });
});

describe("the keyboard and the pointer", () => {
  const picture = layStems(orderTree(family), { width: 900, zoom: 1, selected: null, compared: null, traced: null });
  const at = (id: string) => {
    const found = picture.lots.find(({ grown }) => grown.lot.id === id);
    if (!found) throw new Error(id);
    return found;
  };

  it("lead left to a parent, right to the child on the same lane, to the ends, and down to the next band", () => {
    expect(neighbour(picture, kin, at("c"), "ArrowLeft")).toBe("b");
    expect(neighbour(picture, kin, at("b"), "ArrowRight")).toBe("c");
    expect(neighbour(picture, kin, at("a"), "ArrowLeft")).toBeNull();
    expect(neighbour(picture, kin, at("c"), "Home")).toBe("a");
    expect(neighbour(picture, kin, at("a"), "End")).toBe("f");
    expect(neighbour(picture, kin, at("b"), "ArrowDown")).toBe("d");
    expect(neighbour(picture, kin, at("b"), "x")).toBeNull();
  });

  it("lead through every lot by year with Page Down, and back with Page Up", () => {
    const walked = ["a"];
    for (let next: string | null = "a"; next; next = neighbour(picture, kin, at(next), "PageDown"))
      if (next !== "a") walked.push(next);
    expect(walked).toEqual(["a", "b", "d", "c", "e", "f"]);
    expect(neighbour(picture, kin, at("d"), "PageUp")).toBe("b");
    expect(neighbour(picture, kin, at("a"), "PageUp")).toBeNull();
  });

  it("find the lot that is nearest, within reach alone", () => {
    const { x, y } = at("d");
    expect(nearestLot(picture, x + 6, y - 5, 22)).toBe("d");
    expect(nearestLot(picture, x, y + 60, 22)).toBeNull();
  });

  it("pass over what is folded, and open a fold at the least zoom that parts it", () => {
    const chain = tree([
      lot("0", 1980, []),
      ...Array.from({ length: 40 }, (_, place) => lot(String(place + 1), 1981 + place, [String(place)])),
    ]);
    const asked = { width: 900, zoom: 1, selected: null, compared: null, traced: null };
    const far = layStems(orderTree(chain), asked);
    const [first] = far.lots;
    const [fold] = far.folds;
    if (!first || !fold) throw new Error("nothing is folded");
    expect(neighbour(far, kinOf(chain), first, "ArrowRight")).toBe("40");
    const zoom = zoomToOpen(far, fold, 1);
    expect(layStems(orderTree(chain), { ...asked, zoom }).folds).toEqual([]);
    expect(layStems(orderTree(chain), { ...asked, zoom: 1 }).folds).toHaveLength(1);
  });
});

describe("the tone", () => {
  it("spans the variety's own least and most", () => {
    const kept = (id: string, value: number) => lot(id, 1990, [], { kept: { low: value, high: value } });
    const lots = [kept("least", 0.82), kept("middle", 0.86), kept("most", 0.9)];
    const scale = toneScale(lots);
    expect(scale).toEqual({ low: 0.82, high: 0.9 });
    expect(lots.map((each) => toneOf(each, scale))).toEqual([0, 5, 10]);
    expect(toneOf(lot("x", 1990, [], { kept: null }), scale)).toBeNull();
    expect(toneScale([lot("x", 1990, [], { kept: null })])).toBeNull();
  });

  it("is one where the lots hardly differ", () => {
    const lots = [0.995, 1].map((value, place) => lot(String(place), 1990, [], { kept: { low: value, high: value } }));
    const scale = toneScale(lots);
    expect(lots.map((each) => toneOf(each, scale))).toEqual([8, 10]);
  });
});
