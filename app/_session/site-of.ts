import type { Site } from "@/lib/registry/accounts/site";

/** Where a request comes in, by its headers. The server itself writes from where (scripts/serve.mjs). */
export function siteOf(headers: { get(name: string): string | null }): Site {
  return { origin: `https://${headers.get("host") ?? "localhost"}`, from: headers.get("x-forwarded-for") ?? "" };
}
