import type { LineProposal, UnknownField } from "./proposal";

/** What the registry would want to know of this line and the line leaves open. Unknown is not zero: nothing is filled in. */
export function unknownFields(proposal: Omit<LineProposal, "unknown" | "assumed">): UnknownField[] {
  const open: [UnknownField, boolean][] = [["year", proposal.year === null]];
  const { kind, lots, from } = proposal;
  if (kind === "grow-out" || kind === "failed") {
    open.push(
      ["parents", from.every((parent) => lots.some((lot) => lot.name === parent.lot && lot.assumed))],
      ["shares", from.length > 1 && from.some((parent) => parent.share === null)],
      ["seedsSown", proposal.seedsSown === null && proposal.sownAmount === null],
      ["plantsStanding", isOpen(proposal.plantsStanding)],
      ["rogues", proposal.rogues.length === 0 || proposal.rogues.some((pass) => isOpen(pass.count))],
    );
  }
  if (kind === "grow-out") {
    open.push(
      ["seedParents", !proposal.allKept && (isOpen(proposal.seedParents) || proposal.seedParentsCounted !== "plants")],
      ["seedShares", proposal.seedShares !== "equal"],
      ["harvested", !proposal.harvested.some((amount) => !isOpen(amount))],
      // never read off words: a suspicion is not a share
      ["foreignPollen", true],
    );
  }
  open.push(
    ["lotYear", lots.some((lot) => lot.kind === "founder" && lot.year === null)],
    ["amount", proposal.given.some((gift) => gift.amount === null || isOpen(gift.amount))],
    ["seedsTested", proposal.germination.some((test) => test.isTest && (test.of === null || isOpen(test.of)))],
  );
  if (kind === "blend") open.push(["shares", from.some((parent) => parent.share === null)]);
  return open.filter(([, isUnknown]) => isUnknown).map(([field]) => field);
}

function isOpen(count: { readonly value: number | null } | null): boolean {
  return count === null || count.value === null;
}
