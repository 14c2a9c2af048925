import type { FigureRecords, GrowOutRecord, LotRecord } from "./records";

/**
 * Some lots with all that they descend from, and the founders of which somebody wrote how they are related to one of those: what the lots' own
 * figures follow from. In the order of the records.
 */
export function recordsAround(records: FigureRecords, lotIds: readonly string[]): FigureRecords {
  const lots = new Map<string, LotRecord>(records.lots.map((lot) => [lot.id, lot]));
  const growOuts = new Map<string, GrowOutRecord>(records.growOuts.map((growOut) => [growOut.id, growOut]));
  const reached = new Set(lotIds);
  const grown = new Set<string>();
  const follow = () => {
    // A set that grows is walked to its end.
    for (const id of reached) {
      const lot = lots.get(id);
      for (const parent of lot?.parents ?? []) reached.add(parent.id);
      if (lot?.growOutId == null) continue;
      grown.add(lot.growOutId);
      for (const parent of growOuts.get(lot.growOutId)?.parents ?? []) reached.add(parent.id);
    }
  };
  follow();
  const kinships = (records.kinships ?? []).filter(
    ({ firstId, secondId }) => reached.has(firstId) || reached.has(secondId),
  );
  for (const { firstId, secondId } of kinships) reached.add(firstId).add(secondId);
  follow();
  // All harvests of a grow-out share its plants.
  for (const lot of records.lots) if (lot.growOutId !== null && grown.has(lot.growOutId)) reached.add(lot.id);
  return {
    ...records,
    lots: records.lots.filter(({ id }) => reached.has(id)),
    growOuts: records.growOuts.filter(({ id }) => grown.has(id)),
    kinships,
  };
}
