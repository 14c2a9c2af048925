"use client";

import { useRouter } from "next/navigation";
import { useActionState, useEffect, useState } from "react";
import { textsStored, useDraft } from "@/components/drafts";
import { refusalsByField } from "@/lib/display/refusals";
import { type FormDeed, textsOf } from "./form-answer";

/** What a field needs of the form: its name, what stands in it, and why that was refused. */
export type FieldOf = (name: string) => { name: string; value: string; refusals: readonly string[] };

/**
 * A form over a server action: what is typed is kept on the device, refusals come back to their fields with what was typed, and the way leads
 * on when it is done. `restored` says that what was typed before stands there again; draw the fields anew when it turns.
 */
export function useFormAnswer(draftKey: string, deed: FormDeed, start: Readonly<Record<string, string>>) {
  const router = useRouter();
  const draft = useDraft(draftKey, textsStored);
  const [answer, send, sending] = useActionState(deed, { typed: start, refusals: [], done: null });
  const [restored, setRestored] = useState<Readonly<Record<string, string>> | null>(null);
  const { found, forget, keep } = draft;
  useEffect(() => {
    if (found?.draft) setRestored(found.draft);
  }, [found]);
  useEffect(() => {
    if (answer.done === null) return;
    forget();
    router.push(answer.done);
    // What other pages hold of it is read anew; done here, for a page that is drawn anew meanwhile would lose the way.
    router.refresh();
  }, [answer.done, forget, router]);
  // Once the server has answered, its copy of what was typed leads.
  const typed = answer.refusals.length > 0 ? answer.typed : (restored ?? start);
  const byField = refusalsByField(answer.refusals);
  const field: FieldOf = (name) => ({ name, value: typed[name] ?? "", refusals: byField[name] ?? [] });
  return {
    answer,
    send,
    sending,
    typed,
    field,
    keep: (form: HTMLFormElement) => keep(textsOf(new FormData(form))),
    kept: draft.kept,
    restored: restored !== null,
    again: () => {
      forget();
      setRestored(null);
    },
  };
}
