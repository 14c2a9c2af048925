import { readFile } from "node:fs/promises";
import path from "node:path";
import type { Database } from "@/lib/registry/handles";
import type { FurtherRow, FurtherTable } from "@/lib/registry/notebook/further/further-table";
import { bytesOfPhoto, keepPhotoFile } from "@/lib/registry/photos/keep-file";
import { mostBytesSent } from "@/lib/registry/photos/photo-limits";
import { hashOfPhotoPath, pathInFolder } from "@/lib/registry/photos/photo-place";
import { keptOrReEncoded } from "@/lib/registry/photos/stored-elsewhere";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { type Finding, Findings } from "../notebook-folder/finding";

/** Where the files of pictures are found, by the path that photos.csv gives; null where there is none. */
export type PictureSource = (file: string) => Promise<Uint8Array | null>;

/** Among the files that came together. */
export function picturesAmong(files: ReadonlyMap<string, Uint8Array>): PictureSource {
  return async (file) => files.get(file) ?? null;
}

/** In a folder on the disk, or beside it: a backup has its plain files and its photos side by side. */
export function picturesIn(folder: string): PictureSource {
  return async (file) => {
    const inside = path.normalize(file);
    if (path.isAbsolute(inside) || inside.startsWith("..")) return null;
    for (const place of [folder, path.dirname(path.resolve(folder))]) {
      const found = await readFile(path.join(place, inside)).catch(() => null);
      if (found) return Uint8Array.from(found);
    }
    return null;
  };
}

export const picturesFile = "photos.csv";

export interface PicturesOfFolder {
  /** photos.csv with each file by the name under which it is stored here, and its measures */
  readonly table: FurtherTable;
  readonly faults: readonly Finding[];
  readonly warnings: readonly Finding[];
}

/**
 * Reads the pictures that photos.csv names: each is kept or made into what is stored here, and put into its place where `keep` says so. A picture
 * that was stored by a registry and is not in the folder gets a warning: its row comes in, and its file may follow. Any other that is missing is a fault.
 */
export async function picturesOfFolder(
  { location }: Pick<Database, "location">,
  table: FurtherTable,
  source: PictureSource,
  keep: boolean,
): Promise<PicturesOfFolder> {
  const findings = new Findings();
  const known = new Map<string, Outcome<Cells>>();
  const rows: FurtherRow[] = [];
  for (const row of table.rows) {
    const file = (row.cells.file ?? "").trim();
    const spot = { file: picturesFile, line: row.line ?? null, column: "file" };
    let read = known.get(file);
    if (read === undefined) {
      read = file === "" ? accepted({}) : await pictureOf({ location }, file, row, source, keep);
      known.set(file, read);
    }
    if (!read.ok) for (const each of read.refusals) findings.fault(spot, each);
    else if (read.value.file === undefined && file !== "")
      findings.warn(
        spot,
        "picture-missing",
        `"${file}" is not in the folder; its page says so until the file is there`,
      );
    rows.push({ ...row, cells: { ...row.cells, ...(read.ok ? read.value : toldAlready) } });
  }
  return { table: { ...table, rows }, ...findings.sorted() };
}

type Cells = Readonly<Record<string, string>>;

/** In the place of a picture that is refused, so that its row is looked at for nothing but its other cells. */
const toldAlready: Cells = { file: pathInFolder("0".repeat(64)), width: "1", height: "1", bytes: "1" };

/** The cells that a picture itself gives; none where only its row is there. */
async function pictureOf(
  { location }: Pick<Database, "location">,
  file: string,
  { cells }: FurtherRow,
  source: PictureSource,
  keep: boolean,
): Promise<Outcome<Cells>> {
  const named = hashOfPhotoPath(file);
  const bytes = (await source(file)) ?? (named ? await storedHere({ location }, named) : null);
  if (bytes === null) {
    if (named !== null && [cells.width, cells.height, cells.bytes].every((cell) => cell)) return accepted({});
    return refused(refusal("picture-missing", [], file, "is not in the folder", "put it there, or take the row out"));
  }
  if (bytes.length > mostBytesSent)
    return refused(refusal("photo-too-large", [], file, "is over 30 MB", "make it smaller first"));
  const made = await keptOrReEncoded(bytes, file);
  if (!made.ok) return made;
  if (keep) await keepPhotoFile(location, made.value);
  const { hash, width, height } = made.value;
  const measures = { width: String(width), height: String(height), bytes: String(made.value.bytes) };
  return accepted({ file: pathInFolder(hash), ...measures });
}

async function storedHere({ location }: Pick<Database, "location">, hash: string): Promise<Uint8Array | null> {
  const stored = await bytesOfPhoto(location, hash);
  return stored.state === "whole" ? stored.bytes : null;
}
