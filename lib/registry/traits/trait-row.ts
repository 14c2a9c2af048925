import {
  readWording,
  storedWording,
  type TraitDefinition,
  type TraitDirection,
  type TraitKind,
} from "@/lib/schemas/traits/trait";
import type { TraitScope } from "@/lib/schemas/traits/trait-form";
import type { RowOf } from "../change-set/records";
import { foldName } from "../names/fold-name";

/** The part of a stored trait that says what it means. */
type StoredDefinition = Pick<
  RowOf<"Trait">,
  "name" | "kind" | "unit" | "direction" | "target" | "scaleLow" | "scaleHigh" | "wording"
>;

/** A stored trait as scores are read by it. */
export function definitionOf(row: StoredDefinition): TraitDefinition {
  return {
    name: row.name,
    kind: row.kind as TraitKind,
    unit: row.unit,
    direction: row.direction as TraitDirection | null,
    target: row.target,
    scaleLow: row.scaleLow,
    scaleHigh: row.scaleHigh,
    wording: readWording(row.wording),
  };
}

/** What of a trait is stored, without its name. */
export function meaningOf(trait: TraitDefinition) {
  return {
    kind: trait.kind,
    unit: trait.unit,
    direction: trait.direction,
    target: trait.target,
    scaleLow: trait.scaleLow,
    scaleHigh: trait.scaleHigh,
    wording: storedWording(trait.wording),
  };
}

/** A trait's name as it is stored, with the key that finds it whatever its letter case. */
export function namesOfTrait(name: string) {
  return { name, nameKey: foldName(name) };
}

/** For which varieties a stored trait is. */
export function scopeOf(row: { readonly varietyId: string | null; readonly cropId: string | null }): TraitScope {
  if (row.varietyId !== null) return "variety";
  return row.cropId === null ? "all" : "crop";
}
