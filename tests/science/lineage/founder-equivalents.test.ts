import { expect, it } from "vitest";
import { founderEquivalents } from "@/lib/science/lineage/founder-equivalents";

// By hand: 1/(2θ), Lacy 1989. Four unrelated plants in even shares leave θ = Σ (1/4)²·½ = 1/8.
it("counts the unrelated plants that hold as much", () => {
  expect(founderEquivalents(1 / 8)).toBe(4);
  expect(founderEquivalents(0.5)).toBe(1);
});

it("has no number where nothing limits it", () => {
  expect(founderEquivalents(0)).toBeNull();
});
