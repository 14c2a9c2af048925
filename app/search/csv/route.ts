import type { Column } from "@/components/tables";
import { find } from "@/lib/registry/search/find";
import { foundKinds } from "@/lib/registry/search/indexed-record";
import { current } from "../../_session/current";
import { rowsAsCsv } from "../../varieties/csv/rows-as-csv";
import { foundLine } from "../_words/found-words";

const columns: readonly Column[] = [
  { key: "kind", name: "Kind", kind: "words" },
  { key: "name", name: "Name", kind: "words" },
  { key: "of", name: "Of", kind: "words" },
  { key: "found", name: "Found in", kind: "words" },
];

/** So many finds go into a file; a search that finds more finds nothing. */
const most = 20_000;

/** All that is found by the words of the address (`q`), of one kind where it names one, the best first. */
export async function GET(request: Request): Promise<Response> {
  const { db } = await current();
  const asked = new URL(request.url).searchParams;
  const kind = foundKinds.find((each) => each === asked.get("kind"));
  const { found } = await find(db, (asked.get("q") ?? "").slice(0, 200), most, kind);
  const rows = found.map(foundLine).map(({ key, kind: of, title, of: belongs, found: words }) => ({
    id: key,
    cells: { kind: of, name: title, of: belongs ?? "", found: words ?? "" },
  }));
  return rowsAsCsv(request, "found", columns, rows);
}
