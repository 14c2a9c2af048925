import type { Explanation } from "@/lib/display/explanation";
import { seedsAbout, span } from "@/lib/display/numbers";
import { counted } from "@/lib/display/plurals";
import type { KeptBack, LeftAfter } from "./left-after";

/** What stays on the holder's good lots after a split, against what is kept back. */
export function explainReserveAfter(number: string, kept: KeptBack, { onHand }: LeftAfter): Explanation {
  const said = onHand === null ? "unknown" : seedsInWords(onHand);
  return {
    title: `Seed of good lots after lot ${number} is parted`,
    answer: said,
    formula: "seeds on hand of the holder’s good lots − seeds parted, against the reserve",
    inputs: [
      { name: "on good lots now", value: seedsInWords(kept.onHand) },
      { name: "kept back", value: seedsAbout(kept.seeds) },
    ],
    assumed: [
      "the new jar is not counted on before it is tested",
      ...(kept.uncounted > 0
        ? [`${counted(kept.uncounted, "good lot")} of which nobody knows the seeds are left out of the count`]
        : []),
    ],
    sources: [],
    method: "reserve",
  };
}

function seedsInWords({ value, low, high }: NonNullable<LeftAfter["onHand"]>): string {
  return value === null ? span(Math.round(low), Math.round(high), "seeds", 3) : seedsAbout(value);
}
