"use client";

import { useActionState } from "react";
import { Button, FormRefusals } from "@/components/ui";
import { noWayInYet, WayIn, type WayInAnswer } from "./way-in-shown";

/** Gives somebody who has forgotten the passphrase a link that sets a new one. */
export function NewWayIn({ action }: { action: (before: WayInAnswer) => Promise<WayInAnswer> }) {
  const [answer, send, busy] = useActionState(action, noWayInYet);
  if (answer.shown) return <WayIn shown={answer.shown} whatFor="A new passphrase can be set" />;
  return (
    <form action={send} className="stack-near">
      <FormRefusals refusals={answer.refusals} />
      <p className="measure">
        Who has forgotten the passphrase gets a link from you, good for a day, that sets a new one. The old one works
        until then.
      </p>
      <Button type="submit" disabled={busy}>
        Make the link
      </Button>
    </form>
  );
}
