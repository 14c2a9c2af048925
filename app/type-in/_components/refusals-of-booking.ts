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
}

type Places = { ofLine: Record<number, string[]>; ofLot: Record<string, string[]>; ofField: Record<string, string[]> };

/** Puts each refusal where it can be put right: at the line, at the lot's number, or at its field. */
export function refusalPlaces(booking: NotebookBooking | null, refusals: readonly Refusal[]): RefusalPlaces {
  const places: Places = { ofLine: {}, ofLot: {}, ofField: {} };
  for (const refusal of refusals) {
    const sentence = refusalSentence(refusal);
    const [part, at, field] = refusal.path;
    const index = typeof at === "number" ? at : -1;
    const lot = part === "lots" ? booking?.lots[index] : undefined;
    if (lot && field === "number") add(places.ofLot, lot.ref, sentence);
    else if (lot) add(places.ofLine, lot.line, sentence);
    else if (part === "lines") add(places.ofLine, index, sentence);
    else if (part === "growOuts" || part === "entries" || part === "tests")
      add(places.ofLine, booking?.[part][index]?.line ?? 0, sentence);
    else add(places.ofField, fieldName(refusal.path), sentence);
  }
  return places;
}

function add<K extends string | number>(to: Record<K, string[]>, key: K, sentence: string): void {
  to[key] = [...(to[key] ?? []), sentence];
}
