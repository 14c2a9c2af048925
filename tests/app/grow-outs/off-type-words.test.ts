import { expect, it } from "vitest";
import { offTypeReading, offTypesInWords } from "@/app/grow-outs/_words/off-type-words";

const said = (looked: number | null, found: number, foundAtMost = found) => {
  const reading = offTypeReading({ looked, found, foundAtMost });
  // a figure and its unit are kept on one line
  return reading && offTypesInWords(reading).replaceAll("\u00a0", " ");
};

it("gives the share with its exact upper bound: 0 of 100 leaves up to 2.95 %", () => {
  expect(said(100, 0)).toBe("0 of 100 were pulled as off-type (0 %); in truth hardly more than 3 %");
});

it("gives both ends where the reasons of some do not tell, and the bound of the worse", () => {
  // 5 of 55: the one-sided 95 % bound is 0.1817 (BetaInv(0.95; 6, 50))
  expect(said(55, 2, 5)).toBe(
    "2 to 5 of 55 were pulled as off-type (3.6 % to 9.1 %); in truth hardly more than 18.2 %",
  );
});

it("has no share where nobody wrote how many were looked at, and never more found than looked at", () => {
  expect(said(null, 3)).toBeNull();
  expect(said(4, 5)).toBe("5 of 5 were pulled as off-type (100 %); in truth hardly more than 100 %");
});
