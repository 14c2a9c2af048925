import { current } from "@/app/_session/current";
import { may } from "@/lib/access/permissions";
import { writeArchive } from "@/lib/exchange/archive/write-archive";
import { exportFolder } from "@/lib/exchange/take-out/export-folder";

/** Everything as one zip. */
export async function GET(): Promise<Response> {
  const { db, actor, today } = await current("export");
  const allowed = may(actor, "export");
  if (!allowed.ok) return new Response(allowed.refusals[0]?.sentence, { status: 403 });
  const name = `kinrow-${today}`;
  return new Response(new Uint8Array(writeArchive(await exportFolder(db), name)), {
    headers: { "content-type": "application/zip", "content-disposition": `attachment; filename="${name}.zip"` },
  });
}
