import { expect, it } from "vitest";
import { fieldName, refusalSentence, refusalsByField, refusalsForSummary } from "@/lib/display/refusals";
import { refusal } from "@/lib/science/outcome";

const year = refusal("date", ["year"], "19x7", "is not a date", "write it as 1987, 1987-05, 1991~ or 198X");
const sown = refusal("count", ["replicates", 1, "sown"], null, "is no count", "write how many seeds were laid");

it("a path is the name of the form's field", () => {
  expect(fieldName(["replicates", 1, "sown"])).toBe("replicates.1.sown");
  expect(fieldName([])).toBe("");
});

it("a refusal becomes a sentence with its full stop, and nothing of it is lost", () => {
  expect(refusalSentence(year)).toBe('"19x7" is not a date; write it as 1987, 1987-05, 1991~ or 198X.');
  expect(refusalSentence(sown)).toBe("Nothing is no count; write how many seeds were laid.");
});

it("two refusals of one field stand under it in their order", () => {
  const second = { ...year, sentence: "it lies after today" };
  expect(refusalsByField([year, sown, second])).toEqual({
    year: [refusalSentence(year), "It lies after today."],
    "replicates.1.sown": [refusalSentence(sown)],
  });
});

it("the summary names the field where it is about one", () => {
  const whole = refusal("empty", [], undefined, "was sent", "fill in at least one row");
  expect(refusalsForSummary([year, whole], { year: "Year" })).toEqual([
    { sentence: refusalSentence(year), name: "year", label: "Year" },
    { sentence: "Nothing was sent; fill in at least one row." },
  ]);
});
