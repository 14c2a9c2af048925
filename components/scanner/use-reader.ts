"use client";

import { useCallback, useEffect, useRef, useState } from "react";
import type { Picture } from "./picture";

type Reader = (picture: Picture) => string | null;

export interface ReaderOfCodes {
  /** the reader, fetched when first asked for; throws where it cannot be (no signal, and never used before) */
  readonly fetched: () => Promise<Reader>;
  /** the reader once it is here */
  readonly now: Reader | null;
  readonly failed: boolean;
}

/** The reader of codes; fetched as soon as it is wanted, so that no page carries it that nobody scans at. */
export function useReader(wanted: boolean): ReaderOfCodes {
  const [now, setNow] = useState<Reader | null>(null);
  const [failed, setFailed] = useState(false);
  const asked = useRef<Promise<Reader> | null>(null);
  const fetched = useCallback(() => {
    asked.current ??= import("./decode").then(
      ({ codeInPicture }) => codeInPicture,
      (error) => {
        asked.current = null;
        throw error;
      },
    );
    return asked.current;
  }, []);
  useEffect(() => {
    if (!wanted || now) return;
    let gone = false;
    fetched().then(
      (reader) => {
        if (gone) return;
        setNow(() => reader);
        setFailed(false);
      },
      () => {
        if (!gone) setFailed(true);
      },
    );
    return () => {
      gone = true;
    };
  }, [wanted, now, fetched]);
  return { fetched, now, failed };
}
