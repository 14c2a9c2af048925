import { SeedCoat } from "@/components/seed-coat";
import type { Coat } from "@/components/seed-coat/coat";
import { counted } from "@/lib/display/plurals";
import { placeOf } from "../_components/place";
import { lastCountInWords, lastWalkInWords } from "../_words/seen-words";
import styles from "./screens.module.css";
import type { Work } from "./work";

/** What can be done in a grow-out, each with how far it is; the thing that is done most where the thumb is. */
export function WorkList({ work }: { work: Work }) {
  const { growOutId, pack, state } = work;
  const marks = state.plants.filter((each) => each.mark !== null);
  const keep = marks.filter((each) => each.mark?.intent === "keep").length;
  const rows: readonly [string, string, string][] = [
    ["plants", "Plants", `${counted(marks.length, "plant")} marked, ${keep} to keep`],
    ["pass", "Rogue pass", lastWalkInWords(state.walks)],
    ["count", "Count", lastCountInWords(state.counts)],
    ["flowering", "Flowering", state.flowering.length === 0 ? "nothing noted" : `${state.flowering.length} noted`],
    [
      "harvest",
      "Harvest",
      state.harvest ? `under way, ${state.harvest.taken.length} plants` : harvestsSaid(state.harvests),
    ],
    ["choose", "Choose what to keep", scoredInWords(state.plants)],
    ["type", "The type", pack.type.length === 0 ? "not written" : "what the variety should look like"],
  ];
  return (
    <>
      <div className={styles.name}>
        <SeedCoat name={pack.variety.name} crop={pack.crop.key} coat={coatOf(pack.variety.seedCoat)} size={48} />
        <div>
          <h1>{pack.variety.name}</h1>
          <p className={styles.quietNear}>{pack.growOut.name}</p>
        </div>
      </div>
      {state.tagsTwice.length > 0 ? (
        <p className={styles.warning}>
          Tag {state.tagsTwice.join(", ")} stands on two plants. Nothing is renamed: look which is which.
        </p>
      ) : null}
      <ul className={styles.works}>
        {rows.map(([what, name, says]) => (
          <li key={what}>
            <a className={styles.work} href={placeOf(growOutId, what)}>
              <span>{name}</span>
              <span className={styles.workSays}>{says}</span>
            </a>
          </li>
        ))}
      </ul>
      <div className={styles.thumb}>
        <a className={styles.chief} href={placeOf(growOutId, "mark")}>
          Mark a plant
          <span className={styles.chiefSays}>next tag {state.nextTag}</span>
        </a>
      </div>
    </>
  );
}

function scoredInWords(plants: Work["state"]["plants"]): string {
  const scored = plants.filter((each) => Object.keys(each.scores).length > 0).length;
  return scored === 0 ? "none scored" : `${counted(scored, "plant")} scored`;
}

function harvestsSaid(harvests: number): string {
  return harvests === 0 ? "none yet" : `${harvests} done`;
}

function coatOf(stored: string | null): Coat | null {
  try {
    return stored === null ? null : (JSON.parse(stored) as Coat);
  } catch {
    return null;
  }
}
