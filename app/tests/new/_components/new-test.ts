import type { CivilDay } from "@/lib/science/dates/civil-day";
import type { TestDraft } from "../../_forms/test-draft";

/** What a new test begins with: today, four replicates of 25, and the days on which its crop is counted. */
export function newTest({ today, lastBasis }: { today: CivilDay; cropKey: string; lastBasis: string | null }): {
  start: TestDraft;
  hints: { days?: string; temperature?: string };
} {
  return {
    start: {
      fields: { on: today, basis: lastBasis ?? "", seedsUsed: "no" },
      sheet: { replicates: "4", each: "25", sown: {}, days: "7, 14", apart: {}, cells: {} },
    },
    hints: { days: "in days after setting up; ? where nobody wrote the day down" },
  };
}
