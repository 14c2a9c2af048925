"use server";

import { cookies } from "next/headers";
import { redirect } from "next/navigation";
import { ownerHere } from "@/lib/access/actor";
import { demonstrationIsEmpty, demonstrationRegistry, removeDemonstration } from "@/lib/registry/open-registry";
import { loadScenario } from "@/seed-scenario/load-scenario";
import { current, demonstrationCookie } from "./current";
import { isShared } from "./shared";

/** Opens the demonstration, a registry of its own beside the steward's; it is filled when it is first opened. */
export async function startDemonstration(): Promise<void> {
  const { actor } = await current("demonstration");
  const db = await demonstrationRegistry();
  if (await demonstrationIsEmpty(db)) await loadScenario(db, ownerHere(actor.offsetMinutes));
  const kept = { path: "/", sameSite: "lax", httpOnly: true, secure: isShared() } as const;
  (await cookies()).set(demonstrationCookie, "yes", kept);
  redirect("/season");
}

/** Ends the demonstration: its file goes, and the steward's own registry stands as it was. */
export async function endDemonstration(): Promise<void> {
  await current("demonstration");
  (await cookies()).delete(demonstrationCookie);
  await removeDemonstration();
  redirect("/");
}
