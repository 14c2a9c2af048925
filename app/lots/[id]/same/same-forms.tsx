"use client";

import { Choice, TextField, Tick } from "@/components/ui";
import { LotForm } from "../../_form/lot-form";
import { merge, standAlone, twoLots } from "./actions";

interface Two {
  readonly lotId: string;
  readonly number: string;
  readonly otherId: string;
  readonly other: string;
}

/** Two records are said to be of one lot: which leads, and how it is known. */
export function MergeForm({ lotId, number, other, parentageDiffers }: Two & { readonly parentageDiffers: boolean }) {
  const options = [
    { value: "this", words: `Lot ${number} leads`, note: `${other} is found under it` },
    { value: "other", words: `Lot ${other} leads`, note: `${number} is found under it` },
  ];
  return (
    <LotForm
      draft={`lot:${lotId}:same`}
      deed={merge.bind(null, lotId, other)}
      start={{ leads: "this" }}
      labels={{ other: "The other record", leads: "Which leads", parentage: "The parents", why: "How it is known" }}
      submit="Read them as one lot"
      back={`/lots/${lotId}`}
      standing="Nothing is rewritten: every entry stays with the record under which it was written, so that this can be taken back just as it was."
    >
      {(field) => (
        <>
          <Choice {...field("leads")} label="Which of the two leads" options={options} required />
          {parentageDiffers ? (
            <div id="field-parentage" tabIndex={-1}>
              <Tick
                name="parentage"
                label="What the leading record says of its parents is right"
                checked={field("parentage").value === "yes"}
              />
              {field("parentage").refusals.map((sentence) => (
                <p key={sentence} role="alert">
                  {sentence}
                </p>
              ))}
            </div>
          ) : null}
          <TextField
            {...field("why")}
            label="How it is known that the seed is the same"
            hint="the same jar, the same sack, the keeper’s own word"
            lines={2}
            required
          />
        </>
      )}
    </LotForm>
  );
}

/** Two records are said to be two lots, however alike they look. */
export function TwoLotsForm({ lotId, number, otherId, other }: Two) {
  return (
    <LotForm
      draft={`lot:${lotId}:two`}
      deed={twoLots.bind(null, lotId, otherId)}
      start={{}}
      labels={{ why: "How it is known" }}
      submit="They are two lots"
      back={`/lots/${lotId}`}
      standing={`Whether ${number} and ${other} are one is asked no more.`}
    >
      {(field) => <TextField {...field("why")} label="How it is known that they are two" lines={2} required />}
    </LotForm>
  );
}

/** A record stands for itself again. */
export function StandAloneForm({ recordId, back }: { readonly recordId: string; readonly back: string }) {
  return (
    <LotForm
      draft={`lot:${recordId}:alone`}
      deed={standAlone.bind(null, recordId)}
      start={{}}
      labels={{ why: "Why" }}
      submit="Let it stand for itself"
      back={back}
      standing="What was written since stays with the record under which it was written."
    >
      {(field) => <TextField {...field("why")} label="Why they are two after all" lines={2} required />}
    </LotForm>
  );
}
