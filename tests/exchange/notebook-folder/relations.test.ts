import { describe, expect, it } from "vitest";
import { added, changed, faultsOf, placesOf, small, warningsOf } from "./small-notebook";

describe("the parents of a grow-out", () => {
  it.each([
    ["Pea 1:0.4;Pea 2:0.5", /0\.9 is the sum of the shares/],
    ["Pea 1:0.4;Pea 2", /nothing stands for a share/],
    ["Pea 1:0.4;Pea 1:0.6", /"Pea 1" stands twice/],
    ["Pea 1:0.4;Pea 2:half", /"half" is not a number/],
    ["Pea 1:-0.4;Pea 2:1.4", /no share/],
    ["Pea 1:0.4", /0\.4 is the sum/],
    ["Pea 1:40%", /unit/],
    ["", /nothing stands here/],
  ])("may not be %s", (parents, words) => {
    const faults = faultsOf(changed("grow_outs.csv", "Pea 1:0.4;Pea 2:0.6", parents));
    expect(faults.length).toBeGreaterThan(0);
    expect(faults.join("\n")).toMatch(words);
    expect(faults.every((fault) => fault.startsWith("grow_outs.csv:3: parents: "))).toBe(true);
  });

  it.each(["Pea 1:0.4000004;Pea 2:0.6", "Pea 1", "Pea 1:1", "Pea 1 : 0.4 ; Pea 2 : 0.6", "Pea 1:0.4;Pea 2:0.6;"])(
    "may be %s",
    (parents) => {
      expect(faultsOf(changed("grow_outs.csv", "Pea 1:0.4;Pea 2:0.6", parents))).toEqual([]);
    },
  );

  it("of another variety of the crop are a cross, with a warning", () => {
    const texts = added(
      "varieties.csv",
      "Straight Pea,pea",
      changed("lots.csv", "Pea 2,Bent Pea", "Pea 2,Straight Pea"),
    );
    expect(faultsOf(texts)).toEqual([]);
    expect(warningsOf(texts)).toEqual([
      'warning: grow_outs.csv:3: parents: "Pea 2" is of another variety, Straight Pea: it is taken as a cross',
    ]);
  });

  it("may not be of another crop", () => {
    expect(placesOf(changed("grow_outs.csv", "2001-05,Spinach 1,", "2001-05,Kale 1,"))).toEqual(["grow_outs.csv:4"]);
  });
});

describe("where a lot came from", () => {
  it.each([
    ["founder,,0.9", "founder,K,0.9", /cannot stand for a founder/],
    ["2002,harvest,K", "2002,harvest,", /grow-out that it was harvested from/],
    ["2002,harvest,K", "2002,harvest,Kale 1", /is no grow-out here/],
    ["split,Pea 3", "split,P", /is no lot here/],
    ["split,Pea 3", "split,", /the lot that it is part of/],
    ["Pea 3:0.5;Pea 1:0.5", "Pea 3:0.5;Pea 1:0.6", /1\.1 is the sum/],
    ["Pea 3:0.5;Pea 1:0.5", "Pea 3:0.5;Kale 1:0.5", /another crop/],
    ["Pea 3:0.5;Pea 1:0.5", "", /the lots that were mixed/],
  ])("%s may not become %s", (from, to, words) => {
    const faults = faultsOf(changed("lots.csv", from, to));
    expect(faults).toEqual([expect.stringMatching(/^lots\.csv:\d+: from: /)]);
    expect(faults[0]).toMatch(words);
  });

  it("is not looked at where the kind has a fault", () => {
    expect(placesOf(changed("lots.csv", "2002,harvest,K", "2002,gathered,nowhere"))).toEqual(["lots.csv:3"]);
  });

  it("is never the lot itself or what came from it", () => {
    const self = changed("lots.csv", "split,Pea 3", "split,Pea 4");
    expect(faultsOf(self)).toEqual([expect.stringMatching(/^lots\.csv:7: from: "Pea 4" .*never its own ancestor/)]);
    // Pea 5 of 2002 came from Pea 3 of 2001: the line of the older lot closes the ring.
    const ring = changed("lots.csv", "2001,harvest,P,", "2001,split,Pea 5,");
    expect(placesOf(ring)).toEqual(["lots.csv:6"]);
    const sown = changed("grow_outs.csv", "Pea 1:0.4;Pea 2:0.6", "Pea 1:0.4;Pea 5:0.6");
    expect(placesOf(sown)).toEqual(["grow_outs.csv:3"]);
  });

  it("is reported once for each ring", () => {
    const two = changed(
      "lots.csv",
      "split,Pea 3",
      "split,Pea 4",
      changed("lots.csv", "2002,harvest,K,", "2002,split,Kale 2,"),
    );
    expect(placesOf(two)).toEqual(["lots.csv:3", "lots.csv:7"]);
  });
});

describe("a lot whose variety does not go with what it came from", () => {
  it("is at fault itself, and not what came from it", () => {
    // Pea 4 is a split of Pea 3, and Pea 5 a blend with it.
    expect(placesOf(changed("lots.csv", "Pea 3,Bent Pea", "Pea 3,Hollow Kale"))).toEqual(["lots.csv:6"]);
  });
});

