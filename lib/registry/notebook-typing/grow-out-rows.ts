import type { NewRowOf } from "@/lib/registry/change-set/records";
import type { BookedGrowOut } from "@/lib/schemas/notebook-typing/notebook-booking";
import type { Told } from "@/lib/schemas/notebook-typing/told";
import type { Mating } from "@/lib/science/crops/mating";
import { plotParentsFaults } from "@/lib/science/effective-size/plot-parents-faults";
import { type Path, type Refusal, refusal } from "@/lib/science/outcome";
import { plotParentsOfRecord } from "../figures/plot-parents-of-record";
import type { StoredDate } from "./booked-date";

/** A told number as a whole count, or null where it is none: a span and words alone stay words. */
export function wholeOf(told: Told | null): number | null {
  return told?.value !== null && told?.value !== undefined && Number.isInteger(told.value) ? told.value : null;
}

/** Seed parents are counted in plants; ears and pods say nothing of how many plants there were. */
export function seedParentsOf(growOut: BookedGrowOut): number | null {
  return growOut.seedParentsCounted === "plants" ? wholeOf(growOut.seedParents) : null;
}

/** The row of a grow-out. What was told as a span or in words alone is not known here and stands beside it. */
export function growOutRow(
  growOut: BookedGrowOut,
  own: { id: string; name: string; nameKey: string; varietyId: string; stewardId: string | null },
  sown: StoredDate | null,
): NewRowOf<"GrowOut"> {
  return {
    ...own,
    sown: sown?.text ?? null,
    sownFirst: sown?.first ?? null,
    sownLast: sown?.last ?? null,
    seedsSown: wholeOf(growOut.seedsSown),
    plantsStanding: wholeOf(growOut.plantsStanding),
    malesStanding: null,
    roguedBeforePollen: wholeOf(growOut.roguedBeforePollen),
    roguedAfterPollen: wholeOf(growOut.roguedAfterPollen),
    seedParents: seedParentsOf(growOut),
    seedShares: growOut.seedShares === "equal" ? "equal" : null,
    seedSharesCv: null,
    selfingRate: null,
    foreignPollen: null,
    outcome: growOut.outcome === "" ? "no seed; nobody said why" : growOut.outcome,
  };
}

/** Counts of plants that cannot be together: as the figures judge them, whether or not the shares are known. */
export function plantFaults(growOut: BookedGrowOut, profile: Mating, path: Path): Refusal[] {
  const standing = wholeOf(growOut.plantsStanding);
  const before = wholeOf(growOut.roguedBeforePollen);
  const rogued = (before ?? 0) + (wholeOf(growOut.roguedAfterPollen) ?? 0);
  if (standing !== null && rogued > standing) {
    const needed = "write how many stood just before the first were pulled";
    return [
      refusal(
        "more-rogued-than-stood",
        [...path, "plantsStanding"],
        standing,
        `stood, and ${rogued} were pulled`,
        needed,
      ),
    ];
  }
  const { parents } = plotParentsOfRecord(
    {
      id: "",
      name: "",
      varietyId: "",
      parents: [],
      plantsStanding: standing,
      malesStanding: null,
      roguedBeforePollen: before,
      seedParents: seedParentsOf(growOut),
      // The count of plants is judged whatever their shares were.
      seedShares: "equal",
      selfingRate: null,
      foreignPollen: null,
    },
    profile,
  );
  return parents === null ? [] : plotParentsFaults(parents, path);
}
