import { type Stage, stages } from "@/lib/schemas/grow-outs/field-kinds";
import { go, placeOf } from "../_components/place";
import { lastCountInWords, stageNames } from "../_words/seen-words";
import controls from "./controls.module.css";
import { NumberPad } from "./number-pad";
import styles from "./screens.module.css";
import { Choice } from "./trait-control";
import { useDraft } from "./use-draft";
import type { Work } from "./work";

/** Plants counted at a stage: first the stage, then the figure. */
export function CountScreen({ work }: { work: Work }) {
  const { growOutId, state } = work;
  const [draft, set, clear] = useDraft<{ stage: Stage | null; typed: string }>(`count ${growOutId}`, {
    stage: null,
    typed: "",
  });
  const { stage } = draft;
  if (stage === null) {
    return (
      <>
        <h1>Count</h1>
        <p className={styles.quietNear}>Last: {lastCountInWords(state.counts)}</p>
        <div className={styles.thumb}>
          <p className={controls.asks}>What is counted?</p>
          <div className={controls.grid} data-columns="2">
            {stages.map((each) => (
              <Choice key={each} small on={false} onTap={() => set({ stage: each })}>
                {stageNames[each]}
              </Choice>
            ))}
          </div>
        </div>
      </>
    );
  }
  return (
    <>
      <h1>{stageNames[stage]}</h1>
      <p className={styles.quietNear}>Last: {lastCountInWords(state.counts.filter((each) => each.stage === stage))}</p>
      <div className={styles.thumb}>
        <NumberPad
          label={`Plants, ${stageNames[stage]}`}
          first={draft.typed}
          onType={(typed) => set({ typed })}
          confirm="Record the count"
          onConfirm={async (plants) => {
            const words = `${plants}, ${(stageNames[stage] ?? stage).toLowerCase()}`;
            if (!(await work.record("count", { stage, plants, males: null, thinnedBy: null, note: null }, words)))
              return;
            clear();
            go(placeOf(growOutId));
          }}
        />
        <button type="button" className={controls.quietChoice} onClick={() => set({ stage: null })}>
          Another stage
        </button>
      </div>
    </>
  );
}
