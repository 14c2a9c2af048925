"use client";

import { useCallback, useEffect, useState } from "react";

const prefix = "kinrow-draft:";

/** A draft as it lies on the device: what was typed, and when. */
interface Kept<T> {
  readonly at: string;
  readonly draft: T;
}

/**
 * Keeps what is being typed on this device, so that a reload, a crash or an empty battery loses nothing. `read` takes what was stored
 * (perhaps by an older page) and gives a draft, or null where it cannot be used. `found` is null until the device was looked at, then the
 * draft that lay there, if any. Storage that is full or forbidden is said by `kept: false`.
 */
export function useDraft<T>(key: string, read: (stored: unknown) => T | null) {
  const [found, setFound] = useState<{ readonly draft: T | null } | null>(null);
  const [kept, setKept] = useState(true);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the device is looked at once for a key
  useEffect(() => {
    setFound({ draft: stored(key, read) });
  }, [key]);
  const keep = useCallback(
    (draft: T) => {
      const text = JSON.stringify({ at: new Date().toISOString(), draft } satisfies Kept<T>);
      try {
        localStorage.setItem(prefix + key, text);
        setKept(true);
      } catch {
        setKept(false);
      }
    },
    [key],
  );
  const forget = useCallback(() => {
    try {
      localStorage.removeItem(prefix + key);
    } catch {
      // nothing was kept where nothing can be reached
    }
  }, [key]);
  return { found, keep, forget, kept };
}

function stored<T>(key: string, read: (stored: unknown) => T | null): T | null {
  try {
    const text = localStorage.getItem(prefix + key);
    if (text === null) return null;
    const { draft } = JSON.parse(text) as Partial<Kept<unknown>>;
    return read(draft);
  } catch {
    return null;
  }
}
