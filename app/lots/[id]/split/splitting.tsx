"use client";

import { Section } from "@/components/frame";
import { Figure } from "@/components/numbers";
import { DateField, NumberField, type Option, Select, TextField } from "@/components/ui";
import { seedsAbout } from "@/lib/display/numbers";
import { type UnitSettings, weight } from "@/lib/display/units";
import type { SeedCount } from "@/lib/registry/lots/live-seeds";
import type { Objection } from "@/lib/registry/lots/objections";
import { containerKinds } from "@/lib/schemas/lots/record-container";
import { partLot } from "../../_actions/part-and-mix";
import { ActForm, type ActFormParts } from "../../_form/act-form";
import { HolderFields } from "../../_form/holder-fields";
import { SideBySide } from "../../_form/lot-form";
import { explainReserveAfter } from "./explain-reserve-after";
import { type JarToSplit, type KeptBack, leftAfter } from "./left-after";

/** What is parted, for whom and why, with what stays in the jar and in reserve shown while it is typed. */
export function Splitting({
  lot,
  seeds,
  counted,
  kept,
  objections,
  stewards,
  places,
  units,
  today,
}: {
  lot: JarToSplit & { readonly number: string };
  seeds: SeedCount | null;
  /** whether the lot is one of those on which its holder counts for the reserve */
  counted: boolean;
  kept: KeptBack | null;
  objections: readonly Objection[];
  stewards: readonly string[];
  places: readonly string[];
  units: UnitSettings;
  today: string;
}) {
  const never = objections.filter((each) => !each.overridable);
  const after = (values: Readonly<Record<string, string>>) => leftAfter(lot, counted, kept, values, units);
  return (
    <ActForm
      draft={`split:${lot.id}`}
      deed={partLot.bind(null, lot.id)}
      start={{ unit: "g", on: today, holder: lot.holder ?? "" }}
      labels={{
        amount: "How much",
        unit: "Counted in",
        on: "When",
        number: "Its own number",
        holder: "Who holds it",
        newHolder: "Somebody new",
        override: "Why all the same",
        lot: "The lot",
      }}
      question={(values) => {
        const { grams } = after(values);
        return {
          ready: never.length === 0,
          button: "Split it",
          title: `Part lot ${lot.number}?`,
          says: (
            <p>
              {grams === null ? "Some of it" : weight(grams, units)} goes into another jar
              {values.number ? `, as lot ${values.number}` : ""}. From then on each of the two has a history of its own.
            </p>
          ),
          confirm: "It is parted, write it down",
        };
      }}
      back={`/lots/${lot.id}`}
    >
      {(form) => (
        <>
          <Stays form={form} lot={lot} seeds={seeds} after={after(form.values)} kept={kept} units={units} />
          {objections.length > 0 ? <Against objections={objections} form={form} /> : null}
          <Parted form={form} lot={lot} stewards={stewards} places={places} units={units} />
        </>
      )}
    </ActForm>
  );
}

function Stays({
  form,
  lot,
  seeds,
  after,
  kept,
  units,
}: {
  form: ActFormParts;
  lot: JarToSplit & { readonly number: string };
  seeds: SeedCount | null;
  after: ReturnType<typeof leftAfter>;
  kept: KeptBack | null;
  units: UnitSettings;
}) {
  if (lot.grams === null)
    return (
      <Figure value="Unknown" waiting>
        is how much is in the jar: weigh it first and write that into its ledger, then part it.
      </Figure>
    );
  if (after.left === null)
    return (
      <Figure value={weight(lot.grams, units)}>
        {seeds === null || seeds.value === null ? "" : `${seedsAbout(seeds.value)}: `}that is in the jar.
      </Figure>
    );
  const short = after.left < 0;
  const belowReserve = after.reserveKept === "no";
  const explanation = kept && after.onHand ? explainReserveAfter(lot.number, kept, after) : undefined;
  return (
    <div aria-live="polite">
      <Figure
        value={short ? "Too much" : weight(after.left, units)}
        waiting={short || belowReserve || after.left < 1e-6}
        explanation={explanation}
      >
        {short
          ? `is taken: the jar holds ${weight(lot.grams, units)}.`
          : `${after.left < 1e-6 ? "is left: the jar would be empty." : "stays in the jar."}${reserveSentence(after, form.values.holder === (lot.holder ?? ""))}`}
      </Figure>
    </div>
  );
}

function reserveSentence({ reserveKept, onHand }: ReturnType<typeof leftAfter>, sameHolder: boolean): string {
  if (onHand === null) return "";
  if (reserveKept === "yes")
    return ` The reserve stays whole: ${seedsAbout(onHand.value ?? onHand.low)} of good lots remain.`;
  const until = sameHolder ? " until the new jar is tested, for an untested one is not counted on" : "";
  return reserveKept === "no"
    ? ` Less than the reserve would stand on good lots${until}.`
    : ` Whether the reserve stays whole cannot be told${until}.`;
}

function Against({ objections, form: { field } }: { objections: readonly Objection[]; form: ActFormParts }) {
  return (
    <Section id="against" title="What stands against it">
      <div className="stack">
        <ul className="stack-near">
          {objections.map((each) => (
            <li key={each.code} className={each.overridable ? undefined : "waits"}>
              Lot {each.number} {each.words}.
            </li>
          ))}
        </ul>
        {objections.some((each) => !each.overridable) ? null : (
          <TextField
            {...field("override")}
            label="Why all the same"
            hint="kept with the new lot; without a reason it is not written down"
            lines={2}
            required
          />
        )}
      </div>
    </Section>
  );
}

function Parted({
  form: { field },
  lot,
  stewards,
  places,
  units,
}: {
  form: ActFormParts;
  lot: JarToSplit;
  stewards: readonly string[];
  places: readonly string[];
  units: UnitSettings;
}) {
  const options = (names: readonly string[]): Option[] => names.map((name) => ({ value: name, words: name }));
  const inSeeds = lot.thousandSeedGrams === null ? [] : ["seeds"];
  return (
    <>
      <Section id="parted" title="What is parted">
        <div className="stack">
          <SideBySide>
            <NumberField {...field("amount")} label="How much" required />
            <Select
              {...field("unit")}
              label="counted in"
              options={[{ value: "g", words: units.weight === "g" ? "grams" : "ounces" }, ...options(inSeeds)]}
              required
            />
          </SideBySide>
          <DateField {...field("on")} label="When" required />
          <TextField
            {...field("reason")}
            label="Why"
            hint="a copy in the other house; half for the bad year"
            lines={2}
          />
        </div>
      </Section>
      <Section id="new-lot" title="The new lot">
        <div className="stack">
          <TextField {...field("number")} label="Its own number" hint="left empty, its label code is its number" />
          <HolderFields field={field} stewards={options(stewards)} />
          <SideBySide>
            <Select {...field("container")} label="Kept in a" options={options(containerKinds)} empty="not said" />
            <TextField
              {...field("place")}
              label="at the place"
              hint={
                places.length > 0
                  ? `${places.slice(0, 4).join(", ")}, or a new one`
                  : "a name; it becomes a place of its holder"
              }
            />
          </SideBySide>
          <TextField {...field("notes")} label="Notes" lines={2} />
        </div>
      </Section>
    </>
  );
}
