"use client";

import { type FormEvent, useRef, useState } from "react";
import { NumberField, type Option, Select, TextField } from "@/components/ui";
import type { UnitSettings } from "@/lib/display/units";
import type { LotToSow } from "@/lib/registry/grow-outs/sowing-plan";
import type { Mating } from "@/lib/science/crops/mating";
import { textsOf } from "../../lots/_form/form-answer";
import { Seldom, SideBySide } from "../../lots/_form/lot-form";
import type { FieldOf } from "../../lots/_form/use-form-answer";
import { purposeOptions } from "../_words/choices";
import { KeepFields, usualKeeping } from "./keep-fields";
import { ParentFields } from "./parent-fields";
import styles from "./plan-fields.module.css";
import { countTyped, parentsOfTexts } from "./typed-parents";

/** What a plan's form offers. */
export interface PlanOffers {
  readonly lots: readonly LotToSow[];
  readonly options: readonly Option[];
  readonly crosses: readonly Option[];
  readonly stewards: readonly Option[];
  readonly units: UnitSettings;
  readonly mating: Mating;
  readonly clonal: boolean;
  /** where the number of plants that stands in the form comes from, or what would be better */
  readonly plantsHint: string;
}

export const planLabels = {
  name: "Name",
  purpose: "What it is for",
  steward: "Steward",
  plantsPlanned: "Plants wanted",
  seedParentsPlanned: "Seed parents wanted",
  plot: "Plot",
  newPlot: "A new plot",
  ...Object.fromEntries(Array.from({ length: 8 }, (_, index) => [`parents.${index}.lot`, `Lot ${index + 1}`])),
  ...Object.fromEntries(
    Array.from({ length: 8 }, (_, index) => [`parents.${index}.share`, `Share of lot ${index + 1}`]),
  ),
};

const watched = /^(parents\.|keep\.|plantsPlanned)/;

/** The fields of a plan; what they ask of the jars is worked out as they are typed. */
export function PlanFields({
  field,
  offers,
  parentsTitle,
  children,
}: {
  field: FieldOf;
  offers: PlanOffers;
  parentsTitle: string;
  children?: React.ReactNode;
}) {
  const box = useRef<HTMLDivElement>(null);
  const [live, setLive] = useState(() => startOf(field));
  const look = () => {
    const form = box.current?.closest("form");
    if (form)
      setLive(Object.fromEntries(Object.entries(textsOf(new FormData(form))).filter(([name]) => watched.test(name))));
  };
  // The numbers are put into the fields as if they had been typed, so that the draft takes them, too.
  const put = (name: string, value: number) => {
    const input = box.current?.closest("form")?.elements.namedItem(name);
    if (!(input instanceof HTMLInputElement)) return;
    input.value = String(value);
    input.dispatchEvent(new Event("input", { bubbles: true }));
  };
  const seen = (_event: FormEvent) => look();
  return (
    <div ref={box} onInput={seen} className={styles.fields}>
      <TextField
        {...field("name")}
        label="What it is called"
        hint="the variety and the year will do; it is free"
        required
      />
      <SideBySide>
        <Select {...field("purpose")} label="What it is for" options={purposeOptions} empty="not said" />
        <Select {...field("steward")} label="Who grows it" options={offers.stewards} empty="not said" />
      </SideBySide>
      <SideBySide>
        <NumberField {...field("plantsPlanned")} label="Plants wanted" unit="plants" whole hint={offers.plantsHint} />
        <NumberField {...field("seedParentsPlanned")} label="Seed to be kept from" unit="plants" whole />
      </SideBySide>
      {offers.clonal ? null : (
        <Seldom title="How many plants keep how much" open={false}>
          <KeepFields
            live={live}
            mating={offers.mating}
            take={(plan) => {
              put("plantsPlanned", plan.floweringPlants);
              put("seedParentsPlanned", plan.seedParents);
            }}
          />
        </Seldom>
      )}
      <ParentFields
        field={field}
        live={parentsOfTexts(live)}
        lots={offers.lots}
        options={offers.options}
        crosses={offers.crosses}
        plants={countTyped(live.plantsPlanned)}
        units={offers.units}
        title={parentsTitle}
      />
      {children}
      <TextField {...field("note")} label="Note" lines={2} />
    </div>
  );
}

function startOf(field: FieldOf): Record<string, string> {
  const names = [
    "plantsPlanned",
    ...Array.from({ length: 8 }, (_, index) => [`parents.${index}.lot`, `parents.${index}.share`]).flat(),
  ];
  return { ...usualKeeping, ...Object.fromEntries(names.map((name) => [name, field(name).value])) };
}
