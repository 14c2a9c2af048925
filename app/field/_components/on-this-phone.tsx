import { ButtonAnchor } from "@/components/ui/button";
import type { KeptPack } from "@/lib/field/kept-rows";
import { fieldState } from "@/lib/field/screen-state";
import { daysSince, momentInWords } from "../_words/moments";
import { warningsOf } from "../_words/waiting-words";
import styles from "./field.module.css";
import { usePhoneNow } from "./phone-context";
import { placeOf } from "./place";
import type { Readiness } from "./readiness";
import { useClock } from "./use-clock";

/** The first screen: the grow-outs that were taken along, and what is to be known before going out. */
export function OnThisPhone({ readiness }: { readiness: Readiness }) {
  const phone = usePhoneNow();
  const now = useClock(60_000);
  const warnings = warningsOf(phone, now);
  const last = phone.rows.at(-1);
  const lastPlant = last && "plant" in last.record.body ? last.record.body.plant : null;
  const goesOn = last && lastPlant && daysSince(last.record.recordedAt, now) === 0 ? lastPlant : null;
  return (
    <>
      <h1 className={styles.title}>On this phone</h1>
      {phone.packs.length === 0 ? <NothingHere /> : null}
      <ul className={styles.places}>
        {phone.packs.map((each) => (
          <li key={each.growOutId}>
            <a className={styles.place} href={placeOf(each.growOutId)}>
              <span className={styles.placeName}>{each.pack.variety.name}</span>
              <span className={styles.placeSays}>
                {each.pack.growOut.name} · {marked(each, phone.rows)} · taken along {momentInWords(each.keptAt, now)}
              </span>
            </a>
          </li>
        ))}
      </ul>
      {goesOn && last ? (
        <p className={styles.line}>
          <a className={styles.tall} href={placeOf(last.growOutId, "plant", goesOn.id)}>
            Back to where your hand was: plant {goesOn.name}
          </a>
        </p>
      ) : null}
      {warnings.map((each) => (
        <p key={each} className={styles.warning}>
          {each}
        </p>
      ))}
      <Opens readiness={readiness} />
    </>
  );
}

function marked(each: KeptPack, rows: readonly Parameters<typeof fieldState>[1][number][]): string {
  const state = fieldState(
    each.pack,
    rows.filter((row) => row.growOutId === each.growOutId),
  );
  const count = state.plants.filter((plant) => plant.mark !== null).length;
  return count === 1 ? "1 plant marked" : `${count === 0 ? "no" : count} plants marked`;
}

function NothingHere() {
  return (
    <>
      <p className={styles.lead}>
        Nothing was taken along yet. At the desk, open a grow-out and take it to the field; or scan the code that its
        page shows.
      </p>
      <p className={styles.line}>
        <ButtonAnchor href="/grow-outs" kind="chief" wide>
          To the grow-outs
        </ButtonAnchor>
      </p>
    </>
  );
}

/** Whether the page opens with no signal. */
export function Opens({ readiness }: { readiness: Readiness }) {
  if (readiness.missing) return <p className={styles.warning}>{readiness.missing}</p>;
  return (
    <p className={styles.quiet}>
      {readiness.opens === null
        ? "The page is being kept for times without a signal …"
        : "This page opens with no signal."}
      {readiness.newer ? " A newer one is ready; it opens at the next start." : ""}
    </p>
  );
}
