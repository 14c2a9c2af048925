import type { Database } from "@/lib/db";
import { authOf } from "./auth";
import { passkeyName, type Site } from "./site";
import { tryOnce } from "./tries";

const steps: Readonly<Record<string, readonly string[]>> = {
  GET: ["generate-register-options", "generate-authenticate-options"],
  POST: ["verify-registration", "verify-authentication"],
};

/** Answers a browser's step with a passkey. A passkey that is held out counts as a try of its device. */
export async function answerPasskey(db: Database, site: Site, request: Request): Promise<Response> {
  const step = new URL(request.url).pathname.match(/^\/api\/auth\/passkey\/([a-z-]+)$/)?.[1] ?? "";
  if (!steps[request.method]?.includes(step)) return new Response("This is no step of a sign-in.\n", { status: 404 });
  if (passkeyName(site) === null)
    return Response.json({ code: "NO_NAME", message: "Passkeys need a name in the address" }, { status: 400 });
  if (step === "verify-authentication") {
    const tried = await tryOnce(db, site, null);
    if (!tried.ok) return Response.json({ message: tried.refusals[0]?.sentence }, { status: 429 });
  }
  const url = new URL(new URL(request.url).pathname + new URL(request.url).search, site.origin);
  return authOf(db, site).handler(new Request(url, request));
}
