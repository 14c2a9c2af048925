import { uuidv7 } from "uuidv7";
import type { NewRowOf } from "../change-set/records";
import type { ChangeWriter } from "../change-set/writer";
import { foldName, sameName } from "../names/fold-name";
import type { TableDifference } from "./difference";
import { type Ids, idOf, storedExtra } from "./ids";

/** Tests, replicates and counts out of lines of which each holds one count. */
export async function applyTests(change: ChangeWriter, { added }: TableDifference<"tests">, ids: Ids): Promise<void> {
  const replicates = new Map(
    (await change.tx.testReplicate.findMany({ select: { id: true, testId: true, name: true } })).map((each) => [
      `${each.testId} ${each.name}`,
      each.id,
    ]),
  );
  const tests: NewRowOf<"GerminationTest">[] = [];
  const newReplicates: NewRowOf<"TestReplicate">[] = [];
  const counts: NewRowOf<"TestCount">[] = [];
  for (const { cells, extra } of added) {
    const name = sameName(cells.test);
    let testId = ids.tests.get(name);
    if (!testId) {
      testId = uuidv7();
      ids.tests.set(name, testId);
      const { text, first, last } = cells.date;
      tests.push({
        id: testId,
        name,
        nameKey: foldName(name),
        lotId: idOf(ids.lots, cells.lot),
        on: text,
        onFirst: first ?? text,
        onLast: last ?? text,
      });
    }
    const key = `${testId} ${sameName(cells.replicate)}`;
    let replicateId = replicates.get(key);
    if (!replicateId) {
      replicateId = uuidv7();
      replicates.set(key, replicateId);
      newReplicates.push({ id: replicateId, testId, name: sameName(cells.replicate), sown: cells.sown });
    }
    const { day, normal, abnormal, hard, fresh, dead } = cells;
    counts.push({ id: uuidv7(), replicateId, day, normal, abnormal, hard, fresh, dead, extra: storedExtra(extra) });
  }
  await change.createAll("GerminationTest", tests);
  await change.createAll("TestReplicate", newReplicates);
  await change.createAll("TestCount", counts);
}
