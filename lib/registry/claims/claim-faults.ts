import type { Transaction } from "@/lib/db";
import type { ClaimInput } from "@/lib/schemas/lots/lineage-claims";
import { accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";
import { type Descent, readDescent, wayInWords, wayUp } from "../lots/descent";
import { foldName } from "../names/fold-name";
import { oneMeant } from "../search/one-meant";

/** The lot that a claim is about. */
export interface LotOfClaim {
  readonly id: string;
  readonly number: string;
  readonly kind: string;
  readonly sameAsId: string | null;
  readonly varietyId: string;
  readonly variety: { readonly cropId: string };
}

/**
 * The lot that a claim names on its other side, null where it names none. Refused: a lot that is not on record, of another crop, or the lot
 * itself; "same as" across varieties; a claim by which a lot would be its own ancestor, with the names on the way; "unknown before" of a lot
 * whose parents are on record; generations where there are none between; a day still to come.
 * @param putRight the claim in whose place this one comes: it does not stand in its way
 */
export async function claimedParent(
  tx: Transaction,
  lot: LotOfClaim,
  input: ClaimInput,
  today: string,
  putRight: string | null = null,
): Promise<Outcome<string | null>> {
  const faults = shapeFaults(lot, input, today);
  if (input.parent === null) return faults.length > 0 ? refused(...faults) : accepted(null);
  const found = await tx.lot.findMany({
    where: { numberKey: foldName(input.parent) },
    select: {
      id: true,
      number: true,
      varietyId: true,
      sameAsId: true,
      variety: { select: { name: true, cropId: true } },
    },
  });
  const parent = oneMeant(input.parent, found, (each) => each.number);
  if (!parent) {
    const needed = "write the number of a lot on record, or leave it empty and say it in words";
    return refused(...faults, refusal("unknown-lot", ["parent"], input.parent, "is no lot of this registry", needed));
  }
  const wrong = otherFault(lot, input, parent);
  if (wrong) return refused(...faults, wrong);
  const descent = await readDescent(tx, lot.variety.cropId, { claims: true, but: putRight });
  const cycle = cycleFault(descent, lot, parent, input.kind);
  if (cycle) faults.push(cycle);
  return faults.length > 0 ? refused(...faults) : accepted(parent.id);
}

function shapeFaults(lot: LotOfClaim, input: ClaimInput, today: string): Refusal[] {
  const { kind, parent, generationsFirst: first, generationsLast: last, toldOn } = input;
  const faults: Refusal[] = [];
  const say = (code: string, field: string, given: unknown, wrong: string, needed: string) =>
    faults.push(refusal(code, [field], given, wrong, needed));
  if (kind === "unknown before" && parent !== null)
    say("no-parent-wanted", "parent", parent, "is named where nothing is known before", "leave it empty");
  if (kind === "unknown before" && lot.kind !== "founder")
    say(
      "parents-on-record",
      "kind",
      kind,
      `is not so: the parents of lot ${lot.number} are on record`,
      "choose another",
    );
  if (kind === "same as" && parent === null)
    say("missing", "parent", "", "says which lot it is the same as", "write the number of that lot");
  if (kind !== "descends from" && (first !== null || last !== null))
    say(
      "no-generations",
      "generationsFirst",
      first ?? last,
      "are generations where none lie between",
      "leave it empty",
    );
  if (first === null && last !== null)
    say("missing", "generationsFirst", "", "is the fewest generations", "write the fewest and the most");
  if (first !== null && last !== null && last < first)
    say("range-crossed", "generationsLast", last, `is fewer than ${first}`, "write the fewest first");
  if (toldOn !== null && toldOn.first > today)
    say("in-the-future", "toldOn", toldOn.text, "is still to come", `write a day up to ${today}`);
  return faults;
}

interface OtherLot {
  readonly id: string;
  readonly number: string;
  readonly varietyId: string;
  readonly sameAsId: string | null;
  readonly variety: { readonly name: string; readonly cropId: string };
}

function otherFault(lot: LotOfClaim, { kind }: ClaimInput, parent: OtherLot): Refusal | null {
  const say = (code: string, wrong: string, needed: string) => refusal(code, ["parent"], parent.number, wrong, needed);
  if ((parent.sameAsId ?? parent.id) === (lot.sameAsId ?? lot.id))
    return say("of-itself", "is the lot itself", "name another lot, or leave it empty");
  if (parent.variety.cropId !== lot.variety.cropId)
    return say("other-crop", `is of ${parent.variety.name}, another crop`, "a line stays within its crop");
  if (kind === "same as" && parent.varietyId !== lot.varietyId)
    return say(
      "other-variety",
      `is of ${parent.variety.name}`,
      "the same seed is of one variety: put that right first",
    );
  return null;
}

function cycleFault(descent: Descent, lot: LotOfClaim, parent: OtherLot, kind: ClaimInput["kind"]): Refusal | null {
  const down = wayUp(descent, parent.id, lot.id);
  const way = down ?? (kind === "same as" ? wayUp(descent, lot.id, parent.id) : null);
  if (way === null) return null;
  const wrong = `comes from it by what is on record or claimed (${wayInWords(descent, way)})`;
  const needed =
    kind === "same as"
      ? "one lot cannot come from itself: set aside the claim that is wrong, or leave this one"
      : "no lot is its own ancestor: set aside the claim that is wrong, or leave this one";
  return refusal("cycle", ["parent"], down ? parent.number : lot.number, wrong, needed);
}
