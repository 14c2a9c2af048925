import { expect, it } from "vitest";
import { reserveInWords } from "@/app/grow-outs/_words/reserve-words";

const counted = (seeds: number) => ({ value: seeds, low: seeds, high: seeds, grade: "counted" as const });
const held = (seeds: number, onHand: number) => ({
  ...{ varietyId: "v", holderId: null, seeds, onHand: counted(onHand), good: ["a"] },
});
const words = (...of: Parameters<typeof reserveInWords>) => reserveInWords(...of).words.replaceAll("\u00a0", " ");

it("says that a reserve is kept only where it was met", () => {
  const met = { reserve: held(238, 500), answer: "kept" as const, left: counted(500), shortBefore: false };
  expect(words(met)).toContain("The reserve is not touched");
  const short = { reserve: held(238, 195), answer: "kept" as const, left: counted(195), shortBefore: true };
  expect(words(short)).not.toContain("not touched");
  expect(words(short)).toContain("takes nothing from the reserve, which is short all the same");
  expect(words(short)).toContain("238 seeds are to be kept back");
});

it("waits for a second thought where a sowing eats into it", () => {
  const touched = { reserve: held(238, 300), answer: "touched" as const, left: counted(100), shortBefore: false };
  expect(reserveInWords(touched).waits).toBe(true);
  expect(words(touched)).not.toContain("not met before");
  expect(words({ ...touched, shortBefore: true })).toContain("It was not met before, either.");
});
