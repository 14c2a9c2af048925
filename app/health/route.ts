import { ownRegistry } from "@/lib/registry/open-registry";
import { type Health, type HealthConcern, readHealth } from "@/lib/registry/safe-keeping/health";

/** With one of these nothing can be read or written. */
const failing: readonly HealthConcern[] = ["no-answer", "space-out"];
const known: readonly HealthConcern[] = ["one-disk", "database-apart", "no-backup-yet"];

/**
 * How the registry is kept, for a program that watches over it: 200 where it can be worked with, else 503. It names no place, no record and nobody.
 */
export async function GET(): Promise<Response> {
  const health = await ownRegistry()
    .then((db) => readHealth(db, new Date()))
    .catch(() => null);
  if (!health) return answer(503, { status: "failing", concerns: ["no-answer"] });
  const fails = health.concerns.some((concern) => failing.includes(concern));
  const heeds = health.concerns.some((concern) => !known.includes(concern));
  return answer(fails ? 503 : 200, { status: fails ? "failing" : heeds ? "attention" : "well", ...short(health) });
}

function short({ release, newest, nextAt, verified, freeForData, freeForBackups, concerns }: Health) {
  return {
    release,
    lastBackup: newest?.at ?? null,
    lastBackupSound: newest?.sound ?? null,
    nextBackup: nextAt,
    lastCheck: verified?.at ?? null,
    faults: verified?.faults ?? null,
    freeBytes: freeForData,
    freeBytesForBackups: freeForBackups,
    concerns,
  };
}

function answer(status: number, body: object): Response {
  return Response.json(body, { status, headers: { "cache-control": "no-store" } });
}

export const dynamic = "force-dynamic";
