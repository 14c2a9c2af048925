import { describe, expect, it } from "vitest";
import { planOf, stripOf } from "@/app/grow-outs/_neighbours/drawn";
import { gradeFigure, gradeSentence, proposedReasons } from "@/app/grow-outs/_neighbours/grade-words";
import { noShareSentence, shareFigure, shareSentence } from "@/app/grow-outs/_neighbours/share-words";
import { overlapWords, reasonWords } from "@/app/grow-outs/_neighbours/verdict-words";
import { metricUnits } from "@/lib/display/units";
import { assessNeighbours } from "@/lib/registry/neighbours/assess-neighbours";
import type { NeighbourRow, NeighboursRead } from "@/lib/registry/neighbours/read-neighbours";

const plain = (text: string) => text.replaceAll("\u00a0", " ");

const neighbour = (id: string, more: Partial<NeighbourRow> = {}): NeighbourRow => ({
  id,
  what: "Aunt Wend's sweet maize",
  cropId: "c",
  cropKey: "maize-sweet",
  cropName: "Maize, sweet",
  latinName: "Zea mays",
  crossingGroup: "maize",
  varietyId: null,
  variety: null,
  plotId: null,
  plot: null,
  distanceMetres: 60,
  bearing: "NE",
  sizeM2: 36,
  plants: null,
  windowFirst: "2026-07-16",
  windowLast: "2026-07-25",
  howSure: "told",
  note: null,
  ...more,
});

function read(more: Partial<Omit<NeighboursRead, "ground">> & { looked?: string | null } = {}): NeighboursRead {
  const { looked = "2026-06-12", ...rest } = more;
  const silk = (moment: string, on: string) => ({
    id: moment,
    neighbourId: null,
    organ: "silk",
    moment,
    on,
    onFirst: on,
    onLast: on,
    note: null,
  });
  return {
    ground: {
      id: "g",
      name: "K1",
      varietyId: "v",
      variety: "Sallow Flint",
      seedCoat: null,
      isolationWantedM: null,
      neighboursLookedOn: looked,
      sown: null,
      plantsStanding: null,
      cropId: "o",
      cropKey: "maize-field",
      cropName: "Maize, field and flour",
      latinName: "Zea mays",
      crossingGroup: "maize",
      matingSystem: "outcrossing",
      clonal: false,
      wildRelatives: null,
      isolationHomeMinM: 50,
      isolationHomeMaxM: 200,
      isolationStewardMinM: 200,
      isolationStewardMaxM: 800,
      sources: null,
    },
    neighbours: [neighbour("a")],
    notes: [silk("first", "2026-07-10"), silk("last", "2026-07-20")],
    methods: [],
    plots: [{ id: "p", name: "Low strip", areaM2: 400 }],
    lots: [],
    ownInTables: [],
    ...rest,
  };
}

const assessed = (given: NeighboursRead) => assessNeighbours(given, { purpose: "stewardship", hemisphere: "north" });
const sentence = (given: NeighboursRead) => plain(gradeSentence(given, assessed(given), metricUnits));

describe("the grade in words", () => {
  it("gives the nearest pollen of its kind in metres and days: J6 and J8 of the trade", () => {
    expect(sentence(read())).toBe(
      "is what its lots may claim: other pollen of its kind may have come in. One source is too close by the distances to keep the variety (200 m to 800 m). " +
        "The nearest pollen that crosses stood 60 m off, in flower together on 5 of 11 days. Last looked 12 June 2026.",
    );
  });

  it("an empty list is not assessed while nobody looked, and isolated once somebody did", () => {
    const unseen = read({ looked: null, neighbours: [] });
    expect([gradeFigure(assessed(unseen)), sentence(unseen)]).toEqual([
      "not assessed",
      "Nobody wrote that they looked for neighbours. Not looked is not none found.",
    ]);
    const seen = read({ neighbours: [] });
    expect([gradeFigure(assessed(seen)), sentence(seen)]).toEqual([
      "isolated",
      "is what its lots may claim. Somebody looked and found no neighbour source. Last looked 12 June 2026.",
    ]);
  });

  it("names the method where pollen was shut out", () => {
    const methods = [{ id: "m", method: "bags", evidence: "seen", fromOn: null, toOn: null, note: null }];
    const given = read({ methods });
    expect(gradeFigure(assessed(given))).toBe("controlled");
    expect(sentence(given)).toContain("bags kept other pollen off");
  });
});

