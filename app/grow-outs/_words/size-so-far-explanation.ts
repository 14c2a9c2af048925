import type { Explanation } from "@/lib/display/explanation";
import { effectiveSize, effectiveSizeSpan, percent, plainNumber } from "@/lib/display/numbers";
import type { SizeGround, SizeSoFar } from "@/lib/registry/grow-outs/size-so-far";
import type { CountBounds, EffectiveSizeSpanInput } from "@/lib/science/effective-size/effective-size-span";
import type { Assumption } from "@/lib/science/outcome";

const sources = [
  "Lindgren & Mullin 1998, Can. J. For. Res. 28:276 (the sum of squared contributions)",
  "Wright 1931, Genetics 16:97",
];

/** How the effective size by what is on record comes about, a figure or a span; none where there is neither. */
export function sizeSoFarExplanation(size: SizeSoFar, { record, inbreeding }: SizeGround): Explanation | null {
  if (size.state === "known") {
    const count = (value: number | null) => (value === null ? "unknown" : plainNumber(value));
    return {
      title: `effective size of ${record.name}`,
      answer: effectiveSize(size.size),
      formula: "Ne = 1 / (κ (1 + F)); κ is the chance that two genes of two seeds come from one plant",
      inputs: [
        { name: "plants standing", value: count(record.plantsStanding) },
        ...(record.malesStanding === null ? [] : [{ name: "of them males", value: count(record.malesStanding) }]),
        { name: "rogued before pollen shed", value: count(record.roguedBeforePollen) },
        { name: "seed parents", value: count(record.seedParents) },
        { name: "their shares of the seed", value: sharesInWords(record.seedShares ?? "unknown") },
        { name: "inbreeding of the lots sown", value: inbreeding === null ? "unknown" : plainNumber(inbreeding, 3) },
      ],
      assumed: size.assumed.map(assumedSentence),
      unsure: "Seed of very different amounts, or pollen of a few early plants, would lower it.",
      sources,
      method: "effective-size-span",
    };
  }
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
    assumed: size.assumed.map(assumedSentence),
    unsure: before
      ? "No seed is taken yet. The upper end holds if it is kept alike from all that stand; a few heavy bearers would bring it down."
      : "Unequal pollen only lowers both ends. What is counted later moves it at once.",
    sources,
    calc: `echo '${JSON.stringify(input)}' | npm run --silent calc -- effective-size-span`,
  };
}

function assumedSentence({ text }: Assumption): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
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
