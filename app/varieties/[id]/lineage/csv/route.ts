import { stringify } from "csv-stringify/sync";
import { current } from "@/app/_session/current";
import { followed, kinOf } from "@/components/stem-chart/trace";
import { readLineage } from "@/lib/registry/lineage/read-lineage";
import { kindInWords } from "../_words/cards";
import { treeOf } from "../_words/tree";
import { whenInWords } from "../_words/when";

/** All that came of a lot, with who holds it and what they still have in grams; an unknown is empty. */
export async function GET(request: Request, { params }: { params: Promise<{ id: string }> }): Promise<Response> {
  const { db } = await current();
  const read = await readLineage(db, (await params).id);
  const lotId = new URL(request.url).searchParams.get("lot") ?? "";
  const lot = read?.lots.find(({ id }) => id === lotId);
  if (!read || !lot) return new Response("There is no such lot in this lineage.\n", { status: 404 });
  const reached = followed(lot.id, kinOf(treeOf(read)).children);
  const numbers = new Map(read.lots.map(({ id, number }) => [id, number]));
  const people = new Map(read.stewards.map((steward) => [steward.id, steward]));
  const rows = read.lots
    .filter(({ id }) => id !== lot.id && reached.has(id))
    .map((each) => {
      const holder = each.holderId === null ? undefined : people.get(each.holderId);
      return [
        each.number,
        each.variety,
        each.kind,
        whenInWords(each),
        kindInWords(each, numbers),
        holder?.name ?? "",
        holder?.place ?? "",
        each.gramsOnHand ?? "",
        each.status ?? "",
      ];
    });
  const head = ["lot", "variety", "kind", "when", "how_it_came", "holder", "place", "on_hand_g", "status"];
  // Text that a spreadsheet would run as a formula is marked with an apostrophe.
  const text = stringify([head, ...rows], { record_delimiter: "\r\n", escape_formulas: true });
  return new Response(text, {
    headers: {
      "content-type": "text/csv; charset=utf-8",
      "content-disposition":
        `attachment; filename="came-of-${lot.number.replace(/[^\p{L}\p{N}]+/gu, "-")}.csv"`.replace(
          /[^\x20-\x7e]/g,
          "_",
        ),
    },
  });
}
