import { uuidv7 } from "uuidv7";
import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import type { PlanGrowOutInput } from "@/lib/schemas/grow-outs/plan-grow-out";
import { type Assumption, accepted, type Outcome, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import { foldName, sameName } from "../names/fold-name";
import { stewardNamed } from "../stewards/steward-named";
import { varietyOf } from "../varieties/variety-of";
import { growOutNameTaken } from "./name-of-grow-out";
import { parentsOfPlan } from "./parents-of-plan";
import { planFaults } from "./plan-faults";
import { plotFor } from "./plot-for";

export interface PlannedGrowOut {
  readonly growOutId: string;
  /** what is allowed, and worth saying */
  readonly warnings: readonly Assumption[];
}

/**
 * Plans a grow-out of a variety: what it is for, which lots are to be sown in which shares, how many plants and seed parents it wants, where
 * it will stand. Nothing is taken out of a jar by it; sowing does that.
 */
export async function planGrowOut(
  db: Database,
  actor: Actor,
  varietyId: string,
  input: PlanGrowOutInput,
): Promise<Outcome<Performed<PlannedGrowOut>>> {
  const known = await varietyOf(db.read, varietyId);
  if (!known.ok) return known;
  const variety = known.value;
  const title = `Grow-out ${sameName(input.name)} of ${variety.name} planned`;
  return perform(db, actor, { action: "record", title }, async (change, tx) => {
    const taken = await growOutNameTaken(tx, input.name);
    const steward = input.steward === null ? accepted(null) : await stewardNamed(tx, input.steward);
    const parents = await parentsOfPlan(tx, variety, input.parents, null);
    const plot = await plotFor(tx, change, input, steward.ok ? steward.value : null);
    const faults = [
      ...(taken ? [taken] : []),
      ...[steward, parents, plot].flatMap((each) => (each.ok ? [] : each.refusals)),
      ...planFaults(input),
    ];
    if (faults.length > 0 || !steward.ok || !parents.ok || !plot.ok) return refused(...faults);
    const growOutId = uuidv7();
    await change.create("GrowOut", {
      id: growOutId,
      name: sameName(input.name),
      nameKey: foldName(input.name),
      varietyId,
      stewardId: steward.value,
      purpose: input.purpose,
      plantsPlanned: input.plantsPlanned,
      seedParentsPlanned: input.seedParentsPlanned,
      note: input.note,
    });
    const rows = parents.value.parents.map((parent) => ({ id: uuidv7(), growOutId, ...parent }));
    await change.createAll("GrowOutParent", rows);
    if (plot.value !== null) await change.create("GrowOutPlot", { id: uuidv7(), growOutId, plotId: plot.value });
    change.touch(varietyId);
    return accepted({ growOutId, warnings: parents.value.warnings });
  });
}
