"use client";

import { useActionState } from "react";
import { Section } from "@/components/frame";
import { AskTwice, Notice } from "@/components/ui";
import { forgetPerson } from "../_actions/store";

/** Erasing a person, asked twice, with what it does and what it leaves. */
export function Forget({ stewardId, name }: { stewardId: string; name: string }) {
  const [answer, forget] = useActionState(forgetPerson.bind(null, stewardId), { refusals: [] });
  return (
    <Section id="forget" title="Erase the name">
      <p className="measure">
        If {name} wants to be on record no longer: name, contact and address go for good, here and in the history. The
        seed stays, with “a steward” in its place. Words of a story stay as they were told; copies made before hold the
        name until they are old enough to go.
      </p>
      {answer.refusals.length > 0 ? (
        <Notice kind="waiting" title="The name still stands">
          {answer.refusals.map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
        </Notice>
      ) : null}
      <div>
        <AskTwice
          button="Erase the name"
          title={`Erase ${name}?`}
          says={<p>Name, contact and address go, and every mention of them in the history. “A steward” stays.</p>}
          confirm="Erase it for good"
          leave="Keep the name"
          kind="forgetting"
          action={forget}
        />
      </div>
    </Section>
  );
}
