import { plotParentsAssumed } from "@/lib/science/effective-size/plot-parents-assumed";
import type { LineageLot } from "@/lib/science/lineage/lots";
import type { Assumption } from "@/lib/science/outcome";

/** Lots named in a sentence before the rest is only counted. */
const LOTS_NAMED = 5;

/** The defaults that move the figures of a lineage: each once, with the lots it was taken for. */
export function lineageAssumed(lots: readonly LineageLot[]): Assumption[] {
  return eachOnce(lots.map((lot) => ({ id: lot.id, assumed: assumedOfLot(lot) })));
}

/** Defaults of many lots, each once with the lots it was taken for. */
export function eachOnce(
  all: readonly { readonly id: string; readonly assumed: readonly Assumption[] }[],
): Assumption[] {
  const takenFor = new Map<string, { text: string; lots: string[] }>();
  for (const { id, assumed } of all) {
    for (const { code, text } of assumed) {
      const taken = takenFor.get(code) ?? { text, lots: [] };
      taken.lots.push(id);
      takenFor.set(code, taken);
    }
  }
  return [...takenFor].map(([code, taken]) => ({ code, text: `${taken.text}: ${named(taken.lots)}` }));
}

/** The defaults taken for one lot. */
export function assumedOfLot(lot: LineageLot): Assumption[] {
  const assumed: Assumption[] = [];
  if (lot.kind === "founder") {
    if (lot.inbreeding === undefined) {
      assumed.push({ code: "founder-not-inbred", text: "the founder lot was not inbred (inbreeding 0)" });
    }
    if (lot.coancestry === undefined) {
      assumed.push({ code: "founder-seeds-unrelated", text: "seeds of the founder lot were unrelated (coancestry 0)" });
    }
  }
  if (lot.kind === "grow-out") {
    assumed.push(...plotParentsAssumed(lot));
    if (lot.foreignPollen === undefined && lot.selfingRate !== 1) {
      const text = "foreign pollen was not assessed and is computed as 0";
      assumed.push({ code: "foreign-pollen-not-assessed", text });
    }
  }
  return assumed;
}

function named(lots: readonly string[]): string {
  if (lots.length <= LOTS_NAMED) return lots.join(", ");
  return `${lots.slice(0, LOTS_NAMED).join(", ")} and ${lots.length - LOTS_NAMED} more`;
}
