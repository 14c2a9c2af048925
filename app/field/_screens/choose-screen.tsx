import { useCallback, useMemo, useRef } from "react";
import { ChoosePlants, type KeptAnswer, readSetting } from "@/components/choose-plants";
import { Offering } from "@/components/ui/offered";
import { counted } from "@/lib/display/plurals";
import { choiceInField, markOfChoice, type RowOfChoice } from "@/lib/field/choice-in-field";
import { usePhone, usePhoneNow } from "../_components/phone-context";
import { placeOf } from "../_components/place";
import { scoreWords } from "../_words/score-words";
import styles from "./screens.module.css";
import type { Work } from "./work";

/* Pages of the desk, which do not open without a signal, are not offered here. */
const closed = { addresses: ["/varieties/[variety]/traits/[trait]", "/history/[entry]"], deeds: [] };

/** The choice of what to keep among the plants, worked out on the phone; its marks are records like any other. What was set is kept on the phone. */
export default function ChooseScreen({ work }: { work: Work }) {
  const { growOutId, pack, state } = work;
  const phone = usePhone();
  const screen = `choose ${growOutId}`;
  const begun = useRef(usePhoneNow().drafts[screen] ?? "");
  const ground = useMemo(() => choiceInField(pack, state, scoreWords), [pack, state]);
  // what was set before is taken up once; from then on the setting is the hand's
  const start = useRef<ReturnType<typeof readSetting> | null>(null);
  if (ground && start.current === null) start.current = readSetting(new URLSearchParams(begun.current), ground);
  const moved = useCallback((address: string) => void phone.setDraft(screen, address || null), [phone, screen]);
  const store = async (sent: Record<string, unknown>): Promise<KeptAnswer> => {
    let written = 0;
    for (const row of sent.rows as readonly RowOfChoice[]) {
      const body = markOfChoice(row, state);
      if (body === null) continue;
      if (!(await work.record("mark", body, `${body.tag ?? body.plant.name}: ${body.intent}`)))
        return { ok: false, refusals: [{ row: row.key, sentence: `after ${counted(written, "mark")}, see the foot` }] };
      written += 1;
    }
    return { ok: true, words: `${counted(written, "mark")} on this phone`, changeSetId: null };
  };
  if (!ground || start.current === null) {
    return (
      <>
        <h1>Choose what to keep</h1>
        <p className={styles.lead}>
          What was taken along does not tell what a choice is made from. Open this grow-out once where there is a
          signal.
        </p>
      </>
    );
  }
  const scored = ground.plants.filter(({ scores }) => Object.keys(scores).length > 0).length;
  const weighed = ground.traits.some(({ better }) => better !== null);
  return (
    <>
      <h1>Choose what to keep</h1>
      {scored === 0 || !weighed ? (
        <>
          <p className={styles.lead}>
            {scored === 0
              ? "No plant is scored yet, so there is nothing to choose by."
              : "Of no trait that was scored anybody said which end is good. Say it at the desk, and take the grow-out along anew."}
          </p>
          <div className={styles.thumb}>
            <a className={styles.chief} href={placeOf(growOutId, "mark")}>
              Mark and score a plant
            </a>
          </div>
        </>
      ) : (
        <Offering closed={closed}>
          <p className={styles.quietNear}>
            {counted(scored, "plant")} of {ground.plants.length} {scored === 1 ? "is" : "are"} scored, as this phone
            knows them now. Counts and sizes stand as they were taken along.
          </p>
          <div className={styles.part}>
            <ChoosePlants ground={ground} start={start.current} moved={moved} store={store} today={null} />
          </div>
        </Offering>
      )}
    </>
  );
}
