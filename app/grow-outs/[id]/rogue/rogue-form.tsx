"use client";

import Link from "next/link";
import { Choice, DateField, Notice, NumberField, Select, TextField, Tick } from "@/components/ui";
import { counted } from "@/lib/display/plurals";
import { groundWith } from "@/lib/registry/grow-outs/size-if";
import type { SizeGround } from "@/lib/registry/grow-outs/size-so-far";
import { offTypesPulled } from "@/lib/registry/grow-outs/walks";
import { pulledRows, reasonNotSaid, sheetField } from "@/lib/schemas/grow-outs/field-counts";
import { SideBySide } from "../../../lots/_form/lot-form";
import { writeWalk } from "../../_actions/field";
import { EveningForm } from "../../_field/evening-form";
import { LiveSize } from "../../_field/live-size";
import { numberTyped, typedPass, typedWalk } from "../../_field/typed-events";
import { type Person, Who } from "../../_field/who";
import { passStageOptions, timingOptions } from "../../_words/field-words";
import { offTypeReading, offTypesInWords } from "../../_words/off-type-words";
import styles from "./rogue-form.module.css";

type Texts = Readonly<Record<string, string>>;

/** A lot whose seed stands in the field. */
export interface LotInField {
  readonly id: string;
  readonly number: string;
}

/** A walk through the plants: when, what was looked at, and how many were pulled for which reason. */
export function RogueForm({
  growOutId,
  people,
  by,
  sown,
  ground,
}: {
  growOutId: string;
  people: readonly Person[];
  by: string;
  sown: readonly LotInField[];
  ground: SizeGround;
}) {
  return (
    <EveningForm
      draft={`grow-out:${growOutId}:walk`}
      deed={writeWalk.bind(null, growOutId)}
      start={{ by }}
      labels={labels}
      submit="Write the walk down"
      back={`/grow-outs/${growOutId}#counts`}
      standing="A mistaken line can be put right or taken back; plants that were pulled stay pulled."
      beside={(typed) => <WalkSoFar typed={typed} ground={ground} />}
    >
      {(field, typed) => (
        <>
          <SideBySide>
            <DateField
              {...field("on")}
              label="Walked on"
              hint="the day in the field: 2026-07-04, 2026-07, about: 2026-07~"
              required
            />
            <Select {...field("stage")} label="At the stage" options={passStageOptions} empty="not written" />
          </SideBySide>
          <Choice {...field("timing")} label="Had pollen flown?" options={timingOptions} required />
          <SideBySide>
            <NumberField {...field("looked")} label="Plants looked at" whole />
            <NumberField {...field("left")} label="Left standing" whole />
          </SideBySide>
          <fieldset className={styles.pulled}>
            <legend>Pulled, by reason</legend>
            {pulledRows.map((reason) => (
              <NumberField key={reason} {...field(sheetField("pulled", reason))} label={reasonLabel(reason)} whole />
            ))}
            <PulledFault refusals={field("pulled").refusals} />
          </fieldset>
          <div id="field-noneFound" tabIndex={-1}>
            <Tick
              name="noneFound"
              label="Walked, and found none to pull"
              checked={field("noneFound").value === "yes"}
            />
            <PulledFault refusals={field("noneFound").refusals} />
          </div>
          <HoldNotice typed={typed} sown={sown} />
          <TextField {...field("note")} label="Note" />
          <Who field={field} people={people} label="Who walked" />
        </>
      )}
    </EveningForm>
  );
}

function reasonLabel(reason: string): string {
  const words = reason === reasonNotSaid ? "why not written" : reason;
  return words.charAt(0).toUpperCase() + words.slice(1);
}

const labels: Record<string, string> = {
  on: "Walked on",
  stage: "At the stage",
  timing: "Had pollen flown?",
  looked: "Plants looked at",
  left: "Left standing",
  pulled: "Pulled",
  noneFound: "Walked, and found none",
  by: "Who walked",
  ...Object.fromEntries(pulledRows.map((reason) => [sheetField("pulled", reason), reasonLabel(reason)])),
};

/** A refusal about all that were pulled together. */
function PulledFault({ refusals }: { refusals: readonly string[] }) {
  return refusals.map((sentence) => (
    <p key={sentence} className={styles.fault}>
      {sentence}
    </p>
  ));
}

/** What the walk says so far: the sum, the off-type share, and the size. */
function WalkSoFar({ typed, ground }: { typed: Texts; ground: SizeGround }) {
  const lines = typedWalk(typed);
  const pulled = lines.reduce((sum, line) => sum + line.pulled, 0);
  const looked = numberTyped(typed.looked);
  // Where none is pulled yet, the plants looked at are those of no line.
  const reading = offTypeReading(offTypesPulled(lines.length > 0 ? lines : [{ ...typedPass(typed), pulled: 0 }]));
  return (
    <div className="stack">
      <div role="status" aria-live="polite" aria-label="This walk">
        <p className={styles.sum}>
          {lines.length === 0
            ? "Nothing pulled yet"
            : pulled === 0
              ? "None found"
              : `${counted(pulled, "plant")} pulled`}
          {looked === null ? "" : ` of ${looked} looked at`}
        </p>
        {reading && lines.length > 0 && pulled <= (looked ?? 0) ? <p>{offTypesInWords(reading)}.</p> : null}
      </div>
      <LiveSize ground={groundWith(ground, { passes: lines })} />
    </div>
  );
}

/** Bitter fruit and a suspected cross reach beyond this walk: the lots that were sown. */
function HoldNotice({ typed, sown }: { typed: Texts; sown: readonly LotInField[] }) {
  const bitter = Boolean(numberTyped(typed[sheetField("pulled", "bitter")]));
  const crossed = Boolean(numberTyped(typed[sheetField("pulled", "suspected cross")]));
  if (!bitter && !crossed) return null;
  return (
    <Notice
      kind={bitter ? "caution" : "waiting"}
      title={
        bitter ? "Bitter ends the lot that was sown, for seed and for food" : "A suspected cross puts the lot on hold"
      }
      actions={sown.map((lot) => (
        <Link key={lot.id} href={`/lots/${lot.id}`}>
          Lot {lot.number}
        </Link>
      ))}
    >
      <p>
        {bitter
          ? "Put it on hold, with what descends from it, and tell those who have of it. Do not taste further plants of it than you must; spit, never swallow. Your local rules decide."
          : "Put it on hold, with what descends from it, until it is known how far the cross reaches; keep a sample of it."}
      </p>
    </Notice>
  );
}
