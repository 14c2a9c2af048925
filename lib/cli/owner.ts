import { text } from "node:stream/consumers";
import { setOwner } from "@/lib/registry/accounts/set-owner";
import { withRegistry } from "./with-registry";

// Called by npm start -- --share, with {"signInName": "...", "passphrase": "..."} on standard input: the owner of the registry, or a new
// passphrase for one who has forgotten theirs.
const given = JSON.parse(await text(process.stdin)) as Record<string, string>;

await withRegistry(async (db) => {
  const outcome = await setOwner(db, given);
  if (outcome.ok) {
    const { signInName, made } = outcome.value;
    console.log(made ? `${signInName} is the owner here.` : `${signInName} has a new passphrase.`);
    return 0;
  }
  console.error(outcome.refusals.map((each) => each.sentence).join("\n"));
  return 1;
});
