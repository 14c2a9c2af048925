import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { expect, it } from "vitest";
import { pointsOf, rowsOf } from "@/app/varieties/[id]/diversity/_words/rows";
import type { Row } from "@/components/tables/cells";
import { ownerHere } from "@/lib/access/actor";
import { importFolder } from "@/lib/exchange/bring-in/import-folder";
import { readVariety } from "@/lib/registry/varieties/read-variety";
import { defaultSettings } from "@/lib/schemas/settings";
import { founderEquivalents } from "@/lib/science/lineage/founder-equivalents";
import { emptyRegistry, granted } from "../../setup/registry";

/** Worked out by an independent program. */
interface Expected {
  readonly lot: string;
  readonly effectiveSize: number | null;
  readonly inbreeding: number | null;
  readonly coancestry: number | null;
  readonly nativeDiversityRetained: number | null;
  readonly foreignAncestry: number | null;
  readonly generations: number | null;
}

const place = "tests/reference/notebook";
const expected = new Map(
  (JSON.parse(readFileSync(path.join(place, "expected.json"), "utf8")) as Expected[]).map((each) => [each.lot, each]),
);

function agrees(found: number | null, wanted: number | null): boolean {
  if (found === null || wanted === null) return found === wanted;
  return Math.abs(found - wanted) <= Math.max(1e-12, 1e-9 * Math.abs(wanted));
}

/** The number that stands in a cell, as its CSV gives it. */
function numberIn(cell: Row["cells"][string] | undefined): number | null {
  if (typeof cell !== "object" || cell === null) return null;
  if (cell.kind === "count") return cell.sort;
  return cell.kind === "span" ? cell.value : null;
}

it("The sample notebook gives expected.json's figures through the pages", async () => {
  const db = await emptyRegistry();
  const files = readdirSync(place).filter((file) => file.endsWith(".csv"));
  const folder = new Map(files.map((file) => [file, Uint8Array.from(readFileSync(path.join(place, file)))]));
  granted(await importFolder(db, ownerHere(), folder));
  const differing: string[] = [];
  let told = 0;
  for (const { id } of await db.read.variety.findMany({ select: { id: true } })) {
    const read = await readVariety(db, id, defaultSettings, "2026-11-27");
    if (!read) continue;
    const rows = new Map(rowsOf(read).map((row) => [row.id, row.cells]));
    for (const lot of read.lots) {
      const wanted = expected.get(lot.number);
      const cells = rows.get(lot.id);
      if (!wanted || !cells) {
        differing.push(`${lot.number} does not stand`);
        continue;
      }
      const see = (key: string, value: number | null) => {
        if (!agrees(numberIn(cells[key]), value)) differing.push(`${lot.number} ${key}`);
      };
      see("foreign", wanted.foreignAncestry);
      see("generations", wanted.generations);
      if (lot.standing !== "counted") {
        // a selfer's founder of which nobody wrote whether it is one line: no percentage is shown
        expect(cells.own, lot.number).toMatchObject({ value: null });
        continue;
      }
      told += 1;
      see("own", wanted.nativeDiversityRetained);
      see("inbreeding", wanted.inbreeding);
      see("coancestry", wanted.coancestry);
      see("size", wanted.effectiveSize);
      see("equivalents", wanted.coancestry === null ? null : founderEquivalents(wanted.coancestry));
    }
    for (const point of pointsOf(read)) {
      const wanted = expected.get(point.name);
      if (point.value !== null && !agrees(point.value, wanted?.nativeDiversityRetained ?? null))
        differing.push(`${point.name} in the chart`);
    }
  }
  expect(differing).toEqual([]);
  expect(told).toBeGreaterThan(80);
  await db.close();
});
