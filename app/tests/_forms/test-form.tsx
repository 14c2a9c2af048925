"use client";

import { useRouter } from "next/navigation";
import { type FormEvent, useCallback, useEffect, useState, useTransition } from "react";
import { DraftLine, useDraft } from "@/components/drafts";
import { Section } from "@/components/frame";
import { Button, Choice, DateField, FormRefusals, NumberField, TextField } from "@/components/ui";
import { grams } from "@/lib/display/numbers";
import { refusalsByField, refusalsForSummary } from "@/lib/display/refusals";
import type { Refusal } from "@/lib/science/outcome";
import { storeTest } from "../_actions/store";
import { LiveReading } from "../_reading/live-reading";
import { CountSheet } from "../_sheet/count-sheet";
import { countedSoFar } from "../_sheet/counted-so-far";
import type { Sheet } from "../_sheet/sheet";
import { readSheet } from "../_sheet/sheet-entry";
import { normalWord } from "../_words/reading-in-words";
import { draftOf, type Fields, givenEntry, labels, lastDayOpen, type TestDraft, type TestHints } from "./test-draft";
import styles from "./test-form.module.css";

/** What the page knows of the lot that is tested, for the form. */
export interface TestedLot {
  readonly id: string;
  readonly number: string;
  readonly thousandSeedGrams: number | null;
}

/** A germination test typed in: what was set up, the counting sheet, what it means as it is typed, and the seeds it used. */
export function TestForm({ lot, start, hints }: { lot: TestedLot; start: TestDraft; hints: TestHints }) {
  const router = useRouter();
  const draft = useDraft(`test:${lot.id}`, draftOf);
  const [fields, setFields] = useState<Fields>(start.fields);
  const [sheet, setSheet] = useState<Sheet>(start.sheet);
  // What the fields begin with; they hold their own text while it is typed.
  const [base, setBase] = useState<TestDraft>(start);
  const [restored, setRestored] = useState(0);
  const [refusals, setRefusals] = useState<readonly Refusal[]>([]);
  const [storing, startStoring] = useTransition();

  const begin = useCallback((from: TestDraft, mark: number) => {
    setFields(from.fields);
    setSheet(from.sheet);
    setBase(from);
    setRestored(mark);
  }, []);
  useEffect(() => {
    if (draft.found?.draft) begin(draft.found.draft, 1);
  }, [draft.found, begin]);

  const type = (next: Partial<TestDraft>) => {
    const whole = { fields: next.fields ?? fields, sheet: next.sheet ?? sheet };
    setFields(whole.fields);
    setSheet(whole.sheet);
    draft.keep(whole);
  };
  const typed = (event: FormEvent<HTMLFormElement>) => {
    const { name, value } = event.target as HTMLInputElement;
    if (name === "replicates" || name === "each" || name === "days") type({ sheet: { ...sheet, [name]: value } });
    else if (name !== "") type({ fields: { ...fields, [name]: value } });
  };
  const reading = readSheet(sheet);
  const soFar = countedSoFar(reading.replicates);
  const byField = refusalsByField(refusals.filter((refusal) => reading.cellAt(refusal.path) === null));
  const faults = [
    ...reading.faults,
    ...refusals.flatMap((refusal) => {
      const key = reading.cellAt(refusal.path);
      return key ? [{ key, sentence: refusal.sentence }] : [];
    }),
  ];
  const field = (name: string) => ({ name, value: base.fields[name] ?? "", refusals: byField[name] });
  const store = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const [fault] = reading.faults;
    if (fault) {
      document.getElementById(fault.key === "days" ? "field-days" : `cell-${fault.key}`)?.focus();
      return;
    }
    startStoring(async () => {
      const stored = await storeTest(givenEntry(lot.id, fields, sheet, reading.replicates));
      if (!stored.ok) return setRefusals(stored.refusals);
      draft.forget();
      router.push(`/tests/${stored.value.testId}`);
    });
  };
  const basis = fields.basis === "normal seedlings" || fields.basis === "sprouted" ? fields.basis : null;
  const seeds = reading.replicates.reduce((sum, replicate) => sum + replicate.sown, 0);
  const perSeed = lot.thousandSeedGrams === null ? null : lot.thousandSeedGrams / 1000;
  const notYet = lastDayOpen(sheet);

  return (
    <form className={styles.form} onSubmit={store} onChange={typed} key={restored} noValidate>
      <FormRefusals refusals={refusalsForSummary(refusals, labels)} />
      <div className={`beside ${styles.sides}`}>
        <div className="stack">
          <div className={styles.setUp}>
            <DateField {...field("on")} label="Set up on" required hint="2026-03-01, 2026-03, or about: 2026~" />
            <Choice
              {...field("basis")}
              label="What is counted"
              options={[
                { value: "normal seedlings", words: "Normal seedlings", note: "root and shoot both sound" },
                { value: "sprouted", words: "Sprouted", note: "a root is out; reads higher" },
                { value: "", words: "Not written down" },
              ]}
            />
          </div>
          <div className={styles.plan}>
            <NumberField name="replicates" value={base.sheet.replicates} label="Replicates" required whole />
            <NumberField name="each" value={base.sheet.each} label="Seeds in each" required whole />
            <TextField name="days" value={base.sheet.days} label="Counted on days" required hint={hints.days} />
          </div>
          <Section id="counts" title="What came up" aside="newly counted each day, never a running total">
            <CountSheet
              sheet={sheet}
              change={(next) => type({ sheet: next })}
              normalWords={normalWord(basis)}
              faults={faults}
              feet={soFar.feet}
            />
          </Section>
        </div>
        <div className={`stack ${styles.reading}`}>
          <LiveReading replicates={soFar.counted} basis={basis} soFar={soFar.left > 0 && notYet} />
          <DraftLine
            kept={draft.kept}
            restored={restored > 0}
            again={() => {
              draft.forget();
              begin(start, -1);
            }}
          />
        </div>
      </div>
      <Choice
        {...field("seedsUsed")}
        label="The seeds used"
        options={[
          { value: "no", words: "Leave the ledger as it is" },
          ...(perSeed === null
            ? []
            : [
                {
                  value: "by-seed-weight",
                  words: `Book ${grams(seeds * perSeed)} as tested`,
                  note: `${seeds} seeds by this lot's thousand-seed weight`,
                },
              ]),
          { value: "weighed", words: "Book what was weighed", note: "write the grams below" },
        ]}
      />
      {fields.seedsUsed === "weighed" ? (
        <NumberField {...field("seedsUsed.grams")} label="Weighed" unit="g" required />
      ) : null}
      <details className={styles.more}>
        <summary>How it was set up, a name, a note</summary>
        <div className="stack">
          <TextField {...field("method")} label="Method" hint={hints.method ?? "paper roll, pot, tray"} />
          <TextField {...field("temperature")} label="Temperature" hint={hints.temperature} />
          <TextField {...field("preTreatment")} label="Before the test" hint="soaked, chilled, scarified" />
          <TextField
            {...field("name")}
            label="Name of the test"
            hint={`left empty it is named after lot ${lot.number}`}
          />
          <TextField {...field("note")} label="Note" lines={3} />
        </div>
      </details>
      <div className="row">
        <Button kind="chief" type="submit" disabled={storing}>
          {storing ? "Storing" : "Store this test"}
        </Button>
      </div>
    </form>
  );
}
