import { type Selection, sql } from "@/lib/db";
import type { RowOf } from "../change-set/records";

/** A variety and what was written of it: rows of the tables as they are stored, in the order of entry. */
export function varietySelections(varietyId: string) {
  const varieties: Selection<RowOf<"Variety">> = {
    columns: {
      id: "text",
      name: "text",
      nameKey: "text",
      cropId: "text",
      aim: "text",
      story: "text",
      typeDescription: "text",
      seedCoat: "text",
      cautions: "text",
      rights: "text",
      sensitivity: "text",
      plantsWanted: "number",
      seedParentsWanted: "number",
      isolationWantedM: "number",
      note: "text",
      extra: "text",
      revision: "number",
    },
    rows: sql`SELECT v.* FROM "Variety" v WHERE v."id" = ${varietyId}`,
  };
  const traits: Selection<RowOf<"TypeTrait">> = {
    columns: {
      id: "text",
      varietyId: "text",
      trait: "text",
      traitId: "text",
      allowed: "text",
      offType: "text",
      part: "text",
    },
    rows: sql`SELECT t.* FROM "TypeTrait" t WHERE t."varietyId" = ${varietyId} ORDER BY t."id"`,
  };
  const strains: Selection<RowOf<"Strain">> = {
    columns: {
      id: "text",
      varietyId: "text",
      name: "text",
      nameKey: "text",
      stewardId: "text",
      place: "text",
      keptFrom: "text",
      keptTo: "text",
      difference: "text",
      relation: "text",
      note: "text",
    },
    rows: sql`SELECT s.* FROM "Strain" s WHERE s."varietyId" = ${varietyId} ORDER BY s."id"`,
  };
  const stories: Selection<RowOf<"Story">> = {
    columns: {
      id: "text",
      varietyId: "text",
      lotId: "text",
      growOutId: "text",
      words: "text",
      teller: "text",
      stewardId: "text",
      toldOn: "text",
      about: "text",
      aboutFirst: "text",
      aboutLast: "text",
      consent: "text",
    },
    rows: sql`SELECT s.* FROM "Story" s WHERE s."varietyId" = ${varietyId} ORDER BY s."id"`,
  };
  return { varieties, traits, strains, stories };
}
