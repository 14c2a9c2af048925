"use client";

import { useRouter } from "next/navigation";
import { type FormEvent, useState, useTransition } from "react";
import { Button, FormRefusals, NumberField } from "@/components/ui";
import { refusalsForSummary } from "@/lib/display/refusals";
import type { Refusal } from "@/lib/science/outcome";
import { storeCounts } from "../../_actions/store";
import styles from "../../_forms/test-form.module.css";
import { LiveReading } from "../../_reading/live-reading";
import { CountSheet } from "../../_sheet/count-sheet";
import { countedSoFar } from "../../_sheet/counted-so-far";
import { cellKey, type Sheet } from "../../_sheet/sheet";
import { readSheet, type StandingDay } from "../../_sheet/sheet-entry";
import { normalWord } from "../../_words/reading-in-words";

export interface StandingReplicate {
  readonly id: string;
  readonly name: string;
  readonly sown: number;
  readonly counts: readonly StandingDay[];
}

/** A later day's counts of a test that lies in the cloth: what is new that day, against what is left. */
export function LaterCountsForm({
  testId,
  basis,
  day,
  finalCountDay,
  replicates,
}: {
  testId: string;
  basis: string | null;
  /** the day that it is now, counted from setting up */
  day: number | null;
  finalCountDay: number | null;
  replicates: readonly StandingReplicate[];
}) {
  const router = useRouter();
  const [sheet, setSheet] = useState<Sheet>({
    replicates: String(replicates.length),
    each: "",
    sown: Object.fromEntries(replicates.map(({ sown }, index) => [index, String(sown)])),
    days: day === null ? "" : String(day),
    apart: {},
    cells: {},
  });
  const [refusals, setRefusals] = useState<readonly Refusal[]>([]);
  const [storing, startStoring] = useTransition();
  const standing = replicates.map((replicate) => replicate.counts);
  const reading = readSheet(sheet, standing);
  const soFar = countedSoFar(reading.replicates, standing);
  const counts = reading.replicates.flatMap((replicate, index) =>
    replicate.counts.map((count) => ({ count, index, given: { ...count, replicateId: replicates[index]?.id ?? "" } })),
  );
  const cellOf = (refusal: Refusal) => {
    const [, at] = refusal.path;
    const index = typeof at === "number" ? counts[at]?.index : undefined;
    return refusal.path[0] === "counts" && index !== undefined ? cellKey(0, "normal", index) : null;
  };
  const faults = [
    ...reading.faults,
    ...refusals.flatMap((refusal) => {
      const key = cellOf(refusal);
      return key ? [{ key, sentence: refusal.sentence }] : [];
    }),
  ];
  const store = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    if (reading.faults.length > 0) return;
    startStoring(async () => {
      const stored = await storeCounts({ testId, counts: counts.map(({ given }) => given) });
      if (!stored.ok) return setRefusals(stored.refusals);
      setSheet((typed) => ({ ...typed, cells: {} }));
      setRefusals([]);
      router.refresh();
    });
  };
  return (
    <form className="stack" onSubmit={store} noValidate>
      <FormRefusals refusals={refusalsForSummary(refusals.filter((refusal) => cellOf(refusal) === null))} />
      <div className={`beside ${styles.sides}`}>
        <div className="stack">
          <div onChange={(event) => setSheet({ ...sheet, days: (event.target as HTMLInputElement).value })}>
            <NumberField
              name="days"
              label="Counted on day"
              value={sheet.days}
              required
              hint={
                finalCountDay === null
                  ? "in days after setting up"
                  : `in days after setting up; the last count is day ${finalCountDay}`
              }
            />
          </div>
          <CountSheet
            sheet={sheet}
            change={setSheet}
            normalWords={normalWord(basis)}
            faults={faults}
            feet={soFar.feet}
            fixed
          />
        </div>
        <LiveReading replicates={soFar.counted} basis={basis} soFar={soFar.left > 0} />
      </div>
      <div className="row">
        <Button kind="chief" type="submit" disabled={storing || counts.length === 0}>
          {storing ? "Storing" : "Store these counts"}
        </Button>
      </div>
    </form>
  );
}
