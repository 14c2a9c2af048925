import { expect, it } from "vitest";
import { counted, countedInWords, listed, plural } from "@/lib/display/plurals";

it("the trade's words have their plurals", () => {
  const words = [
    "lot",
    "variety",
    "grow-out",
    "germination test",
    "seed parent",
    "entry",
    "batch",
    "packet",
    "day",
    "loss",
  ];
  expect(words.map(plural)).toEqual([
    "lots",
    "varieties",
    "grow-outs",
    "germination tests",
    "seed parents",
    "entries",
    "batches",
    "packets",
    "days",
    "losses",
  ]);
});

it("a count agrees with its word", () => {
  expect(counted(0, "lot")).toBe("0 lots");
  expect(counted(1, "lot")).toBe("1 lot");
  expect(counted(1240, "seed")).toBe("1,240 seeds");
  expect(counted(3, "ear of maize", "ears of maize")).toBe("3 ears of maize");
});

it("small counts are words in running text, large ones figures", () => {
  expect(countedInWords(0, "lot")).toBe("no lots");
  expect(countedInWords(1, "variety")).toBe("one variety");
  expect(countedInWords(12, "lot")).toBe("twelve lots");
  expect(countedInWords(13, "lot")).toBe("13 lots");
});

it("names are listed with commas and a last and", () => {
  expect(listed([])).toBe("");
  expect(listed(["A"])).toBe("A");
  expect(listed(["A", "B"])).toBe("A and B");
  expect(listed(["A", "B", "C"], "or")).toBe("A, B or C");
});
