import { useState } from "react";
import { type Stage, stages, type Thinning } from "@/lib/schemas/grow-outs/field-kinds";
import { go, placeOf } from "../_components/place";
import { lastCountInWords, stageNames } from "../_words/seen-words";
import controls from "./controls.module.css";
import { FigurePanel } from "./figure-panel";
import { NotePanel, noteInLine, noteSent } from "./note-panel";
import { NumberPad } from "./number-pad";
import styles from "./screens.module.css";
import { Choice } from "./trait-control";
import { useDraft } from "./use-draft";
import type { Work } from "./work";

interface Count {
  stage: Stage | null;
  typed: string;
  males: number | null;
  thinnedBy: Thinning | null;
  note: string;
}

const empty: Count = { stage: null, typed: "", males: null, thinnedBy: null, note: "" };

const thinned: readonly (readonly [Thinning, string])[] = [
  ["random", "at random"],
  ["vigour", "by vigour"],
];

/** Plants counted at a stage: first the stage, then the figure; beside it what belongs to the stage, and words. */
export function CountScreen({ work }: { work: Work }) {
  const { growOutId, state, pack } = work;
  const [draft, set, clear] = useDraft<Count>(`count ${growOutId}`, empty);
  const [asks, setAsks] = useState<"plants" | "thinned" | "males" | "note">("plants");
  const { stage, males, thinnedBy, note } = draft;
  const how = thinned.find(([by]) => by === thinnedBy)?.[1];
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
  const name = stageNames[stage] ?? stage;
  if (asks === "thinned") {
    return (
      <>
        <h1>{name}</h1>
        <p className={styles.quietNear}>By vigour is selection, too: the weakest were taken. At random is none.</p>
        <div className={styles.thumb}>
          <p className={controls.asks}>How was it thinned?</p>
          <div className={controls.grid} data-columns="2">
            {thinned.map(([by, words]) => (
              <Choice
                key={by}
                small
                on={thinnedBy === by}
                onTap={() => {
                  set({ thinnedBy: thinnedBy === by ? null : by });
                  setAsks("plants");
                }}
              >
                {words}
              </Choice>
            ))}
          </div>
          <button type="button" className={controls.quietChoice} onClick={() => setAsks("plants")}>
            Not said
          </button>
        </div>
      </>
    );
  }
  if (asks === "males") {
    return (
      <FigurePanel
        title="Males among them"
        hint={`Of the plants counted: ${name.toLowerCase()}.`}
        first={males}
        onFigure={(counted) => {
          set({ males: counted });
          setAsks("plants");
        }}
      />
    );
  }
  if (asks === "note") {
    return (
      <>
        <h1>{name}</h1>
        <div className={styles.thumb}>
          <NotePanel
            label="Note on the count"
            first={note}
            onType={(words) => set({ note: words })}
            onDone={() => setAsks("plants")}
          />
        </div>
      </>
    );
  }
  const store = async (plants: number) => {
    const body = {
      ...{ stage, plants, note: noteSent(note) },
      males: asksMales(stage, pack.crop.separate) ? males : null,
      thinnedBy: stage === "thinned" ? thinnedBy : null,
    };
    if (!(await work.record("count", body, `${plants}, ${name.toLowerCase()}`))) return;
    clear();
    go(placeOf(growOutId));
  };
  return (
    <>
      <h1>{name}</h1>
      <p className={styles.quietNear}>Last: {lastCountInWords(state.counts.filter((each) => each.stage === stage))}</p>
      <div className={controls.beside}>
        {stage === "thinned" ? (
          <button type="button" className={controls.quietChoice} onClick={() => setAsks("thinned")}>
            {how ? `Thinned ${how}` : "Thinned how?"}
          </button>
        ) : null}
        {asksMales(stage, pack.crop.separate) ? (
          <button type="button" className={controls.quietChoice} onClick={() => setAsks("males")}>
            {males === null ? "Males among them?" : `${males} males`}
          </button>
        ) : null}
        <button type="button" className={controls.quietChoice} onClick={() => setAsks("note")}>
          {noteSent(note) === null ? "Note" : `Note: ${noteInLine(note)}`}
        </button>
        <button
          type="button"
          className={controls.quietChoice}
          onClick={() => set({ stage: null, males: null, thinnedBy: null })}
        >
          Another stage
        </button>
      </div>
      <div className={styles.thumb}>
        <NumberPad
          label={stage === "sown" ? "Seeds sown" : `Plants, ${name}`}
          first={draft.typed}
          onType={(typed) => set({ typed })}
          confirm="Record the count"
          onConfirm={(plants) => void store(plants)}
        />
      </div>
    </>
  );
}

/** Seed has no sex to be seen; where a phone does not know the crop, it asks nothing. */
function asksMales(stage: Stage, separate: boolean | undefined): boolean {
  return separate === true && stage !== "sown";
}
