import { useSyncExternalStore } from "react";

/*
 * Where in the field's one document the hand is: it stands behind the # of the address, so that a reload or the way back leads there with no signal.
 */

/** "" is the list of what is on this phone, "phone" the phone itself, otherwise a grow-out's id and what is done there. */
export interface FieldPlace {
  readonly growOutId: string | null;
  readonly phone: boolean;
  /** what is done: mark, plant, pass, count, flowering, harvest, plants, choose, type */
  readonly what: string;
  /** a plant's id */
  readonly which: string | null;
}

export function readPlace(hash: string): FieldPlace {
  const [first = "", what = "", which] = hash.replace(/^#/, "").split("/").map(decoded);
  if (first === "phone") return { growOutId: null, phone: true, what: "", which: null };
  return { growOutId: first === "" ? null : first, phone: false, what, which: which ?? null };
}

function decoded(step: string): string {
  try {
    return decodeURIComponent(step);
  } catch {
    return "";
  }
}

export function placeOf(...steps: readonly string[]): string {
  return `#${steps.map(encodeURIComponent).join("/")}`;
}

/** Goes on without a step to come back to: from a new plant to the same plant once it is marked. */
export function goOn(place: string): void {
  history.replaceState(null, "", place);
  window.dispatchEvent(new HashChangeEvent("hashchange"));
}

export function go(place: string): void {
  if (location.hash === place) return;
  location.hash = place;
}

function listen(listener: () => void): () => void {
  window.addEventListener("hashchange", listener);
  return () => window.removeEventListener("hashchange", listener);
}

export function useHash(): string {
  return useSyncExternalStore(
    listen,
    () => location.hash,
    () => "",
  );
}
