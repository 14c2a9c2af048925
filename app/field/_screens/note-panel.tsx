import { useState } from "react";
import { useFromTheTop } from "../_components/use-from-the-top";
import controls from "./controls.module.css";

/** Words beside what is counted or walked; `onType` keeps what is begun. */
export function NotePanel({
  label,
  first,
  onType,
  onDone,
}: {
  label: string;
  first: string;
  onType: (words: string) => void;
  onDone: () => void;
}) {
  useFromTheTop();
  const [words, setWords] = useState(first);
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        onDone();
      }}
    >
      <label className={controls.label}>
        {label}
        <textarea
          className={controls.input}
          rows={3}
          maxLength={2000}
          value={words}
          onChange={(event) => {
            setWords(event.currentTarget.value);
            onType(event.currentTarget.value);
          }}
        />
      </label>
      <div className={controls.beside}>
        <button type="submit" className={controls.choice}>
          Go on
        </button>
      </div>
    </form>
  );
}

/** What is sent of a note: nothing where nothing was written. */
export function noteSent(words: string): string | null {
  return words.trim() || null;
}

/** A note in its line: its first words, or that there is none. */
export function noteInLine(words: string): string {
  const said = words.trim().replace(/\s+/g, " ");
  if (said === "") return "none";
  return said.length > 24 ? `${said.slice(0, 23)}…` : said;
}
