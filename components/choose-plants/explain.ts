import type { Explanation } from "@/lib/display/explanation";
import { percent, plainNumber, wholeNumber } from "@/lib/display/numbers";
import { directionInWords } from "@/lib/display/scores";
import { traitDifference, traitDifferenceSpan } from "@/lib/display/trait-difference";
import type { ChoiceGround, TraitToWeigh } from "@/lib/schemas/plants/choice-ground";
import type { CountBounds, EffectiveSizeSpan } from "@/lib/science/effective-size/effective-size-span";
import { cutOfPlot } from "@/lib/science/effective-size/size-of-cut";
import type { ChoiceOfPlants } from "@/lib/science/selection/choice-of-plants";
import type { DifferentialWithinCells } from "@/lib/science/selection/differential-within-cells";
import { costInWords, sizeInWords, standsAt } from "./choice-words";
import { pollenOf, type Setting, weightOf } from "./setting";
import { heritabilityOffered, type responseOf } from "./worked";

const choosing = [
  "Gardner 1961, Crop Sci. 1:241-245 (choosing within cells)",
  "Weighted standardised deviations, cells pooled",
];
const sizes = [
  "Lindgren & Mullin 1998, Can. J. For. Res. 28:276 (the sum of squared contributions)",
  "Wright 1931, Genetics 16:97",
];
const breeding = ["Falconer & Mackay 1996, Introduction to Quantitative Genetics, ch. 11"];

/** How the ranks come about. */
export function explainRanks(ground: ChoiceGround, setting: Setting, choice: ChoiceOfPlants): Explanation {
  const weighed = ground.traits.filter((trait) => weightOf(setting, trait) > 0);
  const all = weighed.reduce((sum, trait) => sum + weightOf(setting, trait), 0);
  return {
    title: "the choice of seed parents",
    answer: `${wholeNumber(choice.kept.length)} kept, standing at ${choice.gain === null ? "unknown" : standsAt(choice.gain)} on average`,
    formula:
      "v = x, −x or −|x − target|;  d = v − mean of the cell;  s = √(Σ d²/(plants − cells));  z = d/s;  index = Σ weight·z / Σ weight",
    inputs: [
      ...weighed.map((trait) => ({
        name: trait.name,
        value: `${percent(weightOf(setting, trait) / all, 0)}, ${directionInWords(trait.definition)}`,
        href: trait.href,
      })),
      { name: "plants compared", value: wholeNumber(choice.ranked.filter(({ rank }) => rank !== null).length) },
      { name: "compared", value: setting.withinCells ? "within their cell" : "over the whole field" },
      {
        name: "whose scores",
        value: setting.scoresOf === "all" ? "the mean of all who scored a plant" : "one person’s alone",
      },
    ],
    assumed: [
      "Weights say how much one standard deviation of a trait matters, not one unit of it.",
      ...(choice.ranked.some(({ rank, weightCompared }) => rank !== null && weightCompared < 1)
        ? ["What was not scored of a plant counts as the mean of its cell; how much was compared stands beside it."]
        : []),
    ],
    unsure:
      "A rank says who is ahead, not by how much. Look at the plants on both sides of the cut again in the field; plants beside a gap or at the edge stand better than they are.",
    sources: choosing,
    method: "choose-plants",
  };
}

/** How the effective size at the cut comes about. */
export function explainSize(
  ground: ChoiceGround,
  setting: Setting,
  kept: number,
  size: EffectiveSizeSpan,
  shares: "equal" | "unknown",
): Explanation | null {
  if (ground.plot === null) return null;
  const input = cutOfPlot(ground.plot, { kept, pollen: pollenOf(setting, ground), shares });
  return {
    title: shares === "equal" ? "the effective size with equal shares" : "the effective size of seed tipped together",
    answer: sizeInWords(size),
    formula: "Ne = 1 / (κ (1 + F)); κ is the chance that two genes of two seeds come from one plant",
    inputs: [
      { name: "seed parents", value: wholeNumber(kept) },
      { name: "pollen parents", value: bounds(input.pollenParents) },
      {
        name: "their shares of the seed",
        value: shares === "equal" ? "alike from each" : "as they bear: from alike to nearly all from one plant",
      },
      { name: "selfing rate", value: percent(input.selfingRate ?? 0) },
      { name: "inbreeding of the lots sown", value: plainNumber(input.inbreeding ?? 0, 3) },
    ],
    assumed: ground.assumed,
    unsure: "Pollen of a few early plants, or plants that are kin, would lower it.",
    sources: sizes,
    calc: `echo '${JSON.stringify(input)}' | npm run --silent calc -- effective-size-span`,
  };
}

/** How the cost of the year comes about. */
export function explainCost(ground: ChoiceGround, size: EffectiveSizeSpan): Explanation {
  return {
    title: "what this year costs of the diversity",
    answer: costInWords(size),
    formula: "1/(2 Ne) of the gene diversity is lost in one generation",
    inputs: [{ name: "effective size, Ne", value: sizeInWords(size) }],
    assumed: ground.assumed,
    unsure: "It is the mean over many genes: rare forms are lost sooner, common ones later.",
    sources: sizes,
    method: "effective-size",
  };
}

/** How what the choice may bring in a trait comes about. */
export function explainResponse(
  trait: TraitToWeigh,
  stands: DifferentialWithinCells,
  response: NonNullable<ReturnType<typeof responseOf>>,
  pollen: "all" | "kept",
): Explanation {
  const { span, heritability, from } = response;
  return {
    title: `what the choice may bring in ${trait.name}`,
    answer: responseInWords(trait, response),
    formula:
      "R = c·h²·S; S the mean of (x − mean of its cell) over the kept; c = (1 + s)/2 for seed parents alone, 1 for both",
    inputs: [
      { name: "the kept stand above their neighbours by, S", value: traitDifference(stands.differential, trait) },
      { name: "kept plants that were compared", value: wholeNumber(stands.plants) },
      {
        name: "heritability, h²",
        value:
          from === "unknown"
            ? "unknown: from 0 to 1"
            : `${plainNumber(heritability[0], 2)} to ${plainNumber(heritability[1], 2)}`,
      },
      { name: "chosen are", value: pollen === "kept" ? "both parents" : "the seed parents; pollen is of all" },
    ],
    assumed: [
      ...span.assumed.map(({ text }) => `${text.charAt(0).toUpperCase()}${text.slice(1)}.`),
      ...(from === "said" ? [heritabilitySaid(trait, heritability)] : []),
    ],
    unsure:
      "Of a single year hardly anything can be seen: chance in few parents and the weather move the mean as much. Three cycles beside a check would tell.",
    sources: breeding,
    method: "selection-response",
  };
}

/** Whose word the heritability is: somebody's, who may have taken what stayed of earlier choices. */
function heritabilitySaid(trait: TraitToWeigh, said: readonly [number, number]): string {
  return heritabilityOffered(trait)?.every((end, at) => end === said[at])
    ? `The heritability was taken from what stayed of the choice over ${trait.heritability?.from}, as if that one had not changed; chance in few parents is not in its span.`
    : "The heritability is what was said here, not found in this variety.";
}

/** What may come of it: a span, or the bound where nobody knows how much is inherited. */
export function responseInWords(trait: TraitToWeigh, { span }: NonNullable<ReturnType<typeof responseOf>>): string {
  return traitDifferenceSpan(span.atLeast, span.atMost, trait);
}

function bounds({ low, high }: CountBounds): string {
  if (high === null) return `${plainNumber(low)} or more`;
  return low === high ? plainNumber(low) : `between ${plainNumber(low)} and ${plainNumber(high)}`;
}
