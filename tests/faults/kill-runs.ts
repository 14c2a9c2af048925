import { type ChildProcess, spawn } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, rmSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { createInterface } from "node:readline";
import { backupFaults } from "@/lib/backups/check-backup";
import { prepareRegistry } from "@/lib/registry/open-registry";
import { listBackups } from "@/lib/registry/safe-keeping/list-backups";
import { verifyRegistry } from "@/lib/registry/safe-keeping/verify/verify-registry";
import { olderRegistry, olderRelease } from "../setup/older-release";
import { locationOf, numberStream, type Said } from "./protocol";

/** What so many kills left. */
export interface KillFigures {
  readonly runs: number;
  /** by what was under way when the process was killed */
  readonly killedWhile: Record<string, number>;
  acknowledged: number;
  backups: number;
  /** acknowledged entries that are not there any more */
  lost: number;
  /** what verifying found, and backups that are not what their manifest says */
  readonly faults: string[];
}

/** So many runs go over one folder, one kill after the other, before the next begins with an older release's registry. */
const runsAFolder = 5;
const mostEntries = 40;

/**
 * Kills a writing process (SIGKILL, as a power cut of the program) at moments drawn from a seed, and looks after each kill: every entry that was acknowledged
 * stands, no change is there by half, the registry verifies, and every backup is what its manifest says.
 */
export async function killRuns(
  runs: number,
  seed: number,
  say: (line: string) => void = () => {},
): Promise<KillFigures> {
  const next = numberStream(seed);
  const work = mkdtempSync(path.join(os.tmpdir(), "kinrow-kills-"));
  const older = path.join(work, "older");
  mkdirSync(older);
  await olderRegistry(locationOf(older), olderRelease(path.join(work, "release"), 1));
  const figures: KillFigures = { runs, killedWhile: {}, acknowledged: 0, backups: 0, lost: 0, faults: [] };
  // The next process loads its modules while the last one's folder is looked at.
  let waiting = startWriter();
  let folder = "";
  let stands: Extract<Said, { is: "acknowledged" }>[] = [];
  for (let run = 0; run < runs; run += 1) {
    if (run % runsAFolder === 0) {
      if (folder) removed(folder);
      folder = path.join(work, `folder-${run}`);
      cpSync(older, folder, { recursive: true });
      stands = [];
    }
    const writer = waiting;
    // The first of a folder is often killed while it migrates, the others after some entries.
    const opening = run % runsAFolder === 0 && next() < 0.7;
    const entries = opening ? 0 : 1 + Math.floor(next() * 10);
    const heard = await killed(
      writer,
      { folder, seed: seed * 1000 + run, most: mostEntries },
      opening,
      entries,
      next() * (opening ? 120 : 25),
    );
    if (run + 1 < runs) waiting = startWriter();
    figures.killedWhile[heard.while] = (figures.killedWhile[heard.while] ?? 0) + 1;
    stands.push(...heard.acknowledged);
    figures.acknowledged += heard.acknowledged.length;
    await look(folder, stands, figures, run);
    say(
      `run ${run + 1} of ${runs}: killed while ${heard.while}, ${heard.acknowledged.length} acknowledged, ${figures.faults.length} faults`,
    );
  }
  removed(work);
  return figures;
}

/** What a killed backup had begun to copy may still write for a moment. */
function removed(folder: string): void {
  rmSync(folder, { recursive: true, maxRetries: 5 });
}

interface Writer {
  readonly child: ChildProcess;
  readonly said: Said[];
  /** called with each line that it says from now on */
  heard: (said: Said) => void;
  readonly ready: Promise<void>;
  readonly ended: Promise<void>;
}

function startWriter(): Writer {
  const child = spawn(process.execPath, ["--import", "tsx", "tests/faults/writer.ts"], {
    stdio: ["pipe", "pipe", "inherit"],
  });
  let ready = () => {};
  let ended = () => {};
  const writer: Writer = {
    child,
    said: [],
    heard: () => {},
    ready: new Promise((resolve) => {
      ready = resolve;
    }),
    ended: new Promise((resolve) => {
      ended = resolve;
    }),
  };
  createInterface({ input: child.stdout as NodeJS.ReadableStream }).on("line", (line) => {
    const said = JSON.parse(line) as Said;
    writer.said.push(said);
    if (said.is === "ready") ready();
    writer.heard(said);
  });
  child.once("close", () => {
    ready();
    ended();
  });
  return writer;
}

/** Lets it write, and kills it: while it opens the registry, or some time after so many acknowledged entries. */
async function killed(
  writer: Writer,
  task: { folder: string; seed: number; most: number },
  opening: boolean,
  entries: number,
  delay: number,
): Promise<{ acknowledged: Extract<Said, { is: "acknowledged" }>[]; while: string }> {
  await writer.ready;
  let counted = 0;
  let aimed = false;
  writer.heard = (said) => {
    if (said.is === "acknowledged" && said.what !== "opening") counted += 1;
    const now = opening ? said.is === "doing" : counted >= entries;
    if (aimed || !(now || said.is === "done")) return;
    aimed = true;
    setTimeout(() => writer.child.kill("SIGKILL"), delay);
  };
  writer.child.stdin?.write(`${JSON.stringify(task)}\n`);
  await writer.ended;
  const acknowledged = writer.said.filter((said) => said.is === "acknowledged");
  const last = writer.said.at(-1);
  return { acknowledged, while: last?.is === "doing" ? last.what : "between entries" };
}

async function look(
  folder: string,
  stands: readonly Extract<Said, { is: "acknowledged" }>[],
  figures: KillFigures,
  run: number,
): Promise<void> {
  const db = await prepareRegistry(locationOf(folder));
  try {
    const sets = stands.flatMap((said) => said.changeSetId ?? []);
    const found = new Map(
      (await db.read.changeSet.findMany({ select: { id: true, number: true } })).map((set) => [set.id, set.number]),
    );
    const lost = sets.filter((id) => !found.has(id));
    figures.lost += lost.length;
    for (const said of stands)
      if (said.changeSetId && found.get(said.changeSetId) !== said.revision)
        figures.faults.push(`run ${run}: ${said.what} ${said.revision} was acknowledged and is not there`);
    if ((await db.read.ledgerEntry.count({ where: { id: { in: ["e1", "e2"] } } })) !== 2)
      figures.faults.push(`run ${run}: the older release's entries are gone`);
    const report = await verifyRegistry(db, path.join(folder, "photos"));
    for (const finding of report.findings) figures.faults.push(`run ${run}: ${finding.sentence}`);
  } finally {
    await db.close();
  }
  const backups = await listBackups(path.join(folder, "backups"));
  const promised = stands.flatMap((said) => said.backup ?? []).slice(-keptForSure);
  for (const name of promised)
    if (!backups.some((backup) => backup.name === name)) figures.faults.push(`run ${run}: the backup ${name} is gone`);
  for (const backup of backups) {
    if (!backup.sound) figures.faults.push(`run ${run}: the backup ${backup.name} is not sound`);
    figures.faults.push(...(await backupFaults(backup)).map((sentence) => `run ${run}: ${sentence}`));
  }
  figures.backups += backups.length;
}

/** The last so many backups made by hand stay, whatever else. */
const keptForSure = 7;
