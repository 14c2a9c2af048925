import type { Client, Transaction } from "@/lib/db";
import { type CivilDay, splitCivilDay } from "@/lib/science/dates/civil-day";
import type { Hemisphere } from "@/lib/science/dates/fuzzy-date";
import { type Refusal, refusal } from "@/lib/science/outcome";
import { foldName } from "../names/fold-name";
import { FreeNames } from "../notebook-typing/free-names";

/** From this month on a plan is for the next year: what is sown in spring is planned in the winter before. */
const planningMonth = { north: 9, south: 3 } as const;

/** The year that a plan made today is for. */
export function yearOfPlan(today: CivilDay, hemisphere: Hemisphere): number {
  const { year = 0, month = 1 } = splitCivilDay(today) ?? {};
  return hemisphere === "north" && month >= planningMonth.north ? year + 1 : year;
}

/** A name for a new grow-out that nothing else here bears: the variety and the year, else with b, c, ... behind it. */
export async function proposedName(
  db: Client | Transaction,
  variety: string,
  today: CivilDay,
  hemisphere: Hemisphere,
): Promise<string> {
  const base = `${variety} ${yearOfPlan(today, hemisphere)}`;
  const taken = await db.growOut.findMany({
    where: { nameKey: { startsWith: foldName(base) } },
    select: { name: true },
  });
  return new FreeNames(taken.map((each) => each.name)).next(base).name;
}

/** The refusal where a name belongs to another grow-out already; null where it is free. */
export async function growOutNameTaken(tx: Transaction, name: string, exceptId = ""): Promise<Refusal | null> {
  const taken = await tx.growOut.findFirst({
    where: { nameKey: foldName(name), NOT: { id: exceptId } },
    select: { name: true },
  });
  if (!taken) return null;
  const needed = "each grow-out has a name of its own: add the plot, or a letter";
  return refusal("name-taken", ["name"], name, `is the name of grow-out ${taken.name} already`, needed);
}
