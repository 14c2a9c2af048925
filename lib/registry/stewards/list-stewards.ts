import type { Database } from "@/lib/db";

/** A steward in the list of stewards. */
export interface StewardInList {
  readonly id: string;
  /** null once the person is erased */
  readonly name: string | null;
  readonly kind: string | null;
  readonly place: string | null;
  readonly note: string | null;
  readonly lots: number;
  readonly growOuts: number;
  readonly strains: number;
  /** the last time that they said anything of their seed, as written */
  readonly lastWord: { on: string; still: string; variety: string; varietyId: string } | null;
}

/** All stewards by name, those without a name last. */
export async function listStewards(db: Database): Promise<StewardInList[]> {
  const rows = await db.read.steward.findMany({
    include: {
      person: { select: { name: true, nameKey: true } },
      _count: { select: { lots: true, growOuts: true, strains: true } },
    },
  });
  const words = await db.read.holderConfirmation.findMany({
    select: { stewardId: true, on: true, still: true, varietyId: true, variety: { select: { name: true } } },
    orderBy: [{ onFirst: "asc" }, { id: "asc" }],
  });
  const last = new Map(words.map((word) => [word.stewardId, word]));
  const stewards = rows.map((row) => {
    const word = last.get(row.id);
    return {
      sortKey: row.person?.nameKey ?? null,
      id: row.id,
      name: row.person?.name ?? null,
      kind: row.kind,
      place: row.place,
      note: row.note,
      lots: row._count.lots,
      growOuts: row._count.growOuts,
      strains: row._count.strains,
      lastWord: word ? { on: word.on, still: word.still, variety: word.variety.name, varietyId: word.varietyId } : null,
    };
  });
  return stewards
    .sort((left, right) => byKey(left.sortKey, right.sortKey))
    .map(({ sortKey: _sortKey, ...steward }) => steward);
}

function byKey(left: string | null, right: string | null): number {
  if (left === null || right === null) return left === right ? 0 : left === null ? 1 : -1;
  return left < right ? -1 : left > right ? 1 : 0;
}
