import "server-only";
import { cookies } from "next/headers";
import { forbidden } from "next/navigation";
import { cache } from "react";
import { type Actor, ownerHere } from "@/lib/access/actor";
import { type Action, roleMay } from "@/lib/access/permissions";
import { demonstrationRegistry, ownRegistry } from "@/lib/registry/open-registry";
import { seenBy } from "@/lib/registry/privacy/seen-by";
import { readSettings } from "@/lib/registry/settings/read-settings";
import { civilDayIn, offsetMinutesIn } from "./civil-day-in";
import { signedInOrAsked } from "./signed-in";
import { zoneCookie } from "./zone-cookie";

export const demonstrationCookie = "kinrow-demonstration";

/**
 * What a page, an answer or an action works with: the registry as the one who acts may see it, who acts, the settings, and the day it is where
 * the person sits. It names what is to be done (to read, where it names nothing): who may not is told so, and goes no further. Where the registry
 * is opened to others, nobody comes past here without having signed in.
 */
export async function current(action: Action = "read") {
  const here = await found();
  if (!roleMay(here.actor.role, action)) forbidden();
  return here;
}

// Asked many times while a page is drawn, found once.
const found = cache(async () => {
  const jar = await cookies();
  const demonstration = jar.get(demonstrationCookie)?.value === "yes";
  const zone = jar.get(zoneCookie)?.value;
  const member = await signedInOrAsked();
  const whole = await (demonstration ? demonstrationRegistry() : ownRegistry());
  // The stewards of the demonstration are others than those of the registry.
  const own = member && (demonstration ? { ...member.actor, stewardId: null, growOutIds: [] } : member.actor);
  const actor: Actor = own ?? ownerHere(offsetMinutesIn(zone));
  const db = seenBy(whole, actor);
  return { db, actor, demonstration, settings: await readSettings(db.read), today: civilDayIn(zone) };
});
