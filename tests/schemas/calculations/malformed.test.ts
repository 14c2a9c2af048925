import { describe, expect, it } from "vitest";
import { calculations } from "@/lib/schemas/calculations";
import type { Calculation } from "@/lib/schemas/calculations/calculation";
import { SeededDraws } from "@/lib/science/gene-drop/seeded-draws";

/** What a hand, a spreadsheet or another program may put where something else belongs. */
const wrong: readonly unknown[] = [
  null,
  true,
  "",
  "many",
  "0.9",
  -1,
  0,
  0.5,
  1.5,
  1e308,
  -1e308,
  Number.MAX_SAFE_INTEGER + 2,
  [],
  [[]],
  {},
  { "": 1 },
  [null],
  "﷽",
];

/** 300 a calculation; `npm run bench -- references` asks for more. */
const rounds = Number(process.env.KINROW_MALFORMED ?? 300);

type Json = unknown;

/** The places in a JSON value, deepest last. */
function placesIn(value: Json, at: readonly (string | number)[] = []): (readonly (string | number)[])[] {
  if (typeof value !== "object" || value === null) return [at];
  const inner = Array.isArray(value)
    ? value.flatMap((each, index) => placesIn(each, [...at, index]))
    : Object.entries(value).flatMap(([key, each]) => placesIn(each, [...at, key]));
  return [at, ...inner];
}

/** A copy with one place changed: replaced, or removed where `value` is undefined. */
function changed(whole: Json, [step, ...rest]: readonly (string | number)[], value: Json): Json {
  if (step === undefined) return value;
  if (Array.isArray(whole)) {
    const copy = [...whole];
    if (rest.length === 0 && value === undefined) copy.splice(Number(step), 1);
    else copy[Number(step)] = changed(copy[Number(step)], rest, value);
    return copy;
  }
  const copy: Record<string, Json> = { ...(whole as Record<string, Json>) };
  if (rest.length === 0 && value === undefined) delete copy[step];
  else copy[step] = changed(copy[step], rest, value);
  return copy;
}

/** Every number of an answer is one that JSON can hold. */
function numbersIn(value: Json): number[] {
  if (typeof value === "number") return [value];
  if (typeof value !== "object" || value === null) return [];
  return Object.values(value).flatMap(numbersIn);
}

function judge({ name, run }: Calculation, input: Json): "answered" | "refused" {
  const said = `${name} of ${JSON.stringify(input)}`;
  const outcome = run(input);
  if (outcome.ok) {
    for (const number of numbersIn(outcome.value)) expect(Number.isFinite(number), said).toBe(true);
    return "answered";
  }
  expect(outcome.refusals.length, said).toBeGreaterThan(0);
  for (const { path, sentence } of outcome.refusals) {
    expect(Array.isArray(path), said).toBe(true);
    expect(sentence, said).toMatch(/.+; .+/s);
    expect(sentence, said).not.toMatch(/undefined|NaN|\[object/);
  }
  return "refused";
}

describe("input that is not as it should be", () => {
  it.each(calculations.map((each) => [each.name, each] as const))(
    "is refused by %s with a sentence and its place, or answered in numbers, and never a crash",
    (_name, calculation) => {
      const draws = new SeededDraws(calculation.name.length * 7919);
      const whole = (below: number) => Math.floor(draws.next() * below);
      let refusals = 0;
      for (let round = 0; round < rounds; round++) {
        let input: Json = calculation.example;
        for (let changes = 1 + whole(2); changes > 0; changes--) {
          const places = placesIn(input);
          const place = places[whole(places.length)] ?? [];
          const kind = draws.next();
          if (kind < 0.2 && place.length > 0) input = changed(input, place, undefined);
          else if (kind < 0.35) input = changed(input, [...place, "unheard-of"], 1);
          else input = changed(input, place, wrong[whole(wrong.length)]);
        }
        if (judge(calculation, input) === "refused") refusals += 1;
      }
      expect(refusals).toBeGreaterThan(rounds / 3);
    },
  );

  it.each(calculations.map((each) => [each.name, each] as const))(
    "%s answers its own example",
    (_name, calculation) => {
      expect(judge(calculation, calculation.example)).toBe("answered");
    },
  );

  it.each(calculations.map((each) => [each.name, each] as const))(
    "%s refuses what is no object",
    (_name, calculation) => {
      for (const input of [null, 7, "seven", [], [calculation.example]])
        expect(judge(calculation, input)).toBe("refused");
    },
  );
});
