"use client";

import { DateField, NumberField, Select, TextField } from "@/components/ui";
import { addContainer, moveContainer } from "../../_actions/containers";
import { LotForm, SideBySide } from "../../_form/lot-form";
import { containerKindOptions, containerUnitOptions, placeKindOptions } from "../../_words/choices";

const labels = {
  code: "What is written on it",
  amount: "How much is in it",
  sealedOn: "Sealed",
  lastOpened: "Last opened",
  place: "Where it stands",
};

/** A container of a lot, new or as it stands now. */
export function ContainerForm({
  lotId,
  containerId,
  start,
}: {
  lotId: string;
  containerId?: string;
  start: Readonly<Record<string, string>>;
}) {
  return (
    <LotForm
      draft={`lot:${lotId}:container:${containerId ?? "new"}`}
      deed={containerId ? moveContainer.bind(null, lotId, containerId) : addContainer.bind(null, lotId)}
      start={start}
      labels={labels}
      submit={containerId ? "Say so" : "Put it on the shelf"}
      back={`/lots/${lotId}#containers`}
      corrects={containerId !== undefined}
      standing="Filling or moving a container changes nothing in the ledger. What stood here before stays in the history."
    >
      {(field) => (
        <>
          <SideBySide>
            <Select {...field("kind")} label="What it is" options={containerKindOptions} empty="not said" />
            <TextField
              {...field("code")}
              label="What is written on it"
              hint="left empty, it gets a label code of its own"
            />
          </SideBySide>
          <SideBySide>
            <NumberField {...field("amount")} label="How much is in it" />
            <Select {...field("unit")} label="counted in" options={containerUnitOptions} required />
          </SideBySide>
          <SideBySide>
            <TextField
              {...field("place")}
              label="Where it stands"
              hint="a shelf, a fridge; a new name becomes a place"
            />
            <Select {...field("placeKind")} label="what kind of place" options={placeKindOptions} empty="not said" />
          </SideBySide>
          <TextField
            {...field("building")}
            label="In which house"
            hint="one fire, one flood: all places of one house count as one"
          />
          <SideBySide>
            <DateField {...field("sealedOn")} label="Sealed" hint="when it was closed" />
            <DateField {...field("lastOpened")} label="Last opened" hint="when it was last open" />
          </SideBySide>
          <TextField {...field("desiccant")} label="Drying agent in it" />
          <TextField {...field("note")} label="Notes" />
        </>
      )}
    </LotForm>
  );
}
