import { uuidv7 } from "uuidv7";
import type { Actor } from "@/lib/access/actor";
import type { Database, Transaction } from "@/lib/db";
import type { SavePlantsInput } from "@/lib/schemas/plants/save-plants";
import type { FuzzyDate, Hemisphere } from "@/lib/science/dates/fuzzy-date";
import { accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import type { ChangeWriter } from "../change-set/writer";
import { plantsOfGrowOut } from "../grow-outs/plants-of-grow-out";
import { foldName } from "../names/fold-name";
import { type PlannedRow, planRow } from "./plan-row";

/** How much one save wrote. */
export interface SavedPlants {
  readonly plants: number;
  readonly marks: number;
  readonly scores: number;
}

/**
 * Writes the changed cells of a grow-out's grid as one change set, or none of them: new plants, marks and scores. A changed mark or score is
 * a new event that points to the old one; an emptied score is taken back; an emptied intent takes the plant's mark away (it stays in the
 * history). Each refusal names row and column: its path is the row's key and the column.
 */
export async function savePlants(
  db: Database,
  actor: Actor,
  growOutId: string,
  { on, stewardId, rows }: SavePlantsInput,
  hemisphere: Hemisphere,
): Promise<Outcome<Performed<SavedPlants>>> {
  return perform(db, actor, { action: "record-in-field", title: "Plants scored" }, async (change, tx) => {
    const growOut = await tx.growOut.findUnique({ where: { id: growOutId } });
    if (!growOut) return refused(unknownGrowOut(growOutId));
    const unknown = await unknownSteward(tx, stewardId);
    if (unknown) return refused(unknown);
    const { plants, traits } = await plantsOfGrowOut({ engine: db.engine, read: tx as Database["read"] }, growOutId);
    const byId = new Map(plants.map((plant) => [plant.id, plant]));
    const ground = {
      traits: new Map(traits.map((trait) => [trait.id, trait])),
      hemisphere,
      names: new Set(plants.flatMap((plant) => [plant.name, ...plant.otherNames])),
      stewardId,
    };
    const refusals: Refusal[] = [];
    const planned: PlannedRow[] = [];
    for (const row of rows) {
      const plant = row.added ? null : (byId.get(row.key) ?? null);
      if (!row.added && !plant) {
        const wrong = "is no plant of this grow-out any more";
        refusals.push(refusal("unknown-plant", [row.key], row.key, wrong, "read the page again"));
        continue;
      }
      const outcome = planRow(row, plant, ground);
      if ("key" in outcome) planned.push(outcome);
      else refusals.push(...outcome);
    }
    if (refusals.length > 0) return refused(...refusals);
    const saved = await write(change, growOutId, planned, on, stewardId);
    change.touch(growOut.varietyId);
    change.title = `Grow-out ${growOut.name}: ${savedWords(saved)}`;
    return accepted(saved);
  });
}

async function write(
  change: ChangeWriter,
  growOutId: string,
  rows: readonly PlannedRow[],
  on: FuzzyDate,
  stewardId: string | null,
): Promise<SavedPlants> {
  const ids = new Map(rows.map((row) => [row.key, row.plant ? uuidv7() : row.key]));
  const plantId = (row: PlannedRow) => ids.get(row.key) as string;
  const created = rows.flatMap((row) => (row.plant ? [{ row, plant: row.plant }] : []));
  await change.createAll(
    "Plant",
    created.map(({ row, plant }) => ({ id: plantId(row), growOutId, ...plant, nameKey: foldName(plant.name) })),
  );
  const patched = await change.updateMany(
    "Plant",
    rows.flatMap(({ key, patch }) => {
      if (Object.keys(patch).length === 0) return [];
      return [{ id: key, patch: patch.name === undefined ? patch : { ...patch, nameKey: foldName(patch.name) } }];
    }),
  );
  const unmarked = await wholeChains(
    change.tx,
    rows.flatMap((row) => row.unmarked ?? []),
  );
  await change.remove("Mark", unmarked);
  const seen = { on: on.text, onFirst: on.first, onLast: on.last, stewardId };
  const marks = rows.flatMap((row) =>
    row.mark ? [{ id: uuidv7(), plantId: plantId(row), ...row.mark, ...seen }] : [],
  );
  await change.createAll("Mark", marks);
  const scores = rows.flatMap((row) =>
    row.scores.map((score) => ({ id: uuidv7(), plantId: plantId(row), ...score, on: on.text, stewardId })),
  );
  await change.createAll("Score", scores);
  return { plants: created.length + patched, marks: marks.length + unmarked.length, scores: scores.length };
}

/** Marks with those that they replaced: the old one must not stand again when the newest goes. */
async function wholeChains(tx: Transaction, ids: readonly string[]): Promise<string[]> {
  const all: string[] = [];
  for (let start = 0; start < ids.length; start += 500) {
    let now: readonly string[] = ids.slice(start, start + 500);
    while (now.length > 0) {
      all.push(...now);
      const marks = await tx.mark.findMany({ where: { id: { in: [...now] } }, select: { replacesId: true } });
      now = marks.flatMap((mark) => mark.replacesId ?? []);
    }
  }
  return all;
}

/** "12 plants, 14 marks, 340 scores", without what is none. */
export function savedWords({ plants, marks, scores }: SavedPlants): string {
  const parts = [
    [plants, "plant"],
    [marks, "mark"],
    [scores, "score"],
  ] as const;
  return (
    parts
      .filter(([count]) => count > 0)
      .map(([count, noun]) => `${count} ${noun}${count === 1 ? "" : "s"}`)
      .join(", ") || "nothing new"
  );
}

export function unknownGrowOut(growOutId: string): Refusal {
  return refusal("unknown", ["growOut"], growOutId, "is no grow-out of this registry", "choose one of the list");
}

/** Why somebody cannot have marked or scored: no steward has that id. */
export async function unknownSteward(tx: Transaction, stewardId: string | null): Promise<Refusal | null> {
  if (stewardId === null || (await tx.steward.findUnique({ where: { id: stewardId }, select: { id: true } })))
    return null;
  return refusal("unknown-steward", ["stewardId"], stewardId, "is no steward here", "choose one of the list");
}
