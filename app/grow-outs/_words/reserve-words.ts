import type { ReserveAfter } from "@/lib/registry/grow-outs/sowing-plan";
import { seedsInWords, seedsOfRule } from "../../lots/_words/seeds-in-words";

/** What a sowing leaves of what a holder keeps back, in a sentence; whether it waits for a second thought. */
export function reserveInWords({ answer, left, reserve, shortBefore }: ReserveAfter): {
  words: string;
  waits: boolean;
} {
  if (answer === "cannot tell") {
    const why =
      reserve.seeds === null
        ? "What is to be kept back cannot be told: no good lot of it is tested, or nobody said how many plants it wants."
        : "What stays of the reserve cannot be told: count out and weigh 100 seeds, and it can.";
    return { words: why, waits: false };
  }
  const kept = seedsOfRule(reserve.seeds ?? 0);
  const stays = `${seedsInWords(left)} of its good lots stay`;
  if (answer === "kept" && shortBefore)
    return {
      words: `This takes nothing from the reserve, which is short all the same: ${seedsInWords(left)} of its good lots are there, and ${kept} are to be kept back.`,
      waits: false,
    };
  if (answer === "kept")
    return { words: `The reserve is not touched: ${stays}, ${kept} are to be kept back.`, waits: false };
  if (answer === "may be touched")
    return {
      words: `The reserve may be touched: ${stays}, ${kept} are to be kept back. Weighing 100 seeds would tell.`,
      waits: true,
    };
  const before = shortBefore ? " It was not met before, either." : "";
  return {
    words: `This eats into the reserve: ${stays}, and ${kept} are to be kept back.${before} After a failed year sow half at most, and ask the circle before the last seed goes into the ground.`,
    waits: true,
  };
}

/** Grams that stay in a jar, in a sentence. */
export function leftInWords(grams: number | null, shown: string): string {
  if (grams === null) return "What stays in the jar is not known.";
  return grams < -0.5 ? "That is more than its ledger has." : `${shown} stay in the jar.`;
}
