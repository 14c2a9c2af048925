import { useState } from "react";
import { type PullReason, passStages, pullReasons, timings } from "@/lib/schemas/grow-outs/field-kinds";
import { go, placeOf } from "../_components/place";
import { lastWalkInWords, timingInWords } from "../_words/seen-words";
import controls from "./controls.module.css";
import { FigurePanel } from "./figure-panel";
import { NotePanel, noteInLine, noteSent } from "./note-panel";
import styles from "./screens.module.css";
import { ToldLine } from "./told-line";
import { Choice } from "./trait-control";
import { useDraft } from "./use-draft";
import type { Work } from "./work";

/** Why plants were pulled; one of them that nobody says why. */
const notSaid = "why not said";
type Reason = PullReason | typeof notSaid;
const reasons: readonly Reason[] = [...pullReasons, notSaid];

interface Pass {
  stage: (typeof passStages)[number] | null;
  timing: (typeof timings)[number] | null;
  looked: number | null;
  left: number | null;
  pulled: Partial<Record<Reason, number>>;
  note: string;
}

const empty: Pass = { stage: null, timing: null, looked: null, left: null, pulled: {}, note: "" };

/** A walk through the plants: at which stage, before or after pollen shed, how many were looked at, what was pulled, by reason, and what was left. */
export function PassScreen({ work }: { work: Work }) {
  const { growOutId, state } = work;
  const [pass, set, clear] = useDraft<Pass>(`pass ${growOutId}`, empty);
  const [asks, setAsks] = useState<"looked" | "left" | "note" | null>(null);
  const pulled = reasons.flatMap((reason) => {
    const plants = pass.pulled[reason] ?? 0;
    return plants > 0 ? [{ reason: reason === notSaid ? null : reason, plants }] : [];
  });
  const sum = pulled.reduce((all, each) => all + each.plants, 0);
  const step = (reason: Reason, by: number) =>
    set({ pulled: { ...pass.pulled, [reason]: Math.max(0, (pass.pulled[reason] ?? 0) + by) } });
  const keep = async () => {
    const { stage, timing, looked, left, note } = pass;
    // not looked is not none found
    if (sum === 0 && looked === null) return setAsks("looked");
    const words = sum === 0 ? "Walked, found none" : `Rogue pass, ${sum} pulled`;
    if (!(await work.record("walk", { stage, timing, looked, pulled, left, note: noteSent(note) }, words))) return;
    clear();
    go(placeOf(growOutId));
  };
  if (asks === "looked" || asks === "left") {
    return (
      <FigurePanel
        key={asks}
        title={asks === "looked" ? "Plants looked at" : "Left standing"}
        hint={asks === "looked" ? "Not looked is not none found." : "What stands after the pass, if you counted it."}
        first={pass[asks]}
        onFigure={(plants) => {
          set({ [asks]: plants });
          setAsks(null);
        }}
      />
    );
  }
  if (asks === "note") {
    return (
      <>
        <h1>Rogue pass</h1>
        <div className={styles.thumb}>
          <NotePanel
            label="Note on the pass"
            first={pass.note}
            onType={(note) => set({ note })}
            onDone={() => setAsks(null)}
          />
        </div>
      </>
    );
  }
  return (
    <>
      <h1>Rogue pass</h1>
      <p className={styles.quietNear}>Last: {lastWalkInWords(state.walks)}</p>
      <fieldset className={controls.asked}>
        <legend>Stage of the plants</legend>
        <div className={controls.grid} data-columns="2">
          {passStages.map((stage) => (
            <Choice
              key={stage}
              small
              on={pass.stage === stage}
              onTap={() => set({ stage: pass.stage === stage ? null : stage })}
            >
              {stage}
            </Choice>
          ))}
        </div>
      </fieldset>
      <fieldset className={controls.asked}>
        <legend>Pollen</legend>
        <div className={controls.grid} data-columns="2">
          {timings.map((timing) => (
            <Choice
              key={timing}
              small
              on={pass.timing === timing}
              onTap={() => set({ timing: pass.timing === timing ? null : timing })}
            >
              {timingInWords(timing)}
            </Choice>
          ))}
        </div>
      </fieldset>
      <ul className={styles.scores}>
        <ToldLine name="Plants looked at" told={pass.looked} otherwise="not counted" onTap={() => setAsks("looked")} />
        <ToldLine name="Left standing" told={pass.left} otherwise="not counted" onTap={() => setAsks("left")} />
        <ToldLine
          name="Note"
          told={noteSent(pass.note) && noteInLine(pass.note)}
          otherwise="none"
          onTap={() => setAsks("note")}
        />
      </ul>
      <fieldset className={controls.asked}>
        <legend>Pulled, by reason</legend>
        {reasons.map((reason) => (
          <div key={reason} className={controls.reason}>
            <span>{reason}</span>
            <button
              type="button"
              data-step
              className={controls.choice}
              aria-label={`One less pulled: ${reason}`}
              disabled={!pass.pulled[reason]}
              onClick={() => step(reason, -1)}
            >
              −
            </button>
            <output className={controls.stepped} aria-label={`Pulled: ${reason}`}>
              {pass.pulled[reason] ?? 0}
            </output>
            <button
              type="button"
              data-step
              className={controls.choice}
              aria-label={`One more pulled: ${reason}`}
              onClick={() => step(reason, 1)}
            >
              +
            </button>
          </div>
        ))}
      </fieldset>
      <div className={styles.thumb}>
        <button type="button" className={styles.confirm} onClick={() => void keep()}>
          {sum === 0 ? "Walked, found none" : `Record the pass: ${sum} pulled`}
        </button>
      </div>
    </>
  );
}
