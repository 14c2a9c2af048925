import { type Extent, everything, placeByKey, placeByTab, type Selection, selected } from "./selection";

/** What the keys of a grid ask for, besides moving. */
export interface GridDeeds {
  readonly select: (selection: Selection) => void;
  /** begins to edit the cell in focus; `over` is what is typed in place of what stands there */
  readonly edit: (over?: string) => void;
  readonly empty: () => void;
  readonly fillDown: () => void;
  readonly undo: () => void;
  readonly redo: () => void;
  /** the next Tab leaves the grid */
  readonly leave: () => void;
}

export interface Pressed {
  readonly key: string;
  readonly shiftKey: boolean;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly altKey: boolean;
}

/** What a key asks for in a grid in which no cell is being edited; null where it is left to the browser. */
export function deedOfKey(
  pressed: Pressed,
  selection: Selection,
  extent: Extent,
  leaving: boolean,
  deeds: GridDeeds,
): (() => void) | null {
  const { key, shiftKey, altKey } = pressed;
  const ctrl = pressed.ctrlKey || pressed.metaKey;
  if (altKey) return null;
  if (key === "Escape") return deeds.leave;
  if (key === "Tab") {
    const next = ctrl || leaving ? null : placeByTab(selection.focus, shiftKey, extent);
    return next ? () => deeds.select(selected(next)) : null;
  }
  const place = placeByKey(selection.focus, key, ctrl, extent);
  if (place) return () => deeds.select(shiftKey ? { anchor: selection.anchor, focus: place } : selected(place));
  if (ctrl) return deedWithCtrl(key.toLowerCase(), shiftKey, extent, deeds);
  if (key === "Enter") {
    const below = placeByKey(selection.focus, shiftKey ? "ArrowUp" : "ArrowDown", false, extent);
    return below && (() => deeds.select(selected(below)));
  }
  if (key === "F2") return () => deeds.edit();
  if (key === "Delete" || key === "Backspace") return deeds.empty;
  return key.length === 1 ? () => deeds.edit(key) : null;
}

function deedWithCtrl(key: string, shift: boolean, extent: Extent, deeds: GridDeeds): (() => void) | null {
  if (key === "a") return () => deeds.select(everything(extent));
  if (key === "d") return deeds.fillDown;
  if (key === "z") return shift ? deeds.redo : deeds.undo;
  return key === "y" ? deeds.redo : null;
}
