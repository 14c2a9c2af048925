import { current } from "@/app/_session/current";
import { refusalSentence } from "@/lib/display/refusals";
import { receiveFieldRecords } from "@/lib/registry/field/receive-field-records";
import { fieldDelivery } from "@/lib/schemas/field/field-delivery";

/** Two hundred records with the longest words that they may have. */
const mostBytes = 2 * 1024 * 1024;
/** So many heaps are taken in at once; a phone that is told to wait sends again. */
const mostAtOnce = 6;
let takenIn = 0;

/**
 * Takes in a heap of records from a phone and answers what became of each. 400: no heap; 401: nobody is signed in (answered before it comes here);
 * 413: too big, send fewer; 429: too many at once; 503: the registry cannot store now. Whatever is not answered by name is sent again.
 */
export async function POST(request: Request): Promise<Response> {
  const { db, actor } = await current("record-in-field");
  if (takenIn >= mostAtOnce) return words(429, "Too many phones are sending at once. This one tries again by itself.");
  takenIn += 1;
  try {
    const text = await textOf(request);
    if (text === null) return words(413, "This is more than can be taken in at once. Send fewer records.");
    const delivery = fieldDelivery.safeParse(parsed(text));
    if (!delivery.success) return words(400, "This is no heap of records from the field.");
    const taken = await receiveFieldRecords(db, actor, delivery.data, new Date());
    if (taken.ok) return Response.json(taken.value, { headers });
    const said = taken.refusals.map(refusalSentence).join(" ");
    return words(taken.refusals.some(({ code }) => code === "not-allowed") ? 403 : 503, said);
  } finally {
    takenIn -= 1;
  }
}

const headers = { "cache-control": "no-store" };

function words(status: number, said: string): Response {
  return Response.json({ words: said }, { status, headers });
}

/** The text that was sent; null where it is too long, whatever its length was said to be. */
async function textOf(request: Request): Promise<string | null> {
  if (Number(request.headers.get("content-length") ?? 0) > mostBytes || !request.body) return null;
  const pieces: Uint8Array[] = [];
  let length = 0;
  for await (const piece of request.body as unknown as AsyncIterable<Uint8Array>) {
    length += piece.length;
    if (length > mostBytes) return null;
    pieces.push(piece);
  }
  return new TextDecoder().decode(Buffer.concat(pieces));
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}
