import { stat } from "node:fs/promises";
import type { Database } from "@/lib/db";
import { backupDue } from "./backup-due";
import { type BackupSummary, backupSummaries } from "./backup-summaries";
import { freeSpaceAt } from "./free-space";
import { type KeptAs, keptBackups } from "./kept-backups";
import { backupsBesideData, backupsFolder } from "./places";
import { release } from "./release";
import { readKeepingState } from "./state";

/** Something to be done, the gravest first. */
export type HealthConcern =
  | "no-answer"
  | "space-out"
  | "backup-failed"
  | "faults-found"
  | "backup-old"
  | "no-backup-yet"
  | "space-low"
  | "database-apart"
  | "one-disk";

export interface Health {
  readonly release: string;
  readonly engine: "sqlite" | "postgresql";
  /** the registry answers */
  readonly answers: boolean;
  /** the newest first, with what it is kept as */
  readonly backups: readonly (BackupSummary & { readonly keptAs: readonly KeptAs[] })[];
  readonly backupsFolder: string;
  /** the newest that is not dated ahead of the clock */
  readonly newest: BackupSummary | null;
  readonly nextAt: string;
  /** the last attempt that came to nothing, if no backup was made since */
  readonly failure: { readonly at: string; readonly sentence: string } | null;
  /** what the latest check found, of the registry or of the newest backup */
  readonly verified: { readonly at: string; readonly faults: number; readonly first: string | null } | null;
  /** bytes; null where the system does not say */
  readonly freeForData: number | null;
  readonly freeForBackups: number | null;
  readonly concerns: readonly HealthConcern[];
}

const day = 86_400_000;
/** A backup older than this is told on the season's page. */
export const oldBackup = 2 * day;
/** Less free space than this is low, and less than that lets nothing be written any more. */
export const lowSpace = 2 ** 30;
export const noSpace = 64 * 2 ** 20;

/** How the registry is kept, as of `now`: backups, space, what the last check found, and what is to be done. */
export async function readHealth(db: Database, now: Date): Promise<Health> {
  const { folder } = db.location;
  const at = now.toISOString();
  const place = backupsFolder();
  const summaries = await backupSummaries(place);
  const kept = keptBackups(summaries, at);
  const newest = summaries.find((backup) => backup.at <= at) ?? null;
  const state = readKeepingState(folder);
  const failure = state.failure && (newest === null || state.failure.at > newest.at) ? state.failure : null;
  const [answers, freeForData, freeForBackups, size] = await Promise.all([
    answersNow(db),
    freeSpaceAt(folder),
    freeSpaceAt(place),
    sizeOf(db),
  ]);
  const verified = latestCheck(state.verified, newest);
  const health = {
    release: release(),
    engine: db.engine,
    answers,
    backups: summaries.map((backup) => ({ ...backup, keptAs: kept.get(backup.name) ?? [] })),
    backupsFolder: place,
    newest,
    nextAt: backupDue(
      summaries.map((backup) => backup.at),
      state.failure?.at ?? null,
      at,
    ).at,
    failure,
    verified,
    freeForData,
    freeForBackups,
  };
  return { ...health, concerns: concernsOf(health, Math.max(lowSpace, 5 * size), now) };
}

function concernsOf(health: Omit<Health, "concerns">, low: number, now: Date): HealthConcern[] {
  const free = Math.min(
    health.freeForData ?? Number.POSITIVE_INFINITY,
    health.freeForBackups ?? Number.POSITIVE_INFINITY,
  );
  const { newest, failure, verified } = health;
  const old = newest !== null && now.getTime() - Date.parse(newest.at) > oldBackup;
  const found: [HealthConcern, boolean][] = [
    ["no-answer", !health.answers],
    ["space-out", free < noSpace],
    ["backup-failed", failure !== null],
    ["faults-found", (verified?.faults ?? 0) > 0],
    ["backup-old", old],
    ["no-backup-yet", newest === null && failure === null],
    ["space-low", free >= noSpace && free < low],
    ["database-apart", health.engine === "postgresql"],
    ["one-disk", backupsBesideData()],
  ];
  return found.filter(([, is]) => is).map(([concern]) => concern);
}

function latestCheck(
  verified: { at: string; faults: number; first: string | null } | null,
  newest: BackupSummary | null,
): Health["verified"] {
  const ofBackup = newest && { at: newest.at, faults: newest.faults.length, first: newest.faults[0] ?? null };
  if (!verified || !ofBackup) return verified ?? ofBackup;
  return verified.at > ofBackup.at ? verified : ofBackup;
}

async function answersNow(db: Database): Promise<boolean> {
  return db.read.setting.count().then(
    () => true,
    () => false,
  );
}

async function sizeOf(db: Database): Promise<number> {
  if (db.engine !== "sqlite") return 0;
  // Only its length is asked: opening the file here, beside the driver, would drop the driver's locks when it is closed.
  return stat(db.location.url).then(
    (found) => found.size,
    () => 0,
  );
}
