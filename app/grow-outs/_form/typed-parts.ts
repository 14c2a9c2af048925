import { parentsAtOnce } from "@/lib/schemas/grow-outs/plan-grow-out";

/** A line of the sowing form. */
export interface TypedPart {
  readonly lot: string;
  readonly amount: string;
  readonly unit: string;
}

/** The lines of a sowing by their fields `parts.0.lot`, `parts.0.amount`, `parts.0.unit`; a line without a lot and an amount says nothing. */
export function partsOfTexts(texts: Readonly<Record<string, string | undefined>>): TypedPart[] {
  return Array.from({ length: parentsAtOnce }, (_, index) => ({
    lot: texts[`parts.${index}.lot`] ?? "",
    amount: texts[`parts.${index}.amount`] ?? "",
    unit: texts[`parts.${index}.unit`] || "g",
  }));
}

/** An amount as it stands in a field, in grams or seeds; null where none or none that can be read. */
export function amountTyped(text: string): number | null {
  const value = Number(text.replace(",", ".").trim());
  return text.trim() === "" || !(value >= 0) ? null : value;
}
