import { z } from "zod";
import { calculation } from "@/lib/schemas/calculations/calculation";
import { assumedKey, confidenceKey } from "@/lib/schemas/calculations/shared-keys";
import { germinationCompare } from "@/lib/science/germination/germination-compare";

const test = z.strictObject({ sown: z.int(), normal: z.int() });
const shape = z.strictObject({ a: test, b: test, confidence: z.number().optional() });

export const germinationCompareCalculation = calculation(
  {
    name: "germination-compare",
    title: "Did germination really change",
    answers: "Whether two tests differ by more than the luck of the draw, and between which bounds the change lies.",
    whenToDoubt:
      "When the tests were not alike: other temperature, other days, roots in the one and seedlings in the other. " +
      "Not proven is not the same as unchanged: small tests hide a good deal.",
    formula: [
      "difference = pb − pa",
      "low = d − √((pb − lb)² + (ua − pa)²),  high = d + √((ub − pb)² + (pa − la)²)",
      "fisherP = chance of all tables no likelier than the one seen",
      "changed where fisherP ≤ 1 − confidence",
    ],
    symbols: [
      { symbol: "pa, pb", meaning: "share germinated in the first and the second test" },
      { symbol: "la, ua, lb, ub", meaning: "Wilson bounds of each" },
    ],
    source: ["Newcombe 1998, Stat. Med. 17:873-890, method 10", "Fisher 1935, J. R. Stat. Soc. 98:39-82"],
    input: [
      { key: "a.sown, a.normal", shape: "whole numbers", meaning: "the first test" },
      { key: "b.sown, b.normal", shape: "whole numbers", meaning: "the second test" },
      confidenceKey,
    ],
    output: [
      { key: "difference", shape: "−1 to 1", meaning: "second less first" },
      { key: "interval", shape: "{low, high}, each −1 to 1", meaning: "where the true difference lies" },
      { key: "fisherP", shape: "0 to 1", meaning: "how often chance alone differs as much" },
      { key: "changed", shape: "true or false", meaning: "whether the change is proven" },
      assumedKey,
    ],
  },
  shape,
  { a: { sown: 50, normal: 47 }, b: { sown: 50, normal: 40 } },
  germinationCompare,
);
