import { Choice, DateField, NumberField, Select, TextField, Tick } from "@/components/ui";
import type { FieldSpec } from "./field-spec";

/** One field of a form from its description; what was typed stands over the stored value. */
export function FormField({
  field,
  typed,
  answered,
  refusals,
}: {
  field: FieldSpec;
  /** undefined: not sent (yet) */
  typed: string | undefined;
  /** the form was sent once: a box that was not sent was left empty */
  answered: boolean;
  refusals: readonly string[];
}) {
  if (field.kind === "hidden") return <input type="hidden" name={field.name} value={field.value} />;
  const { kind: _kind, ...rest } = field;
  const value = typed ?? field.value ?? null;
  if (field.kind === "words") return <TextField {...rest} lines={field.lines} value={value} refusals={refusals} />;
  if (field.kind === "date") return <DateField {...rest} value={value} refusals={refusals} />;
  if (field.kind === "number") {
    return <NumberField {...rest} unit={field.unit} whole={field.whole} value={value} refusals={refusals} />;
  }
  if (field.kind === "select") {
    return <Select {...rest} options={field.options} empty={field.empty} value={value} refusals={refusals} />;
  }
  if (field.kind === "choice") return <Choice {...rest} options={field.options} value={value} refusals={refusals} />;
  const checked = answered ? typed === "yes" : field.value === "yes";
  return <Tick name={field.name} label={field.label} note={field.note} checked={checked} />;
}
