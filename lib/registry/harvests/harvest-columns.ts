import type { Selection } from "@/lib/db";
import type { RowOf } from "../change-set/records";

/** The columns of a stored harvest. */
export const harvestColumns: Selection<RowOf<"Harvest">>["columns"] = {
  ...{ id: "text", growOutId: "text", lotId: "text", on: "text", onFirst: "text", onLast: "text", bulked: "text" },
  ...{ seedParents: "number", detasselled: "number", grams: "number", seeds: "number", mouldyShare: "number" },
  ...{ note: "text", stewardId: "text", replacesId: "text", recordedAt: "text", recordedOffset: "number" },
  ...{ deviceId: "text", deviceSequence: "number" },
};
