import { uuidv7 } from "uuidv7";
import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import type { SeedWeighingInput } from "@/lib/schemas/ledger/seed-weighing";
import { accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";
import { thousandSeedWeight } from "@/lib/science/seed-weight/thousand-seed-weight";
import { type Performed, perform } from "../change-set/perform";
import { unknownLot } from "./record-ledger-entry";

export interface WeighedSeeds {
  /** grams of a thousand seeds */
  readonly thousandSeedGrams: number;
  /** how far the portions differ; null for one portion */
  readonly cvPercent: number | null;
}

/**
 * Writes down portions of seed that were counted and weighed, and takes the lot's thousand-seed weight from them: 1000 × all grams / all
 * seeds. Portions weighed on another occasion stay as they are and count no more.
 */
export async function recordSeedWeighing(
  db: Database,
  actor: Actor,
  lotId: string,
  input: SeedWeighingInput,
): Promise<Outcome<Performed<WeighedSeeds>>> {
  const lot = await db.read.lot.findUnique({ where: { id: lotId } });
  if (!lot) return refused(unknownLot(lotId));
  const title = `Lot ${lot.number}: seeds counted and weighed`;
  return perform(db, actor, { action: "desk", title }, async (change) => {
    const portions = wholePortions(input.counts);
    if (!portions.ok) return portions;
    const weight = thousandSeedWeight({ counts: portions.value });
    if (!weight.ok) return weight;
    const { thousandSeedGrams, cvPercent } = weight.value;
    const rows = portions.value.map((portion) => ({
      id: uuidv7(),
      lotId,
      on: input.on?.text ?? null,
      ...portion,
      note: input.note,
    }));
    await change.create("SeedWeighing", ...rows);
    await change.update("Lot", lotId, { thousandSeedGrams });
    change.touch(lot.varietyId);
    return accepted({ thousandSeedGrams, cvPercent });
  });
}

/** The portions that are filled in; each needs both its numbers, and one portion at least is needed. */
function wholePortions(counts: SeedWeighingInput["counts"]): Outcome<{ seeds: number; grams: number }[]> {
  const faults: Refusal[] = [];
  const portions: { seeds: number; grams: number }[] = [];
  counts.forEach(({ seeds, grams }, index) => {
    if (seeds !== null && grams !== null) portions.push({ seeds, grams });
    else if (grams !== null)
      faults.push(refusal("missing", ["counts", index, "seeds"], "", "stands here", "write how many seeds that were"));
    else if (seeds !== null)
      faults.push(refusal("missing", ["counts", index, "grams"], "", "stands here", "write what these seeds weigh"));
  });
  if (portions.length === 0 && faults.length === 0)
    faults.push(refusal("missing", ["counts", 0, "seeds"], "", "stands here", "count out 100 seeds and weigh them"));
  return faults.length > 0 ? refused(...faults) : accepted(portions);
}
