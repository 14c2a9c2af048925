import { readFileSync } from "node:fs";
import { uuidv7 } from "uuidv7";
import { expect, it } from "vitest";
import { checkConstraints, insertRows, references } from "@/lib/db";
import { onEveryEngine } from "@/tests/setup/engines";

interface Listed {
  readonly table: string;
  readonly name: string;
}

const byName = (a: Listed, b: Listed) => (a.name < b.name ? -1 : a.name > b.name ? 1 : 0);
const listed = (JSON.parse(readFileSync("prisma/check-constraints.json", "utf8")) as Listed[])
  .map(({ table, name }) => ({ table, name }))
  .sort(byName);
const relations = readFileSync("prisma/schema.prisma", "utf8").match(/fields: \[/g)?.length ?? 0;

onEveryEngine(
  "the catalogue",
  (fresh) => {
    it("holds every listed check constraint and no other", async () => {
      const db = await fresh();
      const found = (await checkConstraints(db.read, db.engine)).map(({ table, name }) => ({ table, name }));
      expect(found.sort(byName)).toEqual(listed);
    });

    it("holds a foreign key for every relation of the model", async () => {
      const db = await fresh();
      expect(await references(db.read, db.engine)).toHaveLength(relations);
    });

    it("refuses a row that breaks a check", async () => {
      const db = await fresh();
      const crop = await db.read.crop.findFirstOrThrow();
      const row = { id: uuidv7(), name: "Aim", nameKey: "aim", cropId: crop.id, aim: "profit" };
      await expect(insertRows(db.write, db.engine, "Variety", [row])).rejects.toThrow();
      expect(await db.read.variety.count()).toBe(0);
    });

    it("refuses a row that points to nothing", async () => {
      const db = await fresh();
      const row = { id: uuidv7(), name: "Lost", nameKey: "lost", cropId: uuidv7() };
      await expect(insertRows(db.write, db.engine, "Variety", [row])).rejects.toThrow();
    });

    it("stores and gives back every kind of value in bulk as it was, to the last digit", async () => {
      const db = await fresh();
      const crop = await db.read.crop.findFirstOrThrow();
      const varietyId = uuidv7();
      await insertRows(db.write, db.engine, "Variety", [
        { id: varietyId, name: "Élan’s “Q”, 1;2\n3", nameKey: "q", cropId: crop.id },
      ]);
      // Decimals of every length that scales show, and the awkward ones of binary arithmetic.
      const weights = [
        0.1,
        0.3,
        1e-7,
        123456.789,
        2.675,
        1 / 3,
        0.1 + 0.2,
        5e-324,
        999999.999999,
        ...Array.from({ length: 700 }, (_, i) => (i * 7919 + 1) / 1000),
      ];
      const rows = weights.map((grams, i) => ({
        id: uuidv7(),
        number: `N ${i}`,
        numberKey: `n ${i}`,
        code: `C${i}`,
        varietyId,
        kind: "founder",
        thousandSeedGrams: grams,
        originalSample: i % 2 === 0,
        notes: i % 3 === 0 ? null : `it's "${i}"`,
      }));
      await insertRows(db.write, db.engine, "Lot", rows);
      const stored = await db.read.lot.findMany({ orderBy: { id: "asc" } });
      expect(stored.map((lot) => lot.thousandSeedGrams)).toEqual(weights);
      expect(stored.map((lot) => lot.originalSample)).toEqual(rows.map((row) => row.originalSample));
      expect(stored.map((lot) => lot.notes)).toEqual(rows.map((row) => row.notes));
      expect((await db.read.variety.findUniqueOrThrow({ where: { id: varietyId } })).name).toBe("Élan’s “Q”, 1;2\n3");
      expect((await db.read.variety.findUniqueOrThrow({ where: { id: varietyId } })).sensitivity).toBe("circle");
    });
  },
  { everyServer: true },
);