it("what is proposed to go with the lots names no neighbour, no side and no crop", () => {
  const given = read({
    methods: [{ id: "m", method: "barrier", evidence: "seen", fromOn: null, toOn: null, note: "Wend" }],
  });
  const proposed = plain(proposedReasons(given, assessed(given), metricUnits));
  expect(proposed).toBe(
    "Methods: barrier (seen). Looked for neighbours 12 June 2026. One source is too close by the distances to keep the variety (200 m to 800 m). " +
      "The nearest pollen that crosses stood 60 m off, in flower together on 5 of 11 days.",
  );
  for (const secret of ["Wend", "sweet", "north-east", "NE"]) expect(proposed).not.toContain(secret);
});

it("the reasons of a verdict are said with their numbers", () => {
  const given = read({ neighbours: [neighbour("a", { distanceMetres: 300, sizeM2: 12_000 })] });
  const assessment = assessed(given);
  const [each] = assessment.neighbours;
  if (!each) throw new Error("no neighbour");
  expect(reasonWords(each, assessment, given.ground, metricUnits).map(plain)).toEqual([
    "between 200 m and 800 m",
    "in flower together on 5 of 11 days",
    "30 times our size: a large field reaches farther than the list’s distances",
  ]);
});

it("days in common are said as far as they are known", () => {
  const exact = { least: 10, most: 10 };
  expect(overlapWords({ least: 6, most: 6 }, exact)).toBe("6 of 10 days");
  expect(overlapWords({ least: 3, most: 8 }, exact)).toBe("3 to 8 days");
  expect(overlapWords({ least: 1, most: null }, exact)).toBe("1 day or more");
  expect(overlapWords({ least: 0, most: null }, exact)).toBe("an unknown number of days");
  expect(overlapWords(null, exact)).toBe("an unknown number of days");
});

it("the plan and the strip draw what is on record: told is hatched, seen is solid, the grow-out comes first", () => {
  const given = read({
    neighbours: [
      neighbour("a"),
      neighbour("b", { howSure: "seen", bearing: null, windowFirst: null, windowLast: null }),
    ],
  });
  const { neighbours, rings } = planOf(assessed(given), metricUnits);
  expect(rings.map((ring) => ring.metres)).toEqual([200, 800]);
  expect(neighbours.map(({ grade, bearing, weight }) => [grade, bearing, weight])).toEqual([
    ["assumed", "NE", "too-close"],
    ["counted", null, "too-close"],
  ]);
  expect(stripOf(assessed(given)).map(({ of, grade }) => [of, grade])).toEqual([
    ["stigma", "counted"],
    ["neighbour", "assumed"],
    ["neighbour", "assumed"],
  ]);
});

it("a share is said with its range and its band, and that the rule decides; none is said with what is missing", () => {
  const given = read({
    neighbours: [neighbour("a", { distanceMetres: 25, sizeM2: 10_000, windowFirst: null, windowLast: null })],
  });
  const { share } = assessed(given);
  if (!share.ok) throw new Error(share.refusals[0]?.sentence);
  // 20 m plot, 1 ha at 25 m: 1.26 % by the reference's table, five times either way
  expect(plain(shareFigure(share.value))).toMatch(/^about 1\.[23] %$/);
  expect(plain(shareSentence(share.value))).toMatch(
    /^of the pollen, plausibly 0\.2[4-6]–6\.\d %: crosses are likely to be seen\. The distance rule decides\.$/,
  );
  const codes = [
    "no-model",
    "no-sources",
    "nobody-looked",
    "not-assessed",
    "distance",
    "size",
    "plot-size",
    "beyond-data",
  ];
  const said = codes.map((code) => noShareSentence({ code, path: [], given: null, needed: "", sentence: "" }));
  expect(new Set(said).size).toBe(codes.length);
  for (const sentence of said) expect(sentence).toMatch(/^No share of foreign pollen is given/);
});
