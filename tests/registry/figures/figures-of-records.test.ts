import { describe, expect, it } from "vitest";
import { readNotebookFolder } from "@/lib/exchange/notebook-folder/read-notebook-folder";
import { recordsOfNotebook } from "@/lib/exchange/notebook-folder/records-of-notebook";
import { figuresOfRecords, type LotFigure } from "@/lib/registry/figures/figures-of-records";
import { cropList, emptyProfile } from "@/lib/science/crops/crop-profile";
import { referenceFolder, referenceText } from "../../exchange/notebook-folder/folder-of-files";

type Expected = Omit<LotFigure, "assumed">;

/** Worked out by an independent program: every lot of the sample notebook, to 1e-9 relative or 1e-12 absolute. */
const expected: readonly Expected[] = JSON.parse(referenceText("notebook", "expected.json"));

function figuresOfSample(only?: ReadonlySet<string>): readonly LotFigure[] {
  const { notebook } = readNotebookFolder(referenceFolder("notebook"));
  if (notebook === null) throw new Error("the sample notebook has faults");
  const profileOf = (crop: string) => cropList().find(({ key }) => key === crop) ?? emptyProfile(crop);
  const figures = figuresOfRecords(recordsOfNotebook(notebook, profileOf), only);
  if (!figures.ok) throw new Error(figures.refusals.map(({ sentence }) => sentence).join("\n"));
  return figures.value;
}

function agrees(found: unknown, wanted: unknown): boolean {
  if (typeof found === "number" && typeof wanted === "number") {
    return Math.abs(found - wanted) <= Math.max(1e-12, 1e-9 * Math.abs(wanted));
  }
  if (found === null || wanted === null || typeof found !== "object" || typeof wanted !== "object")
    return found === wanted;
  const keys = [...new Set([...Object.keys(found), ...Object.keys(wanted)])];
  const at = (object: object, key: string): unknown => (object as Readonly<Record<string, unknown>>)[key];
  return keys.every((key) => agrees(at(found, key), at(wanted, key)));
}

describe("the figures of the sample notebook", () => {
  const figures = figuresOfSample();

  it("stand for every lot, in code-point order", () => {
    expect(figures.map(({ lot }) => lot)).toEqual(expected.map(({ lot }) => lot));
    expect(figures).toHaveLength(156);
  });

  it("agree with the independent program on every number", () => {
    const differing = expected.flatMap((wanted, place) => {
      const { assumed: _, ...found } = figures[place] as LotFigure;
      return agrees(found, wanted) ? [] : [{ found, wanted }];
    });
    expect(differing).toEqual([]);
  });

  it("have their keys in the order in which they are printed", () => {
    const printed = JSON.parse(JSON.stringify(figures[0])) as object;
    expect(Object.keys(printed)).toEqual([...Object.keys(expected[0] as Expected), "assumed"]);
  });

  it("are given for the lots asked for alone", () => {
    expect(figuresOfSample(new Set(["Legi 9", "Dopi 50"])).map(({ lot }) => lot)).toEqual(["Dopi 50", "Legi 9"]);
  });
});

describe("what was assumed", () => {
  const figures = new Map(figuresOfSample().map((figure) => [figure.lot, figure.assumed]));

  it("names the crop's selfing rate with the grow-outs it was taken for", () => {
    // Lot Laro 47 came from grow-out G32, a tomato without a recorded selfing rate.
    const own = [...figures.values()]
      .flat()
      .filter((sentence) => sentence.startsWith("the selfing rate is the crop's"));
    expect(own.some((sentence) => /: .*\bG32\b/.test(sentence))).toBe(true);
  });

  it("says of foreign pollen that nobody assessed that it is computed as 0", () => {
    expect(figures.get("Legi 9")).toContainEqual(expect.stringMatching(/^foreign pollen was not assessed.*0: .*G4/));
  });

  it("says where plants were not counted", () => {
    expect(figures.get("Legi 7")).toContainEqual(expect.stringMatching(/not recorded.*: G4$/));
  });

  it("names a founder whose inbreeding nobody knows", () => {
    expect(figures.get("Dopi 50")).toContainEqual(
      expect.stringMatching(/^the founder lot was inbred.*0\.94.*: Dopi 49$/),
    );
  });
});
