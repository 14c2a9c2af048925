import { fieldName, refusalSentence } from "@/lib/display/refusals";
import type { NotebookBooking } from "@/lib/schemas/notebook-typing/notebook-booking";
import type { Refusal } from "@/lib/science/outcome";

/** Where the refusals of a booking stand on the screen. */
export interface RefusalPlaces {
  /** by the line's place */
  readonly ofLine: Readonly<Record<number, readonly string[]>>;
  /** of a lot's number, by the lot's name in the lines */
  readonly ofLot: Readonly<Record<string, readonly string[]>>;
  /** by field: variety.name, variety.crop, holder */
  readonly ofField: Readonly<Record<string, readonly string[]>>;
  /** all of them, for the head of the page */
  readonly summary: readonly { readonly sentence: string; readonly name?: string; readonly label?: string }[];
}

type Places = {
  ofLine: Record<number, string[]>;
  ofLot: Record<string, string[]>;
  ofField: Record<string, string[]>;
  summary: { sentence: string; name?: string; label?: string }[];
};

const labels: Readonly<Record<string, string>> = {
  "variety.name": "Variety",
  "variety.crop": "Crop",
  holder: "Kept by",
};

/** Puts each refusal where it can be put right: at the line, at the lot's number, or at its field. */
export function refusalPlaces(booking: NotebookBooking | null, refusals: readonly Refusal[]): RefusalPlaces {
  const places: Places = { ofLine: {}, ofLot: {}, ofField: {}, summary: [] };
  for (const refusal of refusals) {
    const sentence = refusalSentence(refusal);
    const [part, at, field] = refusal.path;
    const index = typeof at === "number" ? at : -1;
    const lot = part === "lots" ? booking?.lots[index] : undefined;
    const line = lineOf(booking, refusal.path);
    if (lot && field === "number") {
      add(places.ofLot, lot.ref, sentence);
      places.summary.push({ sentence: `Lot ${lot.number}: ${sentence}` });
    } else if (line !== null) {
      add(places.ofLine, line, sentence);
      places.summary.push({ sentence: `Line ${line + 1}: ${sentence}` });
    } else {
      const name = fieldName(refusal.path);
      add(places.ofField, name, sentence);
      places.summary.push(labels[name] ? { sentence, name, label: labels[name] } : { sentence });
    }
  }
  return places;
}

/** The line that a part of the booking comes from; null for what belongs to no line. */
function lineOf(booking: NotebookBooking | null, [part, at]: Refusal["path"]): number | null {
  if (typeof at !== "number") return null;
  if (part === "lines") return at;
  if (part !== "lots" && part !== "growOuts" && part !== "entries" && part !== "tests") return null;
  return booking?.[part][at]?.line ?? null;
}

function add<K extends string | number>(to: Record<K, string[]>, key: K, sentence: string): void {
  to[key] = [...(to[key] ?? []), sentence];
}
