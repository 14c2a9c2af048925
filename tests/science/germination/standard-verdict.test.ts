import { expect, it } from "vitest";
import { standardVerdict } from "@/lib/science/germination/standard-verdict";

// Beta(x + ½, n − x + ½) by an independent program: .932, .717, .839 above 0.85; .685 above 0.75
it.each([
  [10, 10, 0.85, 0.93212706],
  [18, 20, 0.85, 0.717],
  [45, 50, 0.85, 0.839],
  [16, 20, 0.75, 0.68477263],
])("%d of %d stands above %d with chance %d", (normal, sown, standard, chance) => {
  expect(standardVerdict(normal, sown, standard).probabilityAbove).toBeCloseTo(chance, 3);
});

it("every lot stands above 0, none above 1", () => {
  expect(standardVerdict(5, 10, 0)).toEqual({ value: 0, probabilityAbove: 1, verdict: "above" });
  expect(standardVerdict(5, 10, 1)).toEqual({ value: 1, probabilityAbove: 0, verdict: "below" });
});
