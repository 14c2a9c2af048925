import { useState } from "react";
import { type PullReason, passStages, pullReasons, timings } from "@/lib/schemas/grow-outs/field-kinds";
import { go, placeOf } from "../_components/place";
import { lastWalkInWords, timingInWords } from "../_words/seen-words";
import controls from "./controls.module.css";
import { NumberPad } from "./number-pad";
import styles from "./screens.module.css";
import { Choice } from "./trait-control";
import { useDraft } from "./use-draft";
import type { Work } from "./work";

interface Pass {
  stage: (typeof passStages)[number] | null;
  timing: (typeof timings)[number] | null;
  looked: number | null;
  pulled: Partial<Record<PullReason, number>>;
}

const empty: Pass = { stage: null, timing: null, looked: null, pulled: {} };

/** A walk through the plants: at which stage, before or after pollen shed, how many were looked at, and what was pulled, by reason. */
export function PassScreen({ work }: { work: Work }) {
  const { growOutId, state } = work;
  const [pass, set, clear] = useDraft<Pass>(`pass ${growOutId}`, empty);
  const [counts, setCounts] = useState(false);
  const pulled = pullReasons.flatMap((reason) => {
    const plants = pass.pulled[reason] ?? 0;
    return plants > 0 ? [{ reason, plants }] : [];
  });
  const sum = pulled.reduce((all, each) => all + each.plants, 0);
  const step = (reason: PullReason, by: number) =>
    set({ pulled: { ...pass.pulled, [reason]: Math.max(0, (pass.pulled[reason] ?? 0) + by) } });
  const keep = async () => {
    const { stage, timing, looked } = pass;
    // not looked is not none found
    if (sum === 0 && looked === null) return setCounts(true);
    const words = sum === 0 ? "Walked, found none" : `Rogue pass, ${sum} pulled`;
    if (!(await work.record("walk", { stage, timing, looked, pulled, left: null, note: null }, words))) return;
    clear();
    go(placeOf(growOutId));
  };
  if (counts) {
    return (
      <>
        <h1>Plants looked at</h1>
        <p className={styles.quietNear}>Where none was pulled it has to be said: not looked is not none found.</p>
        <div className={styles.thumb}>
          <NumberPad
            label="Plants looked at"
            first={pass.looked === null ? "" : String(pass.looked)}
            confirm="So many"
            onConfirm={(looked) => {
              set({ looked });
              setCounts(false);
            }}
          />
          <button
            type="button"
            className={controls.quietChoice}
            onClick={() => {
              set({ looked: null });
              setCounts(false);
            }}
          >
            Not counted
          </button>
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
        <li>
          <button type="button" className={styles.score} onClick={() => setCounts(true)}>
            <span>Plants looked at</span>
            <span className={pass.looked === null ? styles.notScored : styles.scored}>
              {pass.looked ?? "not counted"}
            </span>
          </button>
        </li>
      </ul>
      <fieldset className={controls.asked}>
        <legend>Pulled, by reason</legend>
        {pullReasons.map((reason) => (
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
