import { createHash } from "node:crypto";
import path from "node:path";
import { ownerHere } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { importFolder } from "@/lib/exchange/bring-in/import-folder";
import { exportFolder } from "@/lib/exchange/take-out/export-folder";
import { undoChangeSet } from "@/lib/registry/change-set/undo-change-set";
import { figuresOfRecords } from "@/lib/registry/figures/figures-of-records";
import { readRecords } from "@/lib/registry/figures/read-records";
import { checkLedgers } from "@/lib/registry/safe-keeping/verify/check-ledgers";
import { verifyRegistry } from "@/lib/registry/safe-keeping/verify/verify-registry";

const owner = ownerHere();

/** A hash of every row of every table; `leave` names tables and columns that are left out. */
export async function hashOfTables(
  db: Database,
  leave: { tables?: readonly string[]; columns?: readonly string[] } = {},
): Promise<string> {
  const hash = createHash("sha256");
  const tables = await db.read.$queryRawUnsafe<{ name: string }[]>(
    "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%' ORDER BY name",
  );
  for (const { name } of tables) {
    if (leave.tables?.includes(name)) continue;
    const rows = await db.read.$queryRawUnsafe<Record<string, unknown>[]>(`SELECT * FROM "${name}" ORDER BY "id"`);
    for (const row of rows) {
      const kept = Object.entries(row).filter(([column]) => !leave.columns?.includes(column));
      hash.update(JSON.stringify([name, kept], (_key, value) => (typeof value === "bigint" ? String(value) : value)));
    }
  }
  return hash.digest("hex");
}

/**
 * What is wrong with a registry after something was taken in, by statements that do not come from what took it in; empty where nothing is. Its photos are names
 * alone here: no file stands behind them.
 */
export async function wrongAfter(db: Database): Promise<string[]> {
  const report = await verifyRegistry(db, path.join(db.location.folder, "photos"));
  return report.findings
    .filter((each) => each.severity === "fault" && each.part !== "photos")
    .map((each) => `${each.part}: ${each.sentence}`);
}

/** The jars out of which more was taken than was in, as verifying tells them. */
export async function debts(db: Database): Promise<string[]> {
  const { findings } = await checkLedgers(db);
  return findings.filter((each) => each.severity === "note").map((each) => each.sentence);
}

/** What is wrong with the figures: none is answered, or one is no number. */
export async function wrongInFigures(db: Database): Promise<string[]> {
  const crops = await db.read.crop.findMany({ where: { varieties: { some: {} } }, select: { id: true } });
  const records = await readRecords(
    db,
    crops.map(({ id }) => id),
  );
  const figures = figuresOfRecords(records);
  if (!figures.ok) return figures.refusals.map((each) => `figures do not answer: ${each.sentence}`);
  const lots = new Set(records.lots.map((lot) => lot.id));
  const odd = figures.value.flatMap((figure) =>
    Object.entries(figure)
      .filter(([, value]) => typeof value === "number" && !Number.isFinite(value))
      .map(([name]) => `figure ${name} of ${JSON.stringify(figure)} is no number`),
  );
  return figures.value.length === lots.size ? odd : [...odd, `${lots.size} lots have ${figures.value.length} figures`];
}

/** Exports, brings that into an empty registry and exports again: what differs. The empty one is empty again after it. */
export async function wrongInRoundTrip(db: Database, empty: Database): Promise<string[]> {
  const out = await exportFolder(db);
  const back = await importFolder(empty, owner, out);
  if (!back.ok) return back.refusals.slice(0, 3).map((each) => `its own export is refused: ${each.sentence}`);
  const again = await exportFolder(empty);
  const wrong = [...new Set([...out.keys(), ...again.keys()])]
    .filter((file) => Buffer.compare(out.get(file) ?? new Uint8Array(), again.get(file) ?? new Uint8Array()) !== 0)
    .map((file) => `${file} is not the same after it came back`);
  const emptied = await undone(empty, back.value.changeSetId);
  return [...wrong, ...emptied];
}

/** Takes a change set back; what stood against it. */
export async function undone(db: Database, changeSetId: string | null): Promise<string[]> {
  if (changeSetId === null) return [];
  const back = await undoChangeSet(db, owner, changeSetId);
  return back.ok ? [] : back.refusals.slice(0, 3).map((each) => `cannot be taken back: ${each.sentence}`);
}
