import { lazy, Suspense, useEffect, useState } from "react";
import type { PlantInField } from "@/lib/schemas/field/field-records";
import { roomLeft } from "../_components/readiness";
import { roomInWords } from "../_words/storage-words";
import controls from "./controls.module.css";
import styles from "./screens.module.css";

/* The camera's part is fetched only where somebody takes a picture. */
const PlantCamera = lazy(() => import("./plant-camera"));

/** A picture of a plant, with the room that is left for it. */
export function PlantPhoto(props: { growOutId: string; plant: PlantInField; shownTag: string; onLeave: () => void }) {
  const [room, setRoom] = useState<number | null>(null);
  useEffect(() => {
    void roomLeft().then(setRoom);
  }, []);
  return (
    <>
      <p className={styles.quietNear}>{roomInWords(room)} Where it was taken is not kept with it.</p>
      <Suspense fallback={<p className={styles.quietNear}>The camera is being opened …</p>}>
        <PlantCamera {...props} />
      </Suspense>
      <button type="button" className={controls.quietChoice} onClick={props.onLeave}>
        Back to the plant
      </button>
    </>
  );
}
