import { current } from "@/app/_session/current";
import { metricUnits } from "@/lib/display/units";
import { listVarieties } from "@/lib/registry/varieties/list-varieties";
import { columns, csvUnits, varietyRow } from "../_list/variety-rows";
import { rowsAsCsv } from "./rows-as-csv";

/** The varieties that the list's address leaves, in its order: grams, shares 0 to 1, places of confirmed holders. */
export async function GET(request: Request): Promise<Response> {
  const { db, settings, today } = await current();
  const varieties = await listVarieties(db, settings, today);
  const rows = varieties.map((row) => varietyRow(row, settings.renewalPlan, metricUnits));
  return rowsAsCsv(request, "varieties", columns, rows, csvUnits);
}
