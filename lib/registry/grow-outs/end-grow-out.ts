import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import type { EndGrowOutInput, GrowOutEnd } from "@/lib/schemas/grow-outs/end-grow-out";
import { type Assumption, accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import type { RowOf } from "../change-set/records";
import { growOutOf } from "./grow-out-of";

/** The words of an end that need a cause beside them. */
const withCause: ReadonlySet<GrowOutEnd> = new Set<GrowOutEnd>(["failed", "not sown", "no seed"]);

/**
 * Ends a grow-out: seed was kept, none came, it failed, or it was never sown after all. A failure is a record with its cause, never a deletion.
 * "stands" says that one that was ended is not over after all. Refused: a failure without its cause, seed kept without a last day, an end before the sowing, "not sown" of one
 * that was.
 */
export async function endGrowOut(
  db: Database,
  actor: Actor,
  growOutId: string,
  input: EndGrowOutInput,
): Promise<Outcome<Performed<{ warnings: readonly Assumption[] }>>> {
  const known = await growOutOf(db.read, growOutId);
  if (!known.ok) return known;
  const { name } = known.value;
  const title = input.end === "stands" ? `Grow-out ${name} still stands` : `Grow-out ${name} ended: ${input.end}`;
  return perform(db, actor, { action: "record", title }, async (change, tx) => {
    const found = await growOutOf(tx, growOutId);
    if (!found.ok) return found;
    const growOut = found.value;
    const faults = endFaults(growOut, input);
    if (faults.length > 0) return refused(...faults);
    const over = input.end !== "stands";
    await change.update("GrowOut", growOutId, {
      endedOn: over ? (input.endedOn?.text ?? null) : null,
      outcome: outcomeOfEnd(input),
    });
    change.touch(growOut.varietyId);
    const lots = await tx.lot.count({ where: { growOutId } });
    return accepted({ warnings: endWarnings(input.end, lots) });
  });
}

/** How an end is stored: `failed: hail`. An outcome says why no seed came, so that where seed was kept there is none. */
export function outcomeOfEnd({ end, cause }: Pick<EndGrowOutInput, "end" | "cause">): string | null {
  if (end === "seed kept" || end === "stands") return null;
  return cause === null ? end : `${end}: ${cause}`;
}

/** The end and the cause that a stored outcome says; null where it is in other words, as a notebook may have them. */
export function endOfOutcome(
  outcome: string | null,
): { end: Exclude<GrowOutEnd, "stands">; cause: string | null } | null {
  const match = /^(no seed|failed|not sown)(?:[:;,]\s*(.+))?$/s.exec(outcome?.trim() ?? "");
  if (!match) return null;
  return { end: match[1] as Exclude<GrowOutEnd, "stands">, cause: match[2] ?? null };
}

function endFaults(growOut: RowOf<"GrowOut">, { end, endedOn, cause }: EndGrowOutInput): Refusal[] {
  const faults: Refusal[] = [];
  if (end === "stands") {
    if (growOut.endedOn !== null || growOut.outcome !== null) return [];
    return [refusal("not-over", ["end"], end, "is so already", "leave it")];
  }
  const begun = growOut.sown !== null || growOut.plantsStanding !== null;
  if (end === "not sown" && begun)
    faults.push(refusal("was-sown", ["end"], end, "cannot be: it was sown", "choose failed, and write the cause"));
  if (withCause.has(end) && cause === null) {
    const needed = end === "no seed" ? "write why no seed came, or that nobody knows" : "write the cause, such as hail";
    faults.push(refusal("missing", ["cause"], "", "stands here", needed));
  }
  if (end === "seed kept" && endedOn === null) {
    const needed = "write the last day that its plants were kept for, as well as it is known";
    faults.push(refusal("missing", ["endedOn"], "", "stands here", needed));
  }
  if (endedOn !== null && growOut.sownFirst !== null && endedOn.last < growOut.sownFirst) {
    const wrong = `lies before it was sown (${growOut.sown})`;
    faults.push(
      refusal("out-of-order", ["endedOn"], endedOn.text, wrong, "write the last day that its plants were kept for"),
    );
  }
  return faults;
}

function endWarnings(end: GrowOutEnd, lots: number): Assumption[] {
  if (end === "seed kept" && lots === 0)
    return [
      { code: "no-lot", text: "no lot is on record from it yet: enter the harvest, so that the seed has its number" },
    ];
  if ((end === "failed" || end === "no seed") && lots > 0)
    return [{ code: "lots-stand", text: "lots are on record from it, and stay: put those right that hold no seed" }];
  return [];
}
