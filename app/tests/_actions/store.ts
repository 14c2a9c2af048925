"use server";

import { revalidatePath } from "next/cache";
import { correctCount } from "@/lib/registry/germination-tests/correct-count";
import { recordCounts } from "@/lib/registry/germination-tests/record-counts";
import { recordGerminationTest } from "@/lib/registry/germination-tests/record-germination-test";
import { CorrectedCountSchema } from "@/lib/schemas/germination-test/corrected-count";
import { LaterCountsSchema } from "@/lib/schemas/germination-test/later-counts";
import { TestEntrySchema } from "@/lib/schemas/germination-test/test-entry";
import { parsed } from "@/lib/schemas/parsed";
import { accepted, type Outcome } from "@/lib/science/outcome";
import { current } from "../../_session/current";

/** Stores a test as it was typed; answers with its id, or with what is to be put right. */
export async function storeTest(given: unknown): Promise<Outcome<{ testId: string }>> {
  const { db, actor, today } = await current("desk");
  const entry = parsed(TestEntrySchema, given);
  if (!entry.ok) return entry;
  const stored = await recordGerminationTest(db, actor, entry.value, today);
  if (!stored.ok) return stored;
  revalidatePath("/", "layout");
  return accepted({ testId: stored.value.value.testId });
}

/** Stores a later day's counts of a running test. */
export async function storeCounts(given: unknown): Promise<Outcome<{ testId: string }>> {
  const { db, actor } = await current("desk");
  const entry = parsed(LaterCountsSchema, given);
  if (!entry.ok) return entry;
  const stored = await recordCounts(db, actor, entry.value);
  if (!stored.ok) return stored;
  revalidatePath("/", "layout");
  return accepted({ testId: stored.value.value.testId });
}

/** Stores what should stand instead of a count, or takes the count back. */
export async function storeCorrection(given: unknown): Promise<Outcome<{ testId: string }>> {
  const { db, actor } = await current("desk");
  const entry = parsed(CorrectedCountSchema, given);
  if (!entry.ok) return entry;
  const stored = await correctCount(db, actor, entry.value);
  if (!stored.ok) return stored;
  revalidatePath("/", "layout");
  return accepted({ testId: stored.value.value.testId });
}
