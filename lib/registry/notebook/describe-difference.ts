import { notebookTables, type TableName, tableNames } from "@/lib/schemas/notebook/columns";
import type { Difference } from "./difference";

const nouns: Readonly<Record<TableName, readonly [one: string, many: string]>> = {
  stewards: ["steward", "stewards"],
  varieties: ["variety", "varieties"],
  growOuts: ["grow-out", "grow-outs"],
  lots: ["lot", "lots"],
  plants: ["plant", "plants"],
  tests: ["line of tests", "lines of tests"],
  ledger: ["ledger entry", "ledger entries"],
};

/** How many records of each kind a folder would add, change or leave. */
export interface Tally {
  readonly noun: string;
  readonly file: string;
  readonly added: number;
  readonly changed: number;
  readonly same: number;
}

export function tallyOf(difference: Difference): Tally[] {
  return tableNames.map((table) => {
    const { added, changed, same } = difference[table];
    return {
      noun: nouns[table][1],
      file: notebookTables[table].file,
      added: added.length,
      changed: changed.length,
      same,
    };
  });
}

/** "156 lots and 3 stewards", for the title of a change set. */
export function titleOf(difference: Difference): string {
  const parts = tableNames.flatMap((table) => {
    const count = difference[table].added.length + difference[table].changed.length;
    return count === 0 ? [] : [`${count} ${nouns[table][count === 1 ? 0 : 1]}`];
  });
  return parts.length < 2 ? parts.join("") : `${parts.slice(0, -1).join(", ")} and ${parts.at(-1)}`;
}

/** One sentence a record that would change. */
export function changeLines(difference: Difference): string[] {
  return tableNames.flatMap((table) =>
    difference[table].changed.map((changed) => {
      const key = notebookTables[table].named ?? "";
      const name = String((changed.row.cells as Record<string, unknown>)[key]);
      const cells = changed.cells.map(
        ({ column, from, to }) => `${column} from ${from === "" ? "empty" : `"${from}"`} to "${to}"`,
      );
      return `${nouns[table][0]} ${name}: ${cells.join(", ")}`;
    }),
  );
}
