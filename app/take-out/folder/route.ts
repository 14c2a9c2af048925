import { current } from "@/app/_session/current";
import { may } from "@/lib/access/permissions";
import { bytesInWords } from "@/lib/display/numbers";
import { MOST_IN_ARCHIVE, writeArchive } from "@/lib/exchange/archive/write-archive";
import { exportFolder } from "@/lib/exchange/take-out/export-folder";
import { picturesOut } from "@/lib/exchange/take-out/pictures-out";

/** Everything as one zip: the records as plain files, and the pictures, sent one after another. */
export async function GET(): Promise<Response> {
  const { db, actor, today } = await current("export");
  const allowed = may(actor, "export");
  if (!allowed.ok) return new Response(allowed.refusals[0]?.sentence, { status: 403 });
  const { pictures, bytes } = await picturesOut(db);
  if (bytes > MOST_IN_ARCHIVE) {
    const words = `The pictures are ${bytesInWords(bytes)}, more than one zip can hold. Take everything out into a folder: npm run export -- FOLDER\n`;
    return new Response(words, { status: 413, headers: { "content-type": "text/plain; charset=utf-8" } });
  }
  const name = `kinrow-${today}`;
  return new Response(writeArchive(await exportFolder(db), pictures, name), {
    headers: { "content-type": "application/zip", "content-disposition": `attachment; filename="${name}.zip"` },
  });
}
