import { uuidv7 } from "uuidv7";
import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { type Performed, perform } from "@/lib/registry/change-set/perform";
import type { CorrectedCount } from "@/lib/schemas/germination-test/corrected-count";
import { countsAgainstSown } from "@/lib/schemas/germination-test/counts-against-sown";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { standingCounts } from "./standing-counts";

/**
 * Corrects a count: a new count that names the old one, or, without one, a line that takes the old one back. The old count stays.
 * Refused: a count that is not there or was replaced before, and what the replicate could not hold.
 */
export async function correctCount(
  db: Database,
  actor: Actor,
  correction: CorrectedCount,
): Promise<Outcome<Performed<{ testId: string; countId: string }>>> {
  const { countId, instead, reason } = correction;
  const named = await db.read.testCount.findUnique({
    where: { id: countId },
    select: { day: true, replicate: { select: { name: true, test: { select: { name: true } } } } },
  });
  const what = named ? `of test ${named.replicate.test.name}, replicate ${named.replicate.name}` : "(no count)";
  const title = `${instead ? "Count corrected" : "Count taken back"} ${what}`;
  return perform(db, actor, { action: "correct-at-desk", title, reason }, async (change, tx) => {
    const count = await tx.testCount.findUnique({
      where: { id: countId },
      include: {
        replacedBy: { select: { id: true } },
        replicate: { include: { counts: true, test: { include: { lot: { select: { varietyId: true } } } } } },
      },
    });
    if (!count) {
      return refused(refusal("unknown-count", ["countId"], countId, "is no count here", "choose a count of the test"));
    }
    if (count.replacedBy || count.takenBack) {
      const needed = "look at the test again and correct what stands there now";
      return refused(refusal("corrected-before", ["countId"], countId, "was corrected or taken back before", needed));
    }
    const { replicate } = count;
    const others = standingCounts(replicate.counts).filter((each) => each.id !== count.id);
    if (instead) {
      const faults = countsAgainstSown({ ...replicate, counts: [...others, instead] }, []);
      if (faults.length > 0) {
        return refused(...faults.map((fault) => ({ ...fault, path: ["instead", ...fault.path.slice(2)] })));
      }
    }
    const id = uuidv7();
    const { day, normal, abnormal, hard, fresh, dead } = instead ?? count;
    await change.create("TestCount", {
      id,
      replicateId: replicate.id,
      day,
      normal,
      abnormal,
      hard,
      fresh,
      dead,
      replacesId: count.id,
      takenBack: instead === null,
    });
    change.touch(replicate.test.lot.varietyId);
    return accepted({ testId: replicate.test.id, countId: id });
  });
}
