"use client";

import { useActionState, useEffect, useRef } from "react";
import { AskTwice, Notice } from "@/components/ui";
import { counted } from "@/lib/display/plurals";
import { takeBack, type UndoAnswer } from "../_actions/undo";

const shownAtOnce = 12;

/** The way back from a change set: asks with its consequences named, and says by name what stands in the way. */
export function TakeBack({
  changeSetId,
  title,
  consequences,
  quiet = false,
}: {
  changeSetId: string;
  title: string;
  consequences: string;
  /** in a list of many */
  quiet?: boolean;
}) {
  const [answer, send] = useActionState<UndoAnswer>(takeBack.bind(null, changeSetId), { refusals: [] });
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (answer.refusals.length > 0) box.current?.focus();
  }, [answer]);
  const shown = answer.refusals.slice(0, shownAtOnce);
  return (
    <>
      <AskTwice
        button="Take it back"
        buttonKind={quiet ? "quiet" : "plain"}
        title={`Take back: ${title}?`}
        says={
          <>
            <p>{consequences}.</p>
            <p>The taking back is an entry of its own. What was done with the seed itself stays done.</p>
          </>
        }
        confirm="Take it back"
        kind="entry"
        action={() => send()}
      />
      {answer.refusals.length > 0 ? (
        <div role="alert" tabIndex={-1} ref={box}>
          <Notice
            kind="waiting"
            title={`It cannot be taken back yet: ${counted(answer.refusals.length, "thing")} in the way`}
          >
            <ul>
              {shown.map((sentence) => (
                <li key={sentence}>{sentence}</li>
              ))}
            </ul>
            {answer.refusals.length > shownAtOnce ? <p>… and {answer.refusals.length - shownAtOnce} more.</p> : null}
          </Notice>
        </div>
      ) : null}
    </>
  );
}
