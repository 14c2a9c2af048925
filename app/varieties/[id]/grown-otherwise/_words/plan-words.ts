import type { Explanation } from "@/lib/display/explanation";
import { percent, plainNumber, effectiveSize as sizeInWords } from "@/lib/display/numbers";
import { counted, listed } from "@/lib/display/plurals";
import type { GroundToGrowOn } from "@/lib/registry/varieties/read-grown-otherwise";
import { effectiveSize } from "@/lib/science/effective-size/effective-size";
import { cvOf } from "@/lib/science/effective-size/plot-parents";
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

/** How what is left in thirty years is worked out. */
export function leftExplanation(plan: PlanReckoned, { mating }: GroundToGrowOn): Explanation {
  const size = effectiveSize({ ...plan.plot, inbreeding: 0 });
  const grown = plan.steps.length - 1;
  const start = plan.steps[0]?.figures.nativeDiversityRetained ?? null;
  return {
    title: `Left in ${yearsAhead} years`,
    answer: percent(plan.left),
    formula:
      "1 − θ (native genes alone where there are foreign ones) after ⌈years / years between⌉ grow-outs; each by the recursion of the lineage, the first from the lots chosen, each later one from the harvest before it",
    inputs: [
      ...plan.lots.map((lot) => ({ name: "sown from", value: `lot ${lot.number}`, href: `/lots/${lot.id}` })),
      { name: "that seed holds", value: percent(start) },
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
    ],
    unsure: "An expectation. What chance makes of it is told below; choosing the best plants leaves less.",
    sources: ["Cockerham 1967, Genetics 56:89", "Lindgren & Mullin 1998, Can. J. For. Res. 28:276"],
    calc: "npm run --silent calc -- grown-on",
  };
}
