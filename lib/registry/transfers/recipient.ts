import type { Transaction } from "@/lib/db";
import type { GiveInput } from "@/lib/schemas/transfers/transfer";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import type { ChangeWriter } from "../change-set/writer";
import { holderOfLot } from "../lots/holder-of-lot";

/** Who gets the seed: a steward of the registry, or somebody outside in words alone. */
export interface Recipient {
  readonly stewardId: string | null;
  readonly words: string | null;
  readonly toLibrary: boolean;
}

/**
 * Who gets the seed. A new name becomes a steward (of a library where the seed goes to one), so that a name never stands outside of Person.
 * Refused: nobody; more than one; a loan to somebody whom nobody can ask; "to a library" where the steward is none.
 */
export async function recipientOf(
  tx: Transaction,
  change: ChangeWriter,
  { kind, holder, newHolder, toWords }: Pick<GiveInput, "kind" | "holder" | "newHolder" | "toWords">,
): Promise<Outcome<Recipient>> {
  const named = [holder, newHolder, toWords].filter((each) => each !== null);
  if (named.length === 0) {
    const needed = "choose a steward, write a new name, or say in words to whom it goes";
    return refused(refusal("missing", ["holder"], "", "says who gets it", needed));
  }
  if (toWords !== null && named.length > 1) {
    const needed = "leave the words empty, or the name: somebody on record needs no words";
    return refused(refusal("two-recipients", ["toWords"], toWords, "stands here beside a name", needed));
  }
  if (toWords !== null) {
    if (kind === "loan") {
      const needed = "choose a steward or write a new name: a loan needs somebody to ask";
      return refused(refusal("loan-to-nobody", ["holder"], toWords, "is nobody on record", needed));
    }
    return accepted({ stewardId: null, words: toWords, toLibrary: kind === "to a library" });
  }
  const steward = await holderOfLot(tx, change, { holder, newHolder });
  if (!steward.ok) return steward;
  const stewardId = steward.value;
  if (stewardId === null) throw new Error("a name gives a steward");
  if (newHolder !== null && kind === "to a library") await change.update("Steward", stewardId, { kind: "library" });
  const { kind: what } = await tx.steward.findUniqueOrThrow({ where: { id: stewardId }, select: { kind: true } });
  if (kind === "to a library" && what !== "library") {
    const needed = "choose a library, or choose gift; if it is a library, put the steward right first";
    return refused(refusal("no-library", ["holder"], holder, "is no library here", needed));
  }
  return accepted({ stewardId, words: null, toLibrary: what === "library" });
}
