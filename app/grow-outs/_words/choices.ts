import type { Option } from "@/components/ui";
import type { GrowOutEnd } from "@/lib/schemas/grow-outs/end-grow-out";
import type { GrowOutPurpose } from "@/lib/schemas/grow-outs/plan-grow-out";

const purposes: Readonly<Record<GrowOutPurpose, string>> = {
  renew: "renew the seed",
  increase: "increase it",
  food: "food first, seed of it",
  compare: "compare side by side",
  teach: "teach",
};

export const purposeOptions: readonly Option[] = Object.entries(purposes).map(([value, words]) => ({ value, words }));

/** What a grow-out is for, in words; what a notebook wrote in other words stands as it is. */
export function purposeInWords(purpose: string | null): string | null {
  return purpose === null ? null : (purposes[purpose as GrowOutPurpose] ?? purpose);
}

const ends: Readonly<Record<GrowOutEnd, { words: string; note: string }>> = {
  "seed kept": { words: "Seed was kept", note: "its harvests are lots, or will be when they are entered" },
  "no seed": { words: "No seed came of it", note: "eaten, or given up before it was ripe" },
  failed: { words: "It failed", note: "a record with its cause, never a deletion" },
  "not sown": { words: "It was never sown", note: "the plan stays to be read" },
  stands: { words: "It still stands after all", note: "takes the end away that is written" },
};

/** The ends that can be chosen for a grow-out as it is. */
export function endOptions(begun: boolean, over: boolean): readonly (Option & { note: string })[] {
  return Object.entries(ends)
    .filter(([end]) => (end === "stands" ? over : end === "not sown" ? !begun : begun || end === "failed"))
    .map(([value, { words, note }]) => ({ value, words, note }));
}
