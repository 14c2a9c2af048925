import { uuidv7 } from "uuidv7";
import { ownerHere } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { OwnerSchema } from "@/lib/schemas/accounts/account-forms";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import type { FormTexts } from "@/lib/schemas/varieties/form-texts";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { perform } from "../change-set/perform";
import { checkedPassphrase } from "./checked-passphrase";
import { writeAccount } from "./come-in";
import { hashPassphrase } from "./passphrase";
import { writePassphrase } from "./set-passphrase";

/** True where an owner can sign in: before that a registry is not opened to others. */
export async function hasOwner(db: Database): Promise<boolean> {
  const owners = await db.read.member.count({
    where: { role: "owner", endedAt: null, user: { accounts: { some: { password: { not: null } } } } },
  });
  return owners > 0;
}

/**
 * Gives the registry its owner, or an owner who has forgotten theirs a new passphrase. Only whoever sits at the machine, with the right to
 * its files, can call it; it is never reached over the network.
 */
export async function setOwner(
  db: Database,
  input: FormTexts,
  now: Date = new Date(),
): Promise<Outcome<{ made: boolean; signInName: string }>> {
  const read = parseForm(OwnerSchema, input);
  if (!read.ok) return read;
  const { signInName, passphrase } = read.value;
  const chosen = checkedPassphrase(passphrase, passphrase, [signInName]);
  if (!chosen.ok) return chosen;
  const password = await hashPassphrase(passphrase);
  const operation = { action: "members" as const, title: `${signInName} is owner here` };
  const done = await perform(db, ownerHere(), operation, async (change, tx) => {
    const user = await tx.user.findUnique({ where: { username: signInName }, include: { member: true } });
    change.touchNothing();
    if (!user) {
      const userId = await writeAccount(tx, { name: signInName, signInName, password, now });
      await change.create("Member", { id: uuidv7(), userId, role: "owner", addedAt: now.toISOString() });
      return accepted({ made: true, signInName });
    }
    if (user.member?.role !== "owner" || user.member.endedAt !== null) {
      const needed = "take another name";
      return refused(refusal("name-taken", ["signInName"], signInName, "is somebody here who is not owner", needed));
    }
    await writePassphrase(tx, user.id, password, now);
    return accepted({ made: false, signInName });
  });
  return done.ok ? accepted(done.value.value) : done;
}
