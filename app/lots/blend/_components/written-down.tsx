import { DateField, TextField } from "@/components/ui";
import { HolderFields } from "../../_form/holder-fields";
import type { FieldOf } from "../../_form/use-form-answer";

/** The number, the holder, the day and the reason of a blend. */
export function WrittenDown({ field, stewards }: { field: FieldOf; stewards: readonly string[] }) {
  return (
    <div className="stack">
      <TextField
        {...field("reason")}
        label="Why they are mixed"
        hint="the old lot for breadth, the young one for vigour; one jar too small to sow from"
        lines={2}
        required
      />
      <DateField {...field("on")} label="When they were mixed" required />
      <TextField {...field("number")} label="Number of the blend" hint="left empty, its label code is its number" />
      <HolderFields field={field} stewards={stewards.map((name) => ({ value: name, words: name }))} />
      <TextField {...field("notes")} label="Notes" lines={2} />
    </div>
  );
}
