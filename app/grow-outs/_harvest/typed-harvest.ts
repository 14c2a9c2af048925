import { gramsTyped, type UnitSettings } from "@/lib/display/units";
import { mostParentsInForm } from "@/lib/schemas/harvests/harvest-entry";
import { decimal } from "@/lib/schemas/lots/form-fields";

export type Texts = Readonly<Record<string, string>>;

/** A row of the form: a plant of the grow-out, or a bag of which only that is known. */
export type RowsOf = "plants" | "bags";

/** Which rows the form is about. */
export function rowsTold(typed: Texts): RowsOf {
  return typed.told === "plants" ? "plants" : "bags";
}

/** The rows of plants or of bags, in their order, as the shape of a harvest takes them. */
export function parentsOfTexts(typed: Texts, rows: RowsOf): { plant?: string; amount?: string; fate?: string }[] {
  const found: { plant?: string; amount?: string; fate?: string }[] = [];
  for (const [name, text] of Object.entries(typed)) {
    const [group, place, column] = name.split(".");
    const row = Number(place);
    if (group !== rows || !Number.isInteger(row) || row < 0 || row >= mostParentsInForm) continue;
    while (found.length <= row) found.push({});
    const at = found[row];
    if (at && (column === "plant" || column === "amount" || column === "fate")) at[column] = text;
  }
  return found;
}

/** What is known while a harvest is being typed. */
export interface LiveHarvest {
  /** plants whose seed is kept */
  readonly seedParents: number;
  /** what they gave, in grams or seeds, as far as it can be read */
  readonly amounts: readonly { readonly row: number; readonly amount: number }[];
  readonly unit: "g" | "seeds";
}

const amountRead = decimal({ above: 0 });

/** Reads what stands in the form just now; a cell that cannot be read counts as not measured. */
export function liveHarvest(typed: Texts, units: UnitSettings): LiveHarvest {
  const rows = rowsTold(typed);
  const unit = typed.each === "seeds" ? "seeds" : "g";
  const told = parentsOfTexts(typed, rows);
  const kept = told.flatMap(({ amount, fate = rows === "bags" ? "kept" : "not taken" }, row) =>
    fate === "kept" ? [{ row, amount: measured(amount, unit, units) }] : [],
  );
  const amounts = kept.flatMap(({ row, amount }) => (amount === null ? [] : [{ row, amount }]));
  const counted = Number(typed.seedParents ?? "");
  const seedParents =
    rows === "plants" ? kept.length : Number.isInteger(counted) && counted > 0 ? counted : amounts.length;
  return { seedParents, amounts: typed.each === "nothing" ? [] : amounts, unit };
}

function measured(text: string | undefined, unit: "g" | "seeds", units: UnitSettings): number | null {
  if (text === undefined || text.trim() === "") return null;
  const read = amountRead(text);
  if (!read.ok) return null;
  return unit === "g" ? gramsTyped(read.value, units) : read.value;
}
