"use client";

import type { KeyboardEvent } from "react";

interface Place {
  readonly row: number;
  readonly replicate: number;
}

type Cell = HTMLInputElement & { dataset: { row?: string; replicate?: string } };

/** Where a key leads from a place, in cells down and across; null: the key is not one that moves. */
export function stepOf(key: string, shift: boolean): { down: number; across: number } | null {
  if (key === "Enter") return { down: shift ? -1 : 1, across: 0 };
  if (shift) return null;
  if (key === "ArrowDown") return { down: 1, across: 0 };
  if (key === "ArrowUp") return { down: -1, across: 0 };
  if (key === "ArrowRight") return { down: 0, across: 1 };
  if (key === "ArrowLeft") return { down: 0, across: -1 };
  return null;
}

/**
 * The place that a key leads to among the places there are. Enter runs on at the foot of a column to the head of the next, and back
 * with Shift; null at the edge.
 */
export function placeAfter(key: string, shift: boolean, from: Place, places: readonly Place[]): Place | null {
  const step = stepOf(key, shift);
  if (!step) return null;
  const rows = [...new Set(places.map((place) => place.row))].sort((a, b) => a - b);
  const find = (row: number | undefined, replicate: number) =>
    places.find((place) => place.row === row && place.replicate === replicate) ?? null;
  const next = find(rows[rows.indexOf(from.row) + step.down], from.replicate + step.across);
  if (next || key !== "Enter") return next;
  return shift ? find(rows.at(-1), from.replicate - 1) : find(headOfCounts(rows), from.replicate + 1);
}

/** The seeds sown are filled in already: running on begins with the first count. */
function headOfCounts(rows: readonly number[]): number | undefined {
  return rows[0] === 0 && rows.length > 1 ? rows[1] : rows[0];
}

/** Moves among the cells of the table that hears the keys. Past the last cell Enter goes to the form's own button. */
export function useSheetKeys(): (event: KeyboardEvent<HTMLElement>) => void {
  return (event) => {
    const cell = event.target as Cell;
    if (event.ctrlKey || event.metaKey || event.altKey || cell.dataset.row === undefined) return;
    if (!stepOf(event.key, event.shiftKey)) return;
    event.preventDefault();
    const cells = [...event.currentTarget.querySelectorAll<Cell>("input[data-row]")];
    const placeOf = (each: Cell) => ({ row: Number(each.dataset.row), replicate: Number(each.dataset.replicate) });
    const to = placeAfter(event.key, event.shiftKey, placeOf(cell), cells.map(placeOf));
    if (to) cells.find((each) => placeOf(each).row === to.row && placeOf(each).replicate === to.replicate)?.focus();
    else if (event.key === "Enter" && !event.shiftKey) {
      cell.form?.querySelector<HTMLElement>("button[type=submit]")?.focus();
    }
  };
}
