import { isShared } from "@/app/_session/shared";
import { siteOf } from "@/app/_session/site-of";
import { answerPasskey } from "@/lib/registry/accounts/answer-passkey";
import { ownRegistry } from "@/lib/registry/open-registry";

/** The steps of adding a passkey and of signing in with one, which the browser takes by itself. Nothing else of the sign-in library is reached from here. */
async function answer(request: Request): Promise<Response> {
  if (!isShared()) return new Response("There is nothing to sign into here.\n", { status: 404 });
  const site = siteOf(request.headers);
  if (request.method !== "GET" && request.headers.get("origin") !== site.origin)
    return new Response("This was sent from another place than this registry's own pages.\n", { status: 403 });
  return answerPasskey(await ownRegistry(), site, request);
}

export { answer as GET, answer as POST };
