import type { Database } from "@/lib/db";

/** Names that a form about a lot offers, each list by name. */
export interface NamesForForms {
  readonly varieties: readonly { readonly id: string; readonly name: string }[];
  readonly stewards: readonly string[];
}

/** The names of all varieties and stewards. Two statements. */
export async function namesForForms(db: Database): Promise<NamesForForms> {
  const orderBy = { nameKey: "asc" as const };
  const varieties = await db.read.variety.findMany({ select: { id: true, name: true }, orderBy });
  const stewards = await db.read.person.findMany({ select: { name: true }, orderBy });
  return { varieties, stewards: stewards.map(({ name }) => name) };
}
