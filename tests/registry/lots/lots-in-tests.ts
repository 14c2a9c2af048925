import { uuidv7 } from "uuidv7";
import type { Database, Prisma } from "@/lib/db";
import { foldName } from "@/lib/registry/names/fold-name";
import { parseDate } from "@/lib/science/dates/parse-date";
import { granted } from "../../setup/registry";

/** A variety of a crop of the list; broad bean unless told. */
export async function aVariety(
  db: Database,
  name = "Hamble Long",
  cropKey = "bean-broad",
  more: Partial<Prisma.VarietyUncheckedCreateInput> = {},
): Promise<string> {
  const crop = await db.read.crop.findUniqueOrThrow({ where: { key: cropKey } });
  const id = uuidv7();
  await db.write.variety.create({ data: { id, name, nameKey: foldName(name), cropId: crop.id, ...more } });
  return id;
}

/** A steward with a name. */
export async function aSteward(db: Database, name: string, place: string | null = null): Promise<string> {
  const id = uuidv7();
  await db.write.steward.create({ data: { id, place } });
  await db.write.person.create({ data: { id: uuidv7(), stewardId: id, name, nameKey: foldName(name) } });
  return id;
}

type LotFields = Omit<Partial<Prisma.LotUncheckedCreateInput>, "id" | "varietyId"> & { number: string };

/** A lot as it stands in the tables, a founder unless told. */
export async function aLot(db: Database, varietyId: string, fields: LotFields): Promise<string> {
  const id = uuidv7();
  const year = fields.year ? granted(parseDate(fields.year)) : null;
  const data = {
    kind: "founder",
    code: id,
    numberKey: foldName(fields.number),
    yearFirst: year?.first,
    yearLast: year?.last,
    ...fields,
  };
  await db.write.lot.create({ data: { id, varietyId, ...data } });
  return id;
}

/** A ledger entry as it stands in the tables. */
export async function anEntry(
  db: Database,
  lotId: string,
  kind: string,
  amount: number,
  on: string,
  more: Partial<Prisma.LedgerEntryUncheckedCreateInput> = {},
): Promise<string> {
  const id = uuidv7();
  const date = granted(parseDate(on));
  const data = { id, lotId, on, onFirst: date.first, onLast: date.last, kind, amount, ...more };
  await db.write.ledgerEntry.create({ data });
  return id;
}

/** A germination test of one replicate with one count. */
export async function aTest(
  db: Database,
  lotId: string,
  name: string,
  on: string,
  sown: number,
  normal: number,
  basis: string | null = null,
): Promise<string> {
  const id = uuidv7();
  const date = granted(parseDate(on));
  const own = { id, lotId, name, nameKey: foldName(name), on, onFirst: date.first, onLast: date.last, basis };
  await db.write.germinationTest.create({
    data: {
      ...own,
      replicates: { create: { id: uuidv7(), name: "1", sown, counts: { create: { id: uuidv7(), day: 7, normal } } } },
    },
  });
  return id;
}
