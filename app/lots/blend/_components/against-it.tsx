import { Section } from "@/components/frame";
import { TextField } from "@/components/ui";
import type { FieldOf } from "../../_form/use-form-answer";
import type { PartOfForm } from "../_mix/mix-of-form";
import { objectionsAmong } from "../_mix/objections-among";

/** What stands against the mix that is ticked, and the field for a reason where a steward may overrule it. */
export function AgainstIt({ parts, field }: { parts: readonly PartOfForm[]; field: FieldOf }) {
  const objections = objectionsAmong(parts.map((part) => part.lot));
  const aged = parts.filter(({ lot, living }) => lot.test !== null && living?.grade === "assumed");
  if (objections.length === 0 && aged.length === 0) return null;
  const never = objections.filter((each) => !each.overridable);
  const overridable = objections.filter((each) => each.overridable);
  return (
    <Section id="against" title="What stands against it">
      <div className="stack">
        <ul className="stack-near">
          {objections.map((each) => (
            <li key={`${each.number} ${each.code} ${each.words}`} className={each.overridable ? undefined : "waits"}>
              Lot {each.number} {each.words}.{each.overridable ? "" : " It does not go in."}
            </li>
          ))}
          {aged.map(({ lot }) => (
            <li key={lot.id}>
              Lot {lot.number} was last tested longer ago than its seed usually lives. A test before it is mixed says
              what still does.
            </li>
          ))}
        </ul>
        {overridable.length > 0 && never.length === 0 ? (
          <TextField
            {...field("override")}
            label="Why all the same"
            hint="kept with the blend for as long as there is seed of it; without a reason it is not written down"
            lines={2}
            required
          />
        ) : null}
      </div>
    </Section>
  );
}
