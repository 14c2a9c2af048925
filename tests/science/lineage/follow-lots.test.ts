import { expect, it } from "vitest";
import { followLots } from "@/lib/science/lineage/follow-lots";
import type { LineageInput } from "@/lib/science/lineage/lots";
import { pedigree } from "@/lib/science/lineage/pedigree";
import { answered, expectAgreement, referenceCases } from "../agreement";

it("tracing ancestors and keeping the lots in use give the same figures", () => {
  for (const { input } of referenceCases<LineageInput>("lineage")) {
    const built = answered(pedigree(input.lots));
    const [traced, kept] = [followLots(built, "trace"), followLots(built, "in-use")];
    expectAgreement([...kept.coancestry], [...traced.coancestry]);
    expectAgreement([...kept.nativeIdentical], [...traced.nativeIdentical]);
    expectAgreement([...kept.bothNativeExcess], [...traced.bothNativeExcess]);
  }
});

it("two lines that cross at every step stay exact over 2,000 lots", () => {
  const both = [0, 1].map((line) => ({ id: `0-${line}`, kind: "founder" as const }));
  const lots = Array.from({ length: 1000 }, (_, step) =>
    [0, 1].map((line) => ({
      id: `${step + 1}-${line}`,
      kind: "grow-out" as const,
      parents: [0, 1].map((from) => ({ id: `${step}-${from}`, share: 0.5 })),
      pollenParents: 50,
      seedParents: 50,
    })),
  ).flat();
  const built = answered(pedigree([...both, ...lots]));
  const [traced, kept] = [followLots(built, "trace"), followLots(built, "in-use")];
  expectAgreement(kept.coancestry.at(-1), traced.coancestry.at(-1));
  expect(kept.coancestry.at(-1)).toBeGreaterThan(0.99);
});
