import type { Transaction } from "@/lib/db";
import { sameName } from "../names/fold-name";

/** The ids of named records, by the name as it is matched. */
export class Ids {
  readonly stewards = new Map<string, string>();
  readonly varieties = new Map<string, string>();
  readonly growOuts = new Map<string, string>();
  readonly lots = new Map<string, string>();
  readonly tests = new Map<string, string>();

  /** Those that the registry has now. */
  static async of(tx: Transaction): Promise<Ids> {
    const ids = new Ids();
    for (const person of await tx.person.findMany({ select: { name: true, stewardId: true } }))
      ids.stewards.set(sameName(person.name), person.stewardId);
    for (const variety of await tx.variety.findMany({ select: { name: true, id: true } }))
      ids.varieties.set(sameName(variety.name), variety.id);
    for (const growOut of await tx.growOut.findMany({ select: { name: true, id: true } }))
      ids.growOuts.set(sameName(growOut.name), growOut.id);
    for (const lot of await tx.lot.findMany({ select: { number: true, id: true } }))
      ids.lots.set(sameName(lot.number), lot.id);
    for (const test of await tx.germinationTest.findMany({ select: { name: true, id: true } }))
      ids.tests.set(sameName(test.name), test.id);
    return ids;
  }
}

/** The id of a record that the check has found to be there. */
export function idOf(ids: ReadonlyMap<string, string>, name: string): string {
  const id = ids.get(sameName(name));
  if (id === undefined) throw new Error(`"${name}" was not found; the check should have refused it`);
  return id;
}

/** The id of a named record where a name is given and known. */
export function idIfKnown(ids: ReadonlyMap<string, string>, name: string | null): string | null {
  return name === null ? null : (ids.get(sameName(name)) ?? null);
}

/** Extra columns as stored; null where there are none. */
export function storedExtra(extra: Readonly<Record<string, string>>): string | null {
  const filled = Object.entries(extra).filter(([column, value]) => value !== "" && !column.startsWith("score:"));
  return filled.length === 0 ? null : JSON.stringify(Object.fromEntries(filled));
}

/** A patch without the cells that the folder leaves empty: an empty cell says nothing. */
export function stated<T extends object>(patch: T): Partial<T> {
  return Object.fromEntries(Object.entries(patch).filter(([, value]) => value !== null)) as Partial<T>;
}
