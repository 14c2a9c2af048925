import { type NextRequest, NextResponse } from "next/server";
import { contentPolicy, newNonce, policyHeader } from "@/app/_session/content-policy";
import { isOurHost, isShared } from "@/app/_session/shared";
import { siteOf } from "@/app/_session/site-of";
import { pathHeader, signInAddress } from "@/app/_session/way-back";
import { isOpenRoute } from "@/lib/access/open-routes";

/** The first look at every request, and the policy of what its answer may load and run. */
export async function proxy(request: NextRequest): Promise<NextResponse> {
  const policy = contentPolicy(newNonce());
  const answer = await firstLook(request, policy);
  answer.headers.set(policyHeader, policy);
  return answer;
}

/**
 * Under a name that is not ours nothing is answered; where the registry is opened to others, who has not signed in gets no further. Every page
 * and operation asks for itself once more (app/_session/current.ts, lib/registry/change-set/perform.ts).
 */
async function firstLook(request: NextRequest, policy: string): Promise<NextResponse> {
  if (!isOurHost(request.headers.get("host"))) {
    const words = "This machine goes by another name here. Ask whoever opened the registry for its address.\n";
    return new NextResponse(words, { status: 421, headers: { "content-type": "text/plain; charset=utf-8" } });
  }
  if (isFromElsewhere(request)) {
    const words = "This was sent from another place than this registry's own pages.\n";
    return new NextResponse(words, { status: 403, headers: { "content-type": "text/plain; charset=utf-8" } });
  }
  const { pathname, search } = request.nextUrl;
  const headers = new Headers(request.headers);
  headers.set(policyHeader, policy);
  if (isShared()) headers.set(pathHeader, pathname + search);
  const on = NextResponse.next({ request: { headers } });
  if (!isShared()) return on;
  if (isOpenRoute(pathname) || (await isSignedIn(request)) || isForm(request)) return on;
  if (isPage(request))
    return NextResponse.redirect(new URL(signInAddress(pathname + search), siteOf(request.headers).origin));
  const words = "You are not signed in (any more). Sign in, then ask for this again.\n";
  return new NextResponse(words, { status: 401, headers: { "content-type": "text/plain; charset=utf-8" } });
}

/**
 * Asked for only where it is needed: alone on one machine the sign-in library is never loaded. Where the registry cannot answer, the page that is
 * asked for says so: it asks once more who it is, and shows nothing before it knows.
 */
async function isSignedIn(request: NextRequest): Promise<boolean> {
  const [{ sessionMember }, { ownRegistry }] = await Promise.all([
    import("@/lib/registry/accounts/session-member"),
    import("@/lib/registry/open-registry"),
  ]);
  try {
    return (await sessionMember(await ownRegistry(), siteOf(request.headers), request.headers)) !== null;
  } catch (error) {
    if (isPage(request)) return true;
    throw error;
  }
}

/** Something sent, and by a page that is not ours: a browser says which page it was. */
function isFromElsewhere(request: NextRequest): boolean {
  if (request.method === "GET" || request.method === "HEAD") return false;
  const origin = request.headers.get("origin");
  if (origin === null) return request.headers.get("sec-fetch-site") === "cross-site";
  return !URL.canParse(origin) || new URL(origin).host !== request.headers.get("host");
}

/** A form that is sent: its action asks who sends it, and leads to the sign-in page in a way that the page understands. */
function isForm(request: NextRequest): boolean {
  return request.method === "POST" && request.headers.has("next-action");
}

/**
 * A page that a browser goes to: not what a script or a program asks for. The framework's own asking within a page looks like a script here; when
 * it is refused, it goes there as a browser does.
 */
function isPage(request: NextRequest): boolean {
  if (request.method !== "GET" && request.method !== "HEAD") return false;
  return (request.headers.get("accept") ?? "").includes("text/html");
}

export const config = { matcher: "/((?!_next/static/).*)" };
