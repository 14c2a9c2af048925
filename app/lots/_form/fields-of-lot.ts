import type { LotHead } from "@/lib/registry/lots/read-head";

/** What stands in the fields in which a lot is put right. */
export function fieldsOfLot(lot: LotHead): Record<string, string> {
  return {
    year: lot.year ?? "",
    yearWords: lot.yearWords ?? "",
    holder: lot.holder ?? "",
    status: lot.status ?? "",
    statusReason: lot.statusReason ?? "",
    notes: lot.notes ?? "",
    thousandSeedGrams: lot.thousandSeedGrams === null ? "" : String(lot.thousandSeedGrams),
    identityGrade: lot.identityGrade ?? "",
    treatment: lot.treatment ?? "",
    treatmentSubstance: lot.treatmentSubstance ?? "",
    donorNumber: lot.donorNumber ?? "",
    founderLines: lot.founderLines ?? "",
    inbreeding: lot.inbreeding === null ? "" : String(lot.inbreeding),
    isolationGrade: lot.isolationGrade ?? "",
    isolationReasons: lot.isolationReasons ?? "",
  };
}
