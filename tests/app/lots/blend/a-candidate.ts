import type { BlendCandidate } from "@/lib/registry/lots/read-blend-ground";

/** A lot that could go into a blend: 100 g at 500 g a thousand, 40 of 50 germinated this year. */
export function aCandidate(number: string, more: Partial<BlendCandidate> = {}): BlendCandidate {
  const test = { test: "T1", testId: "t1", date: "2026-02-01", sown: 50, normal: 40 };
  return {
    id: number,
    number,
    kind: "harvest",
    holder: null,
    year: "2024",
    strain: null,
    grams: 100,
    thousandSeedGrams: 500,
    test: { ...test, germination: 0.8, low: 0.66, high: 0.9 },
    objections: [],
    lineageKnown: true,
    foreignAncestry: 0,
    founders: ["A"],
    assumed: [],
    ...more,
  };
}
