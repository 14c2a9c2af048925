import type { Explanation } from "@/lib/display/explanation";
import { percent, plainNumber } from "@/lib/display/numbers";
import { listed } from "@/lib/display/plurals";
import type { LotOfLineage } from "@/lib/registry/lineage/lineage-lots";
import type { SharedByLots } from "@/lib/registry/lineage/shared-by-lots";

/** How the coancestry of two lots comes about. */
export function sharedExplanation(one: LotOfLineage, other: LotOfLineage, shared: SharedByLots): Explanation {
  const { own, founders, atMost } = shared;
  return {
    title: `Coancestry of ${one.number} and ${other.number}`,
    answer: coancestryInWords(shared),
    formula:
      "Θ(A, B): the chance that a gene drawn from a seed of one and a gene drawn from a seed of the other are copies of one gene of a founder; along a grow-out Θ(new, X) = Σ c·Θ(parent, X), where c is the part of the genes that a parent gave",
    inputs: [
      { name: `θ of ${one.number} alone`, value: plainNumber(own[0], 3), href: `/lots/${one.id}` },
      { name: `θ of ${other.number} alone`, value: plainNumber(own[1], 3), href: `/lots/${other.id}` },
      ...founders.map(({ number, parts }) => ({
        name: `from ${number}`,
        value: `${percent(parts[0])} and ${percent(parts[1])}`,
      })),
    ],
    assumed: [
      ...(atMost
        ? ["The founders are as near kin as what is written of them allows."]
        : founders.length > 1
          ? [`The founders were unrelated to each other: ${listed(founders.map(({ number }) => number))}.`]
          : []),
    ],
    unsure: "It is an expectation from the records, not a measurement of this seed.",
    sources: ["Cockerham 1967, Genetics 56:89", "Lindgren & Mullin 1998, Can. J. For. Res. 28:276"],
    method: "lineage",
  };
}

/** "0.125", "at most 0.125" */
export function coancestryInWords({ coancestry, atMost }: SharedByLots): string {
  return `${atMost ? "at most " : ""}${plainNumber(coancestry, 3)}`;
}

/** What that means for the hand: how much two lots would bring each other. */
export function sharedSentence(one: LotOfLineage, other: LotOfLineage, { coancestry, own }: SharedByLots): string {
  const nearer = Math.min(...own);
  if (coancestry === 0) return "They share no founder on record: each would bring the other what it does not have.";
  if (coancestry >= nearer - 1e-9) {
    const older = own[0] <= own[1] ? one : other;
    return `All that the two have in common is in ${older.number} already: the other adds nothing to it that ${older.number} has not.`;
  }
  return "They are less alike than the seeds of either are among themselves: a blend of the two holds more than each alone.";
}
