"use client";

import { type Option, Select, TextField } from "@/components/ui";
import { putLotRight } from "../../_actions/correct";
import { HolderFields } from "../../_form/holder-fields";
import { FieldGroup, LotForm, SideBySide } from "../../_form/lot-form";
import { SeldomTold, YearFields } from "../../_form/told-fields";
import { isolationOptions, statusOptions } from "../../_words/choices";

const labels = {
  year: "Year of the harvest",
  holder: "Who holds it",
  newHolder: "Somebody new",
  status: "How it stands",
  statusReason: "Why it stands so",
  thousandSeedGrams: "Weight of a thousand seeds",
  inbreeding: "Inbreeding",
  founderLines: "One line or many",
  reason: "Why it is changed",
};

/** What is written of a lot, to be put right. */
export function CorrectLotForm({
  lotId,
  founder,
  start,
  stewards,
}: {
  lotId: string;
  founder: boolean;
  start: Readonly<Record<string, string>>;
  stewards: readonly Option[];
}) {
  return (
    <LotForm
      draft={`lot:${lotId}:correct`}
      deed={putLotRight.bind(null, lotId)}
      start={start}
      labels={labels}
      submit="Put it right"
      back={`/lots/${lotId}`}
      corrects
      standing="What stood here before stays in the lot's history, and History can put it back."
    >
      {(field) => (
        <>
          <YearFields field={field} />
          <HolderFields field={field} stewards={stewards} />
          <SideBySide>
            <Select {...field("status")} label="How it stands" options={statusOptions} empty="nothing said" />
            <TextField {...field("statusReason")} label="why" hint="a hold or a discard needs its reason" />
          </SideBySide>
          <TextField {...field("notes")} label="Notes" lines={3} />
          <SeldomTold field={field} founder={founder} />
          <SideBySide>
            <Select {...field("isolationGrade")} label="Isolation" options={isolationOptions} empty="not said" />
            <TextField {...field("isolationReasons")} label="how that is known" />
          </SideBySide>
          <FieldGroup title="Why">
            <TextField {...field("reason")} label="Why it is changed" required />
          </FieldGroup>
        </>
      )}
    </LotForm>
  );
}
