import type { Database } from "@/lib/registry/handles";
import { bytesOfPhoto } from "@/lib/registry/photos/keep-file";
import { pathInFolder } from "@/lib/registry/photos/photo-place";
import type { LateFile } from "../archive/write-archive";

/** The pictures that photos.csv names, each once, and how many bytes they have together. */
export async function picturesOut(db: Database): Promise<{ pictures: readonly LateFile[]; bytes: number }> {
  const rows = await db.read.photo.findMany({
    select: { hash: true, bytes: true },
    distinct: ["hash"],
    orderBy: { hash: "asc" },
  });
  const pictures = rows.map(({ hash }) => ({
    path: pathInFolder(hash),
    read: async () => {
      const stored = await bytesOfPhoto(db.location, hash);
      return stored.state === "whole" ? stored.bytes : null;
    },
  }));
  return { pictures, bytes: rows.reduce((sum, row) => sum + row.bytes, 0) };
}
