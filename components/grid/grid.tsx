"use client";

import { defaultRangeExtractor, type Range, useVirtualizer } from "@tanstack/react-virtual";
import {
  type ClipboardEvent,
  type CSSProperties,
  type KeyboardEvent,
  type MouseEvent,
  type PointerEvent,
  type ReactNode,
  useCallback,
  useEffect,
  useId,
  useLayoutEffect,
  useMemo,
  useRef,
  useState,
} from "react";
import { usePrinting } from "@/components/tables/use-printing";
import type { AfterEdit } from "./cell-editor";
import { deedOfKey } from "./deed-of-key";
import { cellText, type Edits } from "./edits";
import { emptied, filledDown, textsOf } from "./fill-down";
import styles from "./grid.module.css";
import { type EditedCell, type EditorDeeds, GridLine } from "./grid-line";
import type { CellChange, GridColumn, GridRow, Place } from "./grid-types";
import { gridPart, headPart, headRowPart, noPart } from "./roles";
import { placeByKey, placeByTab, rectangle, type Selection, selected, within } from "./selection";
import { writeTableText } from "./table-text";

interface Editing {
  readonly place: Place;
  readonly cell: EditedCell;
}

export interface GridProps {
  readonly label: string;
  readonly rows: readonly GridRow[];
  readonly columns: readonly GridColumn[];
  readonly edits: Edits;
  readonly selection: Selection;
  readonly select: (selection: Selection) => void;
  readonly fill: (changes: readonly CellChange[]) => void;
  readonly undo: () => void;
  readonly redo: () => void;
  readonly paste: (text: string, at: Place) => void;
  /** told what is being typed before it is written into the cell, so that it can be kept too */
  readonly typing: (change: CellChange | null) => void;
  /** sentences of refusal by the server, by row and column */
  readonly refusals: ReadonlyMap<string, string>;
  readonly empty: ReactNode;
}

/**
 * A grid to type into: arrows move, typing writes over, F2 or a double click edits, Enter and Tab write and go on, Escape takes the edit
 * back; Shift with the arrows chooses cells to copy, empty or fill down. Rows that are out of sight are not drawn; on paper all are.
 * Tab leaves the grid after Escape, and at its ends.
 */
