import { expect, it } from "vitest";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { boxOfLot, isolationClaimSchema } from "@/lib/schemas/neighbours/isolation-claim";
import { isolationMethodSchema } from "@/lib/schemas/neighbours/isolation-method";
import { lookSchema } from "@/lib/schemas/neighbours/look";
import { neighbourSchema } from "@/lib/schemas/neighbours/neighbour";
import { neighbourFloweringSchema } from "@/lib/schemas/neighbours/neighbour-flowering";
import type { Outcome } from "@/lib/science/outcome";
import { granted } from "@/tests/setup/registry";

const fields = (outcome: Outcome<unknown>) => (outcome.ok ? [] : outcome.refusals.map((each) => each.path.join(".")));

it("of a neighbour only what grows there is needed; all else may be unknown, which is not nothing", () => {
  const shape = neighbourSchema("north");
  expect(granted(parseForm(shape, { what: " wild carrot " }))).toMatchObject({
    what: "wild carrot",
    distance: null,
    bearing: null,
    sizeM2: null,
    plants: null,
    windowFirst: null,
    howSure: null,
  });
  expect(granted(parseForm(shape, { what: "x", distance: "0" })).distance).toBe(0);
  const typed = { what: " ", distance: "-3", bearing: "NNE", sizeM2: "0", plants: "2.5", windowFirst: "12 July" };
  expect(fields(parseForm(shape, typed))).toEqual(["what", "distance", "bearing", "sizeM2", "plants", "windowFirst"]);
});

it("a look needs a day, and none found is said by its box alone", () => {
  const shape = lookSchema("north");
  expect(granted(parseForm(shape, { on: "2026-06", noneFound: "yes" }))).toMatchObject({ noneFound: true });
  expect(granted(parseForm(shape, { on: "2026-06-12" })).noneFound).toBe(false);
  expect(fields(parseForm(shape, { noneFound: "yes" }))).toEqual(["on"]);
});

it("a method is one of the six, its evidence seen, told or assumed", () => {
  const shape = isolationMethodSchema("north");
  expect(granted(parseForm(shape, { method: "cage", evidence: "seen" })).method).toBe("cage");
  expect(fields(parseForm(shape, { method: "prayer", evidence: "certain", fromOn: "May" }))).toEqual([
    "method",
    "evidence",
    "fromOn",
  ]);
});

it("a neighbour flowers or sheds; silk is our side of it", () => {
  const shape = neighbourFloweringSchema("north");
  const note = { organ: "pollen", moment: "first", on: "2026-07-12" };
  expect(granted(parseForm(shape, note)).on.first).toBe("2026-07-12");
  expect(fields(parseForm(shape, { ...note, organ: "silk" }))).toEqual(["organ"]);
});

it("a claim takes the lots whose boxes were ticked, and needs its reasons", () => {
  const typed = {
    grade: "partly",
    reasons: "one is marginal",
    [boxOfLot("a")]: "yes",
    [boxOfLot("b")]: "",
    other: "yes",
  };
  expect(granted(parseForm(isolationClaimSchema, typed))).toEqual({
    grade: "partly",
    reasons: "one is marginal",
    lotIds: ["a"],
  });
  expect(fields(parseForm(isolationClaimSchema, { grade: "pure" }))).toEqual(["grade", "reasons"]);
});
