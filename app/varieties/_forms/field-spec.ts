import type { Option } from "@/components/ui";

interface Common {
  readonly name: string;
  readonly label: string;
  readonly hint?: string;
  readonly value?: string | null;
  readonly required?: boolean;
}

/** One field of a form, as data: what it is called, what stands in it, and how it is filled in. */
export type FieldSpec =
  | (Common & { readonly kind: "words"; readonly lines?: number })
  | (Common & { readonly kind: "date" })
  | (Common & { readonly kind: "number"; readonly unit?: string; readonly whole?: boolean })
  | (Common & { readonly kind: "select"; readonly options: readonly Option[]; readonly empty?: string })
  | (Common & { readonly kind: "choice"; readonly options: readonly (Option & { readonly note?: string })[] })
  | (Common & { readonly kind: "tick"; readonly note?: string })
  | { readonly kind: "hidden"; readonly name: string; readonly value: string };

/** What a form's action answers where it was refused: why, and what was typed. */
export interface FormAnswer {
  readonly refusals: readonly { readonly field: string; readonly sentence: string }[];
  readonly typed: Readonly<Record<string, string>>;
}

export const unanswered: FormAnswer = { refusals: [], typed: {} };

/** What stands in the fields of a form that a person fills in. */
export function textsOfFields(fields: readonly FieldSpec[]): Record<string, string> {
  return Object.fromEntries(
    fields.flatMap((field) => (field.kind === "hidden" ? [] : [[field.name, field.value ?? ""] as const])),
  );
}
