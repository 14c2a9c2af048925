import { useState } from "react";
import type { PlantShown } from "@/lib/field/screen-state";
import { usePhone, usePhoneNow } from "../_components/phone-context";
import controls from "./controls.module.css";

/** Words about a plant. What was begun stays on the phone, whatever rings in between. */
export function PlantWords({
  plant,
  onWords,
  onLeave,
}: {
  plant: PlantShown;
  onWords: (words: string | null) => void;
  onLeave: () => void;
}) {
  const phone = usePhone();
  const screen = `words ${plant.plant.id}`;
  const begun = usePhoneNow().drafts[screen];
  const [words, setWords] = useState(begun ?? plant.mark?.words ?? "");
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        void phone.setDraft(screen, null);
        onWords(words.trim() || null);
      }}
    >
      <label className={controls.label}>
        Words
        <textarea
          className={controls.input}
          rows={3}
          maxLength={2000}
          value={words}
          onChange={(event) => {
            setWords(event.currentTarget.value);
            void phone.setDraft(screen, event.currentTarget.value);
          }}
        />
      </label>
      <div className={controls.beside}>
        <button type="submit" className={controls.choice}>
          Keep these words
        </button>
        <button type="button" className={controls.quietChoice} onClick={onLeave}>
          Leave as it was
        </button>
      </div>
    </form>
  );
}
