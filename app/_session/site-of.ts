import type { Site } from "@/lib/registry/accounts/site";

/**
 * Where a request comes in, by its headers. The server itself writes from where, and under which name (scripts/serve.mjs): where an action leads
 * on, the framework asks for the page under the inner door's name.
 */
export function siteOf(headers: { get(name: string): string | null }): Site {
  const host = headers.get("x-forwarded-host") ?? headers.get("host") ?? "localhost";
  return { origin: `https://${host}`, from: headers.get("x-forwarded-for") ?? "" };
}
