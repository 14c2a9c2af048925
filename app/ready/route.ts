import { isShared } from "@/app/_session/shared";
import type { Database } from "@/lib/registry/handles";
import { ownRegistry } from "@/lib/registry/open-registry";

/**
 * Opens the registry (bringing it up to this release) and says so; the start command waits for this. "no owner": it is to be opened to others
 * and nobody can sign in yet, so that the start command asks for an owner first.
 */
export async function GET(): Promise<Response> {
  try {
    const db = await ownRegistry();
    const text = isShared() && !(await ownerIsIn(db)) ? "no owner" : "ready";
    return new Response(text, { headers: { "cache-control": "no-store" } });
  } catch (error) {
    const message = error instanceof Error ? error.message : String(error);
    return new Response(`The registry could not be opened: ${message}`, {
      status: 500,
      headers: { "cache-control": "no-store" },
    });
  }
}

// Alone on one machine the sign-in library is never loaded.
async function ownerIsIn(db: Database): Promise<boolean> {
  const { hasOwner } = await import("@/lib/registry/accounts/set-owner");
  return hasOwner(db);
}

export const dynamic = "force-dynamic";
