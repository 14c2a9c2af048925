import { appendFileSync } from "node:fs";
import { rm } from "node:fs/promises";
import {
  type Database,
  demonstrationLocation,
  holdFolder,
  type Location,
  migrate,
  openDatabase,
  registryLocation,
  removeDatabase,
  storageFaultOf,
} from "@/lib/db";
import { fillCropList } from "./crops/fill-crop-list";
import { folderOfPhotos } from "./photos/photo-place";
import { backUpBeforeMigrating } from "./safe-keeping/before-migrating";
import { interruptedRestore } from "./safe-keeping/interrupted-restore";
import { keepBackingUp } from "./safe-keeping/keep-backing-up";

// One open registry a file for the life of the process, also across reloads of the code while developing.
const shelf = globalThis as unknown as { kinrowOpen?: Map<string, Promise<Database>> };

/** The steward's own registry. Brought up to this release when it is first opened. */
export function ownRegistry(): Promise<Database> {
  return opened(registryLocation());
}

/** The demonstration: a file of its own. */
export function demonstrationRegistry(): Promise<Database> {
  return opened(demonstrationLocation());
}

/** Migrates, opens and fills a registry; the way in for the app, the command lines and the tests alike. */
export async function prepareRegistry(
  location: Location,
  options: Parameters<typeof openDatabase>[1] = {},
): Promise<Database> {
  await migrate(location);
  const db = await openDatabase(location, options);
  const filled = await fillCropList(db);
  if (!filled.ok) throw new Error(filled.refusals.map((each) => each.sentence).join(" "));
  return db;
}

function opened(location: Location): Promise<Database> {
  shelf.kinrowOpen ??= new Map();
  let db = shelf.kinrowOpen.get(location.url);
  if (!db) {
    db = openForServing(location);
    shelf.kinrowOpen.set(location.url, db);
    db.catch(() => shelf.kinrowOpen?.delete(location.url));
  }
  return db;
}

/** A server holds its data folder while it is open, keeps its registry backed up, and says in a sentence what the disk will not do. */
async function openForServing(location: Location): Promise<Database> {
  const held = holdFolder(location.folder);
  try {
    if (!location.demonstration) {
      interruptedRestore(location);
      await backUpBeforeMigrating(location, log);
    }
    const db = await prepareRegistry(location, statementLog());
    if (!location.demonstration) keepBackingUp(location, log);
    return db;
  } catch (error) {
    held.release();
    throw storageFaultOf(error, location.engine === "sqlite" ? location.url : location.folder) ?? error;
  }
}

function log(sentence: string): void {
  console.error(sentence);
}

/** The bench names a file in KINROW_STATEMENTS: then every statement is written there with its arguments. */
function statementLog(): Parameters<typeof openDatabase>[1] {
  const file = process.env.KINROW_STATEMENTS;
  if (!file) return {};
  const line = (sql: string, parameters: string) => `{"sql":${JSON.stringify(sql)},"parameters":${parameters}}\n`;
  return { onStatement: (sql, parameters) => appendFileSync(file, line(sql, parameters)) };
}

export async function demonstrationIsEmpty(db: Database): Promise<boolean> {
  return (await db.read.variety.count()) === 0;
}

/** Closes the demonstration and removes its file and its pictures. */
export async function removeDemonstration(): Promise<void> {
  const { url } = demonstrationLocation();
  const db = shelf.kinrowOpen?.get(url);
  shelf.kinrowOpen?.delete(url);
  await (await db)?.close();
  await removeDatabase(demonstrationLocation());
  await rm(folderOfPhotos(demonstrationLocation()), { recursive: true, force: true });
}
