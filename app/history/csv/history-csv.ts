import { stringify } from "csv-stringify/sync";
import type { ChangeSetInList } from "@/lib/registry/history/list-change-sets";
import { countsInWords } from "../_words/change-words";

const head = [
  "number",
  "day",
  "time",
  "instant_utc",
  "kind",
  "title",
  "reason",
  "by",
  "written",
  "takes_back",
  "taken_back_by",
];

/** The change sets as a table. Instants are UTC; day and time are those of the one who wrote. */
export function historyCsv(sets: readonly ChangeSetInList[]): string {
  const rows = sets.map((set) => [
    set.number,
    set.day,
    set.time,
    set.at,
    set.kind,
    set.title,
    set.reason ?? "",
    set.actor,
    countsInWords(set.counts),
    set.undoes ?? "",
    set.undoneBy ?? "",
  ]);
  // Text that a spreadsheet would run as a formula is marked with an apostrophe.
  return stringify([head, ...rows], { record_delimiter: "\r\n", escape_formulas: true });
}
