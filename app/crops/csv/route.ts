import { current } from "@/app/_session/current";
import { rowsAsCsv } from "@/app/varieties/csv/rows-as-csv";
import { listCrops } from "@/lib/registry/crops/list-crops";
import { columns, cropRow } from "../_words/crop-rows";

/** The crops that the list's address leaves, in its order. */
export async function GET(request: Request): Promise<Response> {
  const { db } = await current();
  return rowsAsCsv(request, "crops", columns, (await listCrops(db)).map(cropRow));
}
