/** The request header in which the server's first look (proxy.ts) writes down what was asked for. */
export const pathHeader = "x-kinrow-path";

/** The address of the sign-in page that leads back to where somebody was. */
export function signInAddress(path: string | null): string {
  const back = wayBack(path);
  return back === "/" ? "/sign-in" : `/sign-in?then=${encodeURIComponent(back)}`;
}

/** A path of ours to go on to; anything that could lead elsewhere is "/". */
export function wayBack(path: string | null | undefined): string {
  if (!path?.startsWith("/") || path.startsWith("//") || /[\\\p{Cc}]/u.test(path)) return "/";
  const url = new URL(path, "http://kinrow");
  // Only now are dots taken out of a path: "/.//elsewhere" was none of its own and has become one.
  if (url.host !== "kinrow" || url.pathname.startsWith("//") || url.pathname === "/sign-in") return "/";
  // what the framework adds to an address for itself
  url.searchParams.delete("_rsc");
  return `${url.pathname}${url.search}`;
}
