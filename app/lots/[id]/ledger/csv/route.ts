import { balanceOf } from "@/lib/registry/ledger/balance";
import { readHead } from "@/lib/registry/lots/read-head";
import { readLedger } from "@/lib/registry/lots/read-ledger";
import { current } from "../../../../_session/current";
import { ledgerCsv } from "./ledger-csv";

/** The ledger of a lot with its running balance, as CSV. */
export async function GET(_request: Request, { params }: { params: Promise<{ id: string }> }): Promise<Response> {
  const { db } = await current();
  const lot = await readHead(db.read, (await params).id);
  if (!lot) return new Response("There is no such lot.", { status: 404 });
  const balance = balanceOf(await readLedger(db, lot.id), lot.thousandSeedGrams);
  const name = encodeURIComponent(`ledger ${lot.number}.csv`);
  return new Response(ledgerCsv(balance), {
    headers: {
      "content-type": "text/csv; charset=utf-8",
      "content-disposition": `attachment; filename*=UTF-8''${name}`,
    },
  });
}
