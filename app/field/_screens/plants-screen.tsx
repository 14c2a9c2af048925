import { counted } from "@/lib/display/plurals";
import { placeOf } from "../_components/place";
import { placeInWords } from "../_words/plant-words";
import styles from "./screens.module.css";
import type { Work } from "./work";

/** The plants that are marked or scored, by tag; each leads to its screen. */
export function PlantsScreen({ work }: { work: Work }) {
  const { growOutId, pack, state } = work;
  const plants = [...state.plants].sort((a, b) =>
    (a.tag ?? a.plant.name).localeCompare(b.tag ?? b.plant.name, "en", { numeric: true }),
  );
  return (
    <>
      <h1>Plants</h1>
      <p className={styles.quietNear}>{counted(plants.length, "plant")} marked or scored.</p>
      {state.tagsTwice.length > 0 ? (
        <p className={styles.warning}>Tag {state.tagsTwice.join(", ")} stands on two plants.</p>
      ) : null}
      <ul className={styles.works}>
        {plants.map((each) => {
          const scored = Object.keys(each.scores).length;
          return (
            <li key={each.plant.id}>
              <a className={styles.work} href={placeOf(growOutId, "plant", each.plant.id)}>
                <span className={styles.takeTag}>{each.tag ?? each.plant.name}</span>
                <span className={styles.workSays}>
                  {each.mark?.intent ?? "not marked"}
                  {each.fate ? `, ${each.fate}` : ""} · {placeInWords(each.plant)} · {scored} of{" "}
                  {counted(pack.traits.length, "trait")}
                </span>
              </a>
            </li>
          );
        })}
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
