import { current } from "@/app/_session/current";
import { readFieldPack } from "@/lib/registry/field/read-field-pack";

/** What a phone takes to the field of a grow-out, made anew each time it is asked for. */
export async function GET(_request: Request, { params }: { params: Promise<{ growOut: string }> }): Promise<Response> {
  const { db, actor, settings, today } = await current("record-in-field");
  const { growOut } = await params;
  const pack = await readFieldPack(db, actor, growOut, new Date(), { settings, today });
  const headers = { "cache-control": "no-store" };
  if (!pack) return Response.json({ words: "This grow-out is not in the registry." }, { status: 404, headers });
  return Response.json(pack, { headers });
}
