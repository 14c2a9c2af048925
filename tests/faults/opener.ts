// Opens a registry's folder whenever its parent names one, and says what came of it.
import { ownerHere } from "@/lib/access/actor";
import { type HeldFolder, holdFolder, migrate } from "@/lib/db";
import { prepareRegistry } from "@/lib/registry/open-registry";
import { changeSettings } from "@/lib/registry/settings/change-settings";
import { locationOf, type OpenSaid, type OpenTask } from "./protocol";

let held: HeldFolder | null = null;

async function opened({ folder, as, writes }: OpenTask): Promise<OpenSaid> {
  held?.release();
  held = null;
  if (as === "server") held = holdFolder(folder);
  const applied = await migrate(locationOf(folder));
  const db = await prepareRegistry(locationOf(folder));
  let written = 0;
  for (let turn = 0; turn < writes; turn += 1) {
    const outcome = await changeSettings(db, ownerHere(), { confirmedYears: 2 + ((process.pid + turn) % 40) });
    if (!outcome.ok) throw new Error(outcome.refusals.map((each) => each.sentence).join(" "));
    if (outcome.value.changeSetId !== null) written += 1;
  }
  const crops = await db.read.crop.count();
  await db.close();
  return { opened: true, applied, crops, written };
}

process.on("message", async (task: OpenTask) => {
  try {
    process.send?.(await opened(task));
  } catch (error) {
    process.send?.({ opened: false, said: error instanceof Error ? error.message : String(error) } satisfies OpenSaid);
  }
});
process.send?.("ready");
