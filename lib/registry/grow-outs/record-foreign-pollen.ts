import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import type { ForeignPollenInput } from "@/lib/schemas/grow-outs/foreign-pollen";
import { foreignPollenSeen } from "@/lib/science/off-types/foreign-pollen-seen";
import { accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import { growOutOf } from "./grow-out-of";

/**
 * Writes down how much of a grow-out's seed had a foreign father, and how that was found: a share that somebody tells, or one worked out of
 * seeds or seedlings that were counted (`foreignPollenSeen`). The figures of what descends from it follow. What stood there before stays in
 * the history, with the reason why it is replaced.
 * Refused: no share and no count, or both; counts that `foreignPollenSeen` refuses or that are more than such pollen could give; another
 * value in place of one that stands without a reason; what stands there already.
 */
export async function recordForeignPollen(
  db: Database,
  actor: Actor,
  growOutId: string,
  input: ForeignPollenInput,
): Promise<Outcome<Performed<{ share: number }>>> {
  const known = await growOutOf(db.read, growOutId);
  if (!known.ok) return known;
  const replaces = known.value.foreignPollen !== null;
  const operation = {
    action: replaces ? ("correct" as const) : ("record" as const),
    title: `Grow-out ${known.value.name}: foreign pollen`,
    reason: input.why,
  };
  return perform(db, actor, operation, async (change, tx) => {
    const found = await growOutOf(tx, growOutId);
    if (!found.ok) return found;
    const growOut = found.value;
    const share = shareOf(input);
    if (!share.ok) return share;
    const how = howInWords(input);
    if (growOut.foreignPollen === share.value && growOut.foreignPollenHow === how)
      return refused(refusal("as-it-is", ["percent"], input.percent, "is what stands there", "change it, or leave it"));
    if (growOut.foreignPollen !== null && input.why === null) {
      const needed = "write in a few words why; both stay in the history";
      return refused(refusal("reason-missing", ["why"], "", "says why what stood there is replaced", needed));
    }
    await change.update("GrowOut", growOutId, { foreignPollen: share.value, foreignPollenHow: how });
    change.touch(growOut.varietyId);
    return accepted({ share: share.value });
  });
}

/** The share that is told, or that the counts come to. */
function shareOf({ percent, sampled, found, carrying }: ForeignPollenInput): Outcome<number> {
  const counted = sampled !== null || found !== null;
  const fault = (code: string, field: string, given: unknown, wrong: string, needed: string): Refusal =>
    refusal(code, [field], given, wrong, needed);
  if (percent !== null && counted)
    return refused(fault("told-twice", "percent", percent, "stands beside a count", "leave one of the two empty"));
  if (percent !== null) return accepted(percent / 100);
  if (!counted) return refused(fault("missing", "percent", "", "stands here", "write the share, or what was counted"));
  if (sampled === null)
    return refused(fault("missing", "sampled", "", "is how many were looked at", "write the count"));
  if (found === null) return refused(fault("missing", "found", "", "is how many showed it", "write 0 where none did"));
  const seen = foreignPollenSeen({ sampled, found, ...(carrying === null ? {} : { carrying }) });
  if (!seen.ok) return seen;
  if (seen.value.share !== null) return accepted(seen.value.share);
  const wrong = `of ${sampled} are more than such pollen could give`;
  return refused(fault("more-than-possible", "found", found, wrong, "look at the share of the pollen that carries it"));
}

/** How it was found, as it is kept: "kernels of another colour counted: 6 of 400; the red ones by the road". */
export function howInWords({ finding, sampled, found, carrying, words }: ForeignPollenInput): string {
  const marked =
    carrying === null ? "" : `, ${Number((carrying * 100).toPrecision(4))} % of that pollen carries the mark`;
  const counted = sampled === null || found === null ? "" : `: ${found} of ${sampled}${marked}`;
  return `${finding}${counted}${words === null ? "" : `; ${words}`}`;
}
