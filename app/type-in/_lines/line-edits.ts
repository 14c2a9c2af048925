import type { Fix, TypedLine } from "./typed-line";

/** The lines after an edit, and where the hand goes on: a line, and a place in its words (null: stays). */
export interface Edited {
  readonly lines: readonly TypedLine[];
  readonly focus: { readonly id: string; readonly at: number } | null;
}

/** A line's words as they are typed. Fixes stay; one that no longer fits is said at its field. */
export function retyped(lines: readonly TypedLine[], id: string, words: string): TypedLine[] {
  return lines.map((line) => (line.id === id ? { ...line, words } : line));
}

/** Enter: what stands behind the caret begins the next line. */
export function parted(lines: readonly TypedLine[], id: string, at: number, newId: string): Edited {
  const edited = lines.flatMap((line): TypedLine[] => {
    if (line.id !== id) return [line];
    return [
      { ...line, words: line.words.slice(0, at).trimEnd() },
      { id: newId, words: line.words.slice(at).trimStart(), fixes: {} },
    ];
  });
  return { lines: edited, focus: { id: newId, at: 0 } };
}

/** Backspace in an empty line takes it away; the hand goes to the end of the one before. The last line stays. */
export function removed(lines: readonly TypedLine[], id: string): Edited {
  const place = lines.findIndex((line) => line.id === id);
  if (lines.length < 2 || place < 0) return { lines, focus: null };
  const before = lines[place - 1] ?? lines[place + 1];
  const focus = before ? { id: before.id, at: place === 0 ? 0 : before.words.length } : null;
  return { lines: lines.filter((line) => line.id !== id), focus };
}

/** A pasted text of several lines becomes as many lines, empty ones left out. */
export function pasted(
  lines: readonly TypedLine[],
  id: string,
  selection: { readonly from: number; readonly to: number },
  text: string,
  newId: (place: number) => string,
): Edited {
  const pieces = text
    .split(/\r\n?|\n/)
    .map((piece) => piece.trim())
    .filter((piece) => piece !== "");
  const edited = lines.flatMap((line): TypedLine[] => {
    if (line.id !== id) return [line];
    const [first = "", ...rest] = pieces;
    const head = line.words.slice(0, selection.from) + first;
    const tail = line.words.slice(selection.to);
    if (rest.length === 0) return [{ ...line, words: head + tail }];
    return [
      { ...line, words: head },
      ...rest.map((words, place) => ({
        id: newId(place),
        words: place === rest.length - 1 ? words + tail : words,
        fixes: {},
      })),
    ];
  });
  const last = pieces.length > 1 ? newId(pieces.length - 2) : id;
  const words = edited.find((line) => line.id === last)?.words ?? "";
  const at = pieces.length > 1 ? words.length : selection.from + (pieces[0]?.length ?? 0);
  return { lines: edited, focus: { id: last, at } };
}

/** A fix put in place, or taken away again (null). */
export function fixed(lines: readonly TypedLine[], id: string, key: string, fix: Fix | null): TypedLine[] {
  return lines.map((line) => {
    if (line.id !== id) return line;
    const { [key]: _, ...others } = line.fixes;
    return { ...line, fixes: fix === null ? others : { ...others, [key]: fix } };
  });
}
