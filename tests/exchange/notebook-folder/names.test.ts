import { describe, expect, it } from "vitest";
import { added, changed, faultsOf, notebookOf, placesOf, small } from "./small-notebook";

describe("a name", () => {
  it("matches after trimming, Unicode NFC, folding blanks and ’ = '", () => {
    const texts = {
      ...small,
      "stewards.csv": "steward\nOrla O'Fénn\n",
      "grow_outs.csv": "grow_out,variety,parents\n",
      "lots.csv": "lot,variety,holder,kind\n Kale  1 ,Hollow Kale,Orla  O’Fe\u0301nn ,founder\n",
      "plants.csv": "",
      "tests.csv": "",
      "ledger.csv": "lot,date,kind,grams\nKale 1,2001,received,5\n",
    };
    const { "plants.csv": _plants, "tests.csv": _tests, ...rest } = texts;
    const { lots, ledger } = notebookOf(rest);
    expect(lots[0]?.cells).toMatchObject({ lot: "Kale 1", holder: "Orla O'Fénn" });
    expect(ledger[0]?.cells.lot).toBe("Kale 1");
  });

  it("that is nearly one here is answered with the one that was meant", () => {
    expect(
      faultsOf(changed("lots.csv", "Kale 1,Hollow Kale,Orla Fennwick", "Kale 1,Hollow Kale,Orla Fenwick")),
    ).toEqual(['lots.csv:2: holder: "Orla Fenwick" is no steward here; did you mean Orla Fennwick?']);
    expect(faultsOf(changed("lots.csv", "Kale 1,Hollow Kale", "Kale 1,hollow kale"))).toEqual([
      'lots.csv:2: variety: "hollow kale" is no variety here; did you mean Hollow Kale?',
    ]);
  });

  it("that stands nowhere is a fault of each line that refers to it", () => {
    const texts = added(
      "ledger.csv",
      "Kohl 9,2003,received,1,,",
      changed("tests.csv", "T1,Pea 3,2002-02-01,2", "T1,Zwiebel 9,2002-02-01,2"),
    );
    expect(placesOf(texts)).toEqual(["tests.csv:4", "ledger.csv:5"]);
  });

  it("stands once in its file", () => {
    expect(faultsOf(added("stewards.csv", "Orla  Fennwick,,grower"))).toEqual([
      'stewards.csv:4: steward: "Orla Fennwick" stands in line 2 too; give each its own line and name',
    ]);
  });

  it("may stand in the registry already", () => {
    const existing = notebookOf(small);
    const lots = { "lots.csv": "lot,variety,holder,kind,from\nPea 6,Bent Pea,Orla Fennwick,harvest,P\n" };
    expect(placesOf(lots)).toEqual(["lots.csv:2", "lots.csv:2", "lots.csv:2"]);
    expect(placesOf(lots, existing)).toEqual([]);
  });

  it("that a row has lost is not missed again where others refer to it", () => {
    expect(placesOf(changed("lots.csv", "Pea 3,Bent Pea", ",Bent Pea"))).toEqual(["lots.csv:6"]);
    expect(placesOf(changed("grow_outs.csv", "K,Hollow Kale", ",Hollow Kale"))).toEqual(["grow_outs.csv:2"]);
    expect(placesOf(changed("stewards.csv", "Orla Fennwick,", ","))).toEqual(["stewards.csv:2"]);
    expect(placesOf(changed("varieties.csv", "Bent Pea,", ","))).toEqual(["varieties.csv:3"]);
  });

  it("that is taken leaves the references to the one it should have been alone", () => {
    expect(placesOf(changed("lots.csv", "Pea 3,Bent Pea", "Pea 2,Bent Pea"))).toEqual(["lots.csv:6"]);
  });

  it("of the other side in the ledger may be any", () => {
    expect(faultsOf(added("ledger.csv", "Pea 3,2003,given,1,a swap table,"))).toEqual([]);
  });
});

describe("a lot number with a colon or semicolon", () => {
  it("is found in a list of lots", () => {
    const texts = changed("lots.csv", "Pea 1,Bent Pea", "Pea:1;a,Bent Pea");
    const blend = changed("lots.csv", "Pea 3:0.5;Pea 1:0.5", "Pea 3:0.5;Pea:1;a:0.5", texts);
    const whole = changed("grow_outs.csv", "Pea 1:0.4;Pea 2:0.6", "Pea:1;a", blend);
    expect(faultsOf(whole)).toEqual([]);
    expect(notebookOf(whole).growOuts[1]?.cells.parents).toEqual([{ lot: "Pea:1;a", share: 1 }]);
  });
});

describe("a crop", () => {
  it("may be named by key or common name in any letter case", () => {
    const texts = changed("varieties.csv", "Marsh Spinach,spinach", "Marsh Spinach,SPINACH");
    expect(notebookOf(texts).varieties[2]?.cells.crop).toBe("spinach");
    const common = changed("varieties.csv", "Hollow Kale,kale", 'Hollow Kale,"bean, RUNNER"');
    expect(notebookOf(common).varieties[0]?.cells.crop).toBe("bean-runner");
  });
});
