"use client";

import { useState } from "react";
import { Choice, NumberField, Select, TextField } from "@/components/ui";
import { type TraitKind, traitKinds } from "@/lib/schemas/traits/trait";
import type { FormDeed } from "../../../../lots/_form/form-answer";
import { type FieldOf, LotForm, SideBySide } from "../../../../lots/_form/lot-form";
import { directionOptions, kindOptions, traitLabels } from "./trait-words";

/** What a trait is: how it is told, what its steps mean, which end is good. Only the fields of the chosen kind are shown. */
export function TraitForm({
  draft,
  deed,
  start,
  submit,
  back,
  crop,
  standing,
}: {
  draft: string;
  deed: FormDeed;
  start: Readonly<Record<string, string>>;
  submit: string;
  back: string;
  /** the crop's name, where it may still be chosen for whom the trait is */
  crop: string | null;
  standing: string;
}) {
  return (
    <LotForm
      draft={draft}
      deed={deed}
      start={start}
      labels={traitLabels}
      submit={submit}
      back={back}
      standing={standing}
    >
      {(field) => <TraitFields field={field} crop={crop} />}
    </LotForm>
  );
}

function TraitFields({ field, crop }: { field: FieldOf; crop: string | null }) {
  const [chosen, setChosen] = useState<string | null>(null);
  const [direction, setDirection] = useState<string | null>(null);
  const kind = kindOf(chosen ?? field("kind").value);
  const aimed = (direction ?? field("direction").value) === "target";
  return (
    <>
      <TextField
        {...field("name")}
        label={traitLabels.name}
        hint="plant height, days to flower, silk colour"
        required
      />
      <div
        onInput={(event) => {
          setChosen((event.target as HTMLInputElement).value);
          setDirection(null);
        }}
      >
        <Choice {...field("kind")} label={traitLabels.kind} options={kindOptions} required />
      </div>
      {kind === "measure" ? (
        <TextField {...field("unit")} label={traitLabels.unit} hint="cm, g, days" required />
      ) : null}
      {kind === "scale" ? (
        <SideBySide>
          <NumberField {...field("scaleLow")} label={traitLabels.scaleLow} hint="1 unless told" whole />
          <NumberField {...field("scaleHigh")} label={traitLabels.scaleHigh} hint="9 unless told" whole />
        </SideBySide>
      ) : null}
      {kind === "scale" || kind === "yes-no" ? (
        <TextField
          {...field("steps")}
          label={kind === "scale" ? traitLabels.steps : "What yes and no mean"}
          hint={
            kind === "scale" ? "one a line: 1 = all lodged, 9 = none lodged" : "one a line: yes = red at first sight"
          }
          lines={4}
        />
      ) : null}
      {kind === "category" ? (
        <TextField {...field("choices")} label={traitLabels.choices} hint="one a line" lines={4} required />
      ) : null}
      <div onInput={(event) => setDirection((event.target as HTMLSelectElement).value)}>
        <Select
          key={kind ?? ""}
          {...field("direction")}
          label={traitLabels.direction}
          options={directionOptions(kind)}
          empty="not said"
        />
      </div>
      {aimed && kind === "category" ? (
        <TextField
          {...field("wanted")}
          label={traitLabels.wanted}
          hint="one a line, of those above"
          lines={3}
          required
        />
      ) : null}
      {aimed && kind !== "category" ? <NumberField {...field("target")} label={traitLabels.target} required /> : null}
      {crop === null ? null : (
        <Choice
          {...field("scope")}
          label={traitLabels.scope}
          options={[
            { value: "variety", words: "This variety alone" },
            { value: "crop", words: `Every variety of ${crop}` },
            { value: "all", words: "Varieties of any crop" },
          ]}
          required
        />
      )}
    </>
  );
}

function kindOf(text: string): TraitKind | null {
  return traitKinds.find((kind) => kind === text) ?? null;
}
