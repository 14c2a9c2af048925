import { dateInWords, dayInWords } from "@/lib/display/dates";
import { plainNumber, seedsCounted } from "@/lib/display/numbers";
import type { LotRead } from "@/lib/registry/lots/read-lot";
import type { NoteOfLot } from "@/lib/registry/lots/read-notes";

/** What was told and seen of a lot: stories in their teller's words, notes, observations, moisture readings. */
export function ToldOfLot({ read }: { read: LotRead }) {
  const { lot, notes } = read;
  const stories = notes.filter((note) => note.what === "story");
  const seen = notes.filter((note) => note.what === "observation" || note.what === "moisture");
  if (stories.length === 0 && seen.length === 0 && !lot.notes) {
    return <p className="quiet">Nobody has told anything of it yet.</p>;
  }
  return (
    <div className="stack">
      {stories.map((story) => (
        <figure key={story.id}>
          <blockquote>{story.words}</blockquote>
          <figcaption className="counts quiet">{toldBy(story)}</figcaption>
        </figure>
      ))}
      {lot.notes ? <p>{lot.notes}</p> : null}
      {seen.length > 0 ? (
        <ul className="stack-near">
          {seen.map((note) => (
            <li key={note.id}>
              {note.on ? `${dateInWords(note.on)}: ` : ""}
              {seenInWords(note)}
            </li>
          ))}
        </ul>
      ) : null}
    </div>
  );
}

/** A warning or question in a sentence. */
export function matterInWords(note: NoteOfLot): string {
  const day = note.on ? dayInWords(note.on.slice(0, 10)) : "";
  return `${note.words ?? ""}${note.who || day ? ` (${[note.who, day].filter(Boolean).join(", ")})` : ""}`;
}

/** Portions that were counted and weighed, newest last. */
export function weighingsInWords(notes: readonly NoteOfLot[]): { id: string; words: string }[] {
  return notes
    .filter((note) => note.what === "weighing")
    .map((note) => ({
      id: note.id,
      words: [
        `${seedsCounted(note.value ?? 0)} weighed ${plainNumber(note.second ?? 0, 3)} g`,
        note.on ? dateInWords(note.on) : "",
        note.words ?? "",
      ]
        .filter(Boolean)
        .join(", "),
    }));
}

function toldBy({ who, on, more }: NoteOfLot): string {
  const parts = [
    who ? `told by ${who}` : "teller not written down",
    on ? dateInWords(on) : "",
    more ? `about ${dateInWords(more)}` : "",
  ];
  return parts.filter(Boolean).join(", ");
}

function seenInWords(note: NoteOfLot): string {
  if (note.what === "moisture") {
    const parts = [
      note.value === null ? "" : `moisture ${plainNumber(note.value, 1)} %`,
      note.second === null ? "" : `air in the jar ${plainNumber(note.second, 0)} % humidity`,
      note.more ? `by ${note.more}` : "",
      note.words ?? "",
    ];
    return parts.filter(Boolean).join(", ");
  }
  const measured = note.value === null ? "" : ` (${plainNumber(note.value, 2)}${note.more ? ` ${note.more}` : ""})`;
  return `${note.words ?? ""}${measured}${note.who ? `, ${note.who}` : ""}`;
}
