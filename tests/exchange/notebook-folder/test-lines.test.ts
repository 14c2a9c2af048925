import { describe, expect, it } from "vitest";
import { added, changed, faultsOf, notebookOf, placesOf, small } from "./small-notebook";

describe("the lines of one test", () => {
  it("agree on the lot: the one that says otherwise is at fault, wherever it stands", () => {
    const first = changed("tests.csv", "T1,Pea 3,2002-02-01,1,25,5", "T1,Pea 4,2002-02-01,1,25,5");
    expect(faultsOf(first)).toEqual([expect.stringMatching(/^tests\.csv:2: lot: "Pea 4" .*they say Pea 3$/)]);
  });

  it("agree on the date", () => {
    expect(placesOf(changed("tests.csv", "2002-02-01,2", "2002-02-02,2"))).toEqual(["tests.csv:4"]);
  });

  it("agree on the seeds sown in a replicate", () => {
    const faults = faultsOf(changed("tests.csv", "1,25,10,12", "1,50,10,12"));
    expect(faults).toEqual([expect.stringMatching(/^tests\.csv:3: sown: 50 .*they say 25$/)]);
  });

  it("may each say another number for another replicate", () => {
    expect(faultsOf(changed("tests.csv", "2,25,5,20", "2,50,5,20"))).toEqual([]);
  });
});

describe("a replicate's day", () => {
  it("stands once", () => {
    expect(placesOf(changed("tests.csv", "1,25,10,12", "1,25,5,12"))).toEqual(["tests.csv:3"]);
    expect(placesOf(changed("tests.csv", "1,25,10,12", "1,25,5.0,12"))).toEqual(["tests.csv:3"]);
  });

  it("that nobody wrote down may stand for several counts", () => {
    const texts = changed("tests.csv", "1,25,10,12", "1,25,,12", changed("tests.csv", "1,25,5,10", "1,25,,10"));
    expect(faultsOf(texts)).toEqual([]);
  });
});

describe("the counts of a replicate", () => {
  it("may come to all that was sown", () => {
    // 10 + 12 + 1 + 2 of 25
    expect(faultsOf(small)).toEqual([]);
  });

  it("may not come to more, and the day that passes it is at fault", () => {
    expect(faultsOf(changed("tests.csv", "12,1,0,0,2", "12,1,0,0,3"))).toEqual([
      expect.stringMatching(
        /^tests\.csv:3: normal: 26 seeds were counted of 25 sown in replicate 1 of T1; .*never a running total$/,
      ),
    ]);
    const backwards = changed(
      "tests.csv",
      "1,25,5,10,,,,",
      "1,25,12,10,,,,",
      changed("tests.csv", "12,1,0,0,2", "12,1,0,0,3"),
    );
    expect(placesOf(backwards)).toEqual(["tests.csv:2"]);
  });

  it("are at fault in the line that alone says more than was sown", () => {
    expect(placesOf(changed("tests.csv", "1,25,5,10,,,,", "1,25,5,4000,,,,"))).toEqual(["tests.csv:2"]);
    expect(placesOf(changed("tests.csv", "12,1,0,0,2", "12,1,0,0,99"))).toEqual(["tests.csv:3"]);
  });

  it("are not summed where the seeds sown have a fault", () => {
    expect(placesOf(changed("tests.csv", "2,25,5,20", "2,0,5,20"))).toEqual(["tests.csv:4"]);
  });
});

describe("a later folder", () => {
  const existing = notebookOf(small);
  const header = (small["tests.csv"] ?? "").split("\n")[0];

  it("adds counts to a test of the registry", () => {
    expect(faultsOf({ "tests.csv": `${header}\nT1,Pea 3,2002-02-01,2,25,10,5,,,,\n` }, existing)).toEqual([]);
  });

  it("may not count more in all than was sown", () => {
    expect(placesOf({ "tests.csv": `${header}\nT1,Pea 3,2002-02-01,2,25,10,6,,,,\n` }, existing)).toEqual([
      "tests.csv:2",
    ]);
  });

  it("may not say another count for a day that the registry has", () => {
    const texts = changed("tests.csv", "2,25,5,20", "2,25,5,21");
    expect(placesOf(texts, existing)).toEqual(["tests.csv:4"]);
  });

  it("may not say another lot of a test of the registry", () => {
    const line = added("tests.csv", "T1,Pea 4,2002-02-01,3,25,5,1,,,,");
    expect(placesOf({ "tests.csv": line["tests.csv"] ?? "" }, existing)).toEqual(["tests.csv:5"]);
  });
});
