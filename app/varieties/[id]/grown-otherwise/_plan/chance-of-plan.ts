import type { OutcomeSpreadInput } from "@/lib/science/gene-drop/outcome-spread";
import type { LineageLot } from "@/lib/science/lineage/lots";
import type { PlanReckoned } from "./reckon-plan";

/** Places in the genome that are followed where the plants are few enough. */
const usualPlaces = 2000;

/** So many plants are grown in all at most: a minute of work. */
const mostPlants = 8_000_000;

/**
 * A plan as the tree through which genes are dropped. The seed that is sown is the founder: what its own seeds have in common counts as nothing,
 * and its inbreeding is what goes beyond that, (F − θ)/(1 − θ).
 */
export function chanceOf(plan: PlanReckoned): OutcomeSpreadInput {
  const grown = plan.steps.length - 1;
  const { inbreeding: f, coancestry: theta } = plan.sown;
  // Of a span the end at which the seed is the more inbred beyond what it shares: the cautious one.
  const beyond = (["low", "high"] as const).map((end) =>
    theta[end] < 1 ? (f[end] - theta[end]) / (1 - theta[end]) : 1,
  );
  const inbreeding = Math.max(0, ...beyond);
  const lots: LineageLot[] = [{ id: "sown now", kind: "founder", inbreeding, coancestry: 0 }];
  for (let step = 1; step <= grown; step++) {
    const from = step === 1 ? "sown now" : `grow-out ${step - 1}`;
    lots.push({ id: `grow-out ${step}`, kind: "grow-out", parents: [{ id: from, share: 1 }], ...plan.plot });
  }
  const plants = Math.max(1, grown * (plan.plot.pollenParents + plan.plot.seedParents));
  const replicates = Math.max(100, Math.min(usualPlaces, Math.floor(mostPlants / plants)));
  return { lots, of: `grow-out ${grown}`, frequency: 0.05, replicates, seed: 1 };
}
