import { dayInWords } from "@/lib/display/dates";
import { dayOf, momentNow } from "@/lib/field/new-record";
import { type Moment, moments, type Organ, organs } from "@/lib/schemas/grow-outs/field-kinds";
import controls from "./controls.module.css";
import styles from "./screens.module.css";
import type { Work } from "./work";

const organNames: Readonly<Record<Organ, string>> = { flower: "Flower", pollen: "Pollen", silk: "Silk" };
const momentNames: Readonly<Record<Moment, string>> = { first: "First", half: "Half", last: "Last" };

/** What is in flower today, pollen and silk apart: one tap notes the day. */
export function FloweringScreen({ work }: { work: Work }) {
  const today = dayOf(momentNow());
  const note = (organ: Organ, moment: Moment) =>
    work.record("flowering", { organ, moment, note: null }, `${organNames[organ]}, ${moment}: today`);
  return (
    <>
      <h1>Flowering</h1>
      <p className={styles.quietNear}>A tap notes today, {dayInWords(today)}. Half: half of the plants.</p>
      <div className={styles.thumb}>
        {organs.map((organ) => (
          <fieldset key={organ} className={controls.asked}>
            <legend>{organNames[organ]}</legend>
            <div className={controls.grid} data-columns="3">
              {moments.map((moment) => {
                const seen = work.state.flowering
                  .filter((each) => each.organ === organ && each.moment === moment)
                  .at(-1);
                return (
                  <button
                    key={moment}
                    type="button"
                    className={controls.smallChoice}
                    aria-pressed={seen !== undefined}
                    disabled={seen?.on === today}
                    onClick={() => void note(organ, moment)}
                  >
                    {momentNames[moment]}
                    <span className={controls.noted}>{seen ? dayInWords(seen.on) : "not noted"}</span>
                  </button>
                );
              })}
            </div>
          </fieldset>
        ))}
      </div>
    </>
  );
}
