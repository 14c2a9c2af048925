import { Readable } from "node:stream";
import type { ReadableStream } from "node:stream/web";
import { revalidatePath } from "next/cache";
import { current } from "@/app/_session/current";
import { counted } from "@/lib/display/plurals";
import { refusalSentence } from "@/lib/display/refusals";
import { picturesOfForm } from "@/lib/exchange/pictures/pictures-of-form";
import { addPhotos } from "@/lib/registry/photos/add-photos";
import type { Refusal } from "@/lib/science/outcome";
import { pageOfSubject, subjectInAddress, subjectNamed } from "../_words/picture-words";

/** Takes the form of pictures: those that can be stored are, the others are told with why, and what was typed stands there again. */
export async function POST(request: Request): Promise<Response> {
  const { db, actor } = await current("picture");
  if (!request.body) return new Response("Nothing was sent.\n", { status: 400 });
  const read = await picturesOfForm(db, request.headers, Readable.fromWeb(request.body as unknown as ReadableStream));
  if (!read.ok) return new Response(`${said(read.refusals).join(" ")}\n`, { status: 400 });
  const { texts, pictures, refusals } = read.value;
  const subject = subjectNamed(texts);
  if (!subject) return new Response("This form names no record.\n", { status: 400 });
  const none = pictures.length === 0 && refusals.length > 0;
  const stored = none ? null : await addPhotos(db, actor, subject, texts, pictures);
  const faults = [...refusals, ...(stored && !stored.ok ? stored.refusals : [])];
  if (stored?.ok) revalidatePath("/", "layout");
  if (faults.length === 0) return seeOther(`${pageOfSubject(subject)}#pictures`);
  const again = new URLSearchParams(subjectInAddress(subject));
  for (const name of ["caption", "takenOn", "takenBy", "plant", "scale"]) if (texts[name]) again.set(name, texts[name]);
  if (stored?.ok) again.set("stored", counted(stored.value.value.photoIds.length, "picture"));
  for (const sentence of said(faults)) again.append("refused", sentence);
  return seeOther(`/pictures/new?${again}`);
}

function said(refusals: readonly Refusal[]): string[] {
  return refusals.map(refusalSentence);
}

function seeOther(location: string): Response {
  return new Response(null, { status: 303, headers: { location } });
}
