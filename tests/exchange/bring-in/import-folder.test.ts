import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { expect, it } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import { checkFolder, importFolder } from "@/lib/exchange/bring-in/import-folder";
import { exportFolder } from "@/lib/exchange/take-out/export-folder";
import { undoChangeSet } from "@/lib/registry/change-set/undo-change-set";
import { figuresOfAll } from "@/lib/registry/figures/read-figures";
import { onEveryEngine } from "@/tests/setup/engines";
import { granted } from "@/tests/setup/registry";

const owner = ownerHere();

function folder(name: string): Map<string, Uint8Array> {
  const place = path.join("tests/reference", name);
  const files = readdirSync(place).filter((file) => file.endsWith(".csv"));
  return new Map(files.map((file) => [file, Uint8Array.from(readFileSync(path.join(place, file)))]));
}

function csv(files: Readonly<Record<string, string>>): Map<string, Uint8Array> {
  return new Map(Object.entries(files).map(([name, text]) => [name, new TextEncoder().encode(text)]));
}

const texts = (files: ReadonlyMap<string, Uint8Array>) =>
  Object.fromEntries([...files].map(([name, bytes]) => [name, new TextDecoder().decode(bytes)]));

interface Expected {
  readonly lot: string;
  readonly gramsOnHand: number | null;
  readonly effectiveSize: number | null;
  readonly inbreeding: number | null;
  readonly coancestry: number | null;
  readonly nativeDiversityRetained: number | null;
  readonly foreignAncestry: number | null;
  readonly generations: number | null;
  readonly founders: string[];
  readonly lastTest: { test: string; germination: number; low: number; high: number } | null;
}

const numbers = [
  "gramsOnHand",
  "effectiveSize",
  "inbreeding",
  "coancestry",
  "nativeDiversityRetained",
  "foreignAncestry",
  "generations",
] as const;

function agrees(found: number | null | undefined, expected: number | null): boolean {
  if (expected === null || found === null || found === undefined) return found === expected;
  return Math.abs(found - expected) <= Math.max(1e-12, 1e-9 * Math.abs(expected));
}

