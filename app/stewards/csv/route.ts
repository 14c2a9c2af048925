import { current } from "@/app/_session/current";
import { rowsAsCsv } from "@/app/varieties/csv/rows-as-csv";
import { listStewards } from "@/lib/registry/stewards/list-stewards";
import { columns, stewardRow } from "../_words/steward-rows";

/** The stewards that the list's address leaves, in its order. */
export async function GET(request: Request): Promise<Response> {
  const { db } = await current();
  const stewards = await listStewards(db);
  return rowsAsCsv(
    request,
    "stewards",
    columns,
    stewards.map((steward) => stewardRow(steward, false)),
  );
}
