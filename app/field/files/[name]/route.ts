import { fieldFile, fieldFiles } from "../../_components/field-files";

const kinds: Readonly<Record<string, string>> = {
  js: "text/javascript; charset=utf-8",
  css: "text/css; charset=utf-8",
  woff2: "font/woff2",
};

const yearInSeconds = 31_536_000;

/** A file of the field's document, for ever the same under its name; or `list`: the names of all, by which a phone keeps them. */
export async function GET(_request: Request, { params }: { params: Promise<{ name: string }> }): Promise<Response> {
  const { name } = await params;
  if (name === "list") return Response.json(await fieldFiles(), { headers: { "cache-control": "no-cache" } });
  const file = await fieldFile(name);
  if (file === null) return new Response("There is no such file of the field.\n", { status: 404 });
  // packed for the way by the server, as everything else
  return new Response(file, {
    headers: {
      "content-type": kinds[name.split(".").at(-1) ?? ""] ?? "application/octet-stream",
      "cache-control": `public, max-age=${yearInSeconds}, immutable`,
    },
  });
}
