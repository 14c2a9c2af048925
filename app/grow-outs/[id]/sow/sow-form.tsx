"use client";

import { useState } from "react";
import { Button, DateField, type Option, TextField } from "@/components/ui";
import { gramsTyped, type UnitSettings } from "@/lib/display/units";
import {
  type LotToSow,
  plantsOfEach,
  proposedSowing,
  reservesAfter,
  type TakenToSow,
} from "@/lib/registry/grow-outs/sowing-plan";
import { parentsAtOnce } from "@/lib/schemas/grow-outs/plan-grow-out";
import { ActForm, type ActFormParts } from "../../../lots/_form/act-form";
import { sow } from "../../_actions/sow";
import { amountTyped, partsOfTexts } from "../../_form/typed-parts";
import { reserveInWords } from "../../_words/reserve-words";
import { FurtherLot, PlannedLot } from "./lot-line";
import styles from "./sow-form.module.css";
import { Summary } from "./summary";

/** A lot of a line with what is taken of it. */
export interface LineTaken {
  readonly lot: LotToSow;
  readonly taken: TakenToSow;
}

/** What is at hand when it is sown. */
export interface SowingAtHand {
  readonly growOut: {
    readonly id: string;
    readonly name: string;
    readonly sown: boolean;
    readonly plantsPlanned: number | null;
  };
  readonly parents: readonly { readonly lot: LotToSow; readonly share: number | null }[];
  readonly lots: readonly LotToSow[];
  readonly options: readonly Option[];
  readonly units: UnitSettings;
}

const lines = Array.from({ length: parentsAtOnce }, (_, index) => index);
const labels = {
  on: "When",
  override: "Why it is sown all the same",
  ...Object.fromEntries(lines.map((index) => [`parts.${index}.amount`, `How much, line ${index + 1}`])),
  ...Object.fromEntries(lines.map((index) => [`parts.${index}.lot`, `Lot, line ${index + 1}`])),
};

/** What is taken out of the jars and sown: worked out as it is typed, asked twice, then written. */
export function SowForm({ today, ...hand }: SowingAtHand & { today: string }) {
  const { growOut, parents, units } = hand;
  return (
    <div className={styles.field}>
      <ActForm
        draft={`grow-out:${growOut.id}:sow`}
        deed={sow.bind(null, growOut.id)}
        start={startOf(parents, today)}
        labels={labels}
        question={(values) => {
          const taken = takenOf(values, hand);
          return {
            button: "Sow it",
            title: `Sow ${growOut.name}?`,
            says: <Summary taken={taken} units={units} />,
            confirm: "It is sown: write it down",
            ready: taken.length > 0,
          };
        }}
        back={`/grow-outs/${growOut.id}`}
        standing="Seed that is sown stays sown: nothing here brings it back into its jar."
      >
        {(form) => <SowFields form={form} hand={hand} />}
      </ActForm>
    </div>
  );
}

function SowFields({ form, hand }: { form: ActFormParts; hand: SowingAtHand }) {
  const { field, values, fill } = form;
  const { growOut, parents, lots, options, units } = hand;
  const [more, setMore] = useState(0);
  const parts = partsOfTexts(values);
  const filled = parts.slice(parents.length).findLastIndex(({ lot, amount }) => lot !== "" || amount !== "") + 1;
  const further = Math.max(more, filled, parents.length === 0 ? 1 : 0);
  const shown = Math.min(parentsAtOnce, parents.length + further);
  const plants = growOut.sown ? null : growOut.plantsPlanned;
  const shares = parents.map(({ share }) => share);
  const taken = takenOf(values, hand);
  const each = plants === null ? [] : plantsOfEach(plants, shares);
  return (
    <>
      <DateField {...field("on")} label="When" hint="the day, or what is known of it: 2027-05-12, 2027-05" required />
      {lines.slice(0, shown).map((index) => {
        const planned = parents[index];
        const line = { index, field, units, fill, part: parts[index] };
        return planned ? (
          <PlannedLot
            key={index}
            {...line}
            lot={planned.lot}
            proposed={plants === null ? null : proposedSowing(planned.lot, each[index] ?? plants)}
            mayBeNone={!growOut.sown}
          />
        ) : (
          <FurtherLot key={index} {...line} lots={lots} options={options} />
        );
      })}
      {shown < parentsAtOnce ? (
        <div>
          <Button kind="quiet" onClick={() => setMore(shown - parents.length + 1)}>
            One more lot
          </Button>
        </div>
      ) : null}
      <Against taken={taken} form={form} />
      <TextField {...field("note")} label="Note" hint="row label, stations, weather in a sentence" lines={2} />
      {taken.length === 0 ? (
        <p className="quiet">Write how much is sown; then it is asked once more, and written.</p>
      ) : null}
    </>
  );
}

/** What stands against the sowing, and where the reason is written that overrules it. */
function Against({ taken, form: { field } }: { taken: readonly LineTaken[]; form: ActFormParts }) {
  const after = reservesAfter(taken);
  const against = taken.flatMap(({ lot }) => lot.objections.map((words) => `Lot ${lot.number} ${words}.`));
  const touched = after.some(({ answer }) => answer === "touched");
  const asksWhy = against.length > 0 || touched || field("override").refusals.length > 0;
  return (
    <>
      {after.map((one) => {
        const { words, waits } = reserveInWords(one);
        return (
          <p key={`${one.reserve.varietyId}${one.reserve.holderId}`} className={waits ? "waits measure" : "measure"}>
            {words}
          </p>
        );
      })}
      {against.map((words) => (
        <p key={words} className="waits measure">
          {words}
        </p>
      ))}
      {asksWhy ? (
        <TextField
          {...field("override")}
          label="Why it is sown all the same"
          hint="the reason is kept with it"
          lines={2}
          required
        />
      ) : null}
    </>
  );
}

/** The lines that say how much of which lot, in grams or seeds. */
function takenOf(values: Readonly<Record<string, string>>, { lots, units }: SowingAtHand): LineTaken[] {
  return partsOfTexts(values).flatMap(({ lot: id, amount, unit }): LineTaken[] => {
    const lot = lots.find((one) => one.id === id);
    const value = amountTyped(amount);
    if (!lot || value === null || value === 0) return [];
    const taken: TakenToSow =
      unit === "seeds" ? { amount: value, unit } : { amount: gramsTyped(value, units), unit: "g" };
    return [{ lot, taken }];
  });
}

function startOf(parents: readonly { readonly lot: LotToSow }[], today: string): Record<string, string> {
  const each = parents.flatMap(({ lot }, index) => [
    [`parts.${index}.lot`, lot.id],
    [`parts.${index}.unit`, "g"],
  ]);
  return { on: today, ...Object.fromEntries(each) };
}
