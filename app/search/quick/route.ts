import { current } from "@/app/_session/current";
import { find } from "@/lib/registry/search/find";
import { foundLine } from "../_words/found-words";

const most = 8;

/** A few finds as one types: `{total, lines}`. Names, codes, numbers, stories and notes; the beginnings of words are enough. */
export async function GET(request: Request): Promise<Response> {
  const { db } = await current();
  const written = (new URL(request.url).searchParams.get("q") ?? "").slice(0, 200);
  const { total, found } = await find(db, written, most);
  return Response.json({ total, lines: found.map(foundLine) }, { headers: { "cache-control": "no-store" } });
}
