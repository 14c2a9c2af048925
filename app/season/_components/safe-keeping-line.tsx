import Link from "next/link";
import { ownRegistry } from "@/lib/registry/open-registry";
import { type HealthConcern, readHealth } from "@/lib/registry/safe-keeping/health";

const lines: readonly [HealthConcern, string][] = [
  ["space-out", "The disk is full, so nothing more can be stored"],
  ["backup-old", "The last backup is more than two days old"],
  ["backup-failed", "The last backup came to nothing"],
  ["space-low", "Space for the registry is getting low"],
];

/** One calm line where the registry is not well kept; nothing where it is. */
export async function SafeKeepingLine() {
  const { concerns } = await readHealth(await ownRegistry(), new Date());
  const line = lines.find(([concern]) => concerns.includes(concern));
  if (!line) return null;
  return (
    <p className="quiet not-on-paper">
      {line[1]}: <Link href="/safe-keeping">what to do</Link>.
    </p>
  );
}
