import { grouped } from "../../change-set/grouped";
import type { SeasonGrowOut, SeasonRecords, WaitingItem } from "../records";

export interface NarrowGrowOut {
  readonly growOut: SeasonGrowOut;
  readonly effectiveSize: number;
  /** the crop's floor of plants */
  readonly floor: number;
}

/**
 * The last grow-out of a variety that gave seed was a bottleneck: its effective size lies below the floor of plants of its crop. Clonal
 * crops have no effective size. "Last" is by the last possible day of sowing; a grow-out without a date counts only where none has one.
 */
export function narrowGrowOut({
  varieties,
  growOuts,
  lots,
}: SeasonRecords): WaitingItem<"narrow-grow-out", NarrowGrowOut>[] {
  const sizeOf = new Map(lots.flatMap((lot) => (lot.growOutId === null ? [] : [[lot.growOutId, lot.effectiveSize]])));
  const gaveSeed = growOuts.filter((growOut) => sizeOf.has(growOut.id));
  return [...grouped(gaveSeed, (growOut) => growOut.varietyId)].flatMap(([varietyId, own]) => {
    const crop = varieties.get(varietyId)?.crop;
    const last = own.reduce((newest, each) => ((each.sownLast ?? "") >= (newest.sownLast ?? "") ? each : newest));
    const size = sizeOf.get(last.id) ?? null;
    const floor = crop?.plantsMin ?? null;
    if (crop?.clonal || size === null || floor === null || size >= floor) return [];
    const facts = { growOut: last, effectiveSize: size, floor };
    return [{ rule: "narrow-grow-out", place: "field", urgency: 1, varietyId, lotId: null, facts }];
  });
}
