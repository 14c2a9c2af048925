"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { ownRegistry } from "@/lib/registry/open-registry";
import { runBackup } from "@/lib/registry/safe-keeping/run-backup";
import { current } from "../../_session/current";

/** Makes a backup at once. What stands against it is told on the page, as with the daily one. */
export async function backUpNow(): Promise<void> {
  await current("backup");
  const { location } = await ownRegistry();
  const run = await runBackup(location, "by hand");
  revalidatePath("/safe-keeping");
  redirect(run.made ? "/safe-keeping?made=yes" : "/safe-keeping");
}
