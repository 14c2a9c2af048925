import { afterEach, expect, it, vi } from "vitest";
import { inTurns } from "@/lib/registry/figures/in-turns";
import { atOnce, eachInSteps } from "@/lib/science/in-steps";

afterEach(() => vi.restoreAllMocks());

const numbers = Array.from({ length: 1000 }, (_, i) => i);
const doubled = () => eachInSteps(numbers, (number, place) => 2 * number + place - place);

it("gives what it gives at one go", async () => {
  expect(await inTurns(doubled())).toEqual(atOnce(doubled()));
  expect(atOnce(doubled())).toEqual(numbers.map((number) => 2 * number));
});

it("lets others first wherever its work laid itself down and its time was over", async () => {
  let clock = 0;
  vi.spyOn(performance, "now").mockImplementation(() => {
    clock += 20;
    return clock;
  });
  let others = 0;
  const other = () => {
    others += 1;
    if (others < 100) setImmediate(other);
  };
  setImmediate(other);
  await inTurns(doubled());
  // a thousand in steps of 200: it lies down five times, and each time another has its turn
  expect(others).toBeGreaterThanOrEqual(5);
});

it("keeps its turn while its time is not over", async () => {
  vi.spyOn(performance, "now").mockReturnValue(0);
  let others = 0;
  setImmediate(() => {
    others += 1;
  });
  await inTurns(doubled());
  expect(others).toBe(0);
});
