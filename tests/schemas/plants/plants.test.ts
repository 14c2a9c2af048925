import { describe, expect, it } from "vitest";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { addPlantsSchema, plantsMeant } from "@/lib/schemas/plants/add-plants";
import { readPlantCell } from "@/lib/schemas/plants/plant-cells";
import { granted } from "../../setup/registry";

const meant = (typed: Record<string, string>) =>
  plantsMeant(granted(parseForm(addPlantsSchema("north"), { on: "2024-08-20", ...typed })));
const inShort = (typed: Record<string, string>) =>
  granted(meant(typed)).map(({ tag, cell }) => (cell === null ? tag : `${tag} in ${cell}`));
const refused = (typed: Record<string, string>) => {
  const outcome = meant(typed);
  return outcome.ok ? [] : outcome.refusals.map((each) => [each.path.join("."), each.code]);
};

describe("plants to be added", () => {
  it("are a run of numbers, with letters before them, or one tag", () => {
    expect(inShort({ from: "3", to: "5" })).toEqual(["3", "4", "5"]);
    expect(inShort({ to: "2", letters: "R" })).toEqual(["R1", "R2"]);
    expect(inShort({ from: "7" })).toEqual(["7"]);
    expect(inShort({ tag: " red  tape " })).toEqual(["red tape"]);
  });

  it("stand in cells that count up, by letter or number", () => {
    expect(inShort({ from: "1", to: "5", cell: "A", perCell: "2" })).toEqual([
      ...["1 in A", "2 in A", "3 in B", "4 in B", "5 in C"],
    ]);
    expect(inShort({ from: "1", to: "2", cell: "Y", perCell: "1" })).toEqual(["1 in Y", "2 in Z"]);
    expect(inShort({ from: "1", to: "3", cell: "Z", perCell: "1" })).toEqual(["1 in Z", "2 in AA", "3 in AB"]);
    expect(inShort({ from: "1", to: "2", cell: "B09", perCell: "1" })).toEqual(["1 in B09", "2 in B10"]);
    expect(inShort({ from: "1", to: "2", cell: "A" })).toEqual(["1 in A", "2 in A"]);
  });

  it("are refused where it cannot be told which are meant", () => {
    expect(refused({})).toEqual([["to", "missing"]]);
    expect(refused({ tag: "9", from: "1" })).toEqual([["tag", "two-ways"]]);
    expect(refused({ from: "9", to: "1" })).toEqual([["to", "run-backwards"]]);
    expect(refused({ from: "1", to: "5000" })).toEqual([["to", "too-many"]]);
    expect(refused({ from: "1", to: "5", perCell: "2" })).toEqual([["cell", "missing"]]);
    const typed = parseForm(addPlantsSchema("north"), { from: "one", on: "" });
    expect(typed.ok ? [] : typed.refusals.map((each) => each.path.join("."))).toEqual(["from", "on"]);
  });
});

describe("the cells of a plant", () => {
  it("take a choice by its beginning", () => {
    expect(granted(readPlantCell("intent", "K"))).toBe("keep");
    expect(granted(readPlantCell("fate", "rogued"))).toBe("rogued later");
    const wrong = readPlantCell("intent", "eat");
    expect(wrong.ok ? "" : wrong.refusals[0]?.sentence).toBe('"eat" is none of the choices; write keep, watch, pull');
  });

  it("keep a tag as it is written, blanks folded, and refuse what fits on no tag", () => {
    expect(granted(readPlantCell("tag", "  12  b "))).toBe("12 b");
    expect(readPlantCell("tag", "x".repeat(61)).ok).toBe(false);
    expect(readPlantCell("words", "x".repeat(2000)).ok).toBe(true);
  });
});
