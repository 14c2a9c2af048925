import type { Explanation } from "@/lib/display/explanation";
import { effectiveSizeSpan, percent, plainNumber } from "@/lib/display/numbers";
import type { SizeGround, SizeSoFar } from "@/lib/registry/grow-outs/size-so-far";
import type { CountBounds, EffectiveSizeSpanInput } from "@/lib/science/effective-size/effective-size-span";

/** How a span of the effective size comes about; none where there is no span. */
export function sizeSoFarExplanation(size: SizeSoFar, { record }: SizeGround): Explanation | null {
  if (size.state !== "span" && size.state !== "before-seed") return null;
  const { input, low, high } = size;
  const before = size.state === "before-seed";
  return {
    title: `effective size of ${record.name} by now`,
    answer: effectiveSizeSpan(low, high),
    formula:
      "Ne = 1 / (κ (1 + F)), at the worst and at the best that was recorded; κ falls with the pollen parents and the seed parents, and rises with uneven shares",
    inputs: [
      { name: "pollen parents", value: bounds(input.pollenParents) },
      { name: before ? "seed parents, from one to all" : "seed parents", value: bounds(input.seedParents) },
      { name: "their shares of the seed", value: sharesInWords(input.seedShares) },
      { name: "selfing rate", value: percent(input.selfingRate ?? 0) },
      { name: "inbreeding of the lots sown", value: plainNumber(input.inbreeding ?? 0, 3) },
    ],
    assumed: size.assumed.map(({ text }) => `${text.charAt(0).toUpperCase()}${text.slice(1)}.`),
    unsure: before
      ? "No seed is taken yet. The upper end holds if it is kept alike from all that stand; a few heavy bearers would bring it down."
      : "Unequal pollen only lowers both ends. What is counted later moves it at once.",
    sources: [
      "Lindgren & Mullin 1998, Can. J. For. Res. 28:276 (the sum of squared contributions, at its least and its most)",
      "Wright 1931, Genetics 16:97",
    ],
    calc: `echo '${JSON.stringify(input)}' | npm run --silent calc -- effective-size-span`,
  };
}

function bounds({ low, high }: CountBounds): string {
  if (high === null) return `${plainNumber(low)} or more`;
  return low === high ? plainNumber(low) : `between ${plainNumber(low)} and ${plainNumber(high)}`;
}

function sharesInWords(shares: EffectiveSizeSpanInput["seedShares"]): string {
  if (shares === undefined || shares === "unknown") return "not written: from alike to nearly all from one plant";
  if (shares === "equal") return "equal seed from each";
  if ("cv" in shares) return `uneven, coefficient of variation ${plainNumber(shares.cv, 2)}`;
  return "by the seed of each plant";
}
