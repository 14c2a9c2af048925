"use client";

import { Choice, NumberField, Select, TextField } from "@/components/ui";
import { type FieldOf, LotForm, SideBySide } from "../../../lots/_form/lot-form";
import { dropKinship, putKinshipRight, storeKinship } from "../../_actions/kinship";
import { kinshipOptions } from "../../_words/kinship-words";

const labels = {
  first: "One founder",
  second: "The other",
  kind: "How they are related",
  coancestry: "Coancestry",
  how: "How that is known",
  why: "Why",
};

function KinshipFields({ field }: { field: FieldOf }) {
  return (
    <>
      <Choice {...field("kind")} label="How they are related" options={kinshipOptions} required />
      <NumberField {...field("coancestry")} label="Coancestry" hint="0 to 1, where it is known: half sibs 0.125" />
      <TextField
        {...field("how")}
        label="How that is known"
        hint="who said so, which papers, which test"
        lines={2}
        required
      />
    </>
  );
}

/** How two founder lots of a variety are related. */
export function KinshipForm({
  varietyId,
  founders,
  start,
}: {
  varietyId: string;
  founders: readonly { readonly number: string; readonly words: string }[];
  start: Readonly<Record<string, string>>;
}) {
  const options = founders.map(({ number, words }) => ({ value: number, words }));
  return (
    <LotForm
      draft={`variety:${varietyId}:kinship:${start.first ?? ""}:${start.second ?? ""}`}
      deed={storeKinship.bind(null, varietyId)}
      start={start}
      labels={labels}
      submit="Write it down"
      back={`/varieties/${varietyId}/kinship`}
      standing="The figures of all that descends from both follow. It can be put right; what was written before stays in the history."
    >
      {(field) => (
        <>
          <SideBySide>
            <Select {...field("first")} label="One founder" options={options} empty="choose" required />
            <Select {...field("second")} label="The other" options={options} empty="choose" required />
          </SideBySide>
          <KinshipFields field={field} />
        </>
      )}
    </LotForm>
  );
}

interface Known {
  readonly varietyId: string;
  readonly kinshipId: string;
}

/** What is written of two founders, put right. */
export function CorrectKinshipForm({
  varietyId,
  kinshipId,
  start,
}: Known & { readonly start: Readonly<Record<string, string>> }) {
  return (
    <LotForm
      draft={`kinship:${kinshipId}:correct`}
      deed={putKinshipRight.bind(null, varietyId, kinshipId)}
      start={start}
      labels={labels}
      submit="Put it right"
      back={`/varieties/${varietyId}/kinship`}
      standing="What was written before stays in the history."
    >
      {(field) => (
        <>
          <KinshipFields field={field} />
          <TextField {...field("why")} label="What was wrong" lines={2} required />
        </>
      )}
    </LotForm>
  );
}

/** What is written of two founders, taken away: it is not known after all. */
export function DropKinshipForm({ varietyId, kinshipId }: Known) {
  return (
    <LotForm
      draft={`kinship:${kinshipId}:drop`}
      deed={dropKinship.bind(null, varietyId, kinshipId)}
      start={{}}
      labels={labels}
      submit="It is not known after all"
      back={`/varieties/${varietyId}/kinship`}
      standing="The figures show a span again."
    >
      {(field) => <TextField {...field("why")} label="Why" lines={2} required />}
    </LotForm>
  );
}
