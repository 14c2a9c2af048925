import { uuidv7 } from "uuidv7";
import { ownerHere } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { perform } from "@/lib/registry/change-set/perform";
import { foldName } from "@/lib/registry/names/fold-name";
import { type TestEntry, TestEntrySchema } from "@/lib/schemas/germination-test/test-entry";
import { parsed } from "@/lib/schemas/parsed";
import { accepted } from "@/lib/science/outcome";
import { granted } from "@/tests/setup/registry";

export const owner = ownerHere();

/** A variety of a crop with one lot harvested in 1998, 1,000 seeds of which weigh 200 g, and 120 g in the jar. */
export async function withLot(
  db: Database,
  options: { cropKey?: string; number?: string; grams?: number | null } = {},
) {
  const { cropKey = "pea", number = "Quern 1", grams = 120 } = options;
  const crop = await db.read.crop.findUniqueOrThrow({ where: { key: cropKey } });
  const [varietyId, lotId] = [uuidv7(), uuidv7()];
  const name = `Hollow ${crop.commonName} of ${number}`;
  const done = await perform(db, owner, { action: "record", title: "Lot" }, async (change) => {
    await change.create("Variety", { id: varietyId, name, nameKey: foldName(name), cropId: crop.id });
    await change.create("Lot", {
      id: lotId,
      number,
      numberKey: foldName(number),
      code: lotId.slice(-9).toUpperCase(),
      varietyId,
      kind: "founder",
      year: "1998",
      yearFirst: "1998-01-01",
      yearLast: "1998-12-31",
      thousandSeedGrams: 200,
    });
    if (grams !== null) {
      await change.create("LedgerEntry", {
        id: uuidv7(),
        lotId,
        on: "1998-10-02",
        onFirst: "1998-10-02",
        onLast: "1998-10-02",
        kind: "received",
        amount: grams,
        unit: "g",
      });
    }
    return accepted(null);
  });
  granted(done);
  return { varietyId, lotId, number };
}

/** A test entry of four replicates of 25, counted on days 5 and 10, with whatever is told otherwise. */
export function entryFor(lotId: string, told: Partial<Record<keyof TestEntry, unknown>> = {}): TestEntry {
  const counts = [
    [20, 3],
    [18, 4],
    [22, 2],
    [19, 4],
  ];
  const replicates = counts.map(([first, later], index) => ({
    name: String(index + 1),
    sown: 25,
    counts: [
      { day: 5, normal: first },
      { day: 10, normal: later },
    ],
  }));
  const given = { lotId, on: "1999-03-01", basis: "normal seedlings", finalCountDay: 10, replicates, ...told };
  return granted(parsed(TestEntrySchema, given));
}
