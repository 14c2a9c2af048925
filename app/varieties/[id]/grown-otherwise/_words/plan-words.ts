import type { Explanation } from "@/lib/display/explanation";
import { keptSpan } from "@/lib/display/kept-span";
import { percent, plainNumber, effectiveSize as sizeInWords } from "@/lib/display/numbers";
import { counted, listed } from "@/lib/display/plurals";
import type { GroundToGrowOn } from "@/lib/registry/varieties/read-grown-otherwise";
import { effectiveSize } from "@/lib/science/effective-size/effective-size";
import { cvOf } from "@/lib/science/effective-size/plot-parents";
import type { Ends } from "@/lib/science/lineage/span-lots";
import { yearsAhead } from "../_plan/plan-of-address";
import type { PlanReckoned } from "../_plan/reckon-plan";

/** "lot Ham 9: 200 plants, seed of 60, every 3 years" */
export function planInWords({ lots, parents, plants, plot, every }: PlanReckoned): string {
  const from = lots.flatMap((lot) => {
    const share = parents.find(({ id }) => id === lot.node)?.share;
    if (share === undefined) return [];
    return [lots.length > 1 ? `${lot.number} (${percent(share, 0)})` : lot.number];
  });
  const spread = cvOf(plot.seedShares) > 0 ? ` unlike (cv ${plainNumber(cvOf(plot.seedShares), 1)})` : "";
  return `lot ${listed(from)}: ${counted(plants, "plant")}, seed of ${plot.seedParents}${spread}, every ${every === 1 ? "year" : counted(every, "year")}`;
}

/** Whether what is left lies between two ends, because something was not written down. */
export function isSpan(left: Ends | null): boolean {
  return left !== null && left.low !== left.high;
}

/** "94 %", "78–93 %", "unknown". */
export function leftInWords(left: Ends | null, decimals: 0 | 1 = 0): string {
  return left !== null && isSpan(left) ? keptSpan(left) : percent(left?.low ?? null, decimals);
}

/** What it is a share of: of the founders' diversity, or of what was there when the measure begins. */
export function shareOfWhat({ lots, fromNow, left }: PlanReckoned): string {
  if (fromNow) return "of what is in the seed now";
  const since = isSpan(left) ? [...new Set(lots.flatMap(({ between }) => between?.since ?? []))] : [];
  if (since.length > 0) return `of what was there at the harvest of ${listed(since)}`;
  return `of the founders’ diversity${lots.some(({ foreign }) => foreign) ? ", native genes alone," : ""}`;
}

/** A sentence as it is kept, without its full stop, as it stands on a page. */
export function sentence(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
}

/** How what is left in thirty years is worked out. */
export function leftExplanation(plan: PlanReckoned, { mating }: GroundToGrowOn): Explanation {
  const size = effectiveSize({ ...plan.plot, inbreeding: 0 });
  const grown = plan.steps.length - 1;
  const start = plan.steps[0]?.left ?? null;
  const span = isSpan(plan.left);
  return {
    title: `Left in ${yearsAhead} years`,
    answer: leftInWords(plan.left, 1),
    formula: span
      ? "1 − θ at the worst and at the best that the records allow, after ⌈years / years between⌉ grow-outs; each by the recursion of the lineage at both ends, the first from the lots chosen, each later one from the harvest before it"
      : "1 − θ (native genes alone where there are foreign ones) after ⌈years / years between⌉ grow-outs; each by the recursion of the lineage, the first from the lots chosen, each later one from the harvest before it",
    inputs: [
      ...plan.lots.map((lot) => ({ name: "sown from", value: `lot ${lot.number}`, href: `/lots/${lot.id}` })),
      { name: "that seed holds", value: leftInWords(start, 1) },
      { name: "plan", value: planInWords(plan) },
      { name: "grow-outs", value: String(grown) },
      { name: "effective size of each", value: size.ok ? sizeInWords(size.value.effectiveSize) : "unknown" },
      { name: "selfing rate", value: plainNumber(mating.selfingRate ?? 0, 2) },
    ],
    assumed: [
      "Every plant sheds the same amount of pollen, and none comes from outside.",
      "The crop selfs as its profile says; no seed of other years is mixed in.",
      ...(plan.fromNow ? ["Nothing was lost before the seed that is sown now."] : []),
      ...(plan.evenShares ? ["The plants come evenly from the lots that are sown."] : []),
      ...(span ? [...new Set(plan.lots.flatMap(({ between }) => between?.assumed ?? []))].map(sentence) : []),
    ],
    unsure: `${span ? "Plan by the lower end: it holds whatever was left unwritten. " : ""}An expectation. What chance makes of it is told below; choosing the best plants leaves less.`,
    sources: ["Cockerham 1967, Genetics 56:89", "Lindgren & Mullin 1998, Can. J. For. Res. 28:276"],
    ...(span ? { method: "lineage-span" } : { calc: "npm run --silent calc -- grown-on" }),
  };
}
