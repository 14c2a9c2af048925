import { expect, test } from "vitest";
import { z } from "zod";
import { count, day, decimal, name, neededField, oneOf, openField, parseForm } from "@/lib/schemas/lots/form-fields";

const shape = z.object({
  number: openField(name),
  on: neededField(day("south"), "write the day"),
  grams: openField(decimal({ above: 0 })),
  seeds: openField(count),
  kind: openField(oneOf(["jar", "tin"])),
});

test("typed text becomes values, and an empty field is not known", () => {
  const read = parseForm(shape, { number: "  Ham   3 ", on: "2024-05", grams: "12,5", seeds: "", kind: "tin" });
  expect(read.ok && read.value).toMatchObject({
    number: "Ham 3",
    on: { text: "2024-05", first: "2024-05-01", last: "2024-05-31" },
    grams: 12.5,
    seeds: null,
    kind: "tin",
  });
});

test("a season lies in the months of the steward's half of the world", () => {
  const read = parseForm(shape, { on: "2024-21" });
  expect(read.ok && [read.value.on.first, read.value.on.last]).toEqual(["2024-09-01", "2024-11-30"]);
});

test("every fault stands at its own field with what is there and what would be right", () => {
  const read = parseForm(shape, { on: "May-96", grams: "0", seeds: "12.5", kind: "sack" });
  const faults = read.ok ? [] : read.refusals.map((each) => [each.path[0], each.given]);
  expect(faults).toEqual([
    ["on", "May-96"],
    ["grams", 0],
    ["seeds", 12.5],
    ["kind", "sack"],
  ]);
});

test("a field that is needed asks for what is missing", () => {
  const read = parseForm(shape, {});
  expect(read.ok ? [] : read.refusals.map((each) => each.sentence)).toEqual(["nothing stands here; write the day"]);
});

test("a comma before three digits may part thousands and is not guessed at", () => {
  expect(parseForm(shape, { on: "2024", grams: "1,240" }).ok).toBe(false);
  expect(parseForm(shape, { on: "2024", grams: "1,2405" }).ok).toBe(true);
});
