import { current } from "@/app/_session/current";
import { readVariety } from "@/lib/registry/varieties/read-variety";
import { rowsAsCsv } from "../../../csv/rows-as-csv";
import { columns, rowsOf } from "../_words/rows";

/** What each lot of a variety keeps, as the table's address leaves it: shares 0 to 1, sizes in plants; a span has no single number. */
export async function GET(request: Request, { params }: { params: Promise<{ id: string }> }): Promise<Response> {
  const { db, settings, today } = await current();
  const read = await readVariety(db, (await params).id, settings, today);
  if (!read) return new Response(null, { status: 404 });
  return rowsAsCsv(request, "diversity", columns, rowsOf(read), { own: "share", foreign: "share", size: "plants" });
}
