"use client";

import { useRouter } from "next/navigation";
import { type FormEvent, useId, useRef, useState, useTransition } from "react";
import { Button, FormRefusals, NumberField, TextField } from "@/components/ui";
import { useClosed } from "@/components/ui/offered";
import { refusalsByField, refusalsForSummary } from "@/lib/display/refusals";
import { type Count, countKinds } from "@/lib/schemas/germination-test/counts";
import type { Refusal } from "@/lib/science/outcome";
import { storeCorrection } from "../../_actions/store";
import { kindWords } from "../../_sheet/count-sheet";
import { wholeNumberTyped } from "../../_sheet/sheet";
import styles from "./replicate-table.module.css";

/** A count that opens to its correction: what should stand instead, or nothing. What stood there stays in the history. */
export function CorrectCount({
  count,
  replicate,
  sown,
  before,
  normalWords,
}: {
  count: Count & { readonly id: string };
  replicate: string;
  sown: number;
  /** what stood there before it was corrected, newest first */
  before: readonly number[];
  /** what a count of `normal` is called by the basis of the test */
  normalWords: string;
}) {
  const corrected = before.length;
  const looksOnly = useClosed().deeds.includes("correct-at-desk");
  const router = useRouter();
  const dialog = useRef<HTMLDialogElement>(null);
  const titleId = useId();
  const [refusals, setRefusals] = useState<readonly Refusal[]>([]);
  const [storing, startStoring] = useTransition();
  const day = count.day === null ? "day not known" : `day ${count.day}`;
  const byField = refusalsByField(refusals);
  const field = (kind: string) => ({
    name: `instead.${kind}`,
    id: `${titleId}-${kind}`,
    refusals: byField[`instead.${kind}`],
  });

  const open = () => {
    dialog.current?.showModal();
    const first = document.getElementById(`${titleId}-normal`);
    if (first instanceof HTMLInputElement) first.select();
  };
  const store = (given: unknown) =>
    startStoring(async () => {
      const stored = await storeCorrection(given);
      if (!stored.ok) return setRefusals(stored.refusals);
      dialog.current?.close();
      setRefusals([]);
      router.refresh();
    });
  const send = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const form = new FormData(event.currentTarget);
    const typed = (name: string) => String(form.get(name) ?? "").trim();
    const seeds = (kind: string) =>
      typed(`instead.${kind}`) === "" ? null : (wholeNumberTyped(typed(`instead.${kind}`)) ?? typed(`instead.${kind}`));
    const dayText = typed("instead.day");
    const instead = {
      day: dayText === "" ? null : Number.isFinite(Number(dayText)) ? Number(dayText) : dayText,
      ...Object.fromEntries(countKinds.map((kind) => [kind, seeds(kind)])),
    };
    store({ countId: count.id, instead, reason: typed("reason") || null });
  };
  if (looksOnly) return <>{count.normal}</>;
  return (
    <>
      <button
        type="button"
        className={styles.count}
        data-corrected={corrected > 0 || undefined}
        aria-haspopup="dialog"
        aria-label={`Replicate ${replicate}, ${day}: ${count.normal}${corrected > 0 ? ", corrected" : ""}. Correct it`}
        onClick={open}
      >
        {count.normal}
      </button>
      <dialog ref={dialog} className={styles.dialog} aria-labelledby={titleId}>
        <form className="stack" onSubmit={send} noValidate>
          <h2 id={titleId}>
            Replicate {replicate}, {day}
          </h2>
          <p className="quiet">
            What was newly counted that day, of {sown} sown. What stands there now stays in the history.
            {corrected > 0 ? ` Before it was corrected: ${before.join(", then ")}.` : ""}
          </p>
          <FormRefusals
            refusals={refusalsForSummary(
              refusals.filter((refusal) => !byField[refusal.path.join(".")] || refusal.path.length < 2),
            )}
          />
          <div className={styles.kinds}>
            <NumberField {...field("day")} label="Day" value={count.day === null ? "" : String(count.day)} required />
            {countKinds.map((kind) => (
              <NumberField
                key={kind}
                {...field(kind)}
                label={kind === "normal" ? normalWords : kindWords[kind]}
                value={count[kind] === null ? "" : String(count[kind])}
                whole
                required
              />
            ))}
          </div>
          <TextField
            name="reason"
            id={`${titleId}-reason`}
            label="Why"
            hint="read the wrong tray, a slip of the pencil"
          />
          <div className="row">
            <Button kind="chief" type="submit" disabled={storing}>
              Put it right
            </Button>
            <Button disabled={storing} onClick={() => store({ countId: count.id, instead: null })}>
              Take this count back
            </Button>
            <Button kind="quiet" onClick={() => dialog.current?.close()}>
              Leave it
            </Button>
          </div>
        </form>
      </dialog>
    </>
  );
}
