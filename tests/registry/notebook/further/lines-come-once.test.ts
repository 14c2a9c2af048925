import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import { checkFolder, importFolder } from "@/lib/exchange/bring-in/import-folder";
import { exportFolder } from "@/lib/exchange/take-out/export-folder";
import { undoChangeSet } from "@/lib/registry/change-set/undo-change-set";
import { furtherSpecs } from "@/lib/registry/notebook/further/specs";
import { onEveryEngine } from "@/tests/setup/engines";
import { granted } from "@/tests/setup/registry";
import { base, csv, fillEveryTable } from "./fill-every-table";

const owner = ownerHere();

onEveryEngine("lines of the further files", (fresh) => {
  it("that are written in another hand are the same lines the next time", async () => {
    const db = await fresh();
    // Numbers with noughts, a day behind blanks, a word behind a blank, a name with two blanks: read as 3.5, 2021-08, pull and M 1.
    const folder = new Map([
      ...base,
      ...csv({
        "seed_weighings.csv": "lot,on,seeds,grams,note\nM  1, 2021-08 ,0100,03.50,\n",
        "moisture_readings.csv": "lot,on,percent\nM 1 ,2021-08,9.50\n",
        // What nobody said of them is stored as another name, in grams, and open: the columns say so in the schema.
        "other_names.csv": "variety,name\nGrey Morrow,Mill morrow\n",
        "transfers.csv": "kind,lot,to_words,on,amount\ngift,M 1,a neighbour,2022,5\n",
        "lineage_claims.csv": "lot,kind,words\nM 1,unknown before,nobody knows\n",
      }),
    ]);
    granted(await importFolder(db, owner, folder));
    const again = granted(await importFolder(db, owner, folder));
    expect([again.value.nothingNew, again.value.tally.filter((each) => each.added + each.changed > 0)]).toEqual([
      true,
      [],
    ]);
    expect([await db.read.seedWeighing.count(), await db.read.moistureReading.count()]).toEqual([1, 1]);
    const unsaid = [
      await db.read.varietyName.findMany({ select: { kind: true } }),
      await db.read.transfer.findMany({ select: { unit: true } }),
      await db.read.lineageClaim.findMany({ select: { standing: true } }),
    ];
    expect(unsaid).toEqual([[{ kind: "other" }], [{ unit: "g" }], [{ standing: "open" }]]);
  });

  it("that name one record twice are refused with file, line and column, and nothing is written", async () => {
    const db = await fresh();
    granted(await importFolder(db, owner, base));
    const twice = new Map([
      ...base,
      ...csv({
        "tests_set_up.csv": "test,lot,date\nP7,M 1,2021\n",
        "replicates_set_up.csv": "test,replicate,sown\nP7,1,25\nP7,2,25\nP7,1,30\n",
        "containers.csv": "code,lot\nJ-1,M 1\nJ-1,M 2\n",
      }),
    ]);
    const faults = (await checkFolder(db, twice)).faults;
    expect(faults.map(({ code, file, line, column }) => [code, file, line, column])).toEqual([
      ["name-twice", "containers.csv", 3, "code"],
      ["name-twice", "replicates_set_up.csv", 4, "test"],
    ]);
    // P1 has its replicate 1 already, in tests.csv.
    const stands = new Map([...base, ...csv({ "replicates_set_up.csv": "test,replicate,sown\nP1,1,25\n" })]);
    const outcome = await importFolder(db, owner, stands);
    expect(outcome.ok ? [] : outcome.refusals.map((each) => [each.code, each.path[0]])).toEqual([
      ["stands-already", "replicates_set_up.csv"],
    ]);
    expect(await db.read.testReplicate.count()).toBe(1);
  });

  it("of which the database holds a rule are refused with their file, whatever else is in the folder", async () => {
    const db = await fresh();
    const ledger = (kind: string, amount: string) =>
      new Map([
        ...base,
        ...csv({ "ledger_counted.csv": `lot,on,kind,amount,unit\nM 1,2020,${kind},${amount},ears\n` }),
      ]);
    const codes = async (files: ReadonlyMap<string, Uint8Array>) => {
      const outcome = await importFolder(db, owner, files);
      return outcome.ok ? [] : outcome.refusals.map((each) => [each.code, each.path[0]]);
    };
    expect(await codes(ledger("eaten", "3"))).toEqual([["not-one-of", "ledger_counted.csv"]]);
    expect(await codes(ledger("received", "-3"))).toEqual([["cannot-be", "ledger_counted.csv"]]);
    expect(await db.read.changeSet.count({ where: { kind: "import" } })).toBe(0);
  });

  it("that point a record to one that came with them are taken back together", async () => {
    const db = await fresh();
    granted(
      await importFolder(
        db,
        owner,
        csv({
          "varieties.csv": "variety,crop\nTarn Vetch,bank vetch\n",
          "lots.csv": "lot,variety,kind,from\nT 1,Tarn Vetch,founder,\nT 2,Tarn Vetch,founder,\n",
        }),
      ),
    );
    const { changeSetId } = granted(
      await importFolder(
        db,
        owner,
        csv({
          "stewards.csv": "steward\nOsk Tarn\n",
          "lots.csv": "lot,variety,kind,from,holder\nT 2,Tarn Vetch,founder,,Osk Tarn\n",
        }),
      ),
    );
    granted(await undoChangeSet(db, owner, changeSetId ?? ""));
    const lot = await db.read.lot.findFirstOrThrow({ where: { number: "T 2" } });
    expect([lot.holderId, await db.read.person.count()]).toEqual([null, 0]);
  });

  it("are taken back whole, a trait's earlier version after the later one", async () => {
    const first = await fresh();
    granted(await importFolder(first, owner, base));
    await fillEveryTable(first);
    const folder = await exportFolder(first);
    const db = await fresh();
    const { changeSetId } = granted(await importFolder(db, owner, folder));
    granted(await undoChangeSet(db, owner, changeSetId ?? ""));
    expect((await exportFolder(db)).get("lots.csv")).toEqual(
      csv({ "lots.csv": "lot,variety,holder,year,kind,from,thousand_seed_grams,inbreeding,notes\r\n" }).get("lots.csv"),
    );
    expect([await db.read.trait.count(), await db.read.lot.count(), await db.read.steward.count()]).toEqual([0, 0, 0]);
  });
});

it("a column that the schema fills where nothing is said is compared as what it is filled with", () => {
  const schema = readFileSync("prisma/schema.prisma", "utf8");
  const filled = furtherSpecs.flatMap(({ file, table, identity, columns }) => {
    const model = new RegExp(`^model ${table} \\{\\n([\\s\\S]*?)^\\}`, "m").exec(schema)?.[1] ?? "";
    return columns.flatMap(({ column, field, needed, unsaid }) => {
      const given = new RegExp(`^\\s+${field}\\s.*@default\\("(.*?)"\\)`, "m").exec(model)?.[1];
      return identity.by === "lines" && !needed && given !== unsaid
        ? [`${file} ${column}: ${given}, not ${unsaid}`]
        : [];
    });
  });
  expect(filled).toEqual([]);
});
