import { uuidv7 } from "uuidv7";
import { type Database, insertRows } from "@/lib/db";
import { foldName } from "@/lib/registry/names/fold-name";

export interface ManyLots {
  readonly lotIds: readonly string[];
  readonly varietyIds: readonly string[];
  readonly stewardIds: readonly string[];
}

const cropKeys = ["bean-broad", "pea", "leek", "tomato", "maize-field"];

/**
 * A registry of many lots in a row of grow-outs each: 40 varieties of five crops, eight stewards; every lot has a harvest of 100 g, a
 * gift of 10 g and a test of 50 seeds with 40 normal seedlings; every second one has a seed weight of 250 g a thousand.
 */
export async function manyLots(db: Database, count: number): Promise<ManyLots> {
  const crops = await db.read.crop.findMany({ where: { key: { in: cropKeys } }, orderBy: { key: "asc" } });
  const stewardIds = Array.from({ length: 8 }, () => uuidv7());
  const varietyIds = Array.from({ length: 40 }, () => uuidv7());
  const lotIds = Array.from({ length: count }, () => uuidv7());
  const growOutIds = lotIds.map(() => uuidv7());
  const of = <T>(list: readonly T[], index: number) => list[index % list.length] as T;
  const insert = (table: string, rows: readonly Record<string, unknown>[]) =>
    db.write.$transaction((tx) => insertRows(tx, db.engine, table, rows), { timeout: 120_000 });

  await insert(
    "Steward",
    stewardIds.map((id) => ({ id, active: "yes" })),
  );
  await insert(
    "Person",
    stewardIds.map((stewardId, n) => ({ id: uuidv7(), stewardId, name: `Steward ${n}`, nameKey: `steward ${n}` })),
  );
  await insert(
    "Variety",
    varietyIds.map((id, n) => ({
      id,
      name: `Variety ${n}`,
      nameKey: `variety ${n}`,
      cropId: of(crops, n).id,
      sensitivity: "circle",
      revision: 1,
    })),
  );
  const earlier = (index: number) => (index < varietyIds.length ? null : lotIds[index - varietyIds.length]);
  await insert(
    "GrowOut",
    growOutIds.flatMap((id, n) =>
      earlier(n) === null
        ? []
        : [
            {
              id,
              name: `G${n}`,
              nameKey: `g${n}`,
              varietyId: of(varietyIds, n),
              plantsStanding: 40,
              roguedBeforePollen: 2,
              seedParents: 30,
              seedShares: "equal",
            },
          ],
    ),
  );
  await insert(
    "Lot",
    lotIds.map((id, n) => ({
      id,
      number: `L ${n}`,
      numberKey: foldName(`L ${n}`),
      code: id,
      varietyId: of(varietyIds, n),
      holderId: of(stewardIds, Math.floor(n / varietyIds.length)),
      kind: earlier(n) === null ? "founder" : "harvest",
      growOutId: earlier(n) === null ? null : growOutIds[n],
      year: "2020",
      yearFirst: "2020-01-01",
      yearLast: "2020-12-31",
      thousandSeedGrams: n % 2 === 0 ? 250 : null,
    })),
  );
  await insert(
    "GrowOutParent",
    growOutIds.flatMap((growOutId, n) => {
      const lotId = earlier(n);
      return lotId ? [{ id: uuidv7(), growOutId, lotId, share: 1 }] : [];
    }),
  );
  const day = (on: string) => ({ on, onFirst: on, onLast: on });
  await insert(
    "LedgerEntry",
    lotIds.flatMap((lotId) => [
      { id: uuidv7(), lotId, ...day("2020-10-01"), kind: "harvested", amount: 100, unit: "g", takenBack: false },
      { id: uuidv7(), lotId, ...day("2021-03-01"), kind: "given", amount: 10, unit: "g", takenBack: false },
    ]),
  );
  const tests = lotIds.map((lotId, n) => ({
    id: uuidv7(),
    lotId,
    name: `T${n}`,
    nameKey: `t${n}`,
    ...day("2024-02-01"),
  }));
  await insert("GerminationTest", tests);
  const replicates = tests.map((test) => ({ id: uuidv7(), testId: test.id, name: "1", sown: 50 }));
  await insert("TestReplicate", replicates);
  await insert(
    "TestCount",
    replicates.map((each) => ({ id: uuidv7(), replicateId: each.id, day: 7, normal: 40, takenBack: false })),
  );
  return { lotIds, varietyIds, stewardIds };
}
