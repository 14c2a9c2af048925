import { expect, it } from "vitest";
import { atOnce, eachInSteps, ITEMS_A_STEP } from "@/lib/science/in-steps";

const numbers = Array.from({ length: 2 * ITEMS_A_STEP + 1 }, (_, i) => i);

it("at one go it is what a plain map gives, by item and place", () => {
  expect(atOnce(eachInSteps(numbers, (number, place) => number * place))).toEqual(numbers.map((n) => n * n));
  expect(atOnce(eachInSteps([], String))).toEqual([]);
});

it("lies down once for so many items", () => {
  const steps = eachInSteps(numbers, String);
  let lain = 0;
  for (let step = steps.next(); !step.done; step = steps.next()) lain += 1;
  expect(lain).toBe(2);
});
