import { standardVerdict } from "@/lib/science/germination/standard-verdict";
import type { LastTest } from "../../figures/read-figures";
import { mayHoldSeed } from "../../varieties/holders";
import type { SeasonRecords, WaitingItem } from "../records";

export interface BelowLine {
  readonly test: LastTest;
  /** the line that the share lies below, and which one it is */
  readonly line: number;
  readonly which: "plan" | "urgent";
  /** chance that the seed truly germinates below the line, given this test alone */
  readonly chanceBelow: number;
  /** another lot of the variety that may hold seed and whose last test lies at the planning line or above: then it can wait */
  readonly better: { readonly id: string; readonly number: string; readonly germination: number } | null;
}

/**
 * A lot that may hold seed and whose last test lies below a renewal line (settings: plan, urgent). The share decides; the chance that the
 * seed truly lies below, P(Beta(x + ½, n − x + ½) < line), is said beside it. It cannot wait where it lies below the urgent line and no
 * other lot of the variety comes up well.
 * Source of the rule: renewal lines of the settings; of the chance: Jeffreys' prior (Brown, Cai & DasGupta 2001, Stat. Sci. 16:101-133).
 */
export function germinationBelowLine(records: SeasonRecords): WaitingItem<"germination-below-line", BelowLine>[] {
  const { lots, settings } = records;
  const held = lots.filter(mayHoldSeed);
  const best = new Map<string, NonNullable<BelowLine["better"]>>();
  for (const { id, number, varietyId, lastTest } of held) {
    const germination = lastTest?.germination ?? 0;
    const before = best.get(varietyId);
    if (germination < settings.renewalPlan || (before && before.germination >= germination)) continue;
    best.set(varietyId, { id, number, germination });
  }
  const worstFirst = held.sort((a, b) => (a.lastTest?.germination ?? 1) - (b.lastTest?.germination ?? 1));
  const items = worstFirst.flatMap((lot): WaitingItem<"germination-below-line", BelowLine>[] => {
    const test = lot.lastTest;
    if (test === null || test.germination >= settings.renewalPlan) return [];
    const which = test.germination < settings.renewalUrgent ? ("urgent" as const) : ("plan" as const);
    const line = which === "urgent" ? settings.renewalUrgent : settings.renewalPlan;
    const chanceBelow = 1 - standardVerdict(test.normal, test.sown, line).probabilityAbove;
    const better = best.get(lot.varietyId) ?? null;
    const urgency = better ? 2 : which === "urgent" ? 0 : 1;
    const facts = { test, line, which, chanceBelow, better };
    return [
      { rule: "germination-below-line", place: "field", urgency, varietyId: lot.varietyId, lotId: lot.id, facts },
    ];
  });
  return items.sort((a, b) => a.urgency - b.urgency);
}
