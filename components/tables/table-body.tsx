"use client";

import { useWindowVirtualizer } from "@tanstack/react-virtual";
import { type KeyboardEvent, useLayoutEffect, useMemo, useRef, useState } from "react";
import { CellContent } from "./cell-content";
import { type Cell, type Column, phonePlace, type Row, widestCells } from "./cells";
import { cellRole, groupRole, noRole, rowRole } from "./roles";
import { usePrinting } from "./use-printing";

const drawnWhole = 300;
const drawnAtFirst = 60;
const rowHeight = 43;
const mostOnPaper = 3000;

/**
 * The rows. The server draws the first; the browser has the rest as data. Up to `drawnWhole` it draws them all at once, so that its own
 * search finds them; of more, those in sight, and all of them before printing.
 */
export function TableBody({ columns, rows }: { columns: readonly Column[]; rows: readonly Row[] }) {
  const body = useRef<HTMLTableSectionElement>(null);
  const [top, setTop] = useState<number | null>(null);
  const printing = usePrinting();
  const many = rows.length > drawnAtFirst;
  const long = rows.length > drawnWhole;
  useLayoutEffect(() => {
    if (many && body.current) setTop(body.current.getBoundingClientRect().top + window.scrollY);
  }, [many]);
  const windowed = long && top !== null && !(printing && rows.length <= mostOnPaper);
  const virtual = useWindowVirtualizer({
    count: rows.length,
    estimateSize: () => rowHeight,
    overscan: 12,
    scrollMargin: top ?? 0,
    enabled: windowed,
    getItemKey: (index) => rows[index]?.id ?? index,
  });
  const widest = useMemo(() => (many ? widestCells(columns, rows) : null), [many, columns, rows]);
  const items = windowed ? virtual.getVirtualItems() : [];
  const first = items[0];
  const last = items.at(-1);
  const whole = printing || !many || (!long && top !== null);
  const seen = windowed ? items.map((item) => item.index) : [...rows.keys()].slice(0, whole ? undefined : drawnAtFirst);
  const above = first ? first.start - (top ?? 0) : 0;
  const below = last
    ? virtual.getTotalSize() - (last.end - (top ?? 0))
    : whole
      ? 0
      : (rows.length - drawnAtFirst) * rowHeight;
  return (
    <tbody ref={body} {...groupRole} onKeyDown={step}>
      {widest ? (
        <tr {...noRole} data-widest="true">
          {columns.map((column) => (
            <td key={column.key} data-kind={column.kind} data-phone={phonePlace(column, 1)}>
              <CellContent cell={widest[column.key]} />
            </td>
          ))}
        </tr>
      ) : null}
      <Blank height={above} columns={columns.length} />
      {seen.map((index) => {
        const row = rows[index];
        return row ? (
          <tr
            key={row.id}
            {...rowRole}
            aria-rowindex={index + 2}
            data-index={index}
            ref={windowed ? virtual.measureElement : undefined}
          >
            {columns.map((column, place) => (
              <td
                key={column.key}
                {...cellRole}
                data-kind={column.kind}
                data-phone={phonePlace(column, place)}
                data-name={phoneName(column, row.cells[column.key])}
              >
                <CellContent cell={row.cells[column.key]} />
              </td>
            ))}
          </tr>
        ) : null;
      })}
      <Blank height={below} columns={columns.length} />
    </tbody>
  );
}

/** The word before a value on a phone: the column's own, and the column's name where an unknown would stand there without a word. */
function phoneName(column: Column, cell: Cell | undefined): string | undefined {
  return column.phoneName ?? (cell === null || cell === undefined ? column.name.toLowerCase() : undefined);
}

/** The room of the rows that are not drawn. */
function Blank({ height, columns }: { height: number; columns: number }) {
  if (height <= 0) return null;
  return (
    <tr {...noRole} data-blank="true">
      <td colSpan={columns} style={{ blockSize: height, padding: 0 }} />
    </tr>
  );
}

/** Arrow keys lead from one row's link to the next. */
function step(event: KeyboardEvent<HTMLTableSectionElement>) {
  if (event.key !== "ArrowDown" && event.key !== "ArrowUp") return;
  const row = (event.target as HTMLElement).closest("tr");
  const other = event.key === "ArrowDown" ? row?.nextElementSibling : row?.previousElementSibling;
  const link = other?.querySelector("a");
  if (!link || (event.target as HTMLElement).tagName !== "A") return;
  event.preventDefault();
  link.focus();
}
