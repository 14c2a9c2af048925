import { Choice, DateField, NumberField, type Option, Select, TextField } from "@/components/ui";
import { type FieldOf, SideBySide } from "../../_form/lot-form";

/** What a ledger entry says: what was done, when, how much, with whom. */
export function EntryFields({
  field,
  kinds,
  weightUnit,
  seeds,
}: {
  field: FieldOf;
  kinds: readonly (Option & { note?: string })[];
  /** the steward's unit of weight */
  weightUnit: "g" | "oz";
  /** whether the lot's seed weight is known, so that seeds can be counted */
  seeds: boolean;
}) {
  const units: Option[] = [
    { value: "g", words: weightUnit === "g" ? "grams" : "ounces" },
    ...(seeds ? [{ value: "seeds", words: "seeds" }] : []),
  ];
  return (
    <>
      <Choice {...field("kind")} label="What was done" options={kinds} required />
      <SideBySide>
        <NumberField {...field("amount")} label="How much" required />
        <Select {...field("unit")} label="counted in" options={units} required />
      </SideBySide>
      <DateField {...field("on")} label="When" required />
      <TextField
        {...field("other")}
        label="Whose hand, which grow-out, which lot"
        hint="a steward's name or a lot's number is joined to its record"
      />
      <TextField {...field("notes")} label="Notes" lines={2} />
    </>
  );
}

export const entryLabels = {
  kind: "What was done",
  amount: "How much",
  unit: "Counted in",
  on: "When",
  reason: "What was wrong",
};
