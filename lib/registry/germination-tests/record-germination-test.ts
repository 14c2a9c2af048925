import { uuidv7 } from "uuidv7";
import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { type Performed, perform } from "@/lib/registry/change-set/perform";
import { foldName } from "@/lib/registry/names/fold-name";
import { readSettings } from "@/lib/registry/settings/read-settings";
import { countsAgainstSown } from "@/lib/schemas/germination-test/counts-against-sown";
import type { TestEntry } from "@/lib/schemas/germination-test/test-entry";
import type { CivilDay } from "@/lib/science/dates/civil-day";
import { parseTypedDate } from "@/lib/science/dates/parse-typed-date";
import { accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";
import { seedsUsed } from "./seeds-used";
import { testName } from "./test-name";
import { type TestWarning, warningsOfTest } from "./warnings-of-test";

export interface RecordedTest {
  readonly testId: string;
  readonly name: string;
  readonly warnings: readonly TestWarning[];
}

/**
 * Writes a germination test down: the day it was set up, its replicates, what was counted so far, and, if wanted, the seeds used as a
 * line of the lot's ledger. One change set. Refused: a lot that is not there, a date that is none, a name that is taken, replicates of
 * one name, counts past what was sown, seeds that the jar did not hold. `today` is the person's own day, for the warnings.
 */
export async function recordGerminationTest(
  db: Database,
  actor: Actor,
  entry: TestEntry,
  today: CivilDay | null = null,
): Promise<Outcome<Performed<RecordedTest>>> {
  const lotOf = await db.read.lot.findUnique({ where: { id: entry.lotId }, select: { number: true } });
  const title = `Germination test of lot ${lotOf?.number ?? "(no lot)"}`;
  return perform(db, actor, { action: "desk", title }, async (change, tx) => {
    const lot = await tx.lot.findUnique({ where: { id: entry.lotId } });
    if (!lot)
      return refused(
        refusal("unknown-lot", ["lotId"], entry.lotId, "is no lot here", "choose the lot that was tested"),
      );
    const { hemisphere } = await readSettings(tx);
    const on = parseTypedDate(entry.on, { hemisphere, path: ["on"] });
    const name = await testName(tx, entry.name, lot);
    const faults = [...faultsOf(on), ...faultsOf(name), ...faultsOfReplicates(entry)];
    if (!on.ok || !name.ok || faults.length > 0) return refused(...faults);
    const seeds = entry.replicates.reduce((sum, replicate) => sum + replicate.sown, 0);
    const booked = await seedsUsed(tx, entry.seedsUsed, { name: name.value.name, on: on.value, seeds }, lot);
    if (!booked.ok) return booked;
    const others = await tx.germinationTest.findMany({ where: { lotId: lot.id }, select: { basis: true } });
    const testId = uuidv7();
    await change.create("GerminationTest", {
      id: testId,
      ...name.value,
      lotId: lot.id,
      on: on.value.text,
      onFirst: on.value.first,
      onLast: on.value.last,
      basis: entry.basis,
      method: entry.method,
      temperature: entry.temperature,
      preTreatment: entry.preTreatment,
      finalCountDay: entry.finalCountDay,
      note: entry.note,
    });
    const replicates = entry.replicates.map((replicate) => ({ ...replicate, id: uuidv7() }));
    await change.create("TestReplicate", ...replicates.map(({ id, name, sown }) => ({ id, testId, name, sown })));
    const counts = replicates.flatMap((replicate) =>
      replicate.counts.map((count) => ({ id: uuidv7(), replicateId: replicate.id, ...count })),
    );
    if (counts.length > 0) await change.create("TestCount", ...counts);
    if (booked.value) await change.create("LedgerEntry", booked.value);
    change.touch(lot.varietyId);
    const warnings = warningsOfTest({
      on: on.value,
      basis: entry.basis,
      lot,
      otherBases: others.map((other) => other.basis),
      today,
    });
    return accepted({ testId, name: name.value.name, warnings });
  });
}

function faultsOf(outcome: Outcome<unknown>): readonly Refusal[] {
  return outcome.ok ? [] : outcome.refusals;
}

function faultsOfReplicates({ replicates }: TestEntry): Refusal[] {
  const names = new Set<string>();
  return replicates.flatMap((replicate, index) => {
    const path = ["replicates", index];
    const key = foldName(replicate.name);
    const twice = names.has(key);
    names.add(key);
    const needed = "give each replicate of the test its own name, such as 1, 2, 3";
    return [
      ...(twice ? [refusal("replicate-twice", [...path, "name"], replicate.name, "names two replicates", needed)] : []),
      ...countsAgainstSown(replicate, path),
    ];
  });
}
