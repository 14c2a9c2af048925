import { expect, test } from "vitest";
import { type SeedToTellOf, toldInWords, whatToSay } from "@/lib/registry/transfers/what-to-say";

const squash: SeedToTellOf = {
  seed: { crop: "squash-maxima", treatment: null },
  ...{ matingSystem: "outcrossing", pollinationVector: "insects (bees)", clonal: false },
  ...{ plantsWanted: null, plantsMin: 12, plantsRecommendedMax: 40 },
  ...{ isolationWantedM: null, isolationHomeMinM: 400, isolationHomeMaxM: 800 },
  ...{ isolationGrade: "open", treatment: null, tested: false },
};

test("says whether it crosses, how many plants, how far, what can hurt, and that nothing is promised", () => {
  const said = new Map(whatToSay(squash).map(({ key, words }) => [key, words]));
  expect(said.get("crossing")).toBe("It crosses with its own kind by insects.");
  expect(said.get("plants")).toBe(
    "To keep it, grow at least 12 plants, better 40, and take seed of all that are true.",
  );
  expect(said.get("isolation")).toBe("Keep it at least 400 m from others of its kind in flower, 800 m are ample.");
  expect(said.get("may-have-crossed")).toBe("It may have crossed: it flowered open to other pollen.");
  expect(said.get("treatment")).toBe("Whether it was ever treated is not on record.");
  expect([...said.keys()]).toEqual(
    expect.arrayContaining(["untested", "no-promise", "odd", "bring-back", "local-rule"]),
  );
});

test("what can hurt must be said; the rest may be left", () => {
  const must = (of: SeedToTellOf) =>
    whatToSay(of)
      .filter((saying) => saying.must)
      .map((saying) => saying.key);
  expect(must(squash)).toEqual(["caution-bitter-fruit"]);
  expect(must({ ...squash, seed: { crop: "pea", treatment: "chemical", substance: "thiram" } })).toEqual([
    "caution-treated",
  ]);
  expect(must({ ...squash, seed: { crop: "pea" } })).toEqual([]);
});

test("the variety's own numbers go before the crop's, and what is not known is not said", () => {
  const own = new Map(
    whatToSay({ ...squash, plantsWanted: 25, isolationWantedM: 600 }).map((each) => [each.key, each.words]),
  );
  expect(own.get("plants")).toContain("25 plants or more");
  expect(own.get("isolation")).toContain("600 m or more");
  const bare = whatToSay({
    ...squash,
    ...{
      matingSystem: null,
      plantsMin: null,
      isolationHomeMinM: null,
      isolationGrade: "controlled",
      treatment: "none",
    },
    ...{ seed: { crop: "pea" }, tested: true },
  }).map((each) => each.key);
  expect(bare).toEqual(["treatment", "no-promise", "odd", "bring-back", "keeper", "local-rule"]);
});

test("selfers, mixed crops, separate sexes and what is kept by division are told apart", () => {
  const crossing = (matingSystem: string, clonal = false) =>
    whatToSay({ ...squash, matingSystem, clonal, pollinationVector: "wind" }).find((each) => each.key === "crossing")
      ?.words;
  expect(crossing("selfing")).toBe("It sets seed with its own pollen and crosses seldom.");
  expect(crossing("mixed")).toContain("with its own pollen and with that of others by wind");
  expect(crossing("dioecious")).toContain("Male and female are different plants");
  expect(crossing("clonal", true)).toContain("kept by division");
});

test("what was ticked is kept in the order of the list, then what else was said; nothing said is null", () => {
  const sayings = whatToSay(squash);
  expect(toldInWords(sayings, ["local-rule", "crossing", "no-such"], "sow it in May")).toBe(
    "It crosses with its own kind by insects.\nCheck your local rule on passing seed on and on growing it.\nsow it in May",
  );
  expect(toldInWords(sayings, [], null)).toBeNull();
});
