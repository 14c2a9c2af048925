"use client";

import { usePathname } from "next/navigation";
import { useEffect, useState } from "react";
import { fillForm, readSubmission, type Submission, takesPart, textsOf } from "./submission";

const key = "kinrow-sent";
const signIn = "/sign-in";

/**
 * What was typed into a form that was sent after the sign-in had run out: the answer is the sign-in page, and here is what puts the words
 * back into the form when somebody has come back. Kept in this tab alone, for the form that was sent last; a passphrase never is.
 */
export function KeptSubmission() {
  const path = usePathname();
  const [restored, setRestored] = useState(false);
  useEffect(() => {
    const keep = (event: SubmitEvent) => {
      const form = event.target;
      if (!(form instanceof HTMLFormElement) || !takesPart(form)) return;
      store({ path: location.pathname, at: Date.now(), waited: false, texts: textsOf(form) });
    };
    document.addEventListener("submit", keep, { capture: true });
    return () => document.removeEventListener("submit", keep, { capture: true });
  }, []);
  useEffect(() => {
    setRestored(false);
    const kept = stored();
    if (!kept) return;
    if (path === signIn) {
      // Later than a minute it is no answer any more: somebody came here by another way.
      if (Date.now() - kept.at < 60_000) store({ ...kept, waited: true });
      else if (!kept.waited) sessionStorage.removeItem(key);
      return;
    }
    if (!kept.waited) {
      // Any other page after a form was sent is its answer; the same page may still be waiting for it.
      if (path !== kept.path) sessionStorage.removeItem(key);
      return;
    }
    sessionStorage.removeItem(key);
    if (path !== kept.path) return;
    // A form that is drawn in the browser stands a moment later than its page.
    const later = setTimeout(() => setRestored([...document.forms].some((form) => fillForm(form, kept.texts))), 100);
    return () => clearTimeout(later);
  }, [path]);
  if (!restored) return null;
  return (
    <p className="sheet" role="status">
      You were signed out while you wrote. What you had typed stands in its form again; it is not stored yet. A chosen
      file has to be chosen once more.
    </p>
  );
}

function stored(): Submission | null {
  try {
    return readSubmission(sessionStorage.getItem(key), Date.now());
  } catch {
    return null;
  }
}

function store(submission: Submission): void {
  try {
    sessionStorage.setItem(key, JSON.stringify(submission));
  } catch {
    // where nothing can be kept, the form's own draft is all there is
  }
}
