"use client";

import { useCallback, useState } from "react";
import { type EditHistory, type Edits, noHistory, redone, stepped, undone } from "./edits";

/** The edits of a grid and their steps: each change can be undone until it is stored. */
export function useEdits() {
  const [history, setHistory] = useState<EditHistory>(noHistory);
  const change = useCallback(
    (to: (edits: Edits) => Edits) => setHistory((before) => stepped(before, to(before.now))),
    [],
  );
  const begin = useCallback((edits: Edits) => setHistory({ ...noHistory, now: edits }), []);
  const undo = useCallback(() => setHistory(undone), []);
  const redo = useCallback(() => setHistory(redone), []);
  return {
    edits: history.now,
    change,
    begin,
    undo,
    redo,
    canUndo: history.past.length > 0,
    canRedo: history.future.length > 0,
  };
}
