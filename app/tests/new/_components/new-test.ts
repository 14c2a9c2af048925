import type { CivilDay } from "@/lib/science/dates/civil-day";
import { germinationConditions } from "@/lib/science/germination/germination-conditions";
import type { OwnInTable } from "@/lib/science/tables/own-in-table";
import type { TestDraft, TestHints } from "../../_forms/test-draft";
import { daysInWords, mediaInWords, warmthInWords } from "../../_words/conditions-in-words";

const usualDays = "7, 14";

/** What a new test begins with: today, four replicates of 25, and the days on which an official test of its crop is counted. */
export function newTest({
  today,
  cropKey,
  lastBasis,
  ownInTables = [],
}: {
  today: CivilDay;
  cropKey: string;
  lastBasis: string | null;
  ownInTables?: readonly OwnInTable[];
}): { start: TestDraft; hints: TestHints } {
  const conditions = germinationConditions(cropKey, ownInTables);
  const days = conditions
    ? [conditions.firstCountDay, conditions.finalCountDay].filter((day) => day !== null).join(", ")
    : usualDays;
  return {
    start: {
      fields: { on: today, basis: lastBasis ?? "", seedsUsed: "no" },
      sheet: { replicates: "4", each: "25", sown: {}, days, apart: {}, cells: {} },
    },
    hints: {
      days: conditions
        ? `${daysInWords(conditions)}; ? where nobody wrote it down`
        : "after setting up; ? where nobody wrote it down",
      temperature: conditions ? warmthInWords(conditions) : undefined,
      method: conditions ? mediaInWords(conditions) : undefined,
    },
  };
}
