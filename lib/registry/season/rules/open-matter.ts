import type { OpenMatter, SeasonRecords, WaitingItem } from "../records";

/** Questions that only a person can settle, and warnings that are not closed. A warning cannot wait. */
export function openMatters({ matters, lots }: SeasonRecords): WaitingItem<"open-matter", OpenMatter>[] {
  const varietyOfLot = new Map(lots.map((lot) => [lot.id, lot.varietyId]));
  return matters.map((matter) => ({
    rule: "open-matter",
    place: "desk",
    urgency: matter.kind === "warning" ? 0 : 1,
    varietyId: matter.varietyId ?? (matter.lotId === null ? null : (varietyOfLot.get(matter.lotId) ?? null)),
    lotId: matter.lotId,
    facts: matter,
  }));
}
