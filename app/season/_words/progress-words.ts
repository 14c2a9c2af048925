import { wholeNumber } from "@/lib/display/numbers";
import { counted } from "@/lib/display/plurals";
import type { SeasonProgress } from "@/lib/registry/season/progress";

/** A piece of the season's work in words. */
export interface ProgressWords {
  readonly title: string;
  /** "14 of 22 lots tested; 3 overdue" */
  readonly sentence: string;
  readonly left: string;
}

const nouns: Readonly<Record<SeasonProgress["key"], { title: string; noun: string; done: string; left: string }>> = {
  tests: { title: "Tests", noun: "lot", done: "tested", left: "never tested" },
  balances: { title: "Balances", noun: "lot", done: "known in amount", left: "of unknown amount" },
  places: {
    title: "Places",
    noun: "variety",
    done: "in two places or more",
    left: "in one place, or none for certain",
  },
  holders: { title: "Holders", noun: "holding", done: "confirmed", left: "not confirmed" },
};

/** "14 of 22 lots tested; 3 overdue". */
export function progressWords(progress: SeasonProgress): ProgressWords {
  const { title, noun, done, left } = nouns[progress.key];
  const late = progress.overdue.length > 0 ? `; ${wholeNumber(progress.overdue.length)} overdue` : "";
  return {
    title,
    sentence: `${wholeNumber(progress.done)} of ${counted(progress.of, noun)} ${done}${late}`,
    left: `${counted(progress.left.length, noun)} ${left}`,
  };
}
