import { Notice } from "@/components/ui";
import type { NoteOfLot } from "@/lib/registry/lots/read-notes";
import { matterInWords } from "./told-of-lot";

/** Warnings that are open and questions nobody has answered. */
export function OpenMatters({ notes }: { notes: readonly NoteOfLot[] }) {
  const open = notes.filter((note) => (note.what === "warning" || note.what === "question") && note.closed === null);
  if (open.length === 0) return null;
  return (
    <Notice kind="waiting" title="Waits for somebody">
      {open.map((note) => (
        <p key={note.id}>{matterInWords(note)}</p>
      ))}
    </Notice>
  );
}
