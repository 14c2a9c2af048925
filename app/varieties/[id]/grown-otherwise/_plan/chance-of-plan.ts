import type { GroundToGrowOn } from "@/lib/registry/varieties/read-grown-otherwise";
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
export function chanceOf(plan: PlanReckoned, { usualInbreeding }: GroundToGrowOn): OutcomeSpreadInput {
  const grown = plan.steps.length - 1;
  const sown = plan.steps[0]?.figures;
  const theta = sown?.coancestry ?? 0;
  const inbreeding = sown && theta < 1 ? Math.max(0, (sown.inbreeding - theta) / (1 - theta)) : usualInbreeding;
  const lots: LineageLot[] = [{ id: "sown now", kind: "founder", inbreeding, coancestry: 0 }];
  for (let step = 1; step <= grown; step++) {
    const from = step === 1 ? "sown now" : `grow-out ${step - 1}`;
    lots.push({ id: `grow-out ${step}`, kind: "grow-out", parents: [{ id: from, share: 1 }], ...plan.plot });
  }
  const plants = Math.max(1, grown * (plan.plot.pollenParents + plan.plot.seedParents));
  const replicates = Math.max(100, Math.min(usualPlaces, Math.floor(mostPlants / plants)));
  return { lots, of: `grow-out ${grown}`, frequency: 0.05, replicates, seed: 1 };
}