export function Grid({
  label,
  rows,
  columns,
  edits,
  selection: wanted,
  select,
  fill,
  undo,
  redo,
  paste,
  typing,
  refusals,
  empty,
}: GridProps) {
  const frame = useRef<HTMLDivElement>(null);
  const helpId = useId();
  const extent = { rows: rows.length, columns: columns.length };
  const selection = within(wanted, extent);
  const { focus } = selection;
  const [editing, setEditing] = useState<Editing | null>(null);
  const [leaving, setLeaving] = useState(false);
  const printing = usePrinting();
  const takeFocus = useRef(false);
  const dragging = useRef(false);
  const probe = useRef<HTMLDivElement>(null);
  const [rowHeight, setRowHeight] = useState(40);
  const virtual = useVirtualizer({
    count: rows.length,
    getScrollElement: () => frame.current,
    estimateSize: () => rowHeight,
    overscan: 8,
    // the row of heads covers so much, and the bar for scrolling sideways
    scrollPaddingEnd: 72,
    initialRect: { width: 900, height: 640 },
    getItemKey: (index) => rows[index]?.key ?? index,
    // The cell in focus stays in the page, or the keyboard would lose it.
    rangeExtractor: useCallback(
      (range: Range) => [...new Set([...defaultRangeExtractor(range), focus.row])].sort((a, b) => a - b),
      [focus.row],
    ),
  });
  // All rows are as high as the style sheet says, which differs by device and ground.
  useLayoutEffect(() => {
    const element = probe.current;
    if (!element) return;
    const observer = new ResizeObserver(() => setRowHeight(element.offsetHeight || 40));
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  // biome-ignore lint/correctness/useExhaustiveDependencies: measured anew when the height of rows changes
  useLayoutEffect(() => virtual.measure(), [rowHeight]);

  const cellAt = useCallback(
    ({ row, column }: Place) =>
      frame.current?.querySelector<HTMLElement>(`[data-row="${row}"][data-column="${column}"]`),
    [],
  );
  // Whoever moves it, a key or a button elsewhere, the row comes into sight within the grid.
  const began = useRef(false);
  // biome-ignore lint/correctness/useExhaustiveDependencies: only where the place has changed
  useEffect(() => {
    if (began.current) virtual.scrollToIndex(focus.row, { align: "auto" });
    began.current = true;
  }, [focus.row]);
  // The focus follows once the row is drawn; only where the keyboard or a button of the grid asked for it.
  useEffect(() => {
    if (!takeFocus.current || editing) return;
    const cell = cellAt(focus);
    if (!cell) return;
    takeFocus.current = false;
    cell.focus({ preventScroll: true });
    cell.scrollIntoView({ block: "nearest", inline: "nearest" });
  });

  const choose = (next: Selection) => {
    takeFocus.current = true;
    select(next);
  };
  const edit = (place: Place, over?: string) => {
    const [row, column] = [rows[place.row], columns[place.column]];
    if (!row || !column) return;
    const text = over ?? cellText(edits, row, column.key);
    setEditing({ place, cell: { column: place.column, text, over: over !== undefined } });
    typing({ row: row.key, column: column.key, text });
  };
  const commit = (after: AfterEdit) => {
    if (!editing) return;
    const {
      place,
      cell: { text },
    } = editing;
    const [row, column] = [rows[place.row], columns[place.column]];
    setEditing(null);
    typing(null);
    if (row && column) {
      const read = text.trim() === "" ? null : column.read(text);
      // What cannot be read stays as it was typed, with the reason.
      fill([{ row: row.key, column: column.key, text: read?.ok ? read.value : text.trim() === "" ? "" : text }]);
    }
    if (after === "stay") return;
    const next =
      after === "on" || after === "back"
        ? placeByTab(place, after === "back", extent)
        : placeByKey(
            place,
            { down: "ArrowDown", up: "ArrowUp", left: "ArrowLeft", right: "ArrowRight" }[after],
            false,
            extent,
          );
    choose(selected(next ?? place));
  };
  const cancel = () => {
    setEditing(null);
    typing(null);
    choose(selected(focus));
  };

  const type = (text: string) => {
    if (!editing) return;
    const { place, cell } = editing;
    setEditing({ place, cell: { ...cell, text } });
    const [row, column] = [rows[place.row], columns[place.column]];
    if (row && column) typing({ row: row.key, column: column.key, text });
  };
  // The same object for as long as the grid stands, so that rows are not drawn anew for it.
  const latest = useRef({ type, commit, cancel });
  latest.current = { type, commit, cancel };
  const editorDeeds = useMemo(
    (): EditorDeeds => ({
      type: (text) => latest.current.type(text),
      commit: (after) => latest.current.commit(after),
      cancel: () => latest.current.cancel(),
    }),
    [],
  );

  const keys = (event: KeyboardEvent) => {
    if (event.nativeEvent.isComposing) return;
    const deed = deedOfKey(event, selection, extent, leaving, {
      select: choose,
      edit: (over) => edit(focus, over),
      empty: () => fill(emptied(selection, rows, columns)),
      fillDown: () => fill(filledDown(selection, rows, columns, edits)),
      undo,
      redo,
      leave: () => setLeaving(true),
    });
    if (event.key !== "Escape" && event.key !== "Tab" && event.key !== "Shift") setLeaving(false);
    if (!deed) return;
    event.preventDefault();
    deed();
  };

  const placeOf = (target: EventTarget): Place | null => {
    const cell = (target as HTMLElement).closest<HTMLElement>("[data-column]");
    return cell ? { row: Number(cell.dataset.row), column: Number(cell.dataset.column) } : null;
  };
  const press = (event: PointerEvent) => {
    const place = placeOf(event.target);
    if (!place || event.button !== 0 || (event.target as HTMLElement).tagName === "INPUT") return;
    // A finger scrolls; a tap is told by the click that follows.
    if (event.pointerType !== "mouse") return;
    dragging.current = true;
    takeFocus.current = true;
    select(event.shiftKey ? { anchor: selection.anchor, focus: place } : selected(place));
  };
  const drag = (event: PointerEvent) => {
    if (!dragging.current || event.buttons !== 1) {
      dragging.current = false;
      return;
    }
    const place = placeOf(event.target);
    if (place && (place.row !== focus.row || place.column !== focus.column)) {
      takeFocus.current = true;
      select({ anchor: selection.anchor, focus: place });
    }
  };
  const tap = (event: MouseEvent) => {
    if ((event.nativeEvent as globalThis.PointerEvent).pointerType === "mouse") return;
    const place = placeOf(event.target);
    if (!place || (event.target as HTMLElement).tagName === "INPUT") return;
    if (place.row === focus.row && place.column === focus.column && document.activeElement === cellAt(place))
      edit(place);
    else choose(selected(place));
  };
  const copy = (event: ClipboardEvent) => {
    event.preventDefault();
    event.clipboardData.setData("text/plain", writeTableText(textsOf(selection, rows, columns, edits)));
    if (event.type === "cut") fill(emptied(selection, rows, columns));
  };

  const area = rectangle(selection);
  // On paper the columns share its width as they share the grid's.
  const template = useMemo(
    () => columns.map(({ width }) => (printing ? `minmax(0, ${width}fr)` : `${width}rem`)).join(" "),
    [columns, printing],
  );
  const items = virtual.getVirtualItems();
  const seen = printing ? [...rows.keys()] : items.map((item) => item.index);
  const starts = new Map(items.map((item) => [item.index, item.start]));
  return (
    <>
      <p id={helpId} className="heard">
        Arrow keys move, typing writes over, F2 edits, Enter and Tab go on, Escape takes an edit back. Shift with arrows
        chooses cells, Control D fills down. Escape and then Tab leaves the table.
      </p>
      <div className={styles.frame} ref={frame} style={{ "--first": `${columns[0]?.width ?? 0}rem` } as CSSProperties}>
        {/* biome-ignore lint/a11y/noStaticElementInteractions: its role, grid, is in gridPart */}
        <div
          {...gridPart(label, helpId, rows.length, columns.length)}
          className={styles.grid}
          tabIndex={rows.length === 0 ? 0 : -1}
          onKeyDown={keys}
          onPointerDown={press}
          onPointerMove={drag}
          onPointerUp={() => {
            dragging.current = false;
          }}
          onClick={tap}
          onDoubleClick={(event) => {
            const place = placeOf(event.target);
            if (place && !editing) edit(place);
          }}
          onCopy={copy}
          onCut={copy}
          onPaste={(event) => {
            event.preventDefault();
            paste(event.clipboardData.getData("text/plain"), { row: area.top, column: area.left });
          }}
        >
          <div {...headRowPart} className={styles.head} style={{ gridTemplateColumns: template }}>
            {columns.map((column, place) => (
              <div
                key={column.key}
                {...headPart(place)}
                className={styles.name}
                data-kind={column.kind}
                data-first={place === 0 || undefined}
              >
                {column.name}
              </div>
            ))}
          </div>
          <div {...noPart} className={styles.rows} style={printing ? undefined : { blockSize: virtual.getTotalSize() }}>
            {seen.map((index) => {
              const row = rows[index];
              const chosen = index >= area.top && index <= area.bottom;
              return row ? (
                <GridLine
                  key={row.key}
                  row={row}
                  index={index}
                  columns={columns}
                  template={template}
                  start={printing ? null : (starts.get(index) ?? 0)}
                  typed={edits.cells[row.key]}
                  refusals={refusals}
                  focus={focus.row === index ? focus.column : null}
                  chosen={chosen ? `${area.left} ${area.right}` : ""}
                  editing={editing?.place.row === index ? editing.cell : null}
                  deeds={editorDeeds}
                />
              ) : null;
            })}
          </div>
        </div>
        <div ref={probe} className={styles.probe} aria-hidden="true" />
        {rows.length === 0 ? <div className={styles.none}>{empty}</div> : null}
      </div>
    </>
  );
}
