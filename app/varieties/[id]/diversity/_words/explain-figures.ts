import type { Explanation } from "@/lib/display/explanation";
import { percent, percentSpan, plainNumber, span } from "@/lib/display/numbers";
import { counted, listed } from "@/lib/display/plurals";
import { ownKept } from "@/lib/registry/varieties/own-kept";
import type { GrowOutBehind } from "@/lib/registry/varieties/read-diversity";
import type { LotOfVariety } from "@/lib/registry/varieties/read-variety";
import type { Stretch } from "@/lib/registry/varieties/stretches";
import { founderEquivalents } from "@/lib/science/lineage/founder-equivalents";
import { ownKeptInWords, pointOrSpan, sizeInWords } from "./kept-in-words";

const recursion = "Cockerham 1967, Genetics 56:89";
const lindgren = "Lindgren & Mullin 1998, Can. J. For. Res. 28:276";
const lacy = "Lacy 1989, Zoo Biol. 8:111";

/** One figure of a lot with its name, its value in words, and how it came about. */
export interface ToldFigure {
  readonly key: string;
  readonly name: string;
  readonly value: string;
  readonly explanation: Explanation;
}

/** All figures of the lineage of one lot, in the order in which they are told. */
export function figuresOfLot(lot: LotOfVariety): ToldFigure[] {
  const { figures } = lot;
  const kept = ownKept(figures, lot.standing);
  const theta = pointOrSpan(figures, "coancestry");
  const f = pointOrSpan(figures, "inbreeding");
  const all = pointOrSpan(figures, "diversityRetained");
  const uniform = lot.standing !== "counted" && lot.standing !== "plants not known";
  const told = (key: string, name: string, value: string, more: Told): ToldFigure => ({
    key,
    name,
    value: uniform ? ownKeptInWords(lot) : value,
    explanation: explained(lot, name, uniform ? ownKeptInWords(lot) : value, more),
  });
  const foreign = figures?.foreignAncestry ?? null;
  const own = told("own", "Its own diversity kept", ownKeptInWords(lot), {
    formula:
      "1 − t/k: t is the chance that two genes of two of its seeds are both native and come from one gene of a founder, k that both are native; without foreign pollen 1 − θ",
    sources: [recursion, lindgren],
    unsure: "An expectation from the records, not a measurement of this seed.",
  });
  const generations = figures?.generations ?? null;
  return [
    own,
    ...(kept.foreign
      ? [
          told("all", "Diversity with the foreign genes", all ? percentSpan(all.low, all.high) : "unknown", {
            formula: "1 − θ, foreign genes counted as if they were its own",
            sources: [recursion, lindgren],
            unsure: "Foreign pollen lifts this figure while the variety’s own genes are lost. It is no gain.",
          }),
        ]
      : []),
    told("coancestry", "Coancestry", inThree(theta), {
      formula: "θ, the chance that two genes drawn from two of its seeds are copies of one gene of the founders",
      sources: [recursion, lindgren],
    }),
    told("inbreeding", "Inbreeding", inThree(f), {
      formula: "F, the chance that the two genes inside one of its seeds are copies of one gene of the founders",
      sources: [recursion],
      unsure: "Weak plants may also come of old seed, weather or disease.",
    }),
    told("founders", "As much as so many unrelated plants", equivalents(theta), {
      formula: "founder equivalents = 1/(2θ)",
      sources: [lacy],
    }),
    told("foreign", "Genes from foreign pollen", foreign === null ? "unknown" : percent(foreign), {
      formula: "1 − n; each grow-out passes ½(1 + s + u) of the native share on, u = (1 − s)(1 − m), m foreign pollen",
      sources: [lindgren],
      unsure: "Foreign pollen that nobody looked for counts as none; it cannot be taken out again.",
    }),
    told(
      "generations",
      "Generations from the founders",
      generations === null ? "unknown" : plainNumber(generations, 1),
      {
        formula: "1 + Σ w g over the lots that were sown; a blend takes the mean, years in the jar do not count",
        sources: [recursion],
      },
    ),
    told("size", "Effective size of its grow-out", sizeOfLot(lot), {
      formula: "Ne = 1/(κ(1 + F)), κ the chance that two genes of two seeds come from one plant",
      sources: ["Crow & Denniston 1988, Evolution 42:482"],
    }),
  ];
}

interface Told {
  readonly formula: string;
  readonly sources: readonly string[];
  readonly unsure?: string;
}

function explained(lot: LotOfVariety, name: string, answer: string, { formula, sources, unsure }: Told): Explanation {
  const { figures } = lot;
  return {
    title: `${name}, lot ${lot.number}`,
    answer,
    formula,
    inputs: [
      { name: "lot", value: lot.number, href: `/lots/${lot.id}` },
      { name: "founder lots", value: listed(figures?.founders ?? []) || "none" },
    ],
    assumed: (figures?.span ? figures.span.assumed : (figures?.assumed ?? [])).map(sentence),
    unsure,
    sources,
    calc: `npm run --silent figures -- ${JSON.stringify(lot.number)}`,
  };
}

