import { current } from "@/app/_session/current";
import { bytesOfPhoto } from "@/lib/registry/photos/keep-file";
import { isPhotoHash } from "@/lib/registry/photos/photo-place";
import { seesPhoto } from "@/lib/registry/photos/read-photo";

// The bytes under a hash never change, but who may see them can: a browser keeps them and asks each time.
const always = {
  "cache-control": "private, no-cache",
  "x-content-type-options": "nosniff",
  "cross-origin-resource-policy": "same-origin",
};

/** A stored picture, for who may see a record that has it. One that is not there and one that is not to be seen are answered alike. */
export async function GET(request: Request, { params }: { params: Promise<{ hash: string }> }): Promise<Response> {
  const { db } = await current();
  const { hash } = await params;
  if (!isPhotoHash(hash) || !(await seesPhoto(db, hash))) return none("There is no such picture here.\n");
  const tag = `"${hash}"`;
  if (request.headers.get("if-none-match") === tag)
    return new Response(null, { status: 304, headers: { ...always, etag: tag } });
  const stored = await bytesOfPhoto(db.location, hash);
  if (stored.state !== "whole")
    return none(
      `The file of this picture is ${stored.state === "gone" ? "not in its place" : "not what was stored"}.\n`,
    );
  return new Response(new Uint8Array(stored.bytes), {
    headers: {
      ...always,
      "content-type": "image/jpeg",
      "content-length": String(stored.bytes.length),
      "content-disposition": `inline; filename="${hash.slice(0, 12)}.jpg"`,
      etag: tag,
    },
  });
}

function none(words: string): Response {
  return new Response(words, { status: 404, headers: { ...always, "content-type": "text/plain; charset=utf-8" } });
}
