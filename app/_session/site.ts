import "server-only";
import { headers } from "next/headers";
import type { Site } from "@/lib/registry/accounts/site";
import { siteOf } from "./site-of";

/** Where the request of now comes in. */
export async function siteNow(): Promise<Site> {
  return siteOf(await headers());
}
