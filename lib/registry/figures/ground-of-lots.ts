import { groundOfMix, type MixGround } from "@/lib/science/blend/ground-of-mix";
import { pedigree } from "@/lib/science/lineage/pedigree";
import { lineageNodes, lotNode } from "./lineage-nodes";
import type { FigureRecords } from "./records";
import { recordsAround } from "./records-around";

/** The ground of a mix of lots of the registry; founders stand under their lot numbers. */
export type GroundOfLots = MixGround;

/**
 * How near lots are kin, and what else the figures of a mix of them follow from, by the same lineage as `lineageOfRecords`. Where an
 * ancestor's plants are not known its figures stand for nothing: look at each lot's own first. Null where the records make no lineage.
 */
export function groundOfLots(records: FigureRecords, lotIds: readonly string[]): GroundOfLots | null {
  const nodes = lineageNodes(recordsAround(records, lotIds));
  const checked = pedigree(nodes.map(({ lot }) => lot));
  if (!checked.ok) return null;
  const names = new Map(nodes.map(({ lot, name }) => [lot.id, name]));
  const ground = groundOfMix(checked.value, lotIds.map(lotNode));
  return {
    ...ground,
    lots: ground.lots.map(({ founders, ...lot }) => ({
      ...lot,
      founders: Object.fromEntries(Object.entries(founders).map(([id, part]) => [names.get(id) ?? id, part])),
    })),
  };
}
