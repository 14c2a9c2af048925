"use client";

import { useEffect, useRef, useState, useTransition } from "react";
import { AskTwice, Button, ButtonLink, Notice } from "@/components/ui";
import { counted, listed } from "@/lib/display/plurals";
import { type Booked, takeLinesBack } from "../_actions/book";

/** What a booking has made, what stayed in words, and the one undo of it. */
export function BookedLines({
  booked,
  onTakenBack,
  onAnother,
}: {
  booked: Booked;
  onTakenBack: () => void;
  onAnother: () => void;
}) {
  const { made, varietyId, varietyName, keptInWords, changeSetId } = booked;
  const [refusals, setRefusals] = useState<readonly string[]>([]);
  const [, start] = useTransition();
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => box.current?.focus(), []);
  const what = [
    counted(made.lots, "lot"),
    counted(made.growOuts, "grow-out"),
    counted(made.entries, "ledger line"),
    ...(made.tests > 0 ? [counted(made.tests, "germination test")] : []),
  ];
  const takeBack = () =>
    start(async () => {
      const undone = await takeLinesBack(changeSetId);
      if (undone.ok) onTakenBack();
      else setRefusals(undone.refusals.map((refusal) => refusal.sentence));
    });
  return (
    <div className="stack" ref={box} tabIndex={-1}>
      <h2>Booked</h2>
      <p className="lead">
        {varietyName}: {listed(what)}. Every line’s words are kept with them.
      </p>
      {keptInWords.length > 0 ? (
        <Notice title="These stayed in words, for they could not be booked">
          <ul>
            {keptInWords.map((kept) => (
              <li key={`${kept.line}:${kept.words}`}>
                Line {kept.line + 1}, “{kept.words}”: {kept.why}
              </li>
            ))}
          </ul>
        </Notice>
      ) : null}
      {refusals.length > 0 ? (
        <Notice kind="waiting" title="It could not be taken back">
          {refusals.map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
        </Notice>
      ) : null}
      <div className="row">
        <ButtonLink href={`/varieties/${varietyId}`} kind="chief">
          To {varietyName}
        </ButtonLink>
        <Button onClick={onAnother}>Type another in</Button>
        <AskTwice
          button="Take it all back"
          title="Take these lines back?"
          says={<p>{listed(what)} go, and the words with them. What you typed stands here again.</p>}
          confirm="Take it all back"
          kind="entry"
          action={takeBack}
        />
      </div>
    </div>
  );
}