/** What a grow-out's size cost the lot. */
export function costExplanation(lot: LotOfVariety, growOut: GrowOutBehind): Explanation {
  const { cost, planned } = growOut;
  const kept = ownKept(lot.figures, lot.standing);
  return {
    title: `What grow-out ${growOut.name} cost lot ${lot.number}`,
    answer: costInWords(growOut),
    formula:
      "what the lot would keep had this grow-out alone been at its planned size, less what it keeps; all other grow-outs as they were",
    inputs: [
      { name: "grow-out", value: growOut.name, href: `/grow-outs/${growOut.id}` },
      { name: "as it was", value: plantsInWords(growOut) },
      { name: "at its planned size", value: planned ? plannedInWords(growOut) : "unknown" },
      { name: "the lot keeps", value: ownKeptInWords(lot), href: `/lots/${lot.id}` },
      ...(cost && kept.value !== null
        ? [{ name: "it would keep", value: percent(kept.value + (cost.nativeCost ?? cost.cost)) }]
        : []),
    ],
    assumed: [
      ...(planned ? [plannedBy(growOut)] : []),
      "At the planned size every seed parent gives the same amount of seed, and every plant the same amount of pollen.",
    ],
    unsure: "Costs of several grow-outs do not add up: each is told as if it alone had been larger.",
    sources: [recursion, lindgren],
    calc: "npm run --silent calc -- bottleneck-cost",
  };
}

/** The one size that a stretch of grow-outs comes to. */
export function stretchExplanation({ growOuts, together }: Stretch<GrowOutBehind>): Explanation {
  return {
    title: `Effective size of ${counted(growOuts.length, "grow-out")} together`,
    answer: sizeInWords(together),
    formula: "harmonic mean: number of grow-outs / Σ (1/Ne)",
    inputs: growOuts.map((each) => ({
      name: each.name,
      value: sizeInWords(each.size),
      href: `/grow-outs/${each.id}`,
    })),
    assumed: [],
    unsure: "One small grow-out outweighs many large ones. Years in the jar do not count.",
    sources: ["Wright 1938, Science 87:430"],
    calc: "npm run --silent calc -- harmonic-size",
  };
}

/** "1.6 % points", "nothing", "gained 0.3 points", "unknown": of the variety's own diversity. */
export function costInWords({ cost, planned }: GrowOutBehind): string {
  if (planned === null) return "no plan to compare";
  if (cost === null) return "unknown";
  const points = 100 * (cost.nativeCost ?? cost.cost);
  if (Math.abs(points) < 0.05) return "less than 0.1 points";
  const size = `${plainNumber(Math.abs(points), 1)} ${Math.abs(points) === 1 ? "point" : "points"}`;
  return points > 0 ? size : `gained ${size}`;
}

/** "40 plants, seed of 12" */
export function plantsInWords({ pollenParents, seedParents }: GrowOutBehind): string {
  if (pollenParents === null || seedParents === null) return "plants not written down";
  return pollenParents === seedParents
    ? counted(pollenParents, "plant")
    : `${counted(pollenParents, "plant")}, seed of ${seedParents}`;
}

/** "200 plants (the crop’s floor)" */
export function plannedInWords({ planned }: Pick<GrowOutBehind, "planned">): string {
  if (planned === null) return "unknown";
  const { plants, seedParents, from } = planned;
  const whose = { plan: "its plan", variety: "what the variety asks for", crop: "the crop’s floor" }[from];
  return `${counted(plants, "plant")}${seedParents < plants && from !== "crop" ? `, seed of ${seedParents}` : ""} (${whose})`;
}

function plannedBy({ planned }: GrowOutBehind): string {
  if (planned?.from === "plan") return "The planned size is the grow-out’s own plan.";
  if (planned?.from === "variety") return "It had no plan of its own: the planned size is what the variety asks for.";
  return "It had no plan of its own: the planned size is the fewest plants that the crop asks for.";
}

function sizeOfLot({ figures }: LotOfVariety): string {
  const value = figures?.effectiveSize ?? null;
  if (value !== null) return sizeInWords({ low: value, high: value });
  return sizeInWords(figures?.span?.effectiveSize ?? null);
}

function inThree(ends: { readonly low: number; readonly high: number } | null): string {
  if (ends === null) return "unknown";
  const [low, high] = [plainNumber(ends.low, 3), plainNumber(ends.high, 3)];
  return low === high ? low : `${low}–${high}`;
}

function equivalents(theta: { readonly low: number; readonly high: number } | null): string {
  if (theta === null) return "unknown";
  if (theta.high < 1e-12) return "not limited by these records";
  return span(founderEquivalents(theta.high), theta.low < 1e-12 ? null : founderEquivalents(theta.low), "", 2);
}

function sentence(text: string): string {
  const first = text.charAt(0).toUpperCase() + text.slice(1);
  return /[.!?]$/.test(first) ? first : `${first}.`;
}
