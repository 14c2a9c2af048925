import { uuidv7 } from "uuidv7";
import type { BookingPlace } from "./booking-place";
import { observation } from "./told-observations";
import type { WrittenLineage } from "./write-lineage";

/**
 * Keeps the words of every line: with its grow-out, else with the lot it makes, else as a story of the variety (a year in which nothing
 * was sown, a note). A lot that was received keeps the words of where it came from as its own story.
 */
export async function writeWords(
  place: BookingPlace,
  { growOutOfLine, lotOfLine }: WrittenLineage,
  stewardId: string | null,
): Promise<void> {
  const { change, booking, varietyId, lineDates, lots } = place;
  for (const [index, line] of booking.lines.entries()) {
    if (line.words === "") continue;
    const on = lineDates[index] ?? null;
    const growOutId = growOutOfLine.get(index);
    const lotId = lotOfLine.get(index) ?? lotNamedBy(place, index);
    if (growOutId) await change.create("Observation", observation({ growOutId }, line.words, on));
    else if (lotId && line.kind !== "gap") await change.create("Observation", observation({ lotId }, line.words, on));
    else {
      await change.create("Story", {
        id: uuidv7(),
        varietyId,
        words: line.words,
        stewardId,
        about: on?.text ?? null,
        aboutFirst: on?.first ?? null,
        aboutLast: on?.last ?? null,
      });
    }
  }
  await change.createAll(
    "Story",
    booking.lots
      .filter((lot) => lot.kind === "founder" && !lot.assumed && lot.words !== "")
      .map((lot) => {
        const about = lineDates[lot.line] ?? null;
        return {
          id: uuidv7(),
          lotId: lots.idOf.get(lot.ref) ?? "",
          words: lot.words,
          stewardId,
          about: about?.text ?? null,
          aboutFirst: about?.first ?? null,
          aboutLast: about?.last ?? null,
        };
      }),
  );
}

/** The lot that a line tests, gives from or weighs. */
function lotNamedBy({ booking, lots }: BookingPlace, line: number): string | undefined {
  const named =
    booking.tests.find((test) => test.line === line) ?? booking.entries.find((entry) => entry.line === line);
  return named ? lots.idOf.get(named.lot) : undefined;
}
