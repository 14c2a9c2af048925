import { grouped } from "../change-set/grouped";
import type { RecordsOfCrops } from "./read-records";

/** The records of several crops, one crop at a time: a cross stays within its crop, so each is whole by itself. */
export function recordsByCrop(records: RecordsOfCrops): ReadonlyMap<string, RecordsOfCrops> {
  const { crops } = records;
  const cropOf = (each: { readonly varietyId: string }) => crops.get(each.varietyId) ?? "";
  const cropOfLot = new Map(records.lots.map((lot) => [lot.id, cropOf(lot)]));
  const ofLot = (lotId: string) => cropOfLot.get(lotId) ?? "";
  const lots = grouped(records.lots, cropOf);
  const growOuts = grouped(records.growOuts, cropOf);
  const kinships = grouped(records.kinships ?? [], ({ firstId }) => ofLot(firstId));
  const varieties = grouped(records.varieties, ({ id }) => crops.get(id) ?? "");
  return new Map(
    [...varieties].map(([crop, own]) => [
      crop,
      {
        crops,
        varieties: own,
        lots: lots.get(crop) ?? [],
        growOuts: growOuts.get(crop) ?? [],
        kinships: kinships.get(crop) ?? [],
        // Asked by lot: they need no parting.
        ledger: records.ledger,
        tests: records.tests,
      },
    ]),
  );
}
