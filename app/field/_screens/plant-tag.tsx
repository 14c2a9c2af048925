import { lazy, Suspense, useState } from "react";
import { go, placeOf } from "../_components/place";
import controls from "./controls.module.css";
import styles from "./screens.module.css";
import type { Work } from "./work";

/* The camera's part is fetched only where somebody scans. */
const TagScanner = lazy(() => import("./tag-scanner"));

/**
 * Another tag than the next free one, or than the one that a plant has: typed, or scanned from a printed tag. One that is on another plant already is said
 * so, and leads there.
 */
export function PlantTag({
  work,
  plantId,
  onTag,
  onLeave,
}: {
  work: Work;
  /** the plant that gets it; null: one that is not marked yet */
  plantId: string | null;
  onTag: (tag: string) => void;
  onLeave: () => void;
}) {
  const [typed, setTyped] = useState("");
  const [scans, setScans] = useState(false);
  const tag = typed.trim();
  const there = work.state.plants.filter((each) => each.tag === tag && each.plant.id !== plantId);
  const same = work.state.plants.some((each) => each.tag === tag && each.plant.id === plantId);
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        if (tag !== "" && !same) onTag(tag);
      }}
    >
      {scans ? (
        <Suspense fallback={<p className={styles.quietNear}>The scanner is being opened …</p>}>
          <TagScanner
            growOutId={work.growOutId}
            onTag={(found) => {
              setTyped(found);
              setScans(false);
            }}
          />
        </Suspense>
      ) : null}
      <label className={controls.label}>
        What stands on the tag
        <input
          className={controls.input}
          value={typed}
          maxLength={60}
          autoComplete="off"
          autoCapitalize="characters"
          onChange={(event) => setTyped(event.currentTarget.value)}
        />
      </label>
      {there.map((each) => (
        <p key={each.plant.id} className={styles.warning}>
          This tag is on a plant already, marked {each.mark?.intent}.{" "}
          <button
            type="button"
            className={controls.quietChoice}
            onClick={() => go(placeOf(work.growOutId, "plant", each.plant.id))}
          >
            Go to that plant
          </button>
        </p>
      ))}
      <div className={controls.beside}>
        <button type="submit" className={controls.choice} disabled={tag === "" || same}>
          {there.length > 0 ? "Another plant with the same tag" : "Use this tag"}
        </button>
        {scans ? null : (
          <button type="button" className={controls.choice} onClick={() => setScans(true)}>
            Scan a tag
          </button>
        )}
        <button type="button" className={controls.quietChoice} onClick={onLeave}>
          {plantId === null ? "The next free one" : "Leave as it was"}
        </button>
      </div>
    </form>
  );
}
