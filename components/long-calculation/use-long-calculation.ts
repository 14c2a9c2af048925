"use client";

import { useCallback, useEffect, useRef, useState } from "react";
import type { Outcome } from "@/lib/science/outcome";
import { followCalculation, type Heard } from "./follow-calculation";

export type LongState =
  | { readonly state: "idle" }
  | Heard
  | { readonly state: "answered"; readonly answer: Outcome<object> };

/**
 * A calculation that the server works out beside its other work: `start` asks for it (one that still runs is stopped), `stop` ends it,
 * `state` says how far it is and then holds its answer. It is stopped when the page is left.
 */
export function useLongCalculation(): {
  state: LongState;
  start: (name: string, input: unknown) => void;
  stop: () => void;
} {
  const [state, setState] = useState<LongState>({ state: "idle" });
  const running = useRef<AbortController | null>(null);
  const stop = useCallback(() => {
    running.current?.abort();
    running.current = null;
    setState({ state: "idle" });
  }, []);
  const start = useCallback((name: string, input: unknown) => {
    running.current?.abort();
    const mine = new AbortController();
    running.current = mine;
    const show = (next: LongState) => {
      if (running.current === mine) setState(next);
    };
    show({ state: "waiting", before: 0 });
    followCalculation(name, input, show, mine.signal)
      .then((answer) => show({ state: "answered", answer }))
      .catch(() => show({ state: "idle" }));
  }, []);
  useEffect(() => () => running.current?.abort(), []);
  return { state, start, stop };
}