describe("inbreeding", () => {
  it("stands for founders alone", () => {
    const faults = faultsOf(changed("lots.csv", "2002,harvest,K,", "2002,harvest,K,0.1"));
    expect(faults).toEqual([expect.stringMatching(/^lots\.csv:3: inbreeding: .*founder lots alone/)]);
  });
});

describe("counts of plants", () => {
  const kale = "2001-05,Kale 1,100,60,,4,2,3,plants";
  const spinach = "100,80,30,5,,20,cv 0.5";
  it.each([
    // 60 standing less 4 rogued before pollen: 56 shed pollen.
    [kale, kale.replace(",3,plants", ",57,equal"), "seed_parents"],
    [kale, kale.replace(",4,2,", ",50,11,"), "rogued_after_pollen"],
    [kale, kale.replace(",4,2,", ",61,,"), "rogued_before_pollen"],
    // 80 standing less 5 rogued less 30 males: 45 females.
    [spinach, spinach.replace(",20,cv", ",46,cv"), "seed_parents"],
    [spinach, spinach.replace(",30,5", ",76,5"), "males_standing"],
  ])("%s may not become %s", (from, to, column) => {
    const faults = faultsOf(changed("grow_outs.csv", from, to));
    expect(faults).toEqual([expect.stringMatching(new RegExp(`^grow_outs\\.csv:\\d: ${column}: `))]);
  });

  it.each([
    [kale, kale.replace(",3,plants", ",56,equal")],
    [kale, kale.replace(",4,2,", ",50,10,")],
    [spinach, spinach.replace(",20,cv", ",45,cv")],
    [spinach, spinach.replace("80,30,5", ",30,5")],
  ])("%s may become %s", (from, to) => {
    expect(faultsOf(changed("grow_outs.csv", from, to))).toEqual([]);
  });

  it("are held against what the calculation takes where a lot came of them", () => {
    // A coefficient of variation among 20 is at most √19 = 4.36.
    const impossible = changed("grow_outs.csv", "20,cv 0.5", "20,cv 4.4");
    expect(faultsOf(impossible)).toEqual([expect.stringMatching(/^grow_outs\.csv:4: seed_shares: /)]);
    expect(faultsOf(changed("grow_outs.csv", "20,cv 0.5", "20,cv 4.35"))).toEqual([]);
    // Kale cannot self, so that one plant alone sets no seed.
    const alone = changed("grow_outs.csv", ",60,,4,2,3,plants", ",1,,,,1,equal");
    expect(placesOf(alone)).toEqual(["grow_outs.csv:2"]);
    const selfed = (small["grow_outs.csv"] ?? "")
      .replaceAll("\n", ",\n")
      .replace("seed_shares,", "seed_shares,selfing_rate");
    expect(placesOf({ ...small, "grow_outs.csv": selfed.replace("3,plants,", "3,plants,0.2") })).toEqual([
      "grow_outs.csv:2",
    ]);
  });

  it("may be anything where no lot came of them", () => {
    const failed = added("grow_outs.csv", "F,Marsh Spinach,,2003,Spinach 1,10,0,0,,,0,cv 9");
    expect(faultsOf(failed)).toEqual([]);
  });
});

describe("seed shares by plants", () => {
  it.each([
    ["K,4,B,yes,6,9", "K,4,B,yes,,9", /3 have none; write seed_grams of plant 4/],
    ["K,4,B,yes,6,9", "K,4,B,no,6,9", /needs 3 kept plants.*has 2/],
    ["K,3,B,no,,3", "K,3,B,yes,1,3", /needs 3 kept plants.*has 4/],
  ])("need %s, not %s", (from, to, words) => {
    const faults = faultsOf(changed("plants.csv", from, to));
    expect(faults).toEqual([expect.stringMatching(/^grow_outs\.csv:2: seed_shares: /)]);
    expect(faults[0]).toMatch(words);
  });

  it.each([
    ["K,4,B,yes,6,9", "K,4,B,perhaps,6,9"],
    ["K,4,B,yes,6,9", "K,4,B,yes,six,9"],
    ["K,4,B,yes,6,9", "Q,4,B,yes,6,9"],
    ["K,4,B,yes,6,9", "K,2,B,yes,6,9"],
    ["K,4,B,yes,6,9", "K,,B,yes,6,9"],
    ["K,4,B,yes,6,9", "K,4,B,yes,6,9,9"],
  ])("are not missed again where a plant's line has a fault: %s -> %s", (from, to) => {
    expect(placesOf(changed("plants.csv", from, to))).toEqual(["plants.csv:5"]);
  });

  it("may all be nothing only where no lot came of it", () => {
    const none = changed(
      "plants.csv",
      "yes,4.5",
      "yes,0",
      changed("plants.csv", "yes,2", "yes,0", changed("plants.csv", "yes,6", "yes,0")),
    );
    expect(placesOf(none)).toEqual(["grow_outs.csv:2"]);
  });
});

describe("a plant", () => {
  it("stands once in its grow-out", () => {
    expect(faultsOf(added("plants.csv", "K,3,C,no,,1"))).toEqual([
      expect.stringMatching(/^plants\.csv:6: plant: "3" of K stands in line 4 too/),
    ]);
    expect(faultsOf(added("plants.csv", "P,3,C,no,,1"))).toEqual([]);
  });
});
