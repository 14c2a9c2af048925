"use client";

import { DateField, NumberField, Select, TextField } from "@/components/ui";
import { LotForm, SideBySide } from "../../../lots/_form/lot-form";
import { putTransferRight } from "../../_actions/transfers";

const labels = {
  on: "When",
  amount: "How much",
  unit: "Counted in",
  replyDue: "When to ask",
  reason: "What was wrong",
};

/** Puts a transfer right. */
export function CorrectTransferForm({
  transferId,
  start,
  weightUnit,
  seeds,
}: {
  transferId: string;
  start: Readonly<Record<string, string>>;
  weightUnit: "g" | "oz";
  seeds: boolean;
}) {
  const units = [
    { value: "g", words: weightUnit === "g" ? "grams" : "ounces" },
    ...(seeds ? [{ value: "seeds", words: "seeds" }] : []),
  ];
  return (
    <LotForm
      draft={`transfer:${transferId}:correct`}
      deed={putTransferRight.bind(null, transferId)}
      start={start}
      labels={labels}
      submit="Put it right"
      back={`/sharing/${transferId}`}
      standing="This changes the records, not the seed; it can be taken back."
    >
      {(field) => (
        <>
          <SideBySide>
            <NumberField {...field("amount")} label="How much" />
            <Select {...field("unit")} label="counted in" options={units} required />
          </SideBySide>
          <DateField {...field("on")} label="When" required />
          <TextField {...field("purpose")} label="What for" />
          <TextField {...field("conditions")} label="On what terms" />
          <TextField {...field("told")} label="What was told with it" hint="one line each" lines={6} />
          <DateField {...field("replyDue")} label="When to ask" />
          <TextField {...field("note")} label="Note" lines={3} />
          <TextField {...field("reason")} label="What was wrong" required />
        </>
      )}
    </LotForm>
  );
}
