import { describe, expect, it } from "vitest";
import { cropList } from "@/lib/science/crops/crop-profile";
import { cropsByWord } from "@/lib/science/crops/crops-by-word";
import otherNames from "@/lib/science/crops/other-names.json";

const keys = (written: string) => cropsByWord(written, cropList()).map((crop) => crop.key);

describe("a crop by an everyday word", () => {
  // which crops are so called: everyday English of Britain and America, by the list's own names and Latin names
  it.each([
    ["maize", ["maize-field", "maize-sweet", "maize-pop"]],
    ["Corn", ["maize-field", "maize-sweet", "maize-pop"]],
    ["sweet corn", ["maize-sweet"]],
    ["popcorn", ["maize-pop"]],
    ["runner beans", ["bean-runner"]],
    ["Broad beans", ["bean-broad"]],
    ["zucchini", ["squash-pepo"]],
    ["pumpkins", ["squash-pepo"]],
    ["beetroot", ["beet"]],
    ["swede", ["rutabaga"]],
    ["wheat", ["wheat-bread", "wheat-durum"]],
    ["tomatoes", ["tomato", "tomato-currant"]],
    ["cilantro", ["coriander"]],
  ])("%s", (written, expected) => expect(keys(written)).toEqual(expected));

  it("is not offered where the word is none of theirs or says too little", () => {
    for (const written of ["", "...", "hedge-foot vetch", "sea kale beet", "a", "and"])
      expect(keys(written)).toEqual([]);
    // common, runner, lima, yardlong, mung and broad
    expect(keys("bean")).toHaveLength(6);
    expect(cropsByWord("bean", cropList(), 5)).toEqual([]);
  });

  it("leads only to crops of the list", () => {
    const known = new Set(cropList().map((crop) => crop.key));
    expect(
      Object.values(otherNames)
        .flat()
        .filter((key) => !known.has(key)),
    ).toEqual([]);
  });
});
