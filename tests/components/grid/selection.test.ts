import { describe, expect, it, vi } from "vitest";
import { deedOfKey, type GridDeeds, type Pressed } from "@/components/grid/deed-of-key";
import { placeByKey, placeByTab, rectangle, selected, within } from "@/components/grid/selection";

const extent = { rows: 30, columns: 4 };
const at = (row: number, column: number) => ({ row, column });

describe("the keys of a grid", () => {
  it("move a cell, and stop at the edges", () => {
    expect(placeByKey(at(3, 1), "ArrowDown", false, extent)).toEqual(at(4, 1));
    expect(placeByKey(at(29, 1), "ArrowDown", false, extent)).toEqual(at(29, 1));
    expect(placeByKey(at(0, 0), "ArrowLeft", false, extent)).toEqual(at(0, 0));
    expect(placeByKey(at(3, 1), "ArrowUp", true, extent)).toEqual(at(0, 1));
    expect(placeByKey(at(3, 1), "End", false, extent)).toEqual(at(3, 3));
    expect(placeByKey(at(3, 1), "Home", true, extent)).toEqual(at(0, 0));
    expect(placeByKey(at(3, 1), "PageDown", false, extent)).toEqual(at(13, 1));
    expect(placeByKey(at(3, 1), "x", false, extent)).toBeNull();
  });

  it("lead by Tab from row to row, and out of the grid at its ends", () => {
    expect(placeByTab(at(0, 3), false, extent)).toEqual(at(1, 0));
    expect(placeByTab(at(1, 0), true, extent)).toEqual(at(0, 3));
    expect(placeByTab(at(29, 3), false, extent)).toBeNull();
    expect(placeByTab(at(0, 0), true, extent)).toBeNull();
  });

  it("choose a rectangle whichever way it is drawn", () => {
    const area = rectangle({ anchor: at(5, 3), focus: at(2, 1) });
    expect(area).toEqual({ top: 2, bottom: 5, left: 1, right: 3 });
  });

  it("stay within the grid when rows have gone", () => {
    expect(within(selected(at(40, 2)), extent).focus).toEqual(at(29, 2));
    expect(within(selected(at(0, 2)), { rows: 0, columns: 4 }).focus).toEqual(at(0, 2));
  });
});

describe("what a key asks for", () => {
  const deeds = () =>
    ({
      select: vi.fn(),
      edit: vi.fn(),
      empty: vi.fn(),
      fillDown: vi.fn(),
      undo: vi.fn(),
      redo: vi.fn(),
      leave: vi.fn(),
    }) satisfies GridDeeds;
  const pressed = (key: string, held: Partial<Pressed> = {}): Pressed => ({
    ...{ key, shiftKey: false, ctrlKey: false, metaKey: false, altKey: false },
    ...held,
  });
  const selection = { anchor: at(1, 1), focus: at(1, 1) };
  const press = (key: string, held: Partial<Pressed> = {}, leaving = false) => {
    const asked = deeds();
    const deed = deedOfKey(pressed(key, held), selection, extent, leaving, asked);
    deed?.();
    return { asked, left: deed === null };
  };

  it("a letter writes over, F2 edits, Delete empties, Enter goes down", () => {
    expect(press("7").asked.edit).toHaveBeenCalledWith("7");
    expect(press("F2").asked.edit).toHaveBeenCalledWith();
    expect(press("Delete").asked.empty).toHaveBeenCalledOnce();
    expect(press("Enter").asked.select).toHaveBeenCalledWith(selected(at(2, 1)));
  });

  it("Shift with an arrow goes on choosing from where it began", () => {
    expect(press("ArrowDown", { shiftKey: true }).asked.select).toHaveBeenCalledWith({
      anchor: at(1, 1),
      focus: at(2, 1),
    });
  });

  it("Control with D fills down, Z takes back, Y does again, on either kind of keyboard", () => {
    expect(press("d", { ctrlKey: true }).asked.fillDown).toHaveBeenCalledOnce();
    expect(press("z", { metaKey: true }).asked.undo).toHaveBeenCalledOnce();
    expect(press("Z", { metaKey: true, shiftKey: true }).asked.redo).toHaveBeenCalledOnce();
    expect(press("y", { ctrlKey: true }).asked.redo).toHaveBeenCalledOnce();
  });

  it("Tab leaves after Escape; what is the browser's is left to it", () => {
    expect(press("Tab").asked.select).toHaveBeenCalledWith(selected(at(1, 2)));
    expect(press("Tab", {}, true).left).toBe(true);
    expect(press("Escape").asked.leave).toHaveBeenCalledOnce();
    expect(press("r", { ctrlKey: true }).left).toBe(true);
    expect(press("ArrowLeft", { altKey: true }).left).toBe(true);
  });
});
