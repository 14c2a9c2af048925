import type { GridColumn, GridRow } from "@/components/grid";
import { accepted, refusal, refused } from "@/lib/science/outcome";

/** A column of words that takes anything. */
export function wordsColumn(key: string, name = key): GridColumn {
  return {
    ...{ key, name, kind: "words", width: 5, hint: "", inputMode: "text", choices: [] },
    read: (typed) => accepted(typed.trim()),
  };
}

/** A column of whole numbers 1 to 9. */
export function stepsColumn(key: string, name = key): GridColumn {
  return {
    ...wordsColumn(key, name),
    kind: "number",
    read: (typed) =>
      /^[1-9]$/.test(typed.trim())
        ? accepted(typed.trim())
        : refused(refusal("not-a-step", [], typed, "is no step of 1 to 9", "write a whole number from 1 to 9")),
  };
}

export function gridRow(key: string, stored: Readonly<Record<string, string>> = {}): GridRow {
  return { key, added: false, stored, notes: {} };
}

export const columns = [wordsColumn("tag", "Tag"), wordsColumn("intent", "Intent"), stepsColumn("vigour", "vigour")];

/** Three plants; the second is scored. */
export const rows = [
  gridRow("p1", { tag: "1" }),
  gridRow("p2", { tag: "2", intent: "keep", vigour: "7" }),
  gridRow("p3", { tag: "3" }),
];

export const byKey = new Map(rows.map((row) => [row.key, row]));
