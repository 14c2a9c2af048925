import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import type { JudgeClaimInput } from "@/lib/schemas/lots/lineage-claims";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import { readDescent, wayInWords, wayUp } from "../lots/descent";
import { claimThatStands } from "./correct-claim";

/**
 * Says how a claim stands: open, believed, or set aside, the latter two with a reason. Its rivals stay beside it. Refused: as it stands already;
 * no reason; a claim taken up again by which a lot would now be its own ancestor.
 */
export async function judgeClaim(
  db: Database,
  actor: Actor,
  claimId: string,
  { standing, reason }: JudgeClaimInput,
): Promise<Outcome<Performed<{ lotId: string }>>> {
  const found = await claimThatStands(db, claimId);
  if (!found.ok) return found;
  const claim = found.value;
  const operation = {
    action: "decide" as const,
    title: `Lot ${claim.lot.number}: what was told is ${standing}`,
    reason,
  };
  return perform(db, actor, operation, async (change, tx) => {
    if (standing === claim.standing && reason === claim.standingReason)
      return refused(refusal("as-it-is", ["standing"], standing, "is how it stands", "choose another, or leave it"));
    if (standing !== "open" && reason === null)
      return refused(refusal("missing", ["reason"], "", `says why it is ${standing}`, "write in a few words why"));
    if (claim.standing === "set aside" && standing !== "set aside" && claim.kind === "descends from") {
      const descent = await readDescent(tx, claim.lot.variety.cropId, { claims: true });
      const way = claim.parentLotId === null ? null : wayUp(descent, claim.parentLotId, claim.lotId);
      if (way !== null) {
        const wrong = `cannot be taken up again: ${wayInWords(descent, way)}, so the lot would be its own ancestor`;
        return refused(refusal("cycle", ["standing"], standing, wrong, "set the other claim aside first"));
      }
    }
    await change.update("LineageClaim", claimId, { standing, standingReason: reason });
    change.touch(claim.lot.varietyId);
    return accepted({ lotId: claim.lotId });
  });
}
