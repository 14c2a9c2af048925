"use client";

import { useActionState, useEffect, useState } from "react";
import { Button, FormRefusals, Progress } from "@/components/ui";
import styles from "./bring-in.module.css";

export interface ImportState {
  readonly refusals: readonly string[];
}

/** The one confirm. While it is written, the count of what has been written is asked for every half second. */
export function ConfirmImport({
  upload,
  rows,
  action,
}: {
  upload: string;
  rows: number;
  action: (state: ImportState, form: FormData) => Promise<ImportState>;
}) {
  const [state, submit, pending] = useActionState(action, { refusals: [] });
  const [written, setWritten] = useState(0);

  useEffect(() => {
    if (!pending) return;
    const timer = setInterval(async () => {
      const response = await fetch(`/bring-in/${upload}/progress`);
      if (response.ok) setWritten(((await response.json()) as { written: number }).written);
    }, 500);
    return () => clearInterval(timer);
  }, [pending, upload]);

  return (
    <form action={submit} className={styles.form}>
      <FormRefusals refusals={state.refusals.map((sentence) => ({ sentence }))} />
      <input type="hidden" name="upload" value={upload} />
      <p className="measure">All of it goes in as one entry of the history, and one action there takes it back.</p>
      {pending ? (
        <Progress label="Writing" done={written} of={null} unit="records" />
      ) : (
        <Button type="submit" kind="chief">
          Bring {rows === 1 ? "this record" : `these ${rows.toLocaleString("en-GB")} records`} in
        </Button>
      )}
    </form>
  );
}
