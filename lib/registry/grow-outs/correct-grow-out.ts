import { uuidv7 } from "uuidv7";
import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import type { CorrectGrowOutInput } from "@/lib/schemas/grow-outs/plan-grow-out";
import { type Assumption, accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import type { RowOf } from "../change-set/records";
import type { ChangeWriter } from "../change-set/writer";
import { foldName, sameName } from "../names/fold-name";
import { stewardNamed } from "../stewards/steward-named";
import { growOutOf } from "./grow-out-of";
import { growOutNameTaken } from "./name-of-grow-out";
import { type ParentsOfPlan, parentsOfPlan } from "./parents-of-plan";
import { planFaults } from "./plan-faults";

/**
 * Puts the plan or the record of a grow-out right. Before anything is sown no reason is asked for; afterwards one is, where something that was
 * written is replaced. It changes what is written, not what lies in the jars: no ledger entry is made or taken back by it.
 */
export async function correctGrowOut(
  db: Database,
  actor: Actor,
  growOutId: string,
  input: CorrectGrowOutInput,
): Promise<Outcome<Performed<{ warnings: readonly Assumption[] }>>> {
  const known = await growOutOf(db.read, growOutId);
  if (!known.ok) return known;
  const operation = {
    action: "correct" as const,
    title: `Grow-out ${known.value.name} put right`,
    reason: input.reason,
  };
  return perform(db, actor, operation, async (change, tx) => {
    const found = await growOutOf(tx, growOutId);
    if (!found.ok) return found;
    const growOut = found.value;
    const variety = await tx.variety.findUniqueOrThrow({ where: { id: growOut.varietyId } });
    const taken = await growOutNameTaken(tx, input.name, growOutId);
    const steward = input.steward === null ? accepted(null) : await stewardNamed(tx, input.steward);
    const parents = await parentsOfPlan(tx, variety, input.parents, growOutId);
    const faults = [
      ...(taken ? [taken] : []),
      ...[steward, parents].flatMap((each) => (each.ok ? [] : each.refusals)),
      ...planFaults(input),
    ];
    if (faults.length > 0 || !steward.ok || !parents.ok) return refused(...faults);
    const patch = {
      // A name that differs only in blanks or in ’ for ' is the same name.
      ...(sameName(input.name) === sameName(growOut.name)
        ? {}
        : { name: sameName(input.name), nameKey: foldName(input.name) }),
      stewardId: steward.value,
      purpose: input.purpose,
      plantsPlanned: input.plantsPlanned,
      seedParentsPlanned: input.seedParentsPlanned,
      note: input.note,
      sown: input.sown?.text ?? null,
      sownFirst: input.sown?.first ?? null,
      sownLast: input.sown?.last ?? null,
      seedsSown: input.seedsSown,
    };
    const standing = await tx.growOutParent.findMany({ where: { growOutId }, orderBy: { id: "asc" } });
    const missing = reasonMissing(growOut, patch, parentsReplaced(standing, parents.value), input.reason);
    if (missing) return refused(missing);
    await change.update("GrowOut", growOutId, patch);
    await replaceParents(change, growOutId, standing, parents.value);
    change.touch(growOut.varietyId);
    return accepted({ warnings: parents.value.warnings });
  });
}

type Standing = readonly RowOf<"GrowOutParent">[];

const words: Readonly<Record<string, string>> = {
  name: "the name",
  stewardId: "the steward",
  purpose: "the purpose",
  note: "the note",
  sown: "the day of sowing",
  seedsSown: "the seeds sown",
  plantsPlanned: "the plants wanted",
  seedParentsPlanned: "the seed parents wanted",
};

/** What was written of a grow-out that is sown is replaced with a reason only. */
function reasonMissing(
  growOut: RowOf<"GrowOut">,
  patch: Readonly<Record<string, unknown>>,
  parentsChange: boolean,
  reason: string | null,
): Refusal | null {
  if (reason !== null || growOut.sown === null) return null;
  const before: Readonly<Record<string, unknown>> = { ...growOut };
  const replaced = Object.keys(words).find((key) => key in patch && before[key] !== null && before[key] !== patch[key]);
  const what = replaced ? words[replaced] : parentsChange ? "what was sown" : null;
  if (!what) return null;
  const needed = "write in a few words why; both stay in the history";
  return refusal("reason-missing", ["reason"], "", `says why ${what} is replaced`, needed);
}

function parentsReplaced(standing: Standing, { parents }: ParentsOfPlan): boolean {
  return standing.some((before) => {
    const after = parents.find((parent) => parent.lotId === before.lotId);
    return !after || (before.share !== null && before.share !== after.share) || before.role !== after.role;
  });
}

async function replaceParents(
  change: ChangeWriter,
  growOutId: string,
  standing: Standing,
  { parents }: ParentsOfPlan,
): Promise<void> {
  const gone = standing.filter((before) => !parents.some((parent) => parent.lotId === before.lotId));
  await change.remove(
    "GrowOutParent",
    gone.map((each) => each.id),
  );
  await change.updateMany(
    "GrowOutParent",
    standing.flatMap((before) => {
      const after = parents.find((parent) => parent.lotId === before.lotId);
      return after ? [{ id: before.id, patch: { share: after.share, role: after.role } }] : [];
    }),
  );
  const coming = parents.filter((parent) => !standing.some((before) => before.lotId === parent.lotId));
  await change.createAll(
    "GrowOutParent",
    coming.map((parent) => ({ id: uuidv7(), growOutId, ...parent })),
  );
}
