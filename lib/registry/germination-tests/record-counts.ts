import { uuidv7 } from "uuidv7";
import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { grouped } from "@/lib/registry/change-set/grouped";
import { type Performed, perform } from "@/lib/registry/change-set/perform";
import { countsAgainstSown } from "@/lib/schemas/germination-test/counts-against-sown";
import type { LaterCounts } from "@/lib/schemas/germination-test/later-counts";
import { accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";
import { standingCounts } from "./standing-counts";

/**
 * Writes down a later look at a running test. Refused: a test or replicate that is not there, a day that was counted already (it is
 * corrected instead), and counts past what was sown. One change set.
 */
export async function recordCounts(
  db: Database,
  actor: Actor,
  entry: LaterCounts,
): Promise<Outcome<Performed<{ testId: string; counted: number }>>> {
  const named = await db.read.germinationTest.findUnique({ where: { id: entry.testId }, select: { name: true } });
  const operation = { action: "desk" as const, title: `Counts of germination test ${named?.name ?? "(no test)"}` };
  return perform(db, actor, operation, async (change, tx) => {
    const test = await tx.germinationTest.findUnique({
      where: { id: entry.testId },
      include: { replicates: { include: { counts: true } }, lot: { select: { varietyId: true } } },
    });
    if (!test) {
      const needed = "choose the test that was counted";
      return refused(refusal("unknown-test", ["testId"], entry.testId, "is no germination test here", needed));
    }
    const refusals: Refusal[] = [];
    const news = entry.counts.map((count, index) => ({ count, index }));
    for (const [replicateId, own] of grouped(news, ({ count }) => count.replicateId)) {
      const replicate = test.replicates.find((each) => each.id === replicateId);
      const [first] = own;
      if (!replicate) {
        const path = ["counts", first?.index ?? 0, "replicateId"];
        refusals.push(
          refusal(
            "unknown-replicate",
            path,
            replicateId,
            "is no replicate of this test",
            "choose one of its replicates",
          ),
        );
        continue;
      }
      const stood = standingCounts(replicate.counts);
      const faults = countsAgainstSown({ ...replicate, counts: [...stood, ...own.map(({ count }) => count)] }, []);
      refusals.push(...faults.map((fault) => atNewCount(fault, stood.length, own)));
    }
    if (refusals.length > 0) return refused(...refusals);
    await change.create("TestCount", ...entry.counts.map((count) => ({ id: uuidv7(), ...count })));
    change.touch(test.lot.varietyId);
    return accepted({ testId: test.id, counted: entry.counts.length });
  });
}

/** A fault of the replicate's counts, as standing and new ones together, brought to the field of the new count that makes it. */
function atNewCount(fault: Refusal, standing: number, own: readonly { readonly index: number }[]): Refusal {
  const [, at, ...rest] = fault.path;
  const position = typeof at === "number" ? at - standing : -1;
  // A standing later day can be the one that passes what was sown; the new count is still what made it so.
  const index = (own[position] ?? own[0])?.index ?? 0;
  return { ...fault, path: ["counts", index, ...(position < 0 ? [] : rest)] };
}
