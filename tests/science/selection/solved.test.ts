import { expect, it } from "vitest";
import { solved } from "@/lib/science/selection/solved";

it("4x + 2y = 10 and 2x + 3y = 9 give x 1.5, y 2 (by hand)", () => {
  const [x, y] = solved(
    [
      [4, 2],
      [2, 3],
    ],
    [10, 9],
  );
  expect(x).toBeCloseTo(1.5, 12);
  expect(y).toBeCloseTo(2, 12);
});
