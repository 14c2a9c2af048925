import { type Objection, strainObjections } from "@/lib/registry/lots/objections";
import type { BlendCandidate } from "@/lib/registry/lots/read-blend-ground";

/** What stands against mixing these lots: against each by itself, and against their strains together. */
export function objectionsAmong(lots: readonly BlendCandidate[]): Objection[] {
  return [...lots.flatMap((lot) => lot.objections), ...strainObjections(lots)];
}
