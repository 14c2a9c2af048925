"use client";

import { useActionState } from "react";
import { AskTwice, Notice, TextField } from "@/components/ui";
import { unanswered } from "../../varieties/_forms/field-spec";
import { erasePicture } from "../_actions/pictures";

/** Erasing a picture for good, asked twice, with what it does and what it leaves. */
export function ErasePicture({ photoId, back }: { photoId: string; back: string }) {
  const [answer, erase] = useActionState(erasePicture.bind(null, photoId, back), unanswered);
  return (
    <div className="stack-near">
      <p className="measure">
        Where somebody wants no picture of themselves or their place here: its file goes, and so does the picture from
        every record that has it. History keeps that there was one, who erased it and why. Backups made before hold it
        until they are old enough to go; so do copies that somebody took out.
      </p>
      {answer.refusals.length > 0 ? (
        <Notice kind="waiting" title="The picture still stands">
          {answer.refusals.map((refusal) => (
            <p key={refusal.sentence}>{refusal.sentence}</p>
          ))}
        </Notice>
      ) : null}
      <div>
        <AskTwice
          button="Erase it for good"
          buttonKind="quiet"
          title="Erase the picture?"
          says={<p>Taking it away is enough where it only stands in the wrong place: then History can put it back.</p>}
          confirm="Erase it for good"
          leave="Keep the picture"
          kind="forgetting"
          action={erase}
        >
          <TextField name="why" id={`erase-${photoId}`} label="Why" required />
        </AskTwice>
      </div>
    </div>
  );
}
