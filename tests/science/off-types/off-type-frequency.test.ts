import { describe, expect, it } from "vitest";
import { type OffTypeFrequencyInput, offTypeFrequency } from "@/lib/science/off-types/off-type-frequency";
import { answered, expectAgreement, pathsOf, referenceCases } from "../agreement";

const roguedFrom = (
  frequency: number,
  generations: number,
  kind: OffTypeFrequencyInput["kind"],
  rogued: OffTypeFrequencyInput["rogued"],
) => {
  const { alleleFrequency, offTypeShare } = answered(offTypeFrequency({ frequency, generations, kind, rogued }));
  return { q: alleleFrequency.at(-1), share: offTypeShare.at(-1), offTypeShare };
};

describe("a recessive off-type", () => {
  it("falls from 0.01 to 0.001 in 900 generations (Ayala & Kiger)", () => {
    expect(roguedFrom(0.01, 900, "recessive", "before-pollen").q).toBeCloseTo(0.001, 9);
  });

  it("at 4 % falls to 0.25 % in 15 grow-outs (q₀/(1 + t q₀))", () => {
    const { q, share } = roguedFrom(0.2, 15, "recessive", "before-pollen");
    expect(q).toBeCloseTo(0.05, 12);
    expect(share).toBeCloseTo(0.0025, 12);
  });

  it("rogued after pollen takes twice as long (simulated: q .083214, off-types .006913 after 15; .033333 after one)", () => {
    const { q, share, offTypeShare } = roguedFrom(0.2, 15, "recessive", "after-pollen");
    expect(q).toBeCloseTo(0.083214, 6);
    expect(share).toBeCloseTo(0.006913, 6);
    expect(offTypeShare[1]).toBeCloseTo(1 / 30, 12);
  });
});

describe("a dominant off-type", () => {
  it("is gone after one generation of roguing before pollen", () => {
    expect(roguedFrom(0.02, 1, "dominant", "before-pollen")).toMatchObject({ q: 0, share: 0 });
  });

  it("rogued after pollen shows in 3.96, 2, 1, 0.5, 0.25 % of the plants (simulated)", () => {
    const { offTypeShare } = roguedFrom(0.02, 4, "dominant", "after-pollen");
    [0.0396, 0.02, 0.01, 0.005, 0.0025].forEach((share, t) => {
      expect(offTypeShare[t]).toBeCloseTo(share, 12);
    });
  });
});

it("agrees with 300 populations mated genotype by genotype in exact fractions", () => {
  for (const { input, expected } of referenceCases<OffTypeFrequencyInput>("off-type-frequency")) {
    expectAgreement(answered(offTypeFrequency(input)), expected);
  }
});

it("no grow-out leaves the beginning alone", () => {
  const { alleleFrequency, offTypeShare } = answered(
    offTypeFrequency({ frequency: 0.2, generations: 0, kind: "recessive", rogued: "before-pollen" }),
  );
  expect(alleleFrequency).toEqual([0.2]);
  expect(offTypeShare[0]).toBeCloseTo(0.04, 12);
});

it.each<[string, Partial<OffTypeFrequencyInput>, string[]]>([
  ["nothing but off-types", { frequency: 1 }, ["frequency"]],
  ["a frequency in percent", { frequency: 4 }, ["frequency"]],
  ["half a generation", { generations: 0.5 }, ["generations"]],
  ["more generations than any variety saw", { generations: 2_000_000 }, ["generations"]],
])("%s is refused at its place", (_, wrong, path) => {
  const good = { frequency: 0.2, generations: 5, kind: "recessive", rogued: "before-pollen" } as const;
  expect(pathsOf(offTypeFrequency({ ...good, ...wrong }))).toEqual([path]);
});
