import { parentsAtOnce } from "@/lib/schemas/grow-outs/plan-grow-out";

/** A line of a form that names a lot. */
export interface TypedParent {
  readonly lot: string;
  readonly share: string;
  readonly role: string;
}

/** The lots of a form by their fields `parents.0.lot`, `parents.0.share`, `parents.0.role`, as the shape takes them. */
export function parentsOfTexts(texts: Readonly<Record<string, string | undefined>>): TypedParent[] {
  return Array.from({ length: parentsAtOnce }, (_, index) => ({
    lot: texts[`parents.${index}.lot`] ?? "",
    share: texts[`parents.${index}.share`] ?? "",
    role: texts[`parents.${index}.role`] ?? "",
  }));
}

/** The same as a form's texts. */
export function textsOfParents(
  parents: readonly { readonly id: string; readonly share: number | null; readonly role: string | null }[],
): Record<string, string> {
  return Object.fromEntries(
    parents.flatMap(({ id, share, role }, index) => [
      [`parents.${index}.lot`, id],
      [
        `parents.${index}.share`,
        share === null || parents.length === 1 ? "" : String(Number((share * 100).toPrecision(8))),
      ],
      [`parents.${index}.role`, role ?? ""],
    ]),
  );
}

/** How many lines to show: one more than the last that is filled, at least one. */
export function linesShown(parents: readonly TypedParent[]): number {
  const last = parents.findLastIndex(({ lot, share }) => lot !== "" || share !== "");
  return Math.max(1, last + 1);
}

/** A share as it stands in a field, 0 to 1; null where none or none that can be read. */
export function shareTyped(text: string): number | null {
  const value = Number(text.replace("%", "").replace(",", ".").trim());
  return text.trim() === "" || !(value > 0 && value <= 100) ? null : value / 100;
}

/** A whole count as it stands in a field; null where none or none that can be read. */
export function countTyped(text: string | undefined): number | null {
  return /^\s*[1-9]\d{0,6}\s*$/.test(text ?? "") ? Number(text) : null;
}
