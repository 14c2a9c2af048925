import { gzipSync } from "node:zlib";
import { fieldFile, fieldFiles } from "../../_components/field-files";

const kinds: Readonly<Record<string, string>> = {
  js: "text/javascript; charset=utf-8",
  css: "text/css; charset=utf-8",
  woff2: "font/woff2",
};

const yearInSeconds = 31_536_000;

/** A file of the field's document, for ever the same under its name; or `list`: the names of all, by which a phone keeps them. */
export async function GET(request: Request, { params }: { params: Promise<{ name: string }> }): Promise<Response> {
  const { name } = await params;
  if (name === "list") return Response.json(await fieldFiles(), { headers: { "cache-control": "no-cache" } });
  const file = await fieldFile(name);
  if (file === null) return new Response("There is no such file of the field.\n", { status: 404 });
  const kind = name.split(".").at(-1) ?? "";
  const headers = new Headers({
    "content-type": kinds[kind] ?? "application/octet-stream",
    "cache-control": `public, max-age=${yearInSeconds}, immutable`,
    vary: "accept-encoding",
  });
  const packs = kind !== "woff2" && /\bgzip\b/.test(request.headers.get("accept-encoding") ?? "");
  if (packs) headers.set("content-encoding", "gzip");
  return new Response(packs ? new Uint8Array(gzipSync(file, { level: 9 })) : file, { headers });
}
