import type { LineageLot } from "@/components/lineage";
import type { LineageGrowOut, ProposedLineage } from "@/lib/exchange/notebook-lines/lineage";
import { standingLotRef } from "@/lib/schemas/notebook-typing/notebook-booking";
import { parseDate } from "@/lib/science/dates/parse-date";
import { effectiveSize } from "@/lib/science/effective-size/effective-size";
import type { PlotParents } from "@/lib/science/effective-size/plot-parents";

/** Who mates how in the crop: what the effective size of a typed grow-out leans on. */
export type Mates = Pick<PlotParents, "sexes" | "selfIncompatible" | "selfingRate">;

/** The lots of the lines and those that stand already, as the lineage drawing takes them. */
export function drawingOfLines(
  lineage: ProposedLineage,
  numbers: Readonly<Record<string, string>>,
  standing: readonly LineageLot[],
  mates: Mates | null,
): LineageLot[] {
  const growOuts = new Map(lineage.growOuts.map((growOut) => [growOut.name, growOut]));
  const typed = lineage.lots.map((lot): LineageLot => {
    const growOut = lot.growOut === null ? undefined : growOuts.get(lot.growOut);
    const parents = growOut ? growOut.parents : lot.parents;
    return {
      id: lot.name,
      name: numbers[lot.name] ?? lot.name,
      years: yearsOf(lot.year),
      parents: parents.map((parent) => ({ id: parent.lot, share: parents.length === 1 ? 1 : parent.share })),
      kind: lot.kind,
      effectiveSize: growOut ? sizeOf(growOut, mates) : null,
    };
  });
  return [
    ...standing.map((lot) => ({
      ...lot,
      id: standingLotRef(lot.id),
      parents: lot.parents.map((parent) => ({ ...parent, id: standingLotRef(parent.id) })),
    })),
    ...typed,
  ];
}

function yearsOf(year: string | null): LineageLot["years"] {
  const date = year === null ? null : parseDate(year);
  if (!date?.ok) return null;
  return { first: Number(date.value.first.slice(0, 4)), last: Number(date.value.last.slice(0, 4)) };
}

/** Known only where plants, seed parents and equal shares are told as plain numbers. */
function sizeOf(growOut: LineageGrowOut, mates: Mates | null): LineageLot["effectiveSize"] {
  const standing = growOut.plantsStanding?.value ?? null;
  const seedParents = growOut.seedParentsCounted === "plants" ? (growOut.seedParents?.value ?? null) : null;
  if (
    !mates ||
    mates.sexes === "separate" ||
    standing === null ||
    seedParents === null ||
    growOut.seedShares !== "equal"
  )
    return null;
  const rogued = growOut.roguedBeforePollen?.value ?? 0;
  const size = effectiveSize({ ...mates, pollenParents: standing - rogued, seedParents, seedShares: "equal" });
  if (!size.ok || size.value.effectiveSize === null) return null;
  return { low: size.value.effectiveSize, high: size.value.effectiveSize };
}
