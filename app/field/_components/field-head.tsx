import { useState } from "react";
import { type Ground, groundCookie, groundOf } from "@/components/frame/ground";
import { keepGround } from "@/components/frame/keep-ground";
import { waitingOf } from "@/lib/field/screen-state";
import { waitingInWords } from "../_words/waiting-words";
import styles from "./field.module.css";
import { usePhoneNow } from "./phone-context";
import { placeOf } from "./place";
import { useClock } from "./use-clock";

function groundNow(): Ground {
  return groundOf(new RegExp(`(?:^|; )${groundCookie}=([^;]*)`).exec(document.cookie)?.[1]);
}

/** Shows the field in the light that was chosen: the document itself knows nothing of it. */
export function showGround(): void {
  document.documentElement.dataset.ground = groundNow();
}

/** The light in which the field is seen, and how to choose another: kept as at the desk. */
export function useGround(): [Ground, (ground: Ground) => void] {
  const [ground, setGround] = useState<Ground>(groundNow);
  return [
    ground,
    (next) => {
      keepGround(next);
      setGround(next);
    },
  ];
}

/** What stands over every screen: the way back, whose hand it is, what is not in the registry yet, and the light for full sun. */
export function FieldHead({
  back,
  title,
  hand,
}: {
  /** where back leads, and what is there; null on the first screen */
  back: { readonly place: string; readonly words: string } | null;
  title: string;
  hand: string | null;
}) {
  const phone = usePhoneNow();
  const now = useClock(30_000);
  const [ground, setGround] = useGround();
  const { unsent } = waitingOf(phone.rows);
  const waits = unsent > 0 || phone.photosWaiting > 0;
  return (
    <header className={styles.head}>
      <div className={styles.headRow}>
        {back ? (
          <a className={styles.back} href={back.place}>
            <span className="heard">Back to {back.words}</span>
            <svg width="24" height="24" viewBox="0 0 24 24" aria-hidden="true">
              <path d="M15 4.5 7.5 12l7.5 7.5" fill="none" stroke="currentColor" strokeWidth="1.75" />
            </svg>
          </a>
        ) : null}
        <p className={styles.where}>{title}</p>
        <button
          type="button"
          className={styles.glare}
          aria-pressed={ground === "glare"}
          onClick={() => setGround(ground === "glare" ? "device" : "glare")}
        >
          Glare
        </button>
      </div>
      <a className={waits ? styles.statusWaits : styles.status} href={placeOf("phone")}>
        <span>{hand === null ? "On this phone" : hand}</span>
        <span className={styles.statusSays}>{phone.open ? waitingInWords(phone, now) : "opening"}</span>
      </a>
    </header>
  );
}
