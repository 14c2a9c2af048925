import { current } from "@/app/_session/current";
import { rowsAsCsv } from "@/app/varieties/csv/rows-as-csv";
import { listGrowOuts } from "@/lib/registry/grow-outs/list-grow-outs";
import { columns, csvUnits, growOutRow } from "../_list/grow-out-rows";

/** The grow-outs that the list's address leaves, in its order. */
export async function GET(request: Request): Promise<Response> {
  const { db } = await current();
  const variety = new URL(request.url).searchParams.get("variety") ?? undefined;
  const growOuts = await listGrowOuts(db, variety);
  return rowsAsCsv(request, "grow-outs", columns, growOuts.map(growOutRow), csvUnits);
}
