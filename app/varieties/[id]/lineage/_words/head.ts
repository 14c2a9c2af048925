import { keptSpan } from "@/lib/display/kept-span";
import { effectiveSize, percent } from "@/lib/display/numbers";
import { counted } from "@/lib/display/plurals";
import type { LotOfLineage } from "@/lib/registry/lineage/lineage-lots";
import type { LineageRead } from "@/lib/registry/lineage/read-lineage";
import { whenInWords } from "./when";

/** The figure at the head of the page, and what it says: the most that a jar with seed still keeps, and the narrowest point. */
export function headOf({ lots, variety }: LineageRead): { figure: string; sentence: string } {
  const own = lots.filter((lot) => lot.varietyId === variety.id);
  const founders = own.filter(({ kind }) => kind === "founder").length;
  const harvests = own.filter(({ kind }) => kind === "harvest").length;
  const narrowest = least(own);
  const narrow = narrowest?.effectiveSize
    ? ` The narrowest point that was counted is an effective size of ${effectiveSize(narrowest.effectiveSize.low)}, at ${narrowest.growOut ?? narrowest.number} (${whenInWords(narrowest)}).`
    : "";
  const living = own.filter((lot) => lot.living && lot.kept);
  const [best] = living.sort(
    (a, b) => (b.kept?.low ?? 0) - (a.kept?.low ?? 0) || (b.kept?.high ?? 0) - (a.kept?.high ?? 0),
  );
  const from = `${counted(founders, "founder lot")}, ${counted(harvests, "harvest")} since.`;
  if (!best?.kept)
    return { figure: counted(founders, "founder"), sentence: `stand at the beginning: ${from}${narrow}` };
  return {
    figure: best.kept.low < best.kept.high ? keptSpan(best.kept) : percent(best.kept.low, 0),
    sentence: `of its founders’ diversity is in the richest jar with seed, ${best.number}. ${from}${narrow}`,
  };
}

function least(lots: readonly LotOfLineage[]): LotOfLineage | undefined {
  return lots
    .filter(({ effectiveSize }) => effectiveSize !== null && effectiveSize.low === effectiveSize.high)
    .sort((a, b) => (a.effectiveSize?.low ?? 0) - (b.effectiveSize?.low ?? 0))[0];
}
