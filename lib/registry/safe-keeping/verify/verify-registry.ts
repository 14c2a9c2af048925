import { type Database, MigrationRefused, migrationState, rowCounts, storageFaultOf } from "@/lib/db";
import { checkHistory, checkUnrecorded } from "./check-history";
import { checkLedgers } from "./check-ledgers";
import { checkLineage } from "./check-lineage";
import { checkPhotos } from "./check-photos";
import { checkFile, checkReferences, checkRules } from "./check-tables";
import { type Finding, fault, note, told, type VerifiedPart } from "./finding";

/** What verifying found, in the order in which it was looked at. */
export interface VerifyReport {
  readonly findings: readonly Finding[];
  readonly faults: number;
  readonly notes: number;
  /** what was looked at, with how much of it there was */
  readonly looked: readonly { readonly part: VerifiedPart; readonly of: string; readonly count: number | null }[];
}

type Looked = VerifyReport["looked"][number];

/**
 * Verifies a registry and writes nothing: the file, references, rules, ledgers, lineage, photos, history, release. A registry that an older release wrote
 * has its file checked alone: the rest is read by this release's tables, which it gets when it is next started.
 *
 * @param photos the folder of its photos
 * @param say told what is looked at, before it is
 */
export async function verifyRegistry(
  db: Database,
  photos: string,
  say: (what: string) => void = () => {},
): Promise<VerifyReport> {
  const findings: Finding[] = [];
  const looked: Looked[] = [];
  const part = async (
    name: VerifiedPart,
    of: string,
    work: () => Promise<Finding[] | { looked: number; findings: Finding[] }>,
  ) => {
    say(of);
    const found = await work().catch((error: unknown) => {
      const storage = storageFaultOf(error, db.location.url);
      if (storage) return [fault(name, storage.message)];
      // What is so damaged that it cannot even be looked at is a fault as well, and the rest is still looked through.
      const kind = error instanceof Error ? error.name : typeof error;
      return [fault(name, `Something in ${of} cannot be read as what it should be (${kind}); the look stopped there.`)];
    });
    const own = Array.isArray(found) ? found : found.findings;
    findings.push(...told(own));
    looked.push({ part: name, of, count: Array.isArray(found) ? null : found.looked });
    return own.length === 0;
  };
  let current = false;
  const readable = await part("file", "the registry's file", () => checkFile(db));
  if (readable)
    await part("release", "the release that wrote it", async () => {
      const found = await releaseFindings(db);
      current = found.length === 0;
      return found;
    });
  if (current) {
    await part("references", "references between records", () => checkReferences(db));
    await part("rules", "the rules of each table", () => checkRules(db));
    await part("ledgers", "ledger entries", () => checkLedgers(db));
    await part("lineage", "lots in the lineage", () => checkLineage(db));
    await part("photos", "photos", () => checkPhotos(db, photos));
    await part("history", "changes in the history", () => checkHistory(db));
    await part("history", "records without a history", async () =>
      checkUnrecorded(db, Object.keys(await rowCounts(db))),
    );
  }
  const faults = findings.filter((each) => each.severity === "fault").length;
  return { findings, looked, faults, notes: findings.length - faults };
}

async function releaseFindings(db: Database): Promise<Finding[]> {
  try {
    const { pending } = await migrationState(db);
    if (pending.length === 0) return [];
    return [
      note(
        "release",
        `An older release wrote this registry: ${pending.length} steps bring it up to this one when it is next started. Ledgers, lineage and history are looked at after that.`,
      ),
    ];
  } catch (error) {
    if (!(error instanceof MigrationRefused)) throw error;
    return [fault("release", error.message)];
  }
}
