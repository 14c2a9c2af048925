"use client";

import Link from "next/link";
import { useRef, useState } from "react";
import { DraftLine } from "@/components/drafts";
import { AskTwice, Button, DateField, FormRefusals, type Option, TextField } from "@/components/ui";
import { refusalsForSummary } from "@/lib/display/refusals";
import { gramsTyped, type UnitSettings } from "@/lib/display/units";
import {
  type LotToSow,
  plantsOfEach,
  proposedSowing,
  reservesAfter,
  type TakenToSow,
} from "@/lib/registry/grow-outs/sowing-plan";
import { parentsAtOnce } from "@/lib/schemas/grow-outs/plan-grow-out";
import { textsOf } from "../../../lots/_form/form-answer";
import { useFormAnswer } from "../../../lots/_form/use-form-answer";
import { sow } from "../../_actions/sow";
import { amountTyped, partsOfTexts } from "../../_form/typed-parts";
import { reserveInWords } from "../../_words/reserve-words";
import { FurtherLot, PlannedLot } from "./lot-line";
import styles from "./sow-form.module.css";
import { Summary } from "./summary";

/** A lot of a line with what is taken of it. */
export interface LineTaken {
  readonly lot: LotToSow;
  readonly taken: TakenToSow;
}

const labels = {
  on: "When",
  override: "Why it is sown all the same",
  ...Object.fromEntries(
    Array.from({ length: parentsAtOnce }, (_, index) => [`parts.${index}.amount`, `How much, line ${index + 1}`]),
  ),
  ...Object.fromEntries(
    Array.from({ length: parentsAtOnce }, (_, index) => [`parts.${index}.lot`, `Lot, line ${index + 1}`]),
  ),
};

/** What is taken out of the jars and sown: worked out as it is typed, asked twice, then written. */
export function SowForm({
  growOut,
  parents,
  lots,
  options,
  crosses,
  units,
  today,
}: {
  growOut: {
    readonly id: string;
    readonly name: string;
    readonly sown: boolean;
    readonly plantsPlanned: number | null;
  };
  parents: readonly { readonly lot: LotToSow; readonly share: number | null }[];
  lots: readonly LotToSow[];
  options: readonly Option[];
  crosses: readonly Option[];
  units: UnitSettings;
  today: string;
}) {
  const form = useRef<HTMLFormElement>(null);
  const start = startOf(parents, today);
  const { answer, send, sending, typed, field, keep, kept, restored, again } = useFormAnswer(
    `grow-out:${growOut.id}:sow`,
    sow.bind(null, growOut.id),
    start,
  );
  const [now, setNow] = useState<Readonly<Record<string, string>> | null>(null);
  const [more, setMore] = useState(0);
  const live = now ?? typed;
  const parts = partsOfTexts(live);
  const further = Math.max(
    more,
    parts.slice(parents.length).findLastIndex(({ lot, amount }) => lot !== "" || amount !== "") + 1,
  );
  const shown = Math.min(parentsAtOnce, parents.length + Math.max(further, parents.length === 0 ? 1 : 0));
  const plants = growOut.plantsPlanned === null || growOut.sown ? null : growOut.plantsPlanned;
  const each =
    plants === null
      ? []
      : plantsOfEach(
          plants,
          parents.map(({ share }) => share),
        );
  const taken = parts.slice(0, shown).flatMap(({ lot: id, amount, unit }): LineTaken[] => {
    const lot = lots.find((one) => one.id === id);
    const value = amountTyped(amount);
    if (!lot || value === null || value === 0) return [];
    return [
      { lot, taken: unit === "seeds" ? { amount: value, unit } : { amount: gramsTyped(value, units), unit: "g" } },
    ];
  });
  const after = reservesAfter(taken);
  const against = taken.flatMap(({ lot }) => lot.objections.map((words) => `Lot ${lot.number} ${words}.`));
  const asksWhy =
    against.length > 0 || after.some(({ answer: is }) => is === "touched") || field("override").refusals.length > 0;
  const look = () => {
    if (!form.current) return;
    keep(form.current);
    setNow(textsOf(new FormData(form.current)));
  };
  const put = (name: string, value: string) => {
    const input = form.current?.elements.namedItem(name);
    if (!(input instanceof HTMLInputElement) && !(input instanceof HTMLSelectElement)) return;
    input.value = value;
    look();
  };
  if (answer.done !== null) {
    return (
      <p role="status">
        It is sown and written. <Link href={answer.done}>Go on</Link>
      </p>
    );
  }
  return (
    <div className={styles.whole}>
      <FormRefusals refusals={refusalsForSummary(answer.refusals, labels)} />
      <form
        ref={form}
        onInput={look}
        onSubmit={(event) => event.preventDefault()}
        className={styles.form}
        noValidate
        aria-label="What is sown"
        key={restored ? "restored" : "begun"}
      >
        <DateField {...field("on")} label="When" hint="the day, or what is known of it: 2027-05-12, 2027-05" required />
        {Array.from({ length: shown }, (_, index) => {
          const planned = parents[index];
          const line = { index, field, units, put, part: parts[index] };
          return planned ? (
            <PlannedLot
              key={planned.lot.id}
              {...line}
              lot={planned.lot}
              proposed={plants === null ? null : proposedSowing(planned.lot, each[index] ?? plants)}
              mayBeNone={!growOut.sown}
            />
          ) : (
            // biome-ignore lint/suspicious/noArrayIndexKey: a line is its place
            <FurtherLot key={index} {...line} lots={lots} options={[...options, ...crosses]} />
          );
        })}
        {shown < parentsAtOnce ? (
          <div>
            <Button kind="quiet" onClick={() => setMore(shown - parents.length + 1)}>
              One more lot
            </Button>
          </div>
        ) : null}
        {after.map((one) => {
          const { words, waits } = reserveInWords(one);
          return (
            <p key={`${one.reserve.varietyId}${one.reserve.holderId}`} className={waits ? "waits measure" : "measure"}>
              {words}
            </p>
          );
        })}
        {against.map((words) => (
          <p key={words} className="waits measure">
            {words}
          </p>
        ))}
        {asksWhy ? (
          <TextField
            {...field("override")}
            label="Why it is sown all the same"
            hint="the reason is kept with it"
            lines={2}
            required
          />
        ) : null}
        <TextField {...field("note")} label="Note" hint="row label, stations, weather in a sentence" lines={2} />
      </form>
      <div className="row">
        <AskTwice
          button={sending ? "Writing it down" : "Sow it"}
          buttonKind="chief"
          title={`Sow ${growOut.name}?`}
          says={<Summary taken={taken} units={units} />}
          confirm="It is sown: write it down"
          leave="Not yet"
          kind="act"
          action={send}
        >
          {Object.entries(now ?? typed).map(([name, value]) => (
            <input key={name} type="hidden" name={name} value={value} />
          ))}
        </AskTwice>
        <Link href={`/grow-outs/${growOut.id}`}>Leave it</Link>
      </div>
      <DraftLine
        kept={kept}
        restored={restored}
        again={() => {
          setNow(null);
          again();
        }}
      />
    </div>
  );
}

function startOf(parents: readonly { readonly lot: LotToSow }[], today: string): Record<string, string> {
  const lines = parents.flatMap(({ lot }, index) => [
    [`parts.${index}.lot`, lot.id],
    [`parts.${index}.unit`, "g"],
  ]);
  return { on: today, ...Object.fromEntries(lines) };
}
