import { uuidv7 } from "uuidv7";
import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import type { ClaimInput } from "@/lib/schemas/lots/lineage-claims";
import { accepted, type Outcome, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import type { ChangeWriter } from "../change-set/writer";
import { unknownLot } from "../ledger/record-ledger-entry";
import { claimedParent } from "./claim-faults";

/**
 * Writes down what somebody says of where a lot is from: that it descends from an earlier lot, is the same as another, or that nothing is known
 * before here. It stands open beside whatever else is said; figures never count it. Refused as `claimedParent` says.
 */
export async function tellClaim(
  db: Database,
  actor: Actor,
  lotId: string,
  input: ClaimInput,
  today: string,
): Promise<Outcome<Performed<{ claimId: string }>>> {
  const lot = await db.read.lot.findUnique({ where: { id: lotId }, include: { variety: true } });
  if (!lot) return refused(unknownLot(lotId));
  return perform(db, actor, { action: "record", title: titleOf(lot.number, input) }, async (change, tx) => {
    const parent = await claimedParent(tx, lot, input, today);
    if (!parent.ok) return parent;
    const claimId = uuidv7();
    const storyId = await writeStory(change, lotId, input, actor.stewardId);
    await change.create("LineageClaim", {
      ...saidIn(input, parent.value),
      ...{ id: claimId, lotId, stewardId: actor.stewardId, storyId },
    });
    change.touch(lot.varietyId);
    return accepted({ claimId });
  });
}

/** `Told of lot Quern 3: descends from Quern 1`. */
export function titleOf(number: string, { kind, parent }: ClaimInput): string {
  return `Told of lot ${number}: ${kind}${kind === "unknown before" ? " here" : ` ${parent ?? "a lot not on record"}`}`;
}

/** What a claim says, as it is stored. A single number of generations is the fewest and the most. */
export function saidIn(input: ClaimInput, parentLotId: string | null) {
  return {
    kind: input.kind,
    parentLotId,
    words: input.words,
    teller: input.teller,
    toldOn: input.toldOn?.text ?? null,
    howSure: input.howSure,
    generationsFirst: input.generationsFirst,
    generationsLast: input.generationsLast ?? input.generationsFirst,
  };
}

/** The long form of what was told, as a story of the lot; null where there is none. */
export async function writeStory(
  change: ChangeWriter,
  lotId: string,
  { story, teller, toldOn }: ClaimInput,
  stewardId: string | null,
): Promise<string | null> {
  if (story === null) return null;
  const id = uuidv7();
  await change.create("Story", { id, lotId, words: story, teller, stewardId, toldOn: toldOn?.text ?? null });
  return id;
}
