import { current } from "@/app/_session/current";
import { findingsCsv } from "@/lib/exchange/bring-in/findings-csv";
import { checkFolder } from "@/lib/exchange/bring-in/import-folder";
import { uploadedFiles } from "@/lib/exchange/bring-in/uploads";

/** The faults and warnings of an upload as a table for a spreadsheet. */
export async function GET(_request: Request, { params }: { params: Promise<{ upload: string }> }): Promise<Response> {
  const { db } = await current("import");
  const files = await uploadedFiles(db.location.folder, (await params).upload);
  if (!files?.ok) return new Response("These files are no longer here.", { status: 404 });
  const { faults, warnings } = await checkFolder(db, files.value);
  return new Response(findingsCsv([...faults, ...warnings]), {
    headers: { "content-type": "text/csv; charset=utf-8", "content-disposition": 'attachment; filename="faults.csv"' },
  });
}
