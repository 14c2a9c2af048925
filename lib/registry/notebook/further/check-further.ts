import type { Client, Transaction } from "@/lib/db";
import { scorePrefix } from "@/lib/schemas/notebook/columns";
import type { Notebook } from "@/lib/schemas/notebook/rows";
import type { Refusal } from "@/lib/science/outcome";
import { fieldsOf } from "./fields-of-row";
import type { FurtherTable } from "./further-table";
import { linesTwice } from "./lines-twice";
import {
  harvestName,
  joinedName,
  type NameBook,
  nameBook,
  namesInTurn,
  namesOfNeighbours,
  namesOfTransfers,
  traitName,
  withKeeper,
} from "./names";
import { furtherSpecs } from "./specs";

/** What is wrong in further files, with file, line and column, before anything is written: names may stand in the folder itself. */
export async function checkFurther(
  db: Client | Transaction,
  notebook: Notebook,
  tables: readonly FurtherTable[],
): Promise<Refusal[]> {
  if (tables.length === 0) return [];
  const names = await nameBook(db);
  addNames(names, notebook, tables);
  return tables.flatMap((table) => {
    const spec = furtherSpecs.find((each) => each.file === table.file);
    if (!spec) return [];
    const inCells = table.rows.flatMap((row) => {
      const outcome = fieldsOf(spec, row, names);
      return outcome.ok ? [] : outcome.refusals;
    });
    return [...inCells, ...linesTwice(spec, table)];
  });
}

/** Names that the folder brings; what they will be known by is not known yet, so the name itself stands in. */
function addNames(names: NameBook, notebook: Notebook, tables: readonly FurtherTable[]): void {
  for (const { cells } of notebook.stewards) names.add("steward", cells.steward, cells.steward);
  for (const { cells } of notebook.varieties) {
    names.add("variety", cells.variety, cells.variety);
    names.add("crop", cells.crop, cells.crop);
  }
  for (const { cells } of notebook.lots) names.add("lot", cells.lot, cells.lot);
  for (const { cells } of notebook.tests) names.add("test", cells.test, cells.test);
  for (const { cells } of notebook.growOuts) {
    names.add("grow-out", cells.grow_out, cells.grow_out);
    if (cells.plot !== null) names.add("plot", cells.plot, withKeeper(cells.plot, cells.steward));
  }
  for (const [file, kind] of [
    ["places.csv", "place"],
    ["plots.csv", "plot"],
  ] as const) {
    for (const { cells } of tables.find((table) => table.file === file)?.rows ?? []) {
      const name = withKeeper(cells.name ?? "", cells.steward === "" ? null : cells.steward);
      names.add(kind, name, name);
    }
  }
  for (const { cells, extra } of notebook.plants) {
    const name = joinedName([cells.grow_out, cells.plant]);
    names.add("plant", name, name);
    // A score of a trait that nobody defined makes one that all share.
    for (const column of Object.keys(extra)) {
      if (!column.startsWith(scorePrefix)) continue;
      const trait = traitName(column.slice(scorePrefix.length), null, null, 1);
      names.add("trait", trait, trait);
    }
  }
  for (const { cells } of tables.find((table) => table.file === "traits.csv")?.rows ?? []) {
    const name = traitName(cells.trait ?? "", cells.trait_variety, cells.trait_crop, cells.trait_version ?? "");
    names.add("trait", name, name);
  }
  for (const { cells } of tables.find((table) => table.file === "tests_set_up.csv")?.rows ?? [])
    names.add("test", cells.test ?? "", cells.test ?? "");
  for (const { cells } of tables.find((table) => table.file === "strains.csv")?.rows ?? []) {
    const name = withKeeper(cells.name ?? "", cells.variety);
    names.add("strain", name, name);
  }
  const transferNames = namesOfTransfers();
  for (const { cells } of tables.find((table) => table.file === "transfers.csv")?.rows ?? []) {
    const name = transferNames(cells.kind ?? "", cells.lot ?? "", cells.on ?? "");
    names.add("transfer", name, name);
  }
  const storyNames = namesInTurn();
  for (const { cells } of tables.find((table) => table.file === "stories.csv")?.rows ?? []) {
    const name = storyNames(cells.words ?? "");
    names.add("story", name, name);
  }
  const inTurn = namesInTurn();
  for (const { cells } of tables.find((table) => table.file === "harvests.csv")?.rows ?? []) {
    const name = inTurn(harvestName(cells.lot, cells.grow_out));
    names.add("harvest", name, name);
  }
  const neighbourNames = namesOfNeighbours();
  for (const { cells } of tables.find((table) => table.file === "neighbours.csv")?.rows ?? []) {
    const name = neighbourNames(cells.grow_out, cells.plot, cells.what ?? "");
    names.add("neighbour", name, name);
  }
  for (const { cells } of tables.find((table) => table.file === "own_crops.csv")?.rows ?? [])
    names.add("crop", cells.crop ?? "", cells.crop ?? "");
}
