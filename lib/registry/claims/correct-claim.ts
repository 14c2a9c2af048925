import { uuidv7 } from "uuidv7";
import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import type { CorrectClaimInput } from "@/lib/schemas/lots/lineage-claims";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import { claimedParent } from "./claim-faults";
import { saidIn, writeStory } from "./tell-claim";

/**
 * Puts a claim right by a new one that points to it: what was said before stays to be read, and how the claim stands goes on. A story that is
 * told otherwise is a story more. Refused: a claim that was put right already, and whatever `claimedParent` refuses.
 */
export async function correctClaim(
  db: Database,
  actor: Actor,
  claimId: string,
  { why, ...input }: CorrectClaimInput,
  today: string,
): Promise<Outcome<Performed<{ claimId: string; lotId: string }>>> {
  const found = await claimThatStands(db, claimId);
  if (!found.ok) return found;
  const old = found.value;
  const operation = {
    action: "correct" as const,
    title: `Lot ${old.lot.number}: what was told put right`,
    reason: why,
  };
  return perform(db, actor, operation, async (change, tx) => {
    const parent = await claimedParent(tx, old.lot, input, today, claimId);
    if (!parent.ok) return parent;
    const same = old.story?.words === input.story;
    const id = uuidv7();
    await change.create("LineageClaim", {
      ...saidIn(input, parent.value),
      ...{ id, lotId: old.lotId, stewardId: old.stewardId ?? actor.stewardId, replacesId: claimId },
      ...{ standing: old.standing, standingReason: old.standingReason },
      storyId: same ? old.storyId : await writeStory(change, old.lotId, input, actor.stewardId),
    });
    change.touch(old.lot.varietyId);
    return accepted({ claimId: id, lotId: old.lotId });
  });
}

/** A claim that no later one has put right, with its lot and story. */
export async function claimThatStands(db: Database, claimId: string) {
  const claim = await db.read.lineageClaim.findUnique({
    where: { id: claimId },
    include: { lot: { include: { variety: true } }, story: true },
  });
  if (!claim) return refused(refusal("unknown", ["claim"], claimId, "is no claim on record", "choose one of the list"));
  const later = await db.read.lineageClaim.count({ where: { replacesId: claimId } });
  if (later === 0) return accepted(claim);
  const needed = "put the later one right";
  return refused(refusal("corrected-already", ["claim"], claim.words, "was put right already", needed));
}
