import type { ProposedLineage } from "@/lib/exchange/notebook-lines/lineage";
import { linesToLineage } from "@/lib/exchange/notebook-lines/lines-to-lineage";
import type { ReadLine } from "./typed-line";

/** The chain that the lines propose, without the lots that stood for unknown seed and that nothing comes from any more. */
export function proposedLineage(lines: readonly ReadLine[]): ProposedLineage {
  const lineage = linesToLineage(lines);
  const named = new Set([
    ...lineage.growOuts.flatMap((growOut) => growOut.parents.map((parent) => parent.lot)),
    ...lineage.lots.flatMap((lot) => lot.parents.map((parent) => parent.lot)),
    ...lineage.ledger.map((entry) => entry.lot),
    ...lineage.tests.map((test) => test.lot),
  ]);
  return { ...lineage, lots: lineage.lots.filter((lot) => !lot.assumed || named.has(lot.name)) };
}
