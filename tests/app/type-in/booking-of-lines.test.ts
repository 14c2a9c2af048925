import { describe, expect, it } from "vitest";
import { bookingOfLines } from "@/app/type-in/_lines/booking-of-lines";
import { drawingOfLines } from "@/app/type-in/_lines/drawing-of-lines";
import { highestNumber, proposedNumbers, stemOf } from "@/app/type-in/_lines/lot-numbers";
import { proposedLineage } from "@/app/type-in/_lines/proposed-lineage";
import { readLines } from "@/app/type-in/_lines/typed-line";
import { ownerHere } from "@/lib/access/actor";
import { figuresOfVariety } from "@/lib/registry/figures/read-figures";
import { bookNotebookLines } from "@/lib/registry/notebook-typing/book-notebook-lines";
import { NotebookBookingSchema } from "@/lib/schemas/notebook-typing/notebook-booking";
import { parsed } from "@/lib/schemas/parsed";
import { emptyRegistry, granted } from "@/tests/setup/registry";
import { notebook, today, typed } from "./typed-lines";

const lines = readLines(typed(notebook), today);
const lineage = proposedLineage(lines);
const numbers = proposedNumbers(
  lineage.lots.map((lot) => lot.name),
  {},
  "Tallow",
  0,
);
const variety = { name: "Tallow Wren", crop: "maize-field", ownCrop: false };

describe("the lines on the screen", () => {
  it("are booked as they stand: five lines typed, one change set, right figures", async () => {
    const db = await emptyRegistry();
    const booking = granted(parsed(NotebookBookingSchema, bookingOfLines({ variety, holder: null, lines, numbers })));
    const { value } = granted(await bookNotebookLines(db, ownerHere(), booking));
    expect(value.made).toEqual({ lots: 3, growOuts: 3, entries: 1, tests: 1 });
    expect(value.keptInWords).toEqual([]);
    const lots = await db.read.lot.findMany({ orderBy: { id: "asc" }, include: { growOut: true } });
    expect(lots.map((lot) => [lot.number, lot.kind, lot.year])).toEqual([
      ["Tallow 1", "founder", null],
      ["Tallow 2", "harvest", "1994"],
      ["Tallow 3", "harvest", "1996"],
    ]);
    const [jar, , third] = lots;
    expect(jar?.yearWords).toBe("1994 or before");
    expect([third?.growOut?.plantsStanding, third?.growOut?.roguedBeforePollen, third?.growOut?.seedShares]).toEqual([
      80,
      3,
      "equal",
    ]);
    const figures = (await figuresOfVariety(db, value.varietyId)).get(third?.id ?? "");
    expect([figures?.gramsOnHand, figures?.lastTest?.germination]).toEqual([350, 0.9]);
    const failed = await db.read.growOut.findFirstOrThrow({ where: { sown: "2001" } });
    expect(failed.outcome).toContain("slugs");
    const words = await db.read.observation.findMany();
    for (const line of notebook.filter((each) => !each.includes("nothing"))) {
      expect(words.map((each) => each.words)).toContain(line);
    }
  });

  it("are drawn as they grow: parents, years, and a size only where it is told", () => {
    const mates = { sexes: "hermaphrodite" as const, selfingRate: 0, selfIncompatible: false };
    const drawn = drawingOfLines(lineage, numbers, [], mates);
    const [jar, first, second] = drawn;
    expect([jar?.years, first?.parents, second?.parents[0]?.id]).toEqual([
      null,
      [{ id: "my aunt's jar", share: 1 }],
      "1994",
    ]);
    expect(first?.effectiveSize).toBeNull();
    // 4·Nf·Nm / (Nm + 3·Nf) with 60 seed parents among 77 that shed pollen: 18480 / 257 = 71.906..., by hand
    expect(second?.effectiveSize?.low).toBeCloseTo(18480 / 257, 9);
  });
});

describe("lot numbers", () => {
  it("go on from the highest of their stem, and leave what a person wrote", () => {
    expect(stemOf("Tallow Wren", [])).toBe("Tallow");
    expect(stemOf("Tallow Wren", ["Legi 4", "Legi 12", "Odd"])).toBe("Legi");
    expect(highestNumber("Legi", ["Legi 4", "legi 12", "Legio 40", "Legi x"])).toBe(12);
    expect(proposedNumbers(["a", "b", "c"], { b: "Legi 13" }, "Legi", 12)).toEqual({
      a: "Legi 14",
      b: "Legi 13",
      c: "Legi 15",
    });
  });
});
