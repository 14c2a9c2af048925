import { describe, expect, it } from "vitest";
import { subjects } from "@/app/methods/_words/subjects";
import { answerText, inputOf, laidOut, textsOf } from "@/app/methods/[name]/_components/inputs";
import { calculations } from "@/lib/schemas/calculations";

describe("the fields of a method that is tried", () => {
  it.each(calculations.map((each) => [each.name, each] as const))(
    "bring the example of %s back as it was",
    (_name, each) => {
      expect(inputOf(textsOf(each.example))).toEqual(each.example);
      expect(each.run(inputOf(textsOf(each.example))).ok).toBe(true);
    },
  );

  it("leave an empty field out, read a decimal comma, and keep what is no number as words", () => {
    expect(inputOf({ a: "", b: "0,75", c: "equal", d: "[1, 2", e: "12" })).toEqual({
      b: 0.75,
      c: "equal",
      d: "[1, 2",
      e: 12,
    });
  });

  it("show each value of an answer by its place, and a list of records as a table", () => {
    expect(
      laidOut({ exact: { low: 0.1, high: 0.2 }, lots: [{ id: "a" }], assumed: [{ code: "c", text: "t" }], none: null }),
    ).toEqual({
      values: [
        { key: "exact.low", value: 0.1 },
        { key: "exact.high", value: 0.2 },
        { key: "assumed", value: [{ code: "c", text: "t" }] },
        { key: "none", value: null },
      ],
      tables: [{ key: "lots", rows: [{ id: "a" }] }],
    });
    expect(answerText(null)).toBe("does not apply");
    expect(answerText(1 / 3)).toBe("0.333333333");
  });
});

describe("the page of methods", () => {
  it("names every calculation once, under what the hand is at", () => {
    const named = subjects.flatMap(({ names }) => names);
    expect(new Set(named).size).toBe(named.length);
    expect(calculations.map(({ name }) => name).filter((name) => !named.includes(name))).toEqual([]);
  });
});
