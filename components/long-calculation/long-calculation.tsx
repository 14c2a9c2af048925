"use client";

import { Button, Progress } from "@/components/ui";
import { counted } from "@/lib/display/plurals";
import type { Heard } from "./follow-calculation";

/** What is seen while the server works a calculation out: how far it is, and a way to stop it. `unit`: what it counts, as "runs". */
export function LongCalculation({ of, unit, onStop }: { of: Heard; unit: string; onStop: () => void }) {
  return (
    <div className="stack-near not-on-paper">
      {of.state === "waiting" && of.before > 0 ? (
        <p>It waits for its turn: {counted(of.before, "other calculation")} before it.</p>
      ) : of.state === "working" && of.done !== null ? (
        <Progress label="Being worked out" done={of.done} of={of.of} unit={unit} />
      ) : (
        <p role="status">Being worked out …</p>
      )}
      <p>
        <Button kind="quiet" onClick={onStop}>
          Stop it
        </Button>
      </p>
    </div>
  );
}
