import { expect, it } from "vitest";
import { amountOfPart } from "@/lib/science/blend/amount-of-part";

it("40 g at 500 g a thousand are 80 seeds, and 80 seeds are 40 g (by hand)", () => {
  expect(amountOfPart(40, "g", 500)).toEqual({ grams: 40, seeds: 80 });
  expect(amountOfPart(80, "seeds", 500)).toEqual({ grams: 40, seeds: 80 });
});
