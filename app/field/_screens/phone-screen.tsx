import { useEffect, useState } from "react";
import { type Ground, grounds, groundWords } from "@/components/frame/ground";
import { Button, ButtonAnchor } from "@/components/ui/button";
import type { KeptRecord } from "@/lib/field/kept-rows";
import { waitingOf } from "@/lib/field/screen-state";
import { useGround } from "../_components/field-head";
import { Opens } from "../_components/on-this-phone";
import { usePhone, usePhoneNow } from "../_components/phone-context";
import { askForLastingStorage, type Readiness, roomLeft } from "../_components/readiness";
import { useClock } from "../_components/use-clock";
import { momentInWords } from "../_words/moments";
import { lastingInWords, roomInWords } from "../_words/storage-words";
import { stoppedInWords, waitingInWords, warningsOf } from "../_words/waiting-words";
import { CameBack } from "./came-back";
import controls from "./controls.module.css";
import { saveRecords } from "./save-file";
import styles from "./screens.module.css";

/** The phone itself: what waits on it, what the registry asked, how its memory stands, and how it lies in the hand. */
export default function PhoneScreen({ readiness }: { readiness: Readiness }) {
  const phone = usePhone();
  const now = usePhoneNow();
  const clock = useClock(30_000);
  const { unsent } = waitingOf(now.rows);
  const stopped = stoppedInWords(now);
  return (
    <>
      <h1>{sentenceCase(waitingInWords(now, clock))}</h1>
      {now.heardAt ? (
        <p className={styles.quietNear}>The registry last answered {momentInWords(now.heardAt, clock)}.</p>
      ) : null}
      {warningsOf(now, clock).map((each) => (
        <p key={each} className={styles.warning}>
          {each}
        </p>
      ))}
      {stopped ? <p role="status">{stopped}</p> : null}
      <div className={styles.acts}>
        {now.signInAsked ? (
          <ButtonAnchor href="/sign-in?then=%2Ffield" kind="chief" wide>
            Sign in again
          </ButtonAnchor>
        ) : null}
        {unsent > 0 || now.photosWaiting > 0 ? (
          <Button kind="chief" wide disabled={now.sending} onClick={() => void phone.send()}>
            {now.sending ? "Sending …" : "Send now"}
          </Button>
        ) : null}
        <SaveToFile rows={now.rows} />
      </div>
      <CameBack clock={clock} />
      <section className={styles.part} aria-labelledby="grow-outs-here">
        <h2 id="grow-outs-here">Grow-outs here</h2>
        {now.packs.length === 0 ? <p>None.</p> : null}
        <ul className={styles.works}>
          {now.packs.map((each) => (
            <TakenOff
              key={each.growOutId}
              growOutId={each.growOutId}
              name={`${each.pack.variety.name}, ${each.pack.growOut.name}`}
            />
          ))}
        </ul>
      </section>
      <HandAndLight />
      <Memory readiness={readiness} />
    </>
  );
}

function sentenceCase(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** What is on this phone alone, as a file: to send by other ways, or to bring to the desk. */
function SaveToFile({ rows }: { rows: readonly KeptRecord[] }) {
  const phone = usePhone();
  const { device } = usePhoneNow();
  const alone = rows.filter((row) => row.state === "unsent" || row.state === "refused");
  const [all, setAll] = useState(false);
  const saved = all ? rows : alone;
  if (device === null || rows.length === 0) return null;
  const save = async () => {
    const savedAt = await saveRecords(device, saved);
    if (savedAt !== null)
      await phone.savedToFile(
        saved.map((row) => row.id),
        [],
        savedAt,
      );
  };
  return (
    <>
      {saved.length > 0 ? (
        <Button wide onClick={() => void save()}>
          Save {saved.length === 1 ? "1 record" : `${saved.length} records`} to a file
        </Button>
      ) : null}
      <label className={styles.tick}>
        <input type="checkbox" checked={all} onChange={(event) => setAll(event.currentTarget.checked)} />a file with
        those, too, that are in the registry already: taken in twice, they stand there once
      </label>
    </>
  );
}

function TakenOff({ growOutId, name }: { growOutId: string; name: string }) {
  const phone = usePhone();
  const [says, setSays] = useState("");
  const leave = async () => {
    if (!(await phone.leaveBehind(growOutId)))
      setSays(
        "Something of it is not in the registry yet. Send it first; or save what was not taken in to a file, and put it away.",
      );
  };
  return (
    <li className={styles.cameBack}>
      <p>{name}</p>
      <p role="status">{says}</p>
      <button
        type="button"
        className={controls.quietChoice}
        aria-label={`Take off this phone: ${name}`}
        onClick={() => void leave()}
      >
        Take off this phone
      </button>
    </li>
  );
}

function HandAndLight() {
  const phone = usePhone();
  const { hand } = usePhoneNow();
  const [ground, setGround] = useGround();
  return (
    <section className={styles.part} aria-labelledby="hand-and-light">
      <h2 id="hand-and-light">Hand and light</h2>
      <fieldset className={controls.asked}>
        <legend>Thumb</legend>
        <div className={controls.grid} data-columns="2">
          {(["left", "right"] as const).map((each) => (
            <button
              key={each}
              type="button"
              className={controls.smallChoice}
              aria-pressed={hand === each}
              onClick={() => void phone.setHand(each)}
            >
              {each} thumb
            </button>
          ))}
        </div>
      </fieldset>
      <fieldset className={controls.asked}>
        <legend>Light</legend>
        <div className={controls.grid} data-columns="2">
          {grounds.map((each: Ground) => (
            <button
              key={each}
              type="button"
              className={controls.smallChoice}
              aria-pressed={ground === each}
              onClick={() => setGround(each)}
            >
              {groundWords[each]}
            </button>
          ))}
        </div>
      </fieldset>
    </section>
  );
}

function Memory({ readiness }: { readiness: Readiness }) {
  const [lasting, setLasting] = useState<boolean | null>(null);
  const [room, setRoom] = useState<number | null>(null);
  const { device } = usePhoneNow();
  useEffect(() => {
    void askForLastingStorage().then(setLasting);
    void roomLeft().then(setRoom);
  }, []);
  return (
    <section className={styles.part} aria-labelledby="memory">
      <h2 id="memory">This phone’s memory</h2>
      <p className={styles.quietNear}>
        {lastingInWords(lasting)} {roomInWords(room)} {device ? `Its records name it ${device.name}.` : ""}
      </p>
      <Opens readiness={readiness} />
    </section>
  );
}
