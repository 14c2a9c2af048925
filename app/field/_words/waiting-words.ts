import type { PhoneNow } from "@/lib/field/phone";
import { waitingOf } from "@/lib/field/screen-state";
import { daysSince, momentInWords, spanInWords } from "./moments";

/** A clock that is further from the registry's than this is told, in milliseconds. */
const clockFarOff = 5 * 60_000;
/** What has waited so many days is told more loudly: phones clear what is not looked at. */
const longDays = 3;

/** The one line that is always in sight: what is not in the registry yet, and since when. */
export function waitingInWords({ rows, photosWaiting }: PhoneNow, now: number): string {
  const { unsent, since } = waitingOf(rows);
  if (unsent === 0 && photosWaiting === 0)
    return rows.length === 0 ? "nothing recorded here" : "all is in the registry";
  const photos = photosWaiting === 0 ? "" : photosWaiting === 1 ? "1 photo" : `${photosWaiting} photos`;
  const records = unsent === 0 ? "" : photos === "" ? `${unsent}` : unsent === 1 ? "1 record" : `${unsent} records`;
  const what = [records, photos].filter(Boolean).join(" and ");
  return `${what} not yet in the registry${since === null ? "" : `, since ${momentInWords(since, now)}`}`;
}

/** What the steward has to know or do about this phone now, each a sentence; none where all is well. */
export function warningsOf(phone: PhoneNow, now: number): string[] {
  const { unsent, since, refused } = waitingOf(phone.rows);
  const days = since === null ? 0 : daysSince(since, now);
  return [
    phone.signInAsked
      ? "The registry asks who you are: your sign-in has run out. Sign in again; everything stays here until it is in the registry."
      : "",
    days >= longDays
      ? `${unsent} records have waited ${days} days on this phone alone. Bring it where it has a signal, or save them to a file.`
      : "",
    Math.abs(phone.clockAhead) >= clockFarOff
      ? `This phone’s clock is ${spanInWords(phone.clockAhead)} ${phone.clockAhead > 0 ? "ahead of" : "behind"} the registry’s. Set it right: the day of each record goes by it. The registry keeps both times.`
      : "",
    refused > 0
      ? `The registry would not have ${refused === 1 ? "one record" : `${refused} records`}. They stay here until you settle what becomes of them.`
      : "",
  ].filter(Boolean);
}

/** Why sending ended, in a sentence; null where all went. */
export function stoppedInWords({ sent }: PhoneNow): string | null {
  if (sent === null || sent.stopped === null) return null;
  switch (sent.stopped) {
    case "unreachable":
      return "The registry could not be reached. All stays here and goes by itself when it can.";
    case "sign-in":
      return "The registry asks for a sign-in first.";
    case "too-big":
      return "One record is too big for the registry. Save it to a file, and bring the file to the desk.";
    case "no answer":
      return "The registry answered without naming what was sent. All stays here.";
    case "fault":
      return `The registry could not take it in: ${sent.words ?? ""} All stays here.`;
  }
}
