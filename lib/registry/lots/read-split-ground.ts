import type { Database } from "@/lib/db";
import type { Settings } from "@/lib/schemas/settings";
import type { CivilDay } from "@/lib/science/dates/civil-day";
import { type Objection, objectionsTo } from "./objections";
import { type JarRead, readJar } from "./read-jar";
import { recordIdsOfLot } from "./same-lot";

/** A jar that is to be parted, with what stands against it and the places that its holder has. */
export interface SplitGround {
  readonly jar: JarRead;
  readonly objections: readonly Objection[];
  readonly places: readonly string[];
}

/** Reads what is needed to part a lot. Eight statements where the figures of its crop are at hand; null where there is no such lot. */
export async function readSplitGround(
  db: Database,
  lotId: string,
  reading: { readonly settings: Settings; readonly today: CivilDay },
): Promise<SplitGround | null> {
  const jar = await readJar(db, lotId, reading);
  if (!jar) return null;
  const lotIds = await recordIdsOfLot(db.read, lotId);
  const warnings = await db.read.warning.findMany({
    where: { lotId: { in: lotIds }, closedOn: null },
    select: { reason: true },
  });
  const places = await db.read.place.findMany({ select: { name: true }, orderBy: { nameKey: "asc" } });
  const openWarnings = warnings.map((each) => each.reason);
  return {
    jar,
    objections: objectionsTo("split", { ...jar.lot, tested: jar.figures?.lastTest != null, openWarnings }),
    places: [...new Set(places.map((each) => each.name))],
  };
}
