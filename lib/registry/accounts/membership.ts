import { uuidv7 } from "uuidv7";
import type { Transaction } from "@/lib/db";
import type { MemberRole } from "@/lib/schemas/accounts/member-roles";
import { accepted, type Outcome, type Refusal, refusal, refused } from "@/lib/science/outcome";
import type { ChangeWriter } from "../change-set/writer";

/** What a member may do here, for which steward, and for a helper on which grow-outs. */
export interface Membership {
  readonly role: MemberRole;
  readonly stewardId: string | null;
  readonly growOuts: readonly string[];
}

/** Holds a membership against the registry: a steward keeps seed for one on record, a helper has grow-outs, nobody else has any. */
export async function checkedMembership(tx: Transaction, given: Membership): Promise<Outcome<Membership>> {
  const refusals: Refusal[] = [];
  const { role, stewardId } = given;
  if (stewardId !== null && !(await tx.steward.findUnique({ where: { id: stewardId }, select: { id: true } })))
    refusals.push(refusal("unknown-steward", ["stewardId"], stewardId, "is no steward here", "choose one of the list"));
  if (role === "steward" && stewardId === null) {
    const needed = "choose for whom this person keeps seed, or another role";
    refusals.push(
      refusal("steward-missing", ["stewardId"], "", "stands here, and a steward has lots of their own", needed),
    );
  }
  const growOuts = role === "helper" ? [...new Set(given.growOuts)] : [];
  if (role === "helper" && growOuts.length === 0) {
    const needed = "choose the grow-outs that the helper may record for";
    refusals.push(refusal("grow-outs-missing", ["growOuts"], "", "is chosen", needed));
  }
  const known = await tx.growOut.count({ where: { id: { in: growOuts } } });
  if (known < growOuts.length) {
    const gone = growOuts.length - known;
    refusals.push(
      refusal("unknown-grow-out", ["growOuts"], gone, "of the grow-outs is not here", "choose from the list"),
    );
  }
  return refusals.length > 0 ? refused(...refusals) : accepted({ role, stewardId, growOuts });
}

/** Writes which grow-outs a helper may record for: what is missing is added, what is no longer named goes. */
export async function writeGrowOuts(
  change: ChangeWriter,
  tx: Transaction,
  memberId: string,
  growOuts: readonly string[],
): Promise<void> {
  const rows = await tx.memberGrowOut.findMany({ where: { memberId } });
  const gone = rows.filter((row) => !growOuts.includes(row.growOutId));
  await change.remove(
    "MemberGrowOut",
    gone.map((row) => row.id),
  );
  const there = new Set(rows.map((row) => row.growOutId));
  const fresh = growOuts.filter((id) => !there.has(id));
  if (fresh.length > 0)
    await change.create("MemberGrowOut", ...fresh.map((growOutId) => ({ id: uuidv7(), memberId, growOutId })));
}

/** Refused where nobody else would be left who may let people in. */
export async function anotherOwner(tx: Transaction, memberId: string): Promise<Outcome<void>> {
  const others = await tx.member.count({
    where: { role: "owner", endedAt: null, userId: { not: null }, id: { not: memberId } },
  });
  if (others > 0) return accepted(undefined);
  const needed = "make another member owner first";
  return refused(refusal("last-owner", [], "the owner", "is the only one here who may let people in", needed));
}
