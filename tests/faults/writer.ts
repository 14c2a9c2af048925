// The program that is killed: it writes into a registry, and says of each entry on its output when it was acknowledged. It reads its tasks as
// one line of JSON: {"folder": "...", "seed": 1, "most": 40}.
import { writeSync } from "node:fs";
import path from "node:path";
import { createInterface } from "node:readline";
import { ownerHere } from "@/lib/access/actor";
import { makeBackup } from "@/lib/backups/make-backup";
import { type Database, migrationStateOfFile } from "@/lib/db";
import { importFolder } from "@/lib/exchange/bring-in/import-folder";
import { undoChangeSet } from "@/lib/registry/change-set/undo-change-set";
import { recordLedgerEntry } from "@/lib/registry/ledger/record-ledger-entry";
import { prepareRegistry } from "@/lib/registry/open-registry";
import { changeSettings } from "@/lib/registry/settings/change-settings";
import { parseDate } from "@/lib/science/dates/parse-date";
import { folderOf, locationOf, numberStream, type Said, type Task } from "./protocol";

const owner = ownerHere();

/** Straight to the pipe: what stands there was acknowledged before this process could end. */
function say(said: Said): void {
  writeSync(1, `${JSON.stringify(said)}\n`);
}

say({ is: "ready" });
for await (const line of createInterface({ input: process.stdin })) await work(JSON.parse(line) as Task);

async function work({ folder, seed, most }: Task): Promise<void> {
  const next = numberStream(seed);
  const older = migrationStateOfFile(locationOf(folder)).pending.length > 0;
  say({ is: "doing", what: older ? "migration" : "opening" });
  const db = await prepareRegistry(locationOf(folder));
  say({ is: "acknowledged", what: "opening" });
  const imported: string[] = [];
  for (let turn = 0; turn < most; turn += 1) {
    const dice = next();
    if (dice < 0.4) await ledger(db, next, turn);
    else if (dice < 0.6) await bringIn(db, `${seed}-${turn}`, 1 + Math.floor(next() * 4), imported);
    else if (dice < 0.7) await bringIn(db, `${seed}-${turn}`, 150, imported);
    else if (dice < 0.8) await takeBack(db, imported);
    else if (dice < 0.9) await settings(db, next);
    else await backUp(folder);
  }
  say({ is: "done" });
}

async function ledger(db: Database, next: () => number, turn: number): Promise<void> {
  const lots = await db.read.lot.findMany({ select: { id: true }, orderBy: { id: "asc" } });
  const lot = lots[Math.floor(next() * lots.length)];
  const on = parseDate("2024-10-20");
  if (!lot || !on.ok) return;
  say({ is: "doing", what: "ledger" });
  const entry = {
    kind: "received" as const,
    amount: 1 + turn,
    on: on.value,
    unit: "g" as const,
    other: null,
    notes: null,
  };
  tell("ledger", await recordLedgerEntry(db, owner, lot.id, entry, "2026-11-27"));
}

async function bringIn(db: Database, mark: string, lots: number, imported: string[]): Promise<void> {
  const what = lots > 10 ? "large import" : "import";
  say({ is: "doing", what });
  const id = tell(what, await importFolder(db, owner, folderOf(mark, lots)));
  if (id) imported.push(id);
}

async function takeBack(db: Database, imported: string[]): Promise<void> {
  const id = imported.pop();
  if (!id) return;
  say({ is: "doing", what: "undo" });
  tell("undo", await undoChangeSet(db, owner, id));
}

async function settings(db: Database, next: () => number): Promise<void> {
  say({ is: "doing", what: "settings" });
  tell("settings", await changeSettings(db, owner, { confirmedYears: 1 + Math.floor(next() * 50) }));
}

async function backUp(folder: string): Promise<void> {
  say({ is: "doing", what: "backup" });
  const made = await makeBackup({
    location: locationOf(folder),
    backups: path.join(folder, "backups"),
    now: new Date(),
    why: "by hand",
  });
  say({ is: "acknowledged", what: "backup", backup: made.backup.name, sound: made.backup.sound });
}

/** A refusal is an answer, too: it wrote nothing, and nothing is acknowledged. */
function tell(
  what: string,
  outcome:
    | { ok: true; value: { changeSetId: string | null; revision: number } }
    | { ok: false; refusals: readonly { sentence: string }[] },
): string | null {
  if (!outcome.ok) {
    say({ is: "refused", what, sentence: outcome.refusals[0]?.sentence ?? "" });
    return null;
  }
  const { changeSetId, revision } = outcome.value;
  if (changeSetId) say({ is: "acknowledged", what, changeSetId, revision });
  return changeSetId;
}
