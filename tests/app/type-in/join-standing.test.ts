import { describe, expect, it } from "vitest";
import { refusalPlaces } from "@/app/type-in/_components/refusals-of-booking";
import { bookingOfLines } from "@/app/type-in/_lines/booking-of-lines";
import { proposedLineage } from "@/app/type-in/_lines/proposed-lineage";
import { readLines } from "@/app/type-in/_lines/typed-line";
import { refusal } from "@/lib/science/outcome";
import { today, typed } from "./typed-lines";

const standing = [
  { id: "a", number: "Quince 2", years: { first: 1994, last: 1994 } },
  { id: "b", number: "Quince 3", years: { first: 1996, last: 1996 } },
  { id: "c", number: "Quince 9", years: null },
];
const parents = (words: string[]) => {
  const lineage = proposedLineage(readLines(typed(words), today, standing));
  return lineage.growOuts.map((growOut) => growOut.parents.map((parent) => [parent.lot, parent.assumed]));
};

describe("lines of a variety whose lots stand already", () => {
  it("go on from the youngest harvested before, marked as assumed, in place of unknown seed", () => {
    expect(parents(["2005, 40 plants, kept from 30"])).toEqual([[["lot:b", true]]]);
    expect(parents(["1995, 40 plants, kept from 30"])).toEqual([[["lot:a", true]]]);
    const lineage = proposedLineage(readLines(typed(["2005, 40 plants, kept from 30"]), today, standing));
    expect(lineage.lots.map((lot) => lot.kind)).toEqual(["harvest"]);
  });

  it("go on from the year that a line names, and from unknown seed where that year is not there", () => {
    expect(parents(["2005, sown from the 1994 seed, 25 plants"])).toEqual([[["lot:a", true]]]);
    expect(parents(["2005, sown from the 1988 seed, 25 plants"])[0]?.[0]?.[0]).not.toContain("lot:");
  });

  it("lean on lines before them first", () => {
    const [, second] = parents(["2005, 40 plants, kept from 30", "2006, last year's seed, 20 plants"]);
    expect(second).toEqual([["2005", false]]);
  });
});

describe("a booking that is refused", () => {
  it("says each fault at its line, its lot's number or its field, and all of them at the head", () => {
    const lines = readLines(typed(["1994, 40 plants, kept from 12"]), today);
    const booking = bookingOfLines({
      variety: { name: "X", crop: "pea", ownCrop: false },
      holder: null,
      lines,
      numbers: {},
    });
    const places = refusalPlaces(booking, [
      refusal("a", ["growOuts", 0, "seedParents"], 99, "is too many", "write fewer"),
      refusal("b", ["lots", 1, "number"], "1994", "is taken", "write another"),
      refusal("c", ["variety", "name"], "X", "is taken", "write another"),
    ]);
    expect(places.ofLine[0]).toEqual(["99 is too many; write fewer."]);
    expect(Object.keys(places.ofLot)).toEqual(["1994"]);
    expect(places.ofField["variety.name"]).toHaveLength(1);
    expect(places.summary.map((each) => each.sentence.slice(0, 8))).toEqual(["Line 1: ", "Lot 1994", '"X" is t']);
  });
});
