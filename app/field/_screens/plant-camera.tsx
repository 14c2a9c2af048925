import { useRef, useState } from "react";
import { useCamera } from "@/components/scanner/use-camera";
import { shrinkPhoto } from "@/lib/field/shrink-photo";
import type { PlantInField } from "@/lib/schemas/field/field-records";
import { usePhone } from "../_components/phone-context";
import controls from "./controls.module.css";
import styles from "./screens.module.css";

/**
 * The camera in the page, so that no other app takes the phone's memory and the page with it; where there is none, the phone's own camera or a
 * picture that is there already.
 */
export default function PlantCamera({
  growOutId,
  plant,
  shownTag,
}: {
  growOutId: string;
  plant: PlantInField;
  shownTag: string;
}) {
  const phone = usePhone();
  const video = useRef<HTMLVideoElement>(null);
  const file = useRef<HTMLInputElement>(null);
  const [wanted, setWanted] = useState(false);
  const [says, setSays] = useState("");
  const camera = useCamera(wanted, video, () => undefined);
  const keep = async (picture: Blob) => {
    setSays("The picture is being made smaller …");
    const shrunk = await shrinkPhoto(picture);
    if (!shrunk.ok) return setSays(shrunk.refusals[0]?.sentence ?? "");
    const kept = await phone.keepPhoto(growOutId, plant, shrunk.value, `${shownTag}: photo`);
    setSays(kept ? "The picture is stored on this phone." : "");
    setWanted(false);
  };
  const shoot = async () => {
    const seen = video.current;
    if (!seen?.videoWidth) return;
    const canvas = document.createElement("canvas");
    canvas.width = seen.videoWidth;
    canvas.height = seen.videoHeight;
    canvas.getContext("2d")?.drawImage(seen, 0, 0);
    const picture = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, "image/jpeg", 0.95));
    if (picture) await keep(picture);
  };
  const looking = wanted && camera.is !== "missing";
  return (
    <>
      {looking ? (
        <video ref={video} className={styles.finder} playsInline muted autoPlay aria-label="What the camera sees" />
      ) : null}
      <div className={controls.beside}>
        {looking ? (
          <button type="button" className={controls.choice} disabled={camera.is !== "on"} onClick={() => void shoot()}>
            Take the picture
          </button>
        ) : (
          <button type="button" className={controls.choice} onClick={() => setWanted(true)}>
            Open the camera
          </button>
        )}
        <button type="button" className={controls.choice} onClick={() => file.current?.click()}>
          A picture of the phone
        </button>
        <input
          ref={file}
          type="file"
          accept="image/*"
          hidden
          aria-label={`A picture of plant ${shownTag}`}
          onChange={(event) => {
            const [picture] = event.currentTarget.files ?? [];
            event.currentTarget.value = "";
            if (picture) void keep(picture);
          }}
        />
      </div>
      <p role="status" className={styles.quietNear}>
        {wanted && camera.is === "missing"
          ? "The camera cannot be used here. Take a picture of the phone instead."
          : says}
      </p>
    </>
  );
}
