import { Section } from "@/components/frame";
import { SimpleTable } from "@/components/tables";
import { dateInWords } from "@/lib/display/dates";
import { counted } from "@/lib/display/plurals";
import type { UnitSettings } from "@/lib/display/units";
import type { GrowOutRead } from "@/lib/registry/grow-outs/read-grow-out";
import { eventNames, eventWords } from "../../_words/event-words";

const columns = [
  { key: "day", name: "When" },
  { key: "kind", name: "What" },
  { key: "words", name: "Seen or done" },
  { key: "note", name: "Note" },
] as const;

/** Counts by stage, rogue passes, flowering, isolation and neighbours in the order of days. */
export function EventsSection({ read: { events, people }, units }: { read: GrowOutRead; units: UnitSettings }) {
  return (
    <Section
      id="events"
      title="What was seen and done"
      aside={events.length > 0 ? counted(events.length, "entry", "entries") : undefined}
    >
      {events.length === 0 ? (
        <p className="quiet">
          No count by stage, no rogue pass and no flowering note is on record. Not looked is not none found.
        </p>
      ) : (
        <SimpleTable
          columns={columns}
          rows={events.map((event) => ({
            id: event.id,
            cells: {
              day: event.on === null ? "" : dateInWords(event.on),
              kind: eventNames[event.kind],
              words: eventWords(event, units),
              note: [event.note, event.stewardId === null ? null : (people.get(event.stewardId) ?? "a steward")]
                .filter(Boolean)
                .join(", "),
            },
          }))}
        />
      )}
    </Section>
  );
}
