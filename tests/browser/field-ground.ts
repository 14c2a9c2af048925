import path from "node:path";
import { uuidv7 } from "uuidv7";
import { ownerHere } from "@/lib/access/actor";
import { type Database, openDatabase } from "@/lib/db";
import { defineTrait } from "@/lib/registry/traits/define-trait";
import type { TestSite } from "./server";

/** The grow-out that a phone takes along in the walks: a variety of maize with four traits, one of each kind that is one tap. */
export interface FieldGround {
  readonly growOutId: string;
}

/** Opens the registry of a site beside its server, or where that is dead, and closes it again. */
export async function inRegistry<T>(site: Pick<TestSite, "folder">, work: (db: Database) => Promise<T>): Promise<T> {
  const url = path.join(site.folder, "registry.sqlite");
  const db = await openDatabase({ engine: "sqlite", url, folder: site.folder, demonstration: false });
  return work(db).finally(() => db.close());
}

/** Puts the grow-out into the registry of a site. The server is dead meanwhile. */
export async function withFieldGround(site: TestSite): Promise<FieldGround> {
  await site.kill();
  const ground = await inRegistry(site, fieldGroundIn);
  await site.restart();
  return ground;
}

/** Puts the grow-out into a registry that is open. */
export async function fieldGroundIn(db: Database): Promise<FieldGround> {
  const crop = await db.write.crop.findFirstOrThrow({ where: { key: "maize-field" }, select: { id: true } });
  const [varietyId, growOutId] = [uuidv7(), uuidv7()];
  const name = "Larkhouse Flint";
  await db.write.variety.create({ data: { id: varietyId, name, nameKey: name.toLowerCase(), cropId: crop.id } });
  const growOut = { id: growOutId, name: "Mill field", nameKey: "mill field", varietyId };
  await db.write.growOut.create({ data: growOut });
  for (const trait of traits) {
    const defined = await defineTrait(db, ownerHere(), varietyId, { scope: "variety", ...trait });
    if (!defined.ok) throw new Error(defined.refusals.map((each) => each.sentence).join(" "));
  }
  return { growOutId };
}

const traits = [
  { name: "vigour", kind: "scale", direction: "higher", steps: "1 = weak\n9 = strong" },
  { name: "two ears", kind: "yes-no" },
  { name: "ear height", kind: "category", choices: "low\nmiddle\nhigh" },
  { name: "tillers", kind: "count" },
] as const;

/** What the registry has of the phones, each counted. */
export function countsOf(db: Database, growOutId: string) {
  const here = { where: { growOutId } };
  return Promise.all([
    db.read.plant.count(here),
    db.read.mark.count({ where: { plant: { growOutId } } }),
    db.read.score.count({ where: { plant: { growOutId } } }),
    db.read.roguePass.count(here),
    db.read.harvest.count(here),
    db.read.fieldRecord.count({ where: { growOutId, state: "taken" } }),
    db.read.fieldRecord.count({ where: { growOutId } }),
  ]).then(([plants, marks, scores, passes, harvests, taken, records]) => ({
    ...{ plants, marks, scores, passes, harvests, taken, records },
  }));
}
