import { lotsAskedFor } from "@/lib/registry/lots/list-lots";
import { LotListQuerySchema } from "@/lib/schemas/lots/list-query";
import { current } from "../../_session/current";
import { lotsCsv, lotsTableSchema } from "./lots-csv";

/**
 * The lots that the list's address asks for, all parts of it, in its order and with its columns, as CSV; with `schema` in the address what
 * the columns mean (a Table Schema, JSON).
 */
export async function GET(request: Request): Promise<Response> {
  const { db, settings } = await current();
  const asked = new URL(request.url).searchParams;
  const query = LotListQuerySchema.parse(Object.fromEntries(asked));
  if (asked.has("schema")) {
    return Response.json(lotsTableSchema(query.columns), {
      headers: { "content-disposition": 'attachment; filename="lots.schema.json"' },
    });
  }
  const rows = await lotsAskedFor(db, query, settings);
  return new Response(lotsCsv(rows, query.columns), {
    headers: {
      "content-type": "text/csv; charset=utf-8",
      "content-disposition": 'attachment; filename="lots.csv"',
    },
  });
}
