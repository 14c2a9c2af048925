import "server-only";
import { cookies } from "next/headers";
import type { CookiesToSet } from "@/lib/registry/accounts/cookies-to-set";

/** Gives the browser the cookies of an answer. */
export async function setCookies(given: CookiesToSet): Promise<void> {
  const jar = await cookies();
  for (const { name, value, options } of given.cookies) jar.set(name, value, options);
}
