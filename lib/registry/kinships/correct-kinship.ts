import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import type { CorrectKinshipInput } from "@/lib/schemas/lots/lineage-claims";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import { coancestryFaults } from "./kinship-faults";

/** Puts right how two founder lots are related, with a reason; what was recorded before stays in the history. */
export async function correctKinship(
  db: Database,
  actor: Actor,
  kinshipId: string,
  { why, ...input }: CorrectKinshipInput,
): Promise<Outcome<Performed<{ varietyId: string }>>> {
  const found = await kinshipOf(db, kinshipId);
  if (!found.ok) return found;
  const { first, second } = found.value;
  const title = `Kinship of lots ${first.number} and ${second.number} put right: ${input.kind}`;
  return perform(db, actor, { action: "correct", title, reason: why }, async (change) => {
    const faults = coancestryFaults(input);
    if (faults.length > 0) return refused(...faults);
    const changed = await change.update("FounderKinship", kinshipId, input);
    if (!changed)
      return refused(refusal("as-it-is", ["kind"], input.kind, "is what stands there", "change it, or leave it"));
    change.touch(first.varietyId, second.varietyId);
    return accepted({ varietyId: first.varietyId });
  });
}

/** Takes a kinship away again: it is not known after all, and the figures show a span. What was recorded stays in the history. */
export async function takeKinshipAway(
  db: Database,
  actor: Actor,
  kinshipId: string,
  why: string,
): Promise<Outcome<Performed<{ varietyId: string }>>> {
  const found = await kinshipOf(db, kinshipId);
  if (!found.ok) return found;
  const { first, second } = found.value;
  const title = `Kinship of lots ${first.number} and ${second.number}: not known after all`;
  return perform(db, actor, { action: "correct", title, reason: why }, async (change) => {
    await change.remove("FounderKinship", [kinshipId]);
    change.touch(first.varietyId, second.varietyId);
    return accepted({ varietyId: first.varietyId });
  });
}

async function kinshipOf(db: Database, kinshipId: string) {
  const lot = { select: { number: true, varietyId: true } };
  const found = await db.read.founderKinship.findUnique({
    where: { id: kinshipId },
    include: { first: lot, second: lot },
  });
  if (found) return accepted(found);
  return refused(refusal("unknown", ["kinship"], kinshipId, "is no kinship on record", "choose one of the list"));
}
