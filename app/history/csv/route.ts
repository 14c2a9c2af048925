import { current } from "@/app/_session/current";
import { listChangeSets } from "@/lib/registry/history/list-change-sets";
import { readHistoryAddress } from "../_words/history-filter";
import { historyCsv } from "./history-csv";

/** The change sets that the page's address leaves, all parts. */
export async function GET(request: Request): Promise<Response> {
  const { db } = await current("history");
  const { filter } = readHistoryAddress(Object.fromEntries(new URL(request.url).searchParams));
  const { sets } = await listChangeSets(db, filter, null);
  return new Response(historyCsv(sets), {
    headers: {
      "content-type": "text/csv; charset=utf-8",
      "content-disposition": 'attachment; filename="history.csv"',
    },
  });
}
