"use client";

import { useId, useRef, useState } from "react";
import { Button } from "@/components/ui/button";
import type { Outcome } from "@/lib/science/outcome";
import { missingInWords, switchLight } from "./camera";
import { type Picture, picturesOfPhoto } from "./picture";
import styles from "./scanner.module.css";
import { type Typing, TypingInstead } from "./typing-instead";
import { useCamera } from "./use-camera";
import { useReader } from "./use-reader";

/** A code that stays in sight is not read anew before it was out of it so long, in milliseconds. */
const outOfSight = 2000;

const readerMissing =
  "The reader of codes is not on this device yet, and could not be fetched. Type what stands beside the code.";
const noneInPhoto = "No code was found in the photo. Go nearer, let light fall on it, or type what stands beside it.";

/**
 * A code to be scanned: by the camera in the page, by a photo, or typed, always all three. `what` names it ("a tag"); `read` takes what the
 * code says, or refuses it, and the refusal stands here while looking goes on. After a code the camera is closed, but with `keepOn`.
 */
export function Scanner<T>({
  what,
  read,
  onRead,
  typing,
  keepOn = false,
}: {
  what: string;
  read: (text: string) => Outcome<T>;
  onRead: (found: T) => void;
  /** the field to type it into instead; null where the page has one beside */
  typing: Typing | null;
  keepOn?: boolean;
}) {
  const [wanted, setWanted] = useState(false);
  const [words, setWords] = useState("");
  const [light, setLight] = useState(false);
  const video = useRef<HTMLVideoElement>(null);
  const photo = useRef<HTMLInputElement>(null);
  const lastSeen = useRef({ text: "", at: 0 });
  const saysId = useId();
  const reader = useReader(wanted);

  const found = (text: string): void => {
    const outcome = read(text);
    if (!outcome.ok) {
      setWords(outcome.refusals[0]?.sentence ?? "");
      return;
    }
    setWords("");
    if (!keepOn) stop();
    onRead(outcome.value);
  };
  const seen = (picture: Picture): void => {
    const text = reader.now?.(picture) ?? null;
    if (text === null) return;
    const at = performance.now();
    const again = text === lastSeen.current.text && at - lastSeen.current.at < outOfSight;
    lastSeen.current = { text, at };
    if (!again) found(text);
  };
  const camera = useCamera(wanted, video, seen);
  const start = () => {
    lastSeen.current = { text: "", at: 0 };
    setWords("");
    setLight(false);
    setWanted(true);
  };
  const stop = () => setWanted(false);
  const turnLight = async () => {
    if (camera.is === "on" && (await switchLight(camera.stream, !light))) setLight(!light);
    else setWords("The light could not be switched.");
  };
  const readPhoto = async (file: File) => {
    setWords("Looking for a code in the photo …");
    try {
      const decode = await reader.fetched();
      const pictures = await picturesOfPhoto(file, document.createElement("canvas"));
      for (const picture of pictures) {
        const drawn = picture();
        const text = drawn && decode(drawn);
        if (text) return found(text);
      }
      setWords(noneInPhoto);
    } catch (error) {
      setWords(error instanceof DOMException ? "This file is no picture." : readerMissing);
    }
  };

  const missing = camera.is === "missing" ? missingInWords[camera.why] : reader.failed && wanted ? readerMissing : "";
  const looking = wanted && camera.is !== "missing";
  return (
    <div className={styles.scanner}>
      {looking ? (
        <div className={styles.finder}>
          <video ref={video} playsInline muted autoPlay className={styles.view} aria-label="What the camera sees" />
        </div>
      ) : null}
      <div className={styles.acts}>
        {looking ? (
          <>
            <Button onClick={stop}>Close the camera</Button>
            {camera.is === "on" && camera.light ? (
              <Button onClick={turnLight} aria-pressed={light}>
                {light ? "Light off" : "Light on"}
              </Button>
            ) : null}
          </>
        ) : (
          <>
            <Button onClick={start}>Scan {what}</Button>
            <Button kind="quiet" onClick={() => photo.current?.click()}>
              By a photo
            </Button>
          </>
        )}
        <input
          ref={photo}
          type="file"
          accept="image/*"
          capture="environment"
          hidden
          aria-label={`A photo of ${what}`}
          onChange={(event) => {
            const [file] = event.currentTarget.files ?? [];
            event.currentTarget.value = "";
            if (file) void readPhoto(file);
          }}
        />
      </div>
      <p role="status" id={saysId} className={styles.says}>
        {missing || words || (looking ? lookingWords(camera.is === "on", what) : "")}
      </p>
      {typing ? <TypingInstead {...typing} /> : null}
    </div>
  );
}

function lookingWords(on: boolean, what: string): string {
  return on ? `Hold ${what} still, a hand’s breadth or two before the camera.` : "The camera is being opened …";
}
