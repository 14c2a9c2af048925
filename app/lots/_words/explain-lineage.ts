import type { Explanation } from "@/lib/display/explanation";
import { keptSpan } from "@/lib/display/kept-span";
import { effectiveSize, percent, plainNumber } from "@/lib/display/numbers";
import { listed } from "@/lib/display/plurals";
import type { LotRead } from "@/lib/registry/lots/read-lot";
import { spanShown } from "@/lib/registry/varieties/span-shown";
import { spanExplanation, spanSentence } from "./span-in-words";

/** What of the variety's diversity a lot still holds, in a word or two. */
export function diversityInWords({ standing, figures }: LotRead): string {
  if (standing === "clonal") return "no such figure";
  if (standing === "uniform") return "uniform";
  const shown = spanShown(standing, figures);
  if (shown) return keptSpan(shown.diversityRetained);
  if (standing !== "counted") return "unknown";
  return percent(figures?.diversityRetained ?? null, 0);
}

/** What that means, or what would make it known. */
export function diversitySentence({ standing, lot, figures }: LotRead): string {
  const shown = spanShown(standing, figures);
  if (shown) return spanSentence(shown);
  if (standing === "clonal")
    return "This crop is kept by division: every plant is the mother again, and nothing drifts.";
  if (standing === "uniform") return "A single pure line: its plants are all alike, and there is nothing to lose.";
  if (standing === "lines not known")
    return lot.kind === "founder"
      ? "Say whether this founder lot is one line or many: of a crop that sets seed with its own pollen it decides everything."
      : "It goes back to a founder lot of which nobody said whether it is one line or many.";
  if (standing === "plants not known")
    return "Somewhere up its line the plants, the seed parents or their shares were not written down.";
  return "of the diversity that its founder lots brought is still in it.";
}

/** How the share of diversity is worked out. */
export function diversityExplanation(read: LotRead): Explanation | null {
  const { figures, lot, standing } = read;
  if (!figures || standing === "clonal") return null;
  const shown = spanShown(standing, figures);
  if (shown) return spanExplanation(lot.number, figures.founders, shown);
  return {
    title: `Diversity kept in lot ${lot.number}`,
    answer: diversityInWords(read),
    formula: "1 − θ, where θ is the chance that two genes of two plants of the lot come from one gene of a founder",
    inputs: [
      { name: "founder lots", value: listed(figures.founders) || "none" },
      { name: "coancestry θ", value: share(figures.coancestry) },
      { name: "inbreeding F", value: share(figures.inbreeding) },
      // seed that was received, mixed or parted was not harvested as this lot: no grow-out is behind it alone
      ...(lot.kind === "harvest"
        ? [{ name: "effective size of its grow-out", value: effectiveSize(figures.effectiveSize) }]
        : []),
      { name: "generations", value: figures.generations === null ? "unknown" : plainNumber(figures.generations, 1) },
      { name: "from foreign pollen", value: percent(figures.foreignAncestry) },
    ],
    assumed: figures.assumed,
    unsure: "Founder lots are taken as unrelated to each other; if they were kin, less is in it than this says.",
    sources: ["Cockerham 1967, Genetics 56:89", "Lindgren and Mullin 1998, Canadian Journal of Forest Research 28:276"],
    calc: `npm run --silent figures -- '${lot.number.replaceAll("'", "'\\''")}'`,
  };
}

function share(value: number | null): string {
  return value === null ? "unknown" : plainNumber(value, 3);
}
