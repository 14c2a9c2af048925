import type { GrowOutLot, LineageLot } from "@/lib/science/lineage/lots";
import type { GrowOutAsKnown, LotAsKnown } from "@/lib/science/lineage/span-lots";
import { type Path, type Refusal, refusal } from "@/lib/science/outcome";

/** What belongs to the plants, so that it has to be alike in every lot that was harvested from them. */
const ofPlants = [
  "parents",
  "pollenParents",
  "seedParents",
  "sexes",
  "selfingRate",
  "selfIncompatible",
  "pollenShares",
  "foreignPollen",
] as const;

/** Lots of the same plants that do not say the same of them, or do not say plant by plant what each gave. */
export function plantsFaults(lots: readonly (LineageLot | LotAsKnown)[]): Refusal[] {
  const first = new Map<string, GrowOutLot | GrowOutAsKnown>();
  return lots.flatMap((lot, place) => {
    if (lot.kind !== "grow-out" || lot.plants === undefined) return [];
    const at: Path = ["lots", place];
    const faults = spreadFaults(lot, at);
    const one = first.get(lot.plants);
    if (one === undefined) first.set(lot.plants, lot);
    else {
      for (const key of ofPlants) {
        if (JSON.stringify(lot[key] ?? null) === JSON.stringify(one[key] ?? null)) continue;
        const wrong = `is not what lot ${one.id} says of the same plants`;
        const needed = "write the same in both; only seedShares are each harvest's own, one number a plant, 0 for none";
        faults.push(refusal("other-plants", [...at, key], JSON.stringify(lot[key] ?? null), wrong, needed));
      }
    }
    return faults;
  });
}

function spreadFaults(lot: GrowOutLot | GrowOutAsKnown, at: Path): Refusal[] {
  return (["seedShares", "pollenShares"] as const).flatMap((key) => {
    const shares = lot[key];
    if (typeof shares !== "object" || !("cv" in shares)) return [];
    const needed = 'one number a plant in one order, or "equal": the lots of the same plants are joined plant by plant';
    return [refusal("spread-of-same-plants", [...at, key, "cv"], shares.cv, "is all that is said of it", needed)];
  });
}
