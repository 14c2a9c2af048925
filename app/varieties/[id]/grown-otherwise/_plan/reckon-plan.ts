import type { GroundToGrowOn, LotToGrowOn } from "@/lib/registry/varieties/read-grown-otherwise";
import { count, decimal } from "@/lib/schemas/lots/form-fields";
import type { PlotParents } from "@/lib/science/effective-size/plot-parents";
import { plotParentsFaults } from "@/lib/science/effective-size/plot-parents-faults";
import type { LineageLot, ParentShare } from "@/lib/science/lineage/lots";
import type { Ends } from "@/lib/science/lineage/span-lots";
import { accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";
import { grownOn } from "@/lib/science/population/grown-on";
import { grownOnSpan } from "@/lib/science/population/grown-on-span";
import { type PlanTyped, yearsAhead } from "./plan-of-address";

/** A plan with its fields read. */
export interface PlanRead {
  readonly lots: readonly LotToGrowOn[];
  readonly parents: readonly ParentShare[];
  readonly plot: PlotParents;
  readonly plants: number;
  readonly every: number;
  /** nobody told the shares: even ones stand in */
  readonly evenShares: boolean;
}

/** What is left from a year on: both ends are one where the records leave no doubt. */
export interface StepOfPlan {
  /** years from today; the seed that is sown stands at null */
  readonly year: number | null;
  /** of the variety's own diversity, 0..1; null where nothing native is left to compare */
  readonly left: Ends | null;
}

/** What a plan comes to. */
export interface PlanReckoned extends PlanRead {
  readonly steps: readonly StepOfPlan[];
  /** at the end of the years; the lower end is what can be counted on */
  readonly left: Ends | null;
  /** F and θ of the seed that is sown */
  readonly sown: { readonly inbreeding: Ends; readonly coancestry: Ends };
  /** one of its lots has no lineage that is known: it is measured from the seed that is sown */
  readonly fromNow: boolean;
}

/** Reads a plan; refused with the field at fault. */
export function readPlan(plan: PlanTyped, ground: GroundToGrowOn): Outcome<PlanRead> {
  const lots = plan.lots.flatMap((id) => ground.lots.find((lot) => lot.id === id) ?? []);
  const faults: Refusal[] = [];
  if (lots.length === 0) faults.push(refusal("missing", ["lots"], "", "is chosen", "choose the lot that is sown"));
  const plants = whole(plan.plants, "plants", faults);
  const separate = ground.mating.sexes === "separate";
  const males = separate ? Math.floor(plants / 2) : plants;
  const seedParents =
    plan.seedParents === "" ? plants - (separate ? males : 0) : whole(plan.seedParents, "seedParents", faults);
  const every = whole(plan.every, "every", faults);
  const told = lots.map((lot) => shareOf(plan.shares[lot.id] ?? ""));
  const evenShares = lots.length > 1 && told.every((share) => share === null);
  if (lots.length > 1 && !evenShares && told.includes(null))
    faults.push(
      refusal("missing", ["shares"], "", "stands for one of them", "write a share for each lot, or for none"),
    );
  const sum = told.reduce<number>((all, share) => all + (share ?? 0), 0);
  if (lots.length > 1 && !told.includes(null) && sum === 0)
    faults.push(
      refusal("shares-not-whole", ["shares"], 0, "is what the shares sum to", "give one lot a share at least"),
    );
  if (faults.length > 0) return refused(...faults);
  const parents = lots.map(({ node }, i) => ({
    id: node,
    share: evenShares || lots.length === 1 ? 1 / lots.length : (told[i] ?? 0) / sum,
  }));
  const cv = Number(plan.cv);
  const plot: PlotParents = {
    ...ground.mating,
    pollenParents: males,
    seedParents,
    seedShares: cv > 0 ? { cv } : "equal",
    pollenShares: "equal",
  };
  // Refused here, once and at its field: the lineage would refuse it of every grow-out to come.
  const ofPlants = plotParentsFaults(plot);
  if (ofPlants.length > 0) return refused(...ofPlants);
  return accepted({ lots, parents: parents.filter(({ share }) => share > 0), plot, plants, every, evenShares });
}

/** What is left of the diversity if a plan is followed for the years ahead. */
export function reckonPlan(plan: PlanTyped, ground: GroundToGrowOn): Outcome<PlanReckoned> {
  const read = readPlan(plan, ground);
  if (!read.ok) return read;
  const found = followed(read.value, ground);
  if (!found.ok) return found;
  return accepted({ ...read.value, ...found.value, left: found.value.steps.at(-1)?.left ?? null });
}

type Followed = Pick<PlanReckoned, "steps" | "sown" | "fromNow">;

function followed(plan: PlanRead, ground: GroundToGrowOn): Outcome<Followed> {
  const ahead = { plot: plan.plot, years: yearsAhead, yearsBetween: plan.every };
  const told = plan.lots.every(({ between, standing, foreign }) => between || (standing === "counted" && !foreign));
  if (ground.known && told && plan.lots.some(({ between }) => between !== null)) {
    const grown = grownOnSpan({ known: ground.known, parents: plan.parents, ...ahead });
    if (!grown.ok) return grown;
    const steps = grown.value.map(({ year, figures }) => ({ year, left: figures.diversityRetained }));
    return accepted({ steps, sown: grown.value[0]?.figures ?? nothingLost, fromNow: false });
  }
  const fromNow = plan.lots.some(({ standing }) => standing !== "counted");
  const start = fromNow ? seedOfToday(ground) : null;
  const grown = grownOn({
    lots: start ? [start] : ground.lineage,
    parents: start ? [{ id: start.id, share: 1 }] : plan.parents,
    ...ahead,
  });
  if (!grown.ok) return grown;
  const sown = grown.value[0]?.figures;
  return accepted({
    steps: grown.value.map(({ year, figures }) => ({ year, left: bothEnds(figures.nativeDiversityRetained) })),
    sown: sown ? { inbreeding: point(sown.inbreeding), coancestry: point(sown.coancestry) } : nothingLost,
    fromNow,
  });
}

const point = (value: number): Ends => ({ low: value, high: value });
const bothEnds = (value: number | null) => (value === null ? null : point(value));
const nothingLost = { inbreeding: point(0), coancestry: point(0) };

/** The seed that is sown as if nothing were known of what went before it. */
function seedOfToday({ usualInbreeding }: GroundToGrowOn): LineageLot {
  return { id: "seed of today", kind: "founder", inbreeding: usualInbreeding, coancestry: 0 };
}

function whole(text: string, field: string, faults: Refusal[]): number {
  const read = count(text);
  if (read.ok) return read.value;
  faults.push(refusal("no-count", [field], text, "is no count", "write a whole number, 1 or more"));
  return 1;
}

/** A share typed as a percentage; null where nothing (or nothing that can be read) stands there. */
function shareOf(text: string): number | null {
  const read = decimal({ atLeast: 0, atMost: 100 })(text.replace(/%\s*$/, ""));
  return read.ok ? read.value / 100 : null;
}
