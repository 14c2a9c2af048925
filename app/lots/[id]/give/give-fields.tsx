import { Button, DateField, NumberField, type Option, Select, TextField, Tick } from "@/components/ui";
import { Refusals } from "@/components/ui/field";
import type { StewardToGiveTo } from "@/lib/registry/transfers/read-giving";
import type { Saying } from "@/lib/registry/transfers/what-to-say";
import { FieldGroup, type FieldOf, SideBySide } from "../../_form/lot-form";
import styles from "./give.module.css";

/** Who gets it: a steward, somebody new, or somebody whose name is not kept. */
export function RecipientFields({
  field,
  stewards,
  holder,
}: {
  field: FieldOf;
  stewards: readonly StewardToGiveTo[];
  holder: string | null;
}) {
  const options = stewards.map(({ name, kind }): Option => {
    const what =
      name === holder ? ", in another building" : kind === "library" || kind === "genebank" ? `, ${kind}` : "";
    return { value: name, words: `${name}${what}` };
  });
  return (
    <FieldGroup title="Who gets it">
      <SideBySide>
        {options.length > 0 ? (
          <Select {...field("holder")} label="A steward on record" options={options} empty="nobody of these" />
        ) : null}
        <TextField {...field("newHolder")} label="or a new name" hint="becomes a steward; kept apart and private" />
      </SideBySide>
      <TextField
        {...field("toWords")}
        label="or somebody whose name is not kept"
        hint="a reader at the swap table: then nobody can ask how it did"
      />
    </FieldGroup>
  );
}

/** What was told with it, ticked from a list that this seed asks for. */
export function ToldFields({
  field,
  sayings,
  fill,
}: {
  field: FieldOf;
  sayings: readonly Saying[];
  fill: (texts: Readonly<Record<string, string>>) => void;
}) {
  const { refusals } = field("told");
  const plain = sayings.filter((saying) => !saying.must);
  return (
    <FieldGroup title="What was told with it">
      <div className={styles.told} id="field-told" tabIndex={-1}>
        <p className="quiet">Tick what was said. It is kept in these words, and the slip has them.</p>
        {sayings.map((saying) => (
          <Tick
            key={saying.key}
            name={`told.${saying.key}`}
            label={saying.words}
            note={saying.must ? "it can hurt somebody: seed does not go out before it is said" : undefined}
            checked={field(`told.${saying.key}`).value === "yes"}
          />
        ))}
        <div className="row">
          <Button onClick={() => fill(Object.fromEntries(plain.map(({ key }) => [`told.${key}`, "yes"])))}>
            {plain.length < sayings.length ? "All but the cautions was said" : "All of it was said"}
          </Button>
        </div>
        <Refusals id="told-refusals" refusals={refusals} />
      </div>
      <TextField {...field("toldWords")} label="What else was said" lines={2} />
    </FieldGroup>
  );
}

/** What was promised, and when an answer is due; a loan asks for both. */
export function ReturnFields({ field, loan }: { field: FieldOf; loan: boolean }) {
  return (
    <FieldGroup title="What comes back">
      <TextField
        {...field("promise")}
        label="What was promised"
        hint="in their words: brings 20 g back; will grow 100 by 2029"
        required={loan}
      />
      <DateField
        {...field("replyDue")}
        label="When to ask"
        hint="2028-10 for October, 2028 for the end of that year: then it waits in the season"
        required={loan}
      />
    </FieldGroup>
  );
}

/** Where a safety duplicate stands. */
export function DepositFields({ field, required }: { field: FieldOf; required: boolean }) {
  return (
    <FieldGroup title="Where it will stand">
      <SideBySide>
        <TextField
          {...field("building")}
          label="Building"
          hint="one fire, one flood is one place"
          required={required}
        />
        <TextField {...field("place")} label="Shelf, cupboard, freezer" />
      </SideBySide>
    </FieldGroup>
  );
}

/** How much leaves, and when. */
export function AmountFields({ field, units, seeds }: { field: FieldOf; units: readonly Option[]; seeds: boolean }) {
  return (
    <FieldGroup title="How much, and when">
      <SideBySide>
        <NumberField {...field("amount")} label="How much" required />
        <Select
          {...field("unit")}
          label="counted in"
          hint={seeds ? undefined : "seeds only once some were counted and weighed"}
          options={units}
          required
        />
        <DateField {...field("on")} label="When" hint="the day, or 2026-11" required />
      </SideBySide>
    </FieldGroup>
  );
}
