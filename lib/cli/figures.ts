import { figuresOfRecords } from "@/lib/registry/figures/figures-of-records";
import { readRecords } from "@/lib/registry/figures/read-records";
import { sameName } from "@/lib/registry/names/fold-name";
import { withRegistry } from "./with-registry";

// npm run --silent figures -- [LOT ...]: one JSON object a lot, in code-point order of the lot; all lots where none is named.
await withRegistry(async (db) => {
  const names = process.argv.slice(2).map(sameName);
  const crops = await db.read.crop.findMany({ where: { varieties: { some: {} } }, select: { id: true } });
  const records = await readRecords(
    db,
    crops.map((crop) => crop.id),
  );
  const ids = new Map(records.lots.map((lot) => [sameName(lot.number), lot.id]));
  const unknown = names.filter((name) => !ids.has(name));
  if (unknown.length > 0) {
    for (const name of unknown)
      console.error(`"${name}" is no lot of this registry; write a lot number as it stands there`);
    return 1;
  }
  const only = names.length > 0 ? new Set(names.map((name) => ids.get(name) as string)) : undefined;
  const outcome = figuresOfRecords(records, only);
  if (!outcome.ok) {
    for (const each of outcome.refusals) console.error(`${each.path.join(" ")}: ${each.sentence}`);
    return 1;
  }
  process.stdout.write(outcome.value.map((figure) => `${JSON.stringify(figure)}\n`).join(""));
  return 0;
});
