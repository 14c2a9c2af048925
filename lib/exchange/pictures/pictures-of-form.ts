import busboy from "@fastify/busboy";
import type { Database } from "@/lib/registry/handles";
import { receiveChosen } from "@/lib/registry/photos/arriving";
import { mostAtOnce, mostBytesSent } from "@/lib/registry/photos/photo-limits";
import type { PhotoFacts } from "@/lib/registry/photos/re-encode";
import { accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";

/** What a posted form with pictures holds: its texts, what is stored of each picture, and why others are not. */
export interface FormOfPictures {
  readonly texts: Readonly<Record<string, string>>;
  readonly pictures: readonly PhotoFacts[];
  readonly refusals: readonly Refusal[];
}

/** A text of such a form goes back in an address where it is refused. */
const longestText = 4000;

/**
 * Takes a posted form piece by piece: each picture goes into a file of its own and is made into what is stored (see reEncoded); one that is refused
 * holds up no other. Refused whole: what is no form with files, and one that was cut off.
 */
export async function picturesOfForm(
  db: Pick<Database, "location">,
  headers: Headers,
  body: NodeJS.ReadableStream,
): Promise<Outcome<FormOfPictures>> {
  body.on("error", () => {});
  const type = headers.get("content-type") ?? "";
  if (!type.startsWith("multipart/form-data"))
    return refused(refusal("not-a-form", ["photo"], type, "is no form with files", "use the form of this page"));
  const texts: Record<string, string> = {};
  const coming: Promise<Outcome<PhotoFacts>>[] = [];
  const refusals: Refusal[] = [];
  const parser = busboy({
    headers: { "content-type": type },
    limits: { files: mostAtOnce, fileSize: mostBytesSent, fields: 20, fieldSize: longestText },
  });
  parser.on("field", (name, value, _nameCut, valueCut) => {
    texts[name] = value;
    if (valueCut)
      refusals.push(refusal("too-long", [name], `${value.slice(0, 40)}…`, "is too long", "at most 4,000 letters"));
  });
  parser.on("file", (_field, stream, name) => {
    if (!name) stream.resume();
    else coming.push(receiveChosen(db, name, stream));
  });
  parser.on("filesLimit", () => {
    refusals.push(
      refusal("too-many", ["photo"], mostAtOnce, "pictures are what comes at once", "add the others after these"),
    );
  });
  const whole = await new Promise<boolean>((done) => {
    parser.on("finish", () => done(true));
    parser.on("error", () => done(false));
    body.on("error", () => done(false));
    body.on("close", () => {
      if (!(body as { readableEnded?: boolean }).readableEnded) done(false);
    });
    body.pipe(parser);
  });
  if (!whole) parser.destroy();
  const outcomes = await Promise.all(coming);
  if (!whole)
    return refused(refusal("cut-off", ["photo"], null, "arrived whole: the sending was cut off", "send it again"));
  const pictures = outcomes.flatMap((each) => (each.ok ? [each.value] : []));
  refusals.push(...outcomes.flatMap((each) => (each.ok ? [] : each.refusals)));
  return accepted({ texts, pictures, refusals });
}
