import { type Option, Select, TextField } from "@/components/ui";
import { type FieldOf, SideBySide } from "./lot-form";

/** Who holds a lot: one of the stewards, or somebody who is new here. */
export function HolderFields({ field, stewards }: { field: FieldOf; stewards: readonly Option[] }) {
  return (
    <SideBySide>
      {stewards.length > 0 ? (
        <Select {...field("holder")} label="Who holds it" options={stewards} empty="not known" />
      ) : null}
      <TextField
        {...field("newHolder")}
        label={stewards.length > 0 ? "or somebody new" : "Who holds it"}
        hint="the name becomes a steward here"
      />
    </SideBySide>
  );
}
