import { Readable } from "node:stream";
import type { ReadableStream } from "node:stream/web";
import { current } from "@/app/_session/current";
import { refusalSentence } from "@/lib/display/refusals";
import { photoHasCome } from "@/lib/registry/field/take-again";
import { receivePhoto } from "@/lib/registry/photos/arriving";
import { mostBytesSent } from "@/lib/registry/photos/photo-limits";

const statusOf: Readonly<Record<string, number>> = {
  ...{ "not-a-hash": 400, "not-whole": 400, "cut-off": 400, "photo-too-large": 413 },
  ...{ "disk-full": 507, "not-writable": 503, "disk-fault": 503, "held-by-another": 503 },
};

/**
 * Takes a picture from a phone: the file as the phone has it is the body, its SHA-256 stands in the address (`?sha256=`). Answers what is stored of it;
 * sent again, it answers the same. A phone keeps a picture until it is answered 200; 400, 503 and 507 are worth another try, other refusals are for good.
 */
export async function POST(request: Request): Promise<Response> {
  const { db, actor } = await current("record-in-field");
  const sent = new URL(request.url).searchParams.get("sha256") ?? "";
  if (Number(request.headers.get("content-length") ?? 0) > mostBytesSent)
    return Response.json({ sent, refused: "The picture is over 30 MB; make it smaller first." }, { status: 413 });
  if (!request.body) return Response.json({ sent, refused: "Nothing was sent." }, { status: 400 });
  const body = Readable.fromWeb(request.body as unknown as ReadableStream);
  const received = await receivePhoto(db, sent, body);
  if (received.ok) {
    await photoHasCome(db, actor, sent, new Date());
    return Response.json({ sent, ...received.value });
  }
  const [first] = received.refusals;
  const refused = received.refusals.map(refusalSentence).join(" ");
  return Response.json({ sent, refused }, { status: statusOf[first?.code ?? ""] ?? 422 });
}