onEveryEngine(
  "a notebook folder",
  (fresh) => {
    it("gives every lot the figures that an independent program worked out (expected.json)", async () => {
      const db = await fresh();
      granted(await importFolder(db, owner, folder("notebook")));
      const expected = JSON.parse(readFileSync("tests/reference/notebook/expected.json", "utf8")) as Expected[];
      const figures = new Map([...(await figuresOfAll(db)).values()].map((each) => [each.number, each]));
      expect(figures.size).toBe(expected.length);
      const wrong = expected.flatMap((each) => {
        const found = figures.get(each.lot);
        const off = numbers.filter((name) => !agrees(found?.[name], each[name]));
        const test = agrees(found?.lastTest?.low, each.lastTest?.low ?? null) || (!found?.lastTest && !each.lastTest);
        return off.length > 0 || !test || found?.founders.join() !== each.founders.join()
          ? [{ lot: each.lot, off, test }]
          : [];
      });
      expect(wrong).toEqual([]);
    });

    it("changes nothing when it is brought in again", async () => {
      const db = await fresh();
      granted(await importFolder(db, owner, folder("notebook")));
      const sets = await db.read.changeSet.count();
      const again = granted(await importFolder(db, owner, folder("notebook")));
      expect(again.value.nothingNew).toBe(true);
      expect(await db.read.changeSet.count()).toBe(sets);
    });

    it("goes out, into an empty registry, and out again with the same bytes", async () => {
      const first = await fresh();
      granted(await importFolder(first, owner, folder("notebook")));
      const out = await exportFolder(first);
      const second = await fresh();
      granted(await importFolder(second, owner, out));
      expect(texts(await exportFolder(second))).toEqual(texts(out));
    });

    it("with faults writes nothing", async () => {
      const db = await fresh();
      const outcome = await importFolder(db, owner, folder("notebook-faulty"));
      expect(outcome.ok).toBe(false);
      expect(await db.read.lot.count()).toBe(0);
      expect(await db.read.steward.count()).toBe(0);
    });

    it("that has none of a notebook's files is told so; its files are known in any letter case", async () => {
      const db = await fresh();
      const faultsOf = async (files: Map<string, Uint8Array>) =>
        (await checkFolder(db, files)).faults.map((fault) => fault.code);
      expect(await faultsOf(new Map())).toEqual(["no-tables"]);
      expect(await faultsOf(new Map([["Lots.xlsx", new Uint8Array()]]))).toEqual(["no-tables"]);
      expect((await importFolder(db, owner, new Map())).ok).toBe(false);
      const capital = new Map([["Varieties.CSV", new TextEncoder().encode("variety,crop\nBent Pea,pea\n")]]);
      const { tally } = await checkFolder(db, capital);
      expect(tally.filter((each) => each.added > 0)).toMatchObject([{ file: "varieties.csv", added: 1 }]);
    });

    it("is taken back whole, and stands again when that is taken back", async () => {
      const db = await fresh();
      const done = granted(await importFolder(db, owner, folder("notebook")));
      const out = texts(await exportFolder(db));
      const undone = granted(await undoChangeSet(db, owner, done.changeSetId as string));
      expect(await db.read.lot.count()).toBe(0);
      expect(await db.read.plant.count()).toBe(0);
      granted(await undoChangeSet(db, owner, undone.changeSetId as string));
      expect(texts(await exportFolder(db))).toEqual(out);
    });

    it("says which records it would change, keeps what it leaves empty, and changes them as one entry of the history", async () => {
      const db = await fresh();
      const base = {
        "stewards.csv": "steward,place\nHalda Morrow,Upper Cray\n",
        "varieties.csv": "variety,crop,story\nGrey Morrow,oat,from the mill\n",
        "lots.csv": "lot,variety,holder,year,kind,thousand_seed_grams\nM 1,Grey Morrow,Halda Morrow,1991~,founder,34\n",
      };
      granted(await importFolder(db, owner, csv(base)));
      const later = csv({
        "lots.csv": "lot,variety,holder,year,kind,thousand_seed_grams\nM 1,Grey Morrow,,1992,founder,\n",
      });
      const check = await checkFolder(db, later);
      expect(check.changes).toEqual(['lot M 1: year from "1991~" to "1992"']);
      expect(check.changesStanding).toBe(true);
      granted(await importFolder(db, owner, later));
      const lot = await db.read.lot.findFirstOrThrow({
        where: { number: "M 1" },
        include: { holder: { include: { person: true } } },
      });
      expect([lot.year, lot.yearFirst, lot.thousandSeedGrams, lot.holder?.person?.name]).toEqual([
        "1992",
        "1992-01-01",
        34,
        "Halda Morrow",
      ]);
    });

    it("never takes a row that is missing in a later folder for a deletion", async () => {
      const db = await fresh();
      granted(await importFolder(db, owner, folder("notebook")));
      const lots = await db.read.lot.count();
      granted(await importFolder(db, owner, csv({ "stewards.csv": "steward\nOsk Tarn\n" })));
      expect(await db.read.lot.count()).toBe(lots);
    });

    it("keeps columns that nobody here reads, and gives them out again", async () => {
      const db = await fresh();
      granted(await importFolder(db, owner, csv({ "stewards.csv": "steward,beehives\nOsk Tarn,4\n" })));
      expect(texts(await exportFolder(db))["stewards.csv"]).toBe("steward,place,kind,beehives\r\nOsk Tarn,,,4\r\n");
    });

    it("is refused to one who may only read", async () => {
      const db = await fresh();
      const outcome = await importFolder(
        db,
        { ...owner, role: "reader" },
        csv({ "stewards.csv": "steward\nOsk Tarn\n" }),
      );
      expect(outcome.ok ? "" : outcome.refusals[0]?.code).toBe("not-allowed");
      expect(await db.read.steward.count()).toBe(0);
    });
  },
  { everyServer: true },
);
