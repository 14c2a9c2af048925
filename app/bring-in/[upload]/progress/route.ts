import { importProgress } from "@/lib/exchange/bring-in/progress";
import { current } from "../../../_session/current";

/** How many records of an import have been written so far. */
export async function GET(_request: Request, { params }: { params: Promise<{ upload: string }> }): Promise<Response> {
  await current("import");
  return Response.json(
    { written: importProgress((await params).upload) },
    { headers: { "cache-control": "no-store" } },
  );
}
