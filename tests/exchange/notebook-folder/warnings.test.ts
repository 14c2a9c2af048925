import { describe, expect, it } from "vitest";
import { added, changed, faultsOf, notebookOf, small, warningsOf } from "./small-notebook";

/** One more column at the end of a file, empty in every row. */
function withColumn(file: string, column: string): Record<string, string> {
  const [header, ...rows] = (small[file] ?? "").trimEnd().split("\n");
  return { ...small, [file]: `${[`${header},${column}`, ...rows.map((row) => `${row},`)].join("\n")}\n` };
}

function warned(texts: Record<string, string>): string[] {
  expect(faultsOf(texts)).toEqual([]);
  return warningsOf(texts);
}

describe("a warning, never a fault, is given where", () => {
  it("a lot was sown before it was harvested", () => {
    expect(
      warned(
        changed("grow_outs.csv", "S,Marsh Spinach,Orla Fennwick,2001-05", "S,Marsh Spinach,Orla Fennwick,1998-05"),
      ),
    ).toEqual(["warning: grow_outs.csv:4: sown: Spinach 1 was sown in 1998-05, before it was harvested (1999)"]);
    const texts = added("ledger.csv", "Pea 1,1997-03,received,5,,\nPea 1,1998-03,sown,1,,");
    expect(warned(texts)).toEqual([
      "warning: ledger.csv:6: date: Pea 1 was sown in 1998-03, before it was harvested (1999)",
    ]);
  });

  it("a lot was harvested before its plants were sown", () => {
    expect(warned(changed("lots.csv", "2002,harvest,K", "2000,harvest,K"))).toEqual([
      "warning: lots.csv:3: year: was harvested in 2000, before K was sown (2001-05)",
    ]);
  });

  it("seed weighs ten times more or less than the crop's", () => {
    // Peas: 3 to 7 seeds a gram in the crop list, so 143 to 333 g a thousand, and ten times either way.
    const texts = withColumn("lots.csv", "thousand_seed_grams");
    const weight = (grams: string) =>
      warned(changed("lots.csv", "1999,founder,,0.9,", `1999,founder,,0.9,${grams}`, texts));
    expect(weight("250")).toEqual([]);
    expect(weight("14.3")).toEqual([]);
    expect(weight("14.2")).toEqual([
      expect.stringMatching(/^warning: lots\.csv:4: thousand_seed_grams: 14\.2 g .*Pea/),
    ]);
    expect(weight("34000")).toHaveLength(1);
  });

  it("more was weighed than the balance says by over 5 %", () => {
    expect(warned(added("ledger.csv", "Pea 3,2003,weighed,84,,"))).toEqual([]);
    expect(warned(added("ledger.csv", "Pea 3,2003,weighed,84.1,,"))).toEqual([
      "warning: ledger.csv:5: grams: 84.1 g were weighed where 80 g should have been left",
    ]);
    expect(warned(added("ledger.csv", "Pea 1,2003,weighed,84.1,,"))).toEqual([]);
  });

  it("single plants gave more than twice what was harvested", () => {
    // Plants of K gave 12.5 g.
    expect(warned(added("ledger.csv", "Kale 2,2002,harvested,6.3,,"))).toEqual([]);
    expect(warned(added("ledger.csv", "Kale 2,2002,harvested,6.2,,"))).toEqual([
      expect.stringMatching(/^warning: grow_outs\.csv:2: seed_shares: .*12\.5 g of seed, and 6\.2 g were harvested$/),
    ]);
  });

  it("males are counted in a crop that has none apart", () => {
    expect(warned(changed("grow_outs.csv", "100,80,,,,20,equal", "100,80,7,,,20,equal"))).toEqual([
      expect.stringMatching(/^warning: grow_outs\.csv:3: males_standing: 7 is kept and not used/),
    ]);
  });

  it("more plants stood than seeds were sown", () => {
    expect(warned(changed("grow_outs.csv", "100,80,,,,20,equal", "70,80,,,,20,equal"))).toHaveLength(1);
  });

  it("a grow-out says why no seed came, and a lot came of it", () => {
    const texts = withColumn("grow_outs.csv", "outcome");
    expect(warned(texts)).toEqual([]);
    expect(warned(changed("grow_outs.csv", "20,equal,", "20,equal,failed: hail", texts))).toEqual([
      expect.stringMatching(/^warning: grow_outs\.csv:3: outcome: /),
    ]);
  });

  it("a crop is not in the list, with the one that was meant", () => {
    const texts = changed("varieties.csv", "Bent Pea,pea", "Bent Pea,hedge-foot vetch");
    expect(warned(texts)).toEqual([
      expect.stringMatching(/^warning: varieties\.csv:3: crop: "hedge-foot vetch" is not/),
    ]);
    expect(notebookOf(texts).varieties[1]?.cells.crop).toBe("hedge-foot vetch");
    const slip = changed("varieties.csv", "Marsh Spinach,spinach", "Marsh Spinach,spinnach");
    expect(warningsOf(slip)[0]).toMatch(/did you mean spinach\?$/);
    const everyday = changed("varieties.csv", "Bent Pea,pea", "Bent Pea,wheat");
    expect(warningsOf(everyday)[0]).toMatch(/did you mean wheat-bread or wheat-durum\?$/);
  });
});
