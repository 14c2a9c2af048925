"use client";

import { useState, useTransition } from "react";
import { AskTwice } from "@/components/ui/ask-twice";
import { DateField } from "@/components/ui/date-field";
import { Way } from "@/components/ui/offered";
import { type Option, Select } from "@/components/ui/select";
import { counted, listed } from "@/lib/display/plurals";
import type { ChoiceGround } from "@/lib/schemas/plants/choice-ground";
import { rowsOfChoice } from "@/lib/schemas/plants/rows-of-choice";
import type { ChoiceOfPlants } from "@/lib/science/selection/choice-of-plants";
import styles from "./choose-plants.module.css";
import type { Setting } from "./setting";

/** What storing answered, each refusal with the plant's row. */
export type KeptAnswer =
  | { readonly ok: true; readonly words: string; readonly changeSetId: string | null }
  | { readonly ok: false; readonly refusals: readonly { readonly row: string; readonly sentence: string }[] };

/** Sends the rows of the choice to be stored as one entry of the history. */
export type StoreChoice = (sent: Record<string, unknown>) => Promise<KeptAnswer>;

/** Writes the choice as marks: says what would change, asks twice, and tells what was stored or why not. */
export function KeepThese({
  ground,
  setting,
  choice,
  store,
  today,
  people,
}: {
  ground: ChoiceGround;
  setting: Setting;
  choice: ChoiceOfPlants;
  store: StoreChoice;
  /** null: neither the day nor the hand is asked */
  today: string | null;
  people: readonly Option[];
}) {
  const [others, setOthers] = useState<"watch" | "stay">("watch");
  const [answer, setAnswer] = useState<KeptAnswer | null>(null);
  const [storing, startStoring] = useTransition();
  const byName = new Map(ground.plants.map(({ name, id }) => [name, id]));
  const leftOut = new Map(
    Object.entries(setting.leftOut).flatMap(([name, reason]): [string, string][] => {
      const id = byName.get(name);
      return id === undefined ? [] : [[id, reason]];
    }),
  );
  const writes = rowsOfChoice(ground.plants, { kept: new Set(choice.kept), leftOut, others });
  const nothing = writes.rows.length === 0;
  const keep = (form: FormData) => {
    const sent = { on: String(form.get("on") ?? ""), stewardId: String(form.get("steward") ?? ""), rows: writes.rows };
    startStoring(async () => setAnswer(await store(sent)));
  };
  return (
    <div className="stack-near">
      <p className="measure">{changesInWords(writes)}</p>
      {choice.placesLeft > 0 ? (
        <p className="waits">
          {counted(choice.tied.length, "plant")} share the cut and none of them is kept: choose first, or keep fewer.
        </p>
      ) : null}
      {writes.watch > 0 || others === "stay" ? (
        <fieldset className={styles.pollen}>
          <legend>Others that are marked keep by now</legend>
          {(["watch", "stay"] as const).map((each) => (
            <label key={each}>
              <input type="radio" name="others" checked={others === each} onChange={() => setOthers(each)} />
              {each === "watch" ? "become watch" : "stay as they are"}
            </label>
          ))}
        </fieldset>
      ) : null}
      {nothing ? null : (
        <AskTwice
          button={storing ? "Storing" : "Keep these"}
          buttonKind="chief"
          title={`Keep ${counted(choice.kept.length, "plant")}?`}
          says={<p>{changesInWords(writes)}</p>}
          confirm="Write the marks"
          kind={today === null ? "phone" : "entry"}
          action={keep}
        >
          {today === null ? null : (
            <>
              <DateField name="on" label="Chosen on" value={today} hint="the day, as 2024-08-20 or 2024-08" required />
              <Select name="steward" label="Chosen by" options={people} empty="not said" />
            </>
          )}
        </AskTwice>
      )}
      {answer?.ok ? (
        <p role="status">
          Stored: {answer.words}.{" "}
          {answer.changeSetId ? <Way href={`/history/${answer.changeSetId}`}>It can be taken back</Way> : null}
        </p>
      ) : null}
      {answer?.ok === false ? (
        <div role="alert" className="waits">
          <p>Nothing was stored: {counted(answer.refusals.length, "thing")} to put right.</p>
          <ul>
            {answer.refusals.slice(0, 12).map(({ row, sentence }) => (
              <li key={`${row} ${sentence}`}>{sentence}</li>
            ))}
          </ul>
        </div>
      ) : null}
    </div>
  );
}

function changesInWords({ keep, already, watch, leftOut }: ReturnType<typeof rowsOfChoice>): string {
  const parts = [
    keep > 0 ? `${counted(keep, "plant")} ${keep === 1 ? "becomes" : "become"} keep` : "",
    already > 0 ? `${already} ${already === 1 ? "is" : "are"} keep already` : "",
    watch > 0 ? `${watch} that ${watch === 1 ? "was" : "were"} keep ${watch === 1 ? "becomes" : "become"} watch` : "",
    leftOut > 0
      ? `${leftOut} left out by hand ${leftOut === 1 ? "gets its reason and becomes" : "get their reasons and become"} watch`
      : "",
  ].filter(Boolean);
  if (keep + watch + leftOut === 0)
    return already > 0 ? "All of them are marked keep already: nothing would change." : "Nothing would change.";
  return `${listed(parts)}. All other marks stay.`;
}
