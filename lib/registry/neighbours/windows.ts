import { dayNumber } from "@/lib/science/dates/civil-day";
import type { Hemisphere } from "@/lib/science/dates/fuzzy-date";
import { parseDate } from "@/lib/science/dates/parse-date";
import type { FloweringCurve } from "@/lib/science/isolation/flowering-curve";
import { floweringCurve } from "@/lib/science/isolation/flowering-curve";
import type { FloweringWindow, WindowEnd } from "@/lib/science/isolation/flowering-window";
import type { NeighbourRow, NoteRow } from "./read-neighbours";

/** A window, and whether it was noted day by day or only told. */
export interface KnownWindow extends FloweringWindow {
  readonly half: WindowEnd | null;
  readonly by: "noted" | "told";
}

/**
 * When an organ was seen, by the notes: those of the organ itself, else of the flower as a whole; null where nothing was noted.
 * The rule of the field: silk receives, pollen sends, and a crop whose flowers hold both is noted as a flower.
 */
export function windowOfNotes(notes: readonly NoteRow[], organ: "pollen" | "silk"): KnownWindow | null {
  const own = notes.filter((note) => note.organ === organ);
  const taken = own.length > 0 ? own : notes.filter((note) => note.organ === "flower");
  if (taken.length === 0) return null;
  const end = (moment: string): WindowEnd | null => {
    const note = taken.find((each) => each.moment === moment);
    return note ? { first: note.onFirst, last: note.onLast } : null;
  };
  return { from: end("first"), to: end("last"), half: end("half"), by: "noted" };
}

/**
 * When a neighbour sheds: each end as it was noted, else as it was told; told where one of them is. An end told that cannot stand beside
 * what was noted is left out. Null where neither is known.
 */
export function windowOfNeighbour(
  neighbour: NeighbourRow,
  noted: KnownWindow | null,
  hemisphere: Hemisphere,
): KnownWindow | null {
  const told = (text: string | null): WindowEnd | null => {
    const date = text === null ? null : parseDate(text, { hemisphere });
    return date?.ok ? { first: date.value.first, last: date.value.last } : null;
  };
  const [from, to] = [told(neighbour.windowFirst), told(neighbour.windowLast)];
  if (!noted) return from || to ? { from, to, half: null, by: "told" } : null;
  const begun = noted.from ?? noted.half;
  const ended = noted.to ?? noted.half;
  const whole = {
    ...noted,
    from: noted.from ?? (from && (!ended || from.first <= ended.last) ? from : null),
    to: noted.to ?? (to && (!begun || to.last >= begun.first) ? to : null),
  };
  return { ...whole, by: whole.from === noted.from && whole.to === noted.to ? "noted" : "told" };
}

/** A window as a normal curve of day numbers, where both its ends are known to the day; null else. */
export function curveOfWindow(window: KnownWindow | null): FloweringCurve | null {
  const [first, last] = [dayOf(window?.from), dayOf(window?.to)];
  if (first === null || last === null) return null;
  const half = dayOf(window?.half);
  const outcome = floweringCurve(half === null ? { first, last } : { first, last, peak: half }, []);
  return outcome.ok ? outcome.value : null;
}

function dayOf(end: WindowEnd | null | undefined): number | null {
  return end && end.first === end.last ? dayNumber(end.first) : null;
}
