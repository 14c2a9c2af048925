"use client";

import { DateField, NumberField, type Option, Select, TextField } from "@/components/ui";
import { LotForm, SideBySide } from "../../../lots/_form/lot-form";
import { put, putDaysRight } from "../../_actions/plot";

const labels = {
  plot: "Plot",
  newPlot: "A new plot",
  areaM2: "Area",
  fromOn: "From",
  toOn: "Until",
  leftOn: "Left the earlier plot",
};

/** The plot on which a grow-out stands, one on record or a new one. */
export function PlotForm({
  growOutId,
  start,
  plots,
  left,
}: {
  growOutId: string;
  start: Readonly<Record<string, string>>;
  plots: readonly Option[];
  /** the plot that it leaves by this; null: it stands on none yet, or left it already */
  left: string | null;
}) {
  return (
    <LotForm
      draft={`grow-out:${growOutId}:plot`}
      deed={put.bind(null, growOutId)}
      start={start}
      labels={labels}
      submit={left === null ? "Put it there" : "It stands there now"}
      back={`/grow-outs/${growOutId}`}
      standing="This is an entry in the records: History can take it back."
    >
      {(field) => (
        <>
          <SideBySide>
            {plots.length > 0 ? <Select {...field("plot")} label="Plot" options={plots} empty="not chosen" /> : null}
            <TextField
              {...field("newPlot")}
              label={plots.length > 0 ? "or a new plot" : "Plot"}
              hint="as you call it"
            />
            <TextField {...field("place")} label="its rough place" hint="the village will do" />
            <NumberField {...field("areaM2")} label="its area" unit="m²" />
          </SideBySide>
          {left === null ? null : <DateField {...field("leftOn")} label={`Left ${left} on`} />}
          <DateField {...field("fromOn")} label="Stands there from" />
        </>
      )}
    </LotForm>
  );
}

/** The days on one plot. */
export function DaysForm({
  growOutId,
  standId,
  start,
}: {
  growOutId: string;
  standId: string;
  start: Readonly<Record<string, string>>;
}) {
  return (
    <LotForm
      draft={`grow-out:${growOutId}:stand:${standId}`}
      deed={putDaysRight.bind(null, growOutId, standId)}
      start={start}
      labels={labels}
      submit="Put its days right"
      back={`/grow-outs/${growOutId}`}
      standing="This is an entry in the records: History can take it back."
    >
      {(field) => (
        <SideBySide>
          <DateField
            {...field("fromOn")}
            id={`from-${standId}`}
            label="Stood there from"
            hint="as well as it is known"
          />
          <DateField {...field("toOn")} id={`to-${standId}`} label="until" hint="empty while it stands there" />
        </SideBySide>
      )}
    </LotForm>
  );
}
