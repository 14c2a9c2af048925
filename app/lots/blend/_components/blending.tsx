"use client";

import { useMemo } from "react";
import { Section } from "@/components/frame";
import { Tick } from "@/components/ui";
import { counted, listed } from "@/lib/display/plurals";
import { type UnitSettings, weight } from "@/lib/display/units";
import type { BlendGround } from "@/lib/registry/lots/read-blend-ground";
import { mixLots } from "../../_actions/part-and-mix";
import { ActForm, type ActFormParts } from "../../_form/act-form";
import { weightAsTyped } from "../../_words/units-of";
import { isIn, type PartOfForm, partsOfForm, type ReadingOfForm, type Texts } from "../_mix/mix-of-form";
import { Advice } from "./advice";
import { AgainstIt } from "./against-it";
import styles from "./blending.module.css";
import { MixHead } from "./mix-head";
import { MixOutcome } from "./mix-outcome";
import { PartFields } from "./part-fields";
import { WrittenDown } from "./written-down";

/** What the lots belong to. */
export interface AboutBlend {
  readonly varietyId: string;
  readonly variety: string;
  readonly matingSystem: string | null;
  readonly usualLifeYears: number | null;
}

/** Lots are ticked, amounts typed, and what the mix would be stands beside them, before a seed is moved. */
export function Blending({
  ground,
  about,
  asked,
  amounts = {},
  stewards,
  units,
  today,
}: {
  ground: BlendGround;
  about: AboutBlend;
  asked: readonly string[];
  /** grams of a lot that stand in its field at first, by its id */
  amounts?: Readonly<Record<string, number>>;
  stewards: readonly string[];
  units: UnitSettings;
  today: string;
}) {
  const { lots } = ground;
  const reading: ReadingOfForm = { units, usualLifeYears: about.usualLifeYears, today };
  const holders = new Set(lots.filter((lot) => asked.includes(lot.id)).map((lot) => lot.holder));
  const start: Record<string, string> = { on: today, holder: holders.size === 1 ? ([...holders][0] ?? "") : "" };
  for (const lot of lots) {
    start[`unit.${lot.id}`] = "g";
    if (asked.includes(lot.id)) start[`in.${lot.id}`] = "yes";
    const amount = amounts[lot.id];
    if (amount !== undefined) start[`amount.${lot.id}`] = weightAsTyped(amount, units);
  }
  const labels = useMemo(() => labelsOf(ground), [ground]);
  const question = (values: Texts) => {
    const parts = partsOfForm(lots, values, reading);
    return {
      ready: parts.length >= 2,
      button: "Mix them",
      title: `Mix seed of ${counted(parts.length, "lot")}?`,
      says: <Says parts={parts} number={values.number ?? ""} units={units} />,
      confirm: "They are mixed, write it down",
    };
  };
  return (
    <ActForm
      draft={`blend:${about.varietyId}:${asked.join(",")}`}
      deed={mixLots}
      start={start}
      labels={labels}
      question={question}
      back={`/varieties/${about.varietyId}`}
    >
      {(form) => <Fields form={form} ground={ground} about={about} reading={reading} stewards={stewards} />}
    </ActForm>
  );
}

function Fields({
  form,
  ground,
  about,
  reading,
  stewards,
}: {
  form: ActFormParts;
  ground: BlendGround;
  about: AboutBlend;
  reading: ReadingOfForm;
  stewards: readonly string[];
}) {
  const { field, values } = form;
  const parts = partsOfForm(ground.lots, values, reading);
  const partOf = new Map(parts.map((part) => [part.lot.id, part]));
  return (
    <>
      <MixHead ground={ground} about={about} parts={parts} />
      <Section id="parts" title="What goes in" aside={`${counted(ground.lots.length, "lot")} of it may hold seed`}>
        <div className={styles.parts}>
          {ground.lots.map((lot) => (
            <div key={lot.id} className={styles.part} data-in={isIn(values, lot) || undefined}>
              <Tick
                name={`in.${lot.id}`}
                label={`Lot ${lot.number}`}
                checked={field(`in.${lot.id}`).value === "yes"}
                note={undefined}
              />
              <PartFields lot={lot} part={partOf.get(lot.id) ?? null} parts={parts} form={form} reading={reading} />
            </div>
          ))}
        </div>
        {ground.leftOut > 0 ? (
          <p className="quiet">{counted(ground.leftOut, "older lot")} that may hold seed are not listed here.</p>
        ) : null}
        <Advice form={form} ground={ground} about={about} reading={reading} parts={parts} />
      </Section>
      <AgainstIt parts={parts} field={field} />
      <Section id="mix" title="What it makes">
        <MixOutcome ground={ground} about={about} parts={parts} units={reading.units} />
      </Section>
      <Section id="written" title="What is written of it">
        <WrittenDown field={field} stewards={stewards} />
      </Section>
    </>
  );
}

function Says({ parts, number, units }: { parts: readonly PartOfForm[]; number: string; units: UnitSettings }) {
  const amounts = parts.map(
    ({ lot, amount }) => `${amount ? weight(amount.grams, units) : "some"} of lot ${lot.number}`,
  );
  const emptied = parts.filter((part) => part.left !== null && part.left < 1e-6).map((part) => part.lot.number);
  return (
    <>
      <p>
        {listed(amounts)} go into one jar{number ? `, as lot ${number}` : ""}. A jar that was mixed is never unmixed:
        from then on the blend has one history, that of all its parts.
      </p>
      {emptied.length > 0 ? (
        <p className="waits">Nothing of lot {listed(emptied)} stays unmixed. Keep some back if you can.</p>
      ) : null}
    </>
  );
}

function labelsOf({ lots }: BlendGround): Record<string, string> {
  const labels: Record<string, string> = {
    number: "Number of the blend",
    holder: "Who holds it",
    newHolder: "Somebody new",
    on: "When",
    reason: "Why they are mixed",
    override: "Why all the same",
  };
  for (const lot of lots) {
    labels[`in.${lot.id}`] = `Lot ${lot.number}`;
    labels[`amount.${lot.id}`] = `How much of lot ${lot.number}`;
    labels[`unit.${lot.id}`] = `Unit of lot ${lot.number}`;
    labels[`living.${lot.id}`] = `What lives of lot ${lot.number}`;
  }
  return labels;
}
