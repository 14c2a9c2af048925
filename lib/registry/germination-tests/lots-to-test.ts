import type { Database, Prisma } from "@/lib/db";
import { foldName } from "@/lib/registry/names/fold-name";

/** A lot that can be chosen for a test. */
export interface LotToTest {
  readonly id: string;
  readonly number: string;
  readonly year: string | null;
  readonly status: string | null;
  readonly variety: {
    readonly name: string;
    readonly seedCoat: string | null;
    readonly crop: { readonly key: string; readonly commonName: string };
  };
  readonly holder: string | null;
  /** day of the last test, EDTF; null where none was made */
  readonly lastTest: string | null;
}

const most = 40;

/**
 * Lots by number, variety, crop or holder, every word of what was typed; those never tested and those tested longest ago first. Lots
 * that are finished, dead or discarded are left out. At most 40, and how many there are.
 */
export async function lotsToTest(db: Database, typed: string): Promise<{ lots: LotToTest[]; found: number }> {
  const words = foldName(typed).split(" ").filter(Boolean);
  const where: Prisma.LotWhereInput = {
    OR: [{ status: null }, { status: { notIn: ["finished", "dead", "discarded"] } }],
    AND: words.map((word) => ({
      OR: [
        { numberKey: { contains: word } },
        { variety: { nameKey: { contains: word } } },
        { variety: { names: { some: { nameKey: { contains: word } } } } },
        { variety: { crop: { commonNameKey: { contains: word } } } },
        { holder: { person: { nameKey: { contains: word } } } },
      ],
    })),
  };
  const untested = await lotsWhere(db, { AND: [where, { tests: { none: {} } }] }, most);
  const tests = await db.read.germinationTest.groupBy({
    by: ["lotId"],
    where: { lot: where },
    _max: { onFirst: true },
    orderBy: { _max: { onFirst: "asc" } },
    take: most,
  });
  const room = tests.slice(0, most - untested.length);
  const tested = new Map(
    (await lotsWhere(db, { id: { in: room.map((test) => test.lotId) } }, most)).map((lot) => [lot.id, lot]),
  );
  const inOrder = room.flatMap(({ lotId, _max }) => {
    const lot = tested.get(lotId);
    return lot ? [{ ...lot, lastTest: _max.onFirst }] : [];
  });
  return { lots: [...untested, ...inOrder], found: await db.read.lot.count({ where }) };
}

async function lotsWhere(db: Database, where: Prisma.LotWhereInput, take: number): Promise<LotToTest[]> {
  const lots = await db.read.lot.findMany({
    where,
    take,
    orderBy: { numberKey: "asc" },
    select: {
      id: true,
      number: true,
      year: true,
      status: true,
      variety: { select: { name: true, seedCoat: true, crop: { select: { key: true, commonName: true } } } },
      holder: { select: { person: { select: { name: true } } } },
    },
  });
  return lots.map(({ holder, ...lot }) => ({ ...lot, holder: holder?.person?.name ?? null, lastTest: null }));
}
