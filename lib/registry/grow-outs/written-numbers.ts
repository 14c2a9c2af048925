import type { Transaction } from "@/lib/db";
import { type StepField, type StepNumbers, stepFields } from "./counts-in-step";

/**
 * What a hand or a folder last wrote for a grow-out's numbers, apart from the counts and rogue passes that moved them: what stands again
 * when the last of those is taken back. Read from the history; a number that was only ever moved by events is left out.
 */
export async function writtenNumbers(tx: Transaction, growOutId: string): Promise<Partial<StepNumbers>> {
  const changes = await tx.change.findMany({
    where: { tableName: "GrowOut", recordId: growOutId, action: { not: "remove" } },
    select: { changeSetId: true, action: true, before: true, after: true },
    orderBy: [{ changeSet: { number: "asc" } }, { position: "asc" }],
  });
  const byEvents = new Set(
    (
      await tx.change.findMany({
        where: {
          tableName: { in: ["StageCount", "RoguePass"] },
          changeSetId: { in: changes.filter((each) => each.action === "update").map((each) => each.changeSetId) },
          changeSet: { kind: { not: "import" } },
        },
        select: { changeSetId: true },
        distinct: ["changeSetId"],
      })
    ).map((each) => each.changeSetId),
  );
  const written: { [Field in StepField]?: number | null } = {};
  for (const { changeSetId, action, before, after } of changes) {
    if (action === "update" && byEvents.has(changeSetId)) continue;
    const [was, is] = [numbersIn(before), numbersIn(after)];
    for (const field of stepFields) if (was[field] !== is[field]) written[field] = is[field] ?? null;
  }
  return written;
}

function numbersIn(text: string | null): Partial<StepNumbers> {
  return text === null ? {} : (JSON.parse(text) as Partial<StepNumbers>);
}
