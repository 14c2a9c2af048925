import { mkdtempSync, rmSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { ownerHere } from "@/lib/access/actor";
import { importFolder } from "@/lib/exchange/bring-in/import-folder";
import { figuresOfRecords } from "@/lib/registry/figures/figures-of-records";
import { readRecords } from "@/lib/registry/figures/read-records";
import { prepareRegistry } from "@/lib/registry/open-registry";
import { benchEdges } from "./bench/edges";
import { benchHeld } from "./bench/held";
import { largeFolder } from "./bench/large-folder";
import { benchLineage } from "./bench/lineage";
import { measurePages } from "./bench/pages";
import { benchPages } from "./bench/paths";
import { benchReferences } from "./bench/references";
import { type BenchRow, medianMilliseconds, printRows } from "./bench/rows";
import { benchChoosing, benchLines, benchSingle } from "./bench/science";
import { benchStemChart } from "./bench/stem-chart";

// npm run bench [-- PART ...]: one run, printed; of the pages those whose address has one of the parts in it, all where none is named.
// npm run bench -- references [COUNT [SEED [NAME ...]]]: that many inputs (10,000) of each calculation against another program, and nothing else.
// Absolute times are this machine's; the ratios travel.
const parts = process.argv.slice(2);
if (parts[0] === "references") {
  const [, count = "10000", seed = "1", ...only] = parts;
  printRows("References", benchReferences(Number(count), Number(seed), only));
  process.exit();
}
const folder = mkdtempSync(path.join(os.tmpdir(), "kinrow-bench-"));
const db = await prepareRegistry({
  engine: "sqlite",
  url: path.join(folder, "registry.sqlite"),
  folder,
  demonstration: false,
});
try {
  // The memory of the lineage is the growth of the whole process: it comes first.
  printRows("Science", [...(await benchLineage()), ...(parts.length === 0 ? await scienceRows() : [])]);
  printRows("Drawing", await benchStemChart());

  const from = performance.now();
  const brought = await importFolder(db, ownerHere(), largeFolder(2000));
  if (!brought.ok) throw new Error(brought.refusals.map((each) => each.sentence).join("\n"));
  const took = performance.now() - from;
  const crops = await db.read.crop.findMany({ where: { varieties: { some: {} } }, select: { id: true } });
  const records = await readRecords(
    db,
    crops.map((crop) => crop.id),
  );
  const figures = await medianMilliseconds(5, () => figuresOfRecords(records));
  const rows: BenchRow[] = [
    {
      what: "bring in 2,000 lots with ledger and tests",
      measured: `${(took / 1000).toFixed(1)} s`,
      bound: "shown",
      within: true,
    },
    {
      what: "figures of 2,000 lots, all worked out anew",
      measured: `${figures.toFixed(0)} ms`,
      bound: "shown",
      within: true,
    },
  ];
  printRows("Registry", rows);

  const { lotIds, paths: all } = await benchPages(db);
  const paths = parts.length === 0 ? all : all.filter((page) => parts.some((part) => page.includes(part)));
  printRows("Pages at 2,000 lots", await measurePages(db, folder, lotIds, paths));
} finally {
  await db.close();
  rmSync(folder, { recursive: true, force: true });
}

async function scienceRows(): Promise<BenchRow[]> {
  return [
    ...benchSingle(),
    ...benchEdges(),
    ...(await benchChoosing()),
    ...(await benchLines()),
    ...(await benchHeld()),
  ];
}
