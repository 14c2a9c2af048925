import { type Database, readTogether, type Selection, sql } from "@/lib/db";
import type { ChoiceGround } from "@/lib/schemas/plants/choice-ground";
import type { Settings } from "@/lib/schemas/settings";
import type { CivilDay } from "@/lib/science/dates/civil-day";
import { readField } from "../grow-outs/read-field";
import { type GrowOutRead, readGrowOut } from "../grow-outs/read-grow-out";
import { readLotsToSow } from "../grow-outs/read-lots-to-sow";
import { heritabilityFound } from "../traits/heritability-found";
import { readTraitRows } from "../traits/read-trait-years";
import { choiceGround, type Heritabilities, type PlaceOfPlant } from "./choice-ground";

export interface ChoiceRead {
  readonly read: GrowOutRead;
  readonly ground: ChoiceGround;
  readonly heritability: Heritabilities;
}

/** A grow-out with all that a choice among its plants is made from; null where there is no such grow-out. */
export async function readChoice(
  db: Database,
  growOutId: string,
  question: { readonly settings: Settings; readonly today: CivilDay },
): Promise<ChoiceRead | null> {
  const read = await readGrowOut(db, growOutId);
  if (!read) return null;
  const places: Selection<PlaceOfPlant> = {
    columns: { id: "text", row: "text", position: "number", sameAsId: "text" },
    rows: sql`SELECT p."id", p."row", p."position", p."sameAsId" FROM "Plant" p WHERE p."growOutId" = ${growOutId} ORDER BY p."id"`,
  };
  const found = await readTogether(db, { places });
  const field = await readField(db, read);
  const lots = await readLotsToSow(db, read.variety.id, question);
  const rows = await readTraitRows(db, read.variety.id);
  const heritability: Heritabilities = rows ? heritabilityFound(rows) : new Map();
  return { read, heritability, ground: choiceGround(read, field, { places: found.places, lots, heritability }) };
}
