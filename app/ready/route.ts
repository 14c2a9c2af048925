import { ownRegistry } from "@/lib/registry/open-registry";

/** Opens the registry (bringing it up to this release) and says so; the start command waits for this. */
export async function GET(): Promise<Response> {
  try {
    await ownRegistry();
    return new Response("ready", { headers: { "cache-control": "no-store" } });
  } catch (error) {
    const message = error instanceof Error ? error.message : String(error);
    return new Response(`The registry could not be opened: ${message}`, {
      status: 500,
      headers: { "cache-control": "no-store" },
    });
  }
}

export const dynamic = "force-dynamic";
