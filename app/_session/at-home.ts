import "server-only";
import type { Actor } from "@/lib/access/actor";
import { ownRegistry } from "@/lib/registry/open-registry";
import { current } from "./current";
import { signedIn } from "./signed-in";

/** For what concerns who may come in: the own registry, also while the demonstration is looked at: nobody is let in there. */
export async function atHome() {
  const { actor } = await current("members");
  const member = await signedIn();
  const own: Actor = member?.actor ?? actor;
  return { db: await ownRegistry(), actor: own, member };
}
