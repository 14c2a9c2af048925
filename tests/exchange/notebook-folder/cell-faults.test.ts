import { describe, expect, it } from "vitest";
import { added, changed, faultsOf, placesOf, small, warningsOf } from "./small-notebook";

describe("the small notebook", () => {
  it("has neither faults nor warnings", () => {
    expect(faultsOf(small)).toEqual([]);
    expect(warningsOf(small)).toEqual([]);
  });
});

describe("a cell", () => {
  it.each([
    ["grow_outs.csv", ",100,60,,4,2,3,plants", ",100,1e2,,4,2,3,plants", "plants_standing", /exponent/],
    ["grow_outs.csv", ",100,60,,4,2,3,plants", ",100,60 plants,,4,2,3,plants", "plants_standing", /unit.*as 60$/],
    ["grow_outs.csv", ",100,60,,4,2,3,plants", ",100,60.5,,4,2,3,plants", "plants_standing", /not a whole number/],
    ["grow_outs.csv", ",100,60,,4,2,3,plants", ",0,60,,4,2,3,plants", "seeds_sown", /too small/],
    ["grow_outs.csv", ",100,60,,4,2,3,plants", ",9999999999,60,,4,2,3,plants", "seeds_sown", /too large/],
    ["grow_outs.csv", ",20,cv 0.5", ",20,cv -0.5", "seed_shares", /equal, plants, or cv/],
    ["grow_outs.csv", ",20,cv 0.5", ",20,even", "seed_shares", /equal, plants, or cv/],
    [
      "grow_outs.csv",
      "K,Hollow Kale,Orla Fennwick,2001-05",
      "K,Hollow Kale,Orla Fennwick,May-01",
      "sown",
      /spreadsheet/,
    ],
    ["lots.csv", "1999,founder,,0.9", "1999,founder,,1.2", "inbreeding", /0 to 1/],
    ["lots.csv", "1999,founder,,0.9", "1999,founder,,NaN", "inbreeding", /not a number/],
    ["lots.csv", "1998~", "about 1998", "year", /not a date; write it as 1987/],
    [
      "lots.csv",
      "Pea 4,Bent Pea,The Seed Shelf,2001,split",
      "Pea 4,Bent Pea,The Seed Shelf,2001,Split",
      "kind",
      /did you mean split/,
    ],
    ["plants.csv", "K,3,B,no,", "K,3,B,maybe,", "kept", /yes or no/],
    ["plants.csv", "K,3,B,no,,3", "K,3,B,no,-1,3", "seed_grams", /0 or more/],
    ["tests.csv", "2,25,5,20", "2,0,5,20", "sown", /1 or more/],
    ["tests.csv", "2,25,5,20", "2,25,5,-2", "normal", /0 or more/],
    ["ledger.csv", "given,20", "given,-20", "grams", /above 0/],
    ["ledger.csv", "given,20", "given,0", "grams", /above 0/],
    ["ledger.csv", "given,20", 'given,"1,020"', "grams", /thousands mark/],
    ["ledger.csv", "given,20", "lent,20", "kind", /write received/],
    ["ledger.csv", "given,20", "given,", "grams", /nothing stands here/],
    ["stewards.csv", "Low Barrow,grower", "Low Barrow,wizard", "kind", /grower, library or genebank/],
  ])("of %s is refused in its column: %s -> %s", (file, from, to, column, words) => {
    const faults = faultsOf(changed(file, from, to));
    expect(faults).toHaveLength(1);
    expect(faults[0]).toMatch(new RegExp(`^${file.replace(".", "\\.")}:\\d+: ${column}: `));
    expect(faults[0]).toMatch(words);
  });

  it("with a comma that shifts all that follow is refused as a row", () => {
    // 1,063.2 without quote marks would otherwise be read as 1 gram.
    expect(faultsOf(changed("ledger.csv", "harvested,100,,", "harvested,1,063.2,,"))).toEqual([
      expect.stringMatching(/^ledger\.csv:2: 7 cells stand here under 6 columns/),
    ]);
  });

  it("with a number that a spreadsheet wrote with a whole part alone is a count", () => {
    expect(faultsOf(changed("tests.csv", "2,25,5,20", "2,25.0,5,20"))).toEqual([]);
  });

  it("may be left empty where the column is open", () => {
    expect(
      faultsOf(changed("lots.csv", "Spinach 1,Marsh Spinach,Orla Fennwick,1999", "Spinach 1,Marsh Spinach,,")),
    ).toEqual([]);
  });

  it("that holds line breaks gives one line of fault", () => {
    const [fault] = faultsOf(changed("lots.csv", "1998~", '"about\n1998"'));
    expect(fault).toBe('lots.csv:5: year: "about 1998" is not a date; write it as 1987, 1987-05, 1991~ or 198X');
  });
});

describe("a weighing", () => {
  it("may find nothing", () => {
    expect(faultsOf(added("ledger.csv", "Pea 3,2003,weighed,0,,"))).toEqual([]);
  });
});

describe("all faults of a line", () => {
  it("are listed", () => {
    const texts = changed("lots.csv", "1999,founder,,0.9", "then,founder,K,9");
    expect(placesOf(texts)).toEqual(["lots.csv:4", "lots.csv:4", "lots.csv:4"]);
  });
});
