"use client";

import { useCallback, useEffect, useRef, useState } from "react";
import { useDraft } from "@/components/drafts";
import { draftOfLines, emptyDraft, isEmptyDraft, type LinesDraft, type VarietyTyped } from "../_lines/draft-of-lines";
import { type Edited, fixed, parted, pasted, removed, retyped } from "../_lines/line-edits";
import type { Fix } from "../_lines/typed-line";

/** The lines being typed, kept on the device at every stroke, and where the hand is among them. */
export function useLines(draftKey: string) {
  const { found, keep: keepDraft, forget, kept } = useDraft(draftKey, draftOfLines);
  const [draft, setDraft] = useState<LinesDraft>(emptyDraft);
  const [restored, setRestored] = useState(false);
  const [focus, setFocus] = useState<Edited["focus"]>(null);
  const made = useRef(0);

  useEffect(() => {
    if (!found?.draft || isEmptyDraft(found.draft)) return;
    setDraft(found.draft);
    setRestored(true);
  }, [found]);

  useEffect(() => {
    if (!focus) return;
    const line = document.getElementById(`line-${focus.id}`);
    if (!(line instanceof HTMLTextAreaElement)) return;
    line.focus();
    line.setSelectionRange(focus.at, focus.at);
  }, [focus]);

  const change = useCallback(
    (next: LinesDraft) => {
      setDraft(next);
      keepDraft(next);
    },
    [keepDraft],
  );
  const edit = ({ lines, focus }: Edited) => {
    change({ ...draft, lines });
    if (focus) setFocus({ ...focus });
  };
  const newId = () => {
    made.current += 1;
    return `${Date.now().toString(36)}-${made.current}`;
  };
  return {
    draft,
    kept,
    restored,
    forget,
    keep: () => keepDraft(draft),
    afresh: () => {
      forget();
      setDraft(emptyDraft);
      setRestored(false);
    },
    setVariety: (variety: VarietyTyped) => change({ ...draft, variety }),
    setHolder: (holder: string) => change({ ...draft, holder }),
    setNumber: (lot: string, number: string) => change({ ...draft, numbers: { ...draft.numbers, [lot]: number } }),
    type: (id: string, words: string) => change({ ...draft, lines: retyped(draft.lines, id, words) }),
    part: (id: string, at: number) => edit(parted(draft.lines, id, at, newId())),
    remove: (id: string) => edit(removed(draft.lines, id)),
    paste: (id: string, selection: { from: number; to: number }, text: string) => {
      const stem = newId();
      edit(pasted(draft.lines, id, selection, text, (place) => `${stem}-${place}`));
    },
    fix: (id: string, key: string, fix: Fix | null) => change({ ...draft, lines: fixed(draft.lines, id, key, fix) }),
    go: (id: string, way: "up" | "down") => {
      const place = draft.lines.findIndex((line) => line.id === id) + (way === "up" ? -1 : 1);
      const line = draft.lines[place];
      if (line) setFocus({ id: line.id, at: line.words.length });
    },
  };
}

export type TypedLines = ReturnType<typeof useLines>;
