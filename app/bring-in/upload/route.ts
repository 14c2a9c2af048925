import { Readable } from "node:stream";
import type { ReadableStream } from "node:stream/web";
import { current } from "@/app/_session/current";
import { may } from "@/lib/access/permissions";
import { refusalSentence } from "@/lib/display/refusals";
import { receiveUpload } from "@/lib/exchange/bring-in/uploads";

/** Takes the posted files as a stream into the data folder; answers with where to look at them. */
export async function POST(request: Request): Promise<Response> {
  const { db, actor } = await current("import");
  const asked = request.headers.get("accept")?.includes("application/json") ?? false;
  const allowed = may(actor, "import");
  const received =
    allowed.ok && request.body
      ? await receiveUpload(
          db.location.folder,
          request.headers,
          Readable.fromWeb(request.body as unknown as ReadableStream),
        )
      : allowed;
  if (received.ok && typeof received.value === "string") {
    return asked ? Response.json({ upload: received.value }) : seeOther(`/bring-in/${received.value}`);
  }
  const refused = received.ok ? "Nothing was sent." : received.refusals.map(refusalSentence).join(" ");
  return asked ? Response.json({ refused }) : seeOther(`/bring-in?refused=${encodeURIComponent(refused)}`);
}

function seeOther(location: string): Response {
  return new Response(null, { status: 303, headers: { location } });
}
