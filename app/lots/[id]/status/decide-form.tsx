"use client";

import { Choice, DateField, TextField, Tick } from "@/components/ui";
import { ActForm } from "../../_form/act-form";
import { FieldGroup } from "../../_form/lot-form";
import { decide } from "./actions";

const foundOptions = [
  {
    value: "same",
    words: "The same",
    note: "it may blend with the home strain: the same variety, kept on another line",
  },
  { value: "own strain", words: "The same variety, a strain of its own", note: "kept apart under its own name" },
  { value: "different", words: "Different", note: "on hold; under which name it is kept is asked" },
  { value: "spoiled", words: "Spoiled", note: "discarded, with what is left of it" },
];

const releasedOptions = [
  { value: "usable", words: "usable" },
  { value: "share freely", words: "to be shared freely" },
  { value: "circle only", words: "for the circle only" },
];

const asked: Readonly<Record<string, { title: string; says: string }>> = {
  same: {
    title: "It is the same?",
    says: "It leaves quarantine. Blended once, nothing parts it again: keep an unblended rest.",
  },
  "own strain": { title: "It is a strain of its own?", says: "It leaves quarantine under the name of its strain." },
  different: { title: "It is different?", says: "It goes on hold, and a question asks under which name it is kept." },
  spoiled: {
    title: "It is spoiled?",
    says: "What is left of it leaves the ledger as discarded, and nothing comes back from that. How it is destroyed matters: buried seed grows again, treated seed is no compost. Your local rules decide.",
  },
};

/** What was found once a lot was grown apart and compared. */
export function DecideForm({
  lotId,
  today,
  grown,
  questions,
  strains,
  strain,
}: {
  lotId: string;
  today: string;
  grown: boolean;
  questions: readonly { readonly id: string; readonly sentence: string }[];
  strains: readonly string[];
  strain: string;
}) {
  return (
    <ActForm
      draft={`lot:${lotId}:decide`}
      deed={decide.bind(null, lotId)}
      start={{ on: today, status: "usable", strain }}
      labels={{ found: "What was found", how: "What was compared", strain: "The strain", on: "When" }}
      back={`/lots/${lotId}`}
      standing="Seed that is thrown away stays thrown away; whatever else is decided is an entry."
      question={(values) => {
        const { title, says } = asked[values.found ?? ""] ?? { title: "What was found?", says: "Choose it first." };
        const kind = values.found === "spoiled" ? "act" : "entry";
        return { button: "Decide", title, says: <p>{says}</p>, confirm: "So it is", ready: true, kind };
      }}
    >
      {({ field, values }) => (
        <>
          <Choice {...field("found")} label="What was found" options={foundOptions} required />
          {values.found === "own strain" ? (
            <FieldGroup title="The strain">
              <TextField
                {...field("strain")}
                label="What it is called"
                hint={
                  strains.length > 0
                    ? `on record: ${strains.join(", ")}; a new name becomes one`
                    : "as its keeper’s name"
                }
                required
              />
              <TextField {...field("difference")} label="What is different" />
            </FieldGroup>
          ) : null}
          {values.found === "same" || values.found === "own strain" ? (
            <Choice {...field("status")} label="From now on it is" options={releasedOptions} required />
          ) : null}
          <TextField
            {...field("how")}
            label="What was compared, and who saw it"
            hint="thirty plants beside ours, same leaf and week of flower; Oda and I"
            lines={3}
            required
          />
          <DateField {...field("on")} label="When" required />
          {grown || values.found === "spoiled" ? null : (
            <Tick
              name="grownUnrecorded"
              label="It was grown apart, though no grow-out of it is on record"
              checked={field("grownUnrecorded").value === "yes"}
            />
          )}
          {questions.length > 0 ? (
            <FieldGroup title="Questions that this answers">
              {questions.map((question) => (
                <Tick
                  key={question.id}
                  name={`answers.${question.id}`}
                  label={question.sentence}
                  checked={field(`answers.${question.id}`).value === "yes"}
                />
              ))}
            </FieldGroup>
          ) : null}
        </>
      )}
    </ActForm>
  );
}
