import { expect, it } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import { checkFolder, importFolder } from "@/lib/exchange/bring-in/import-folder";
import { exportFolder } from "@/lib/exchange/take-out/export-folder";
import { furtherSpecs } from "@/lib/registry/notebook/further/specs";
import { onEveryEngine } from "@/tests/setup/engines";
import { granted } from "@/tests/setup/registry";
import { emptyColumns } from "./empty-columns";
import { base, csv, fillEveryTable } from "./fill-every-table";

const owner = ownerHere();
const texts = (files: ReadonlyMap<string, Uint8Array>) =>
  Object.fromEntries([...files].map(([name, bytes]) => [name, new TextDecoder().decode(bytes)]));

onEveryEngine("the further files", (fresh) => {
  it("hold every kind of record with every field, and bring the same registry back", async () => {
    const first = await fresh();
    granted(await importFolder(first, owner, base));
    await fillEveryTable(first);
    const out = await exportFolder(first);
    const missing = furtherSpecs.map((spec) => spec.file).filter((file) => !out.has(file));
    expect(missing).toEqual([]);
    const empty = furtherSpecs.flatMap(({ file, columns }) =>
      emptyColumns(
        file,
        columns.map(({ column }) => column),
        texts(out)[file] ?? "",
      ),
    );
    expect(empty).toEqual([]);

    const second = await fresh();
    granted(await importFolder(second, owner, out));
    expect(texts(await exportFolder(second))).toEqual(texts(out));
    const again = granted(await importFolder(second, owner, out));
    expect(again.value.nothingNew).toBe(true);
  });

  it("are refused with file, row and column where a cell is wrong, and nothing is written", async () => {
    const db = await fresh();
    const wrong = new Map([
      ...base,
      ...csv({ "places.csv": "name,kind\nLoft,attic\n", "containers.csv": "code,lot\nJ-2,M 99\n" }),
    ]);
    const outcome = await importFolder(db, owner, wrong);
    expect((await checkFolder(db, wrong)).faults.map(({ file, line, column }) => `${file}:${line}:${column}`)).toEqual([
      "containers.csv:2:lot",
      "places.csv:2:kind",
    ]);
    const places = outcome.ok ? [] : outcome.refusals.map((each) => each.path.join(":"));
    expect(places).toEqual(["containers.csv:2:lot", "places.csv:2:kind"]);
    expect(await db.read.lot.count()).toBe(0);
  });
});
