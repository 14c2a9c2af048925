"use client";

import Link from "next/link";
import { type FormEvent, useState } from "react";
import { Button, Notice, Progress } from "@/components/ui";
import { counted } from "@/lib/display/plurals";
import { type FateOfRecord, fatesOfRecord, fieldAnswer, fieldFile } from "@/lib/schemas/field/field-delivery";
import { mostAtOnce } from "@/lib/schemas/field/heap";
import styles from "./file-form.module.css";

type Told = Readonly<Record<FateOfRecord, number>>;

const none: Told = { taken: 0, held: 0, waiting: 0, question: 0, refused: 0 };

/** Of one record, and of several. */
const words: Readonly<Record<FateOfRecord, readonly [string, string]>> = {
  taken: ["came into the registry", "came into the registry"],
  held: ["stood there already", "stood there already"],
  waiting: ["waits for something that has not come yet", "wait for something that has not come yet"],
  question: ["waits for a person", "wait for a person"],
  refused: ["is not this registry’s, or not yours to bring in", "are not this registry’s, or not yours to bring in"],
};

type State =
  | { readonly at: "begin"; readonly trouble: string | null }
  | { readonly at: "sending"; readonly done: number; readonly of: number }
  | { readonly at: "done"; readonly phone: string; readonly told: Told };

/** Chooses the file and brings its records in, a heap at a time. */
export function FileForm() {
  const [state, setState] = useState<State>({ at: "begin", trouble: null });
  const trouble = (sentence: string) => setState({ at: "begin", trouble: sentence });

  async function bringIn(event: FormEvent<HTMLFormElement>) {
    event.preventDefault();
    const file = new FormData(event.currentTarget).get("file");
    if (!(file instanceof File) || file.size === 0) return trouble("Choose the file that the phone has saved.");
    const read = fieldFile.safeParse(parsed(await file.text()));
    if (!read.success)
      return trouble(
        "This is no file of records from the field. On the phone, save the file anew and choose that one.",
      );
    const { device, records } = read.data;
    let told = none;
    for (let from = 0; from < records.length; from += mostAtOnce) {
      setState({ at: "sending", done: from, of: records.length });
      const answer = await send({
        device,
        sentAt: new Date().toISOString(),
        records: records.slice(from, from + mostAtOnce),
      });
      if (typeof answer === "string") return trouble(answer);
      for (const { fate } of answer.answers) told = { ...told, [fate]: told[fate] + 1 };
    }
    setState({ at: "done", phone: device.name, told });
  }

  if (state.at === "sending")
    return <Progress label="Records brought in" done={state.done} of={state.of} unit="records" />;
  if (state.at === "done")
    return (
      <Notice title={`From the phone ${state.phone}`}>
        <ul>
          {fatesOfRecord.map((fate) =>
            state.told[fate] === 0 ? null : (
              <li key={fate}>
                {counted(state.told[fate], "record")} {words[fate][state.told[fate] === 1 ? 0 : 1]}
              </li>
            ),
          )}
        </ul>
        <p>
          <Link href="/field/came-home">Look at what came home</Link>
        </p>
      </Notice>
    );
  return (
    <form className={styles.form} onSubmit={bringIn}>
      {state.trouble ? (
        <div role="alert">
          <Notice kind="waiting" title="It was not brought in">
            {state.trouble}
          </Notice>
        </div>
      ) : null}
      <label className={styles.file}>
        <span>The phone’s file</span>
        <input type="file" name="file" accept=".json,application/json" />
      </label>
      <Button type="submit" kind="chief">
        Bring it in
      </Button>
    </form>
  );
}

/** The answer to a heap, or in words why there is none. */
async function send(delivery: object) {
  const body = JSON.stringify(delivery);
  const headers = { "content-type": "application/json" };
  const response = await fetch("/field/records", { method: "POST", headers, body }).catch(() => null);
  if (!response)
    return "The registry did not answer. Look whether it still runs, and bring the file in again: nothing is taken twice.";
  if (response.status === 401)
    return "You are not signed in any more. Sign in, and bring the file in again: nothing is taken twice.";
  const answer: unknown = await response.json().catch(() => null);
  const read = fieldAnswer.safeParse(answer);
  if (response.ok && read.success) return read.data;
  const said =
    typeof answer === "object" && answer !== null && "words" in answer
      ? String(answer.words)
      : "The registry could not take it.";
  return `${said} Bring the file in again then: nothing is taken twice.`;
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}
