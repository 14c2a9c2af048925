import "server-only";
import { cookies } from "next/headers";
import { cache } from "react";
import { type Actor, ownerHere } from "@/lib/access/actor";
import { demonstrationRegistry, ownRegistry } from "@/lib/registry/open-registry";
import { readSettings } from "@/lib/registry/settings/read-settings";
import { civilDayIn, offsetMinutesIn } from "./civil-day-in";

export const demonstrationCookie = "kinrow-demonstration";
export const zoneCookie = "kinrow-zone";

/** What a page or action works with: the registry that is open, who acts, the settings, and the day it is where the person sits. */
export const current = cache(async () => {
  const jar = await cookies();
  const demonstration = jar.get(demonstrationCookie)?.value === "yes";
  const zone = jar.get(zoneCookie)?.value;
  const db = await (demonstration ? demonstrationRegistry() : ownRegistry());
  const actor: Actor = ownerHere(offsetMinutesIn(zone));
  return { db, actor, demonstration, settings: await readSettings(db.read), today: civilDayIn(zone) };
});
