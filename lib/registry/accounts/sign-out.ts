import type { Database } from "@/lib/db";
import { authOf } from "./auth";
import { type CookiesToSet, cookiesOf } from "./cookies-to-set";
import type { Site } from "./site";

/** Ends the session of this device. */
export async function signOut(db: Database, site: Site, headers: Headers): Promise<CookiesToSet> {
  const answer = await authOf(db, site).api.signOut({ headers, returnHeaders: true });
  return cookiesOf(answer.headers);
}
