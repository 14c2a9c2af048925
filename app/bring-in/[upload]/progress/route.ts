import { importProgress } from "@/lib/exchange/bring-in/progress";

/** How many records of an import have been written so far. */
export async function GET(_request: Request, { params }: { params: Promise<{ upload: string }> }): Promise<Response> {
  return Response.json(
    { written: importProgress((await params).upload) },
    { headers: { "cache-control": "no-store" } },
  );
}
