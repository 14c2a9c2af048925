import type { Actor } from "@/lib/access/actor";
import { importFolder } from "@/lib/exchange/bring-in/import-folder";
import type { Database } from "@/lib/registry/handles";
import { putPictures } from "./drawn/put-pictures";
import { scenarioFolder } from "./scenario-folder";

/** Loads the demonstration circle into an empty registry, the way a steward's own files and pictures go in. */
export async function loadScenario(db: Database, actor: Actor): Promise<void> {
  const encoder = new TextEncoder();
  const files = new Map([...scenarioFolder()].map(([name, text]) => [name, encoder.encode(text)] as const));
  const outcome = await importFolder(db, actor, files);
  if (!outcome.ok) throw new Error(outcome.refusals.map((each) => each.sentence).join("\n"));
  await putPictures(db, actor);
}
