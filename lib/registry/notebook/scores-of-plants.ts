import type { Client, Transaction } from "@/lib/db";
import { writeDecimal } from "@/lib/schemas/notebook/decimal";
import { sameName } from "../names/fold-name";
import { traitsByName } from "../traits/traits-by-name";
import type { Fields } from "./further/cells";
import type { Stored } from "./further/spec";

/** A score as its cell: the words, or the number in plain digits. */
export function scoreCell({ text, value }: { text: string | null; value: number | null }): string {
  return text ?? (value === null ? "" : writeDecimal(value));
}

interface StandingScore {
  readonly id: string;
  readonly plantId: string;
  readonly traitId: string;
  readonly on: string | null;
  readonly stewardId: string | null;
  readonly value: number | null;
  readonly text: string | null;
}

async function standingScores(db: Client | Transaction): Promise<StandingScore[]> {
  return db.score.findMany({
    where: { replacedBy: null, takenBack: false },
    select: { id: true, plantId: true, traitId: true, on: true, stewardId: true, value: true, text: true },
    orderBy: { id: "asc" },
  });
}

/**
 * Which scores plants.csv does not say in full: it has one cell a plant and trait name, without the day, the scorer and the trait's version.
 * All of a plant's scores under one name go together, so that their order comes back.
 */
export async function scoresThatSayMore(db: Client | Transaction): Promise<(score: Stored) => boolean> {
  const names = new Map((await db.trait.findMany()).map((trait) => [trait.id, sameName(trait.name)]));
  const varietyOf = await varietiesOfPlants(db);
  const plainTrait = await traitsByName(db);
  const more = new Set<string>();
  const seen = new Set<string>();
  const cellOf = (score: StandingScore) => `${score.plantId} ${names.get(score.traitId)}`;
  const scores = await standingScores(db);
  for (const score of scores) {
    const cell = cellOf(score);
    const plain = plainTrait(varietyOf.get(score.plantId) ?? null, names.get(score.traitId) ?? "") === score.traitId;
    if (seen.has(cell) || !plain || score.on !== null || score.stewardId !== null) more.add(cell);
    seen.add(cell);
  }
  const ids = new Set(scores.filter((score) => more.has(cellOf(score))).map((score) => score.id));
  return (score) => ids.has(score.id);
}

/** The variety of each plant's grow-out. */
export async function varietiesOfPlants(db: Client | Transaction): Promise<Map<string, string>> {
  const growOuts = new Map(
    (await db.growOut.findMany({ select: { id: true, varietyId: true } })).map((each) => [each.id, each.varietyId]),
  );
  const plants = await db.plant.findMany({ select: { id: true, growOutId: true } });
  return new Map(plants.map((plant) => [plant.id, growOuts.get(plant.growOutId) ?? ""]));
}

/**
 * Scores that stand with neither day nor scorer, and that a row of scores.csv says more of: the same plant, name of the trait and score.
 * By the place of the row; each is found once.
 */
export async function bareScores(tx: Transaction, rows: readonly Fields[]): Promise<Map<number, string>> {
  const names = new Map((await tx.trait.findMany()).map((trait) => [trait.id, sameName(trait.name)]));
  const key = (score: { plantId: unknown; traitId: unknown; value: unknown; text: unknown }) =>
    JSON.stringify([score.plantId, names.get(String(score.traitId)), score.value ?? null, score.text ?? null]);
  const bare = new Map<string, string[]>();
  for (const score of await standingScores(tx)) {
    if (score.on !== null || score.stewardId !== null) continue;
    const cell = key(score);
    bare.set(cell, [...(bare.get(cell) ?? []), score.id]);
  }
  const found = new Map<number, string>();
  for (const [place, { plantId, traitId, value, text }] of rows.entries()) {
    const id = bare.get(key({ plantId, traitId, value, text }))?.shift();
    if (id !== undefined) found.set(place, id);
  }
  return found;
}
