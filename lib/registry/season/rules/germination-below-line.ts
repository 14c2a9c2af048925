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
}

/**
 * A lot that may hold seed and whose last test lies below a renewal line (settings: plan, urgent). The share decides; the chance that the
 * seed truly lies below, P(Beta(x + ½, n − x + ½) < line), is said beside it.
 * Source of the rule: renewal lines of the settings; of the chance: Jeffreys' prior (Brown, Cai & DasGupta 2001, Stat. Sci. 16:101-133).
 */
export function germinationBelowLine({
  lots,
  settings,
}: SeasonRecords): WaitingItem<"germination-below-line", BelowLine>[] {
  return lots.filter(mayHoldSeed).flatMap((lot) => {
    const test = lot.lastTest;
    if (test === null || test.germination >= settings.renewalPlan) return [];
    const which = test.germination < settings.renewalUrgent ? ("urgent" as const) : ("plan" as const);
    const line = which === "urgent" ? settings.renewalUrgent : settings.renewalPlan;
    const chanceBelow = 1 - standardVerdict(test.normal, test.sown, line).probabilityAbove;
    const facts = { test, line, which, chanceBelow };
    return [
      {
        rule: "germination-below-line",
        place: "field",
        urgency: which === "urgent" ? 0 : 1,
        varietyId: lot.varietyId,
        lotId: lot.id,
        facts,
      },
    ];
  });
}
