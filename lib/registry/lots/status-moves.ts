import { type LotStatus, lotStatuses } from "@/lib/schemas/lots/record-lot";
import { type Refusal, refusal } from "@/lib/science/outcome";
import { tolerableDebtGrams } from "../ledger/balance";

/** What a move in a lot's life rests on. */
export interface LotToMove {
  readonly status: string | null;
  /** the last count of a germination test; null: never tested */
  readonly lastTest: { readonly sown: number; readonly normal: number } | null;
  /** grams on hand by the ledger; null not known */
  readonly grams: number | null;
}

/** Ways of standing that say why. */
const withReason: ReadonlySet<string> = new Set(["hold", "discarded", "not for seed", "quarantine"]);

/**
 * What stands against moving a lot from how it stands to another status: nothing comes back from discarded; "dead" needs a test in which
 * nothing came up; "finished" an empty jar; a hold, a quarantine, "not for seed" and discarding their reason.
 * Source: trade.md 2, life of a lot.
 */
export function moveFaults(lot: LotToMove, to: LotStatus | null, reason: string | null): Refusal[] {
  if (lot.status === to) return [];
  if (lot.status === "discarded") {
    const needed = "leave it discarded; if that was a mistaken entry, take it back in the history";
    return [refusal("discarded-for-good", ["status"], to, "cannot follow discarded", needed)];
  }
  if (to === "dead") return deadFaults(lot);
  if (to === "finished" && lot.grams !== null && lot.grams > tolerableDebtGrams) {
    const held = `${Math.round(lot.grams * 100) / 100} g`;
    const needed = `by the ledger ${held} are in the jar: weigh it in, or write where they went`;
    return [refusal("not-empty", ["status"], to, "is said of an empty jar", needed)];
  }
  if (to !== null && withReason.has(to) && reason === null)
    return [refusal("missing", ["statusReason"], "", "stands here", "say why it stands so")];
  return [];
}

function deadFaults({ lastTest }: LotToMove): Refusal[] {
  if (lastTest === null)
    return [refusal("dead-untested", ["status"], "dead", "needs a germination test", "test it first, or choose hold")];
  if (lastTest.normal === 0) return [];
  const wrong = `cannot be said of it: ${lastTest.normal} of ${lastTest.sown} came up in its last test`;
  return [refusal("dead-came-up", ["status"], "dead", wrong, "renew it, or choose hold or not for seed")];
}

/** Where a lot may go from how it stands, in the order of a life; how it stands now is not among them. */
export function movesOf(lot: LotToMove): LotStatus[] {
  return lotStatuses.filter((to) => to !== lot.status && moveFaults(lot, to, "told").length === 0);
}
