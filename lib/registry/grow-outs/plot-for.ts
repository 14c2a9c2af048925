import { uuidv7 } from "uuidv7";
import type { Transaction } from "@/lib/db";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import type { ChangeWriter } from "../change-set/writer";
import { foldName, sameName } from "../names/fold-name";

export interface PlotTyped {
  readonly plot: string | null;
  readonly newPlot: string | null;
  readonly place: string | null;
  readonly areaM2?: number | null;
}

/**
 * The plot that is meant: one on record by its id, or one that is entered with it, of that steward. Null where none is named. Refused: both
 * at once, or a new one whose name that steward's plots have already.
 */
export async function plotFor(
  tx: Transaction,
  change: ChangeWriter,
  { plot, newPlot, place, areaM2 }: PlotTyped,
  stewardId: string | null,
): Promise<Outcome<string | null>> {
  if (plot !== null && newPlot !== null) {
    const needed = "leave one of the two empty";
    return refused(refusal("two-plots", ["newPlot"], newPlot, "stands here beside the chosen plot", needed));
  }
  if (plot !== null) {
    const found = await tx.plot.findUnique({ where: { id: plot }, select: { id: true } });
    if (found) return accepted(found.id);
    return refused(refusal("unknown", ["plot"], plot, "is no plot of this registry", "choose one of the list"));
  }
  if (newPlot === null) return accepted(null);
  const nameKey = foldName(newPlot);
  if (await tx.plot.findFirst({ where: { nameKey, stewardId } })) {
    const needed = "choose it in the list, or write the new one with what tells them apart";
    return refused(refusal("name-taken", ["newPlot"], newPlot, "is the name of a plot already", needed));
  }
  const id = uuidv7();
  await change.create("Plot", { id, name: sameName(newPlot), nameKey, stewardId, place, areaM2: areaM2 ?? null });
  return accepted(id);
}
