import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import type { NotebookBooking } from "@/lib/schemas/notebook-typing/notebook-booking";
import { accepted, type Outcome, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import { profileOfCrop } from "../crops/profile-of-crop";
import { readSettings } from "../settings/read-settings";
import { DateReader } from "./booked-date";
import { bookedHolder, bookedVariety } from "./booked-variety";
import { bookingFaults } from "./booking-faults";
import { lotsOfBooking } from "./lots-of-booking";
import { writeEntries } from "./write-entries";
import { writeLineage } from "./write-lineage";
import { writeTests } from "./write-tests";
import { writeWords } from "./write-words";

/** Something a line tells that stands in words alone, and why it could not be booked. */
export interface KeptInWords {
  readonly line: number;
  readonly words: string;
  readonly why: string;
}

export interface BookedNotebook {
  readonly varietyId: string;
  readonly varietyName: string;
  readonly made: { readonly lots: number; readonly growOuts: number; readonly entries: number; readonly tests: number };
  readonly keptInWords: readonly KeptInWords[];
}

/**
 * Books the lines of a notebook as a person confirmed them: variety, lots, grow-outs, ledger entries, germination tests, and the words of
 * every line. One operation and one change set, so that one undo takes all of it back. Unknown counts stay unknown; "about" is
 * kept as words and as a value so marked; what cannot be booked (no year, no amount, more than a jar held) stays in words and is said.
 *
 * Refused as a whole, each at its field: a name or number that is taken, a date that is none, a lot of another crop or its own
 * ancestor, shares that are not 1 together, plants that cannot be.
 */
export async function bookNotebookLines(
  db: Database,
  actor: Actor,
  booking: NotebookBooking,
): Promise<Outcome<Performed<BookedNotebook>>> {
  const operation = { action: "record" as const, title: "Lines of a notebook" };
  return perform(db, actor, operation, async (change, tx) => {
    const variety = await bookedVariety(change, tx, booking.variety);
    const holder = await bookedHolder(tx, booking.holder);
    if (!variety.ok || !holder.ok)
      return refused(...[variety, holder].flatMap((each) => (each.ok ? [] : each.refusals)));
    const { id: varietyId, name } = variety.value;
    const { crop } = await tx.variety.findUniqueOrThrow({
      where: { id: varietyId },
      select: { crop: { include: { overrides: true } } },
    });
    const lots = await lotsOfBooking(tx, booking, crop.id);
    const dates = new DateReader((await readSettings(tx)).hemisphere);
    const lineDates = booking.lines.map((line, index) => dates.read(line.year, ["lines", index, "year"]));
    const profile = profileOfCrop(crop, crop.overrides);
    const faults = [...lots.refusals, ...bookingFaults(booking, profile)];
    const place = { change, tx, booking, varietyId, varietyName: name, holderId: holder.value, lots, dates, lineDates };
    if (faults.length > 0) return refused(...faults, ...dates.refusals);
    const lineage = await writeLineage(place);
    const entries = await writeEntries(place);
    const tests = await writeTests(place);
    await writeWords(place, lineage, actor.stewardId);
    if (dates.refusals.length > 0) return refused(...dates.refusals);
    change.title = `Notebook of ${name}: ${booking.lines.length} ${booking.lines.length === 1 ? "line" : "lines"}`;
    change.touch(varietyId);
    return accepted({
      varietyId,
      varietyName: name,
      made: {
        lots: booking.lots.length,
        growOuts: booking.growOuts.length,
        entries: entries.booked,
        tests: tests.booked,
      },
      keptInWords: [...entries.keptInWords, ...tests.keptInWords].sort((a, b) => a.line - b.line),
    });
  });
}
