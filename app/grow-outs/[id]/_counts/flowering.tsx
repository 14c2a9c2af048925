import { SimpleTable } from "@/components/tables";
import { Way } from "@/components/ui/offered";
import { span, wholeNumber } from "@/lib/display/numbers";
import type { FloweringOnRecord } from "@/lib/registry/grow-outs/field-records";
import type { FieldRead } from "@/lib/registry/grow-outs/read-field";
import type { GrowOutRead } from "@/lib/registry/grow-outs/read-grow-out";
import { type Moment, moments, type Organ, organs } from "@/lib/schemas/grow-outs/field-kinds";
import { daysApart } from "@/lib/science/dates/days-apart";
import {
  type FloweringWindow,
  type WindowEnd,
  windowDays,
  windowOverlap,
} from "@/lib/science/isolation/flowering-window";
import { momentWords, organWords, whenSeen } from "../../_words/field-words";
import styles from "./counts.module.css";
import { OddNotes } from "./odd-notes";

const columns = [
  { key: "organ", name: <span className="heard">Organ</span> },
  { key: "first", name: "First" },
  { key: "half", name: "Half" },
  { key: "last", name: "Last" },
  { key: "days", name: "Days open", kind: "count" },
] as const;

/** The windows of flower, or of pollen and silk apart, with the days between them. */
export function Flowering({ read, field }: { read: GrowOutRead; field: FieldRead }) {
  const notes = field.flowering;
  if (notes.length === 0)
    return <p className="quiet">No flowering note is on record, so nothing says when its pollen flew.</p>;
  const noted = organs.filter((organ) => notes.some((note) => note.organ === organ));
  const odd = notes.flatMap((note) => field.warnings.get(note.id) ?? []);
  const words = [...new Set(notes.map((note) => note.note))];
  return (
    <>
      <SimpleTable
        caption="Flowering"
        columns={columns}
        entries
        rows={noted.map((organ) => ({
          id: organ,
          cells: {
            organ: organWords[organ],
            ...Object.fromEntries(
              moments.map((moment) => [moment, <Noted key={moment} read={read} note={noteOf(notes, organ, moment)} />]),
            ),
            days: daysOpen(windowOf(notes, organ)),
          },
        }))}
      />
      <PollenToSilk notes={notes} />
      <p className="quiet">
        <OddNotes words={words} who={null} odd={odd} />
      </p>
    </>
  );
}

function Noted({ read, note }: { read: GrowOutRead; note: FloweringOnRecord | null }) {
  if (note === null) return <span className={styles.open}>not noted</span>;
  return (
    <Way href={`/grow-outs/${read.growOut.id}/flowering/${note.id}`}>
      {whenSeen(note.on)}
      <span className="heard">, put it right</span>
    </Way>
  );
}

/** How far silk came behind pollen, and on how many days both were open. */
function PollenToSilk({ notes }: { notes: readonly FloweringOnRecord[] }) {
  const gaps = moments.flatMap((moment) => {
    const [pollen, silk] = [endOf(noteOf(notes, "pollen", moment)), endOf(noteOf(notes, "silk", moment))];
    return pollen && silk ? [`${momentWords[moment]} ${apartInWords(daysApart(pollen, silk))}`] : [];
  });
  if (gaps.length === 0) return null;
  const { least, most } = windowOverlap(windowOf(notes, "pollen"), windowOf(notes, "silk"));
  const both =
    most === null ? "" : ` Pollen flew while silk was open on ${span(least, most)} ${most === 1 ? "day" : "days"}.`;
  return (
    <p>
      Silk against pollen: {gaps.join(", ")}.{both}
    </p>
  );
}

function apartInWords({ low, high }: { low: number; high: number }): string {
  if (low === 0 && high === 0) return "on one day";
  if (low >= 0) return `${span(low, high)} ${high === 1 ? "day" : "days"} later`;
  if (high <= 0) return `${span(-high, -low)} ${low === -1 ? "day" : "days"} sooner`;
  return `between ${wholeNumber(-low)} days sooner and ${wholeNumber(high)} later`;
}

function noteOf(notes: readonly FloweringOnRecord[], organ: Organ, moment: Moment): FloweringOnRecord | null {
  return notes.find((note) => note.organ === organ && note.moment === moment) ?? null;
}

function endOf(note: FloweringOnRecord | null): WindowEnd | null {
  return note?.onFirst && note.onLast ? { first: note.onFirst, last: note.onLast } : null;
}

function windowOf(notes: readonly FloweringOnRecord[], organ: Organ): FloweringWindow {
  return { from: endOf(noteOf(notes, organ, "first")), to: endOf(noteOf(notes, organ, "last")) };
}

function daysOpen(window: FloweringWindow) {
  const { least, most } = windowDays(window);
  return window.from === null || window.to === null || most === null ? (
    <span className={styles.open}>unknown</span>
  ) : (
    span(least, most)
  );
}
