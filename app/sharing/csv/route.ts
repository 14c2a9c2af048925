import { current } from "@/app/_session/current";
import { readSharing } from "@/lib/registry/transfers/read-sharing";
import { transfersCsv } from "../_list/sharing-csv";

export async function GET(): Promise<Response> {
  const { db, settings, today } = await current("desk");
  return new Response(transfersCsv(await readSharing(db, settings, today)), {
    headers: {
      "content-type": "text/csv; charset=utf-8",
      "content-disposition": 'attachment; filename="transfers.csv"',
    },
  });
}
