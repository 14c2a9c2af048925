"use client";

import { type RefObject, useEffect, useRef, useState } from "react";
import { type CameraMissing, closeCamera, hasLight, missingBy, missingHere, openCamera } from "./camera";
import { middleOfFrame, type Picture } from "./picture";

export type CameraState =
  | { readonly is: "off" | "starting" }
  | { readonly is: "on"; readonly stream: MediaStream; readonly light: boolean }
  | { readonly is: "missing"; readonly why: CameraMissing };

/** So long after one look the next begins: the phone stays cool, and the page answers the thumb. */
const betweenLooks = 90;

/**
 * Keeps the camera on while it is wanted, and shows each look to `seen`. It is given back when the page is hidden, and opened anew when the
 * page comes back or the phone took it away (a call, another app), since a phone may go on showing a dead picture.
 */
export function useCamera(
  wanted: boolean,
  video: RefObject<HTMLVideoElement | null>,
  seen: (picture: Picture) => void,
): CameraState {
  const [state, setState] = useState<CameraState>({ is: "off" });
  const showTo = useRef(seen);
  useEffect(() => {
    showTo.current = seen;
  });
  useEffect(() => {
    if (!wanted) {
      setState({ is: "off" });
      return;
    }
    const missing = missingHere();
    if (missing) {
      setState({ is: "missing", why: missing });
      return;
    }
    let stream: MediaStream | null = null;
    let opening = 0;
    let timer: ReturnType<typeof setTimeout> | undefined;
    let looks = 0;
    const canvas = document.createElement("canvas");
    const look = () => {
      const picture = video.current && stream ? middleOfFrame(video.current, canvas, looks) : null;
      looks += 1;
      if (picture) showTo.current(picture);
      timer = setTimeout(look, betweenLooks);
    };
    const close = () => {
      opening += 1;
      clearTimeout(timer);
      closeCamera(stream);
      stream = null;
    };
    const open = async () => {
      close();
      const mine = opening;
      setState({ is: "starting" });
      try {
        const opened = await openCamera();
        if (mine !== opening) return closeCamera(opened);
        stream = opened;
        opened.getVideoTracks()[0]?.addEventListener("ended", () => stream === opened && void open());
        setState({ is: "on", stream: opened, light: hasLight(opened) });
        look();
      } catch (error) {
        if (mine === opening) setState({ is: "missing", why: missingBy(error) });
      }
    };
    const turn = () => {
      if (document.visibilityState === "visible") return void open();
      close();
      setState({ is: "starting" });
    };
    document.addEventListener("visibilitychange", turn);
    void open();
    return () => {
      document.removeEventListener("visibilitychange", turn);
      close();
    };
  }, [wanted, video]);
  useEffect(() => {
    const screen = video.current;
    if (!screen || state.is !== "on") return;
    screen.srcObject = state.stream;
    screen.play().catch(() => {
      // a phone that saves power shows the first frame only after a press; looking goes on all the same
    });
    return () => {
      screen.srcObject = null;
    };
  }, [state, video]);
  return state;
}
