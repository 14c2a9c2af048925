import type { Client, Prisma } from "@/lib/db";
import { summedUp, type TestOfLot } from "./tests-of-lot";

/** A test in a list, with the lot, variety and crop it belongs to. */
export interface ListedTest extends TestOfLot {
  readonly note: string | null;
  readonly lot: { readonly id: string; readonly number: string };
  readonly variety: { readonly id: string; readonly name: string; readonly seedCoat: string | null };
  readonly crop: { readonly key: string; readonly name: string };
}

const surroundings = {
  lot: {
    select: {
      id: true,
      number: true,
      variety: { select: { id: true, name: true, seedCoat: true, crop: { select: { key: true, commonName: true } } } },
    },
  },
  replicates: { orderBy: { id: "asc" as const }, include: { counts: { orderBy: { id: "asc" as const } } } },
};

/** Tests summed up, with what they belong to: six statements, however many. */
export async function listedTests(
  db: Client,
  where: Prisma.GerminationTestWhereInput,
): Promise<Map<string, ListedTest>> {
  const rows = await db.germinationTest.findMany({ where, include: surroundings });
  return new Map(
    rows.map(({ lot: { variety, ...lot }, ...test }): [string, ListedTest] => [
      test.id,
      {
        ...summedUp({ ...test, lotId: lot.id }),
        note: test.note,
        lot,
        variety: { id: variety.id, name: variety.name, seedCoat: variety.seedCoat },
        crop: { key: variety.crop.key, name: variety.crop.commonName },
      },
    ]),
  );
}
