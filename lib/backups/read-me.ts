import { photosFolder, plainFilesFolder, registryFile } from "@/lib/registry/safe-keeping/places";
import type { Manifest } from "@/lib/schemas/backups/manifest";

/** What stands in READ-ME.txt of a backup: what it is, in words that need no program to be read. */
export function readMe({ at, release, wholeRegistry }: Pick<Manifest, "at" | "release" | "wholeRegistry">): string {
  const registry = wholeRegistry
    ? `${registryFile}   the whole registry with its history, one SQLite file`
    : "(the database itself is not in it: it is kept by the PostgreSQL server, whose own dump has to be kept as well)";
  const back = wholeRegistry
    ? "To bring it back: npm run restore -- and the path of this folder."
    : `To bring its records into an empty registry: npm run import -- and the path of ${plainFilesFolder}.`;
  return `A backup of a Kinrow registry, made ${at} (UTC) by release ${release}.

In it:
  ${registry}
  ${plainFilesFolder}/   every record as plain CSV files, to be read by any spreadsheet; figures and history are not in them
  ${photosFolder}/   the photos, each named by the SHA-256 hash of its bytes
  manifest.json   what each file has to be: its length and its SHA-256 hash

It holds names and contacts of people, and what proves who they are: keep it where only you can read it.
Not in it: the demonstration, the keys and certificate by which this machine is known to others, and the program itself.

${back}
`;
}
