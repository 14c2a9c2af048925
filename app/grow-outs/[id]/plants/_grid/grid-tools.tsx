"use client";

import { useId } from "react";
import { Button } from "@/components/ui";
import type { TraitOfGrid } from "./grid-data";
import styles from "./plants-grid.module.css";

/** What can be done with the chosen cells, and with the rows and columns. */
export function GridTools({
  traits,
  bringIn,
  canUndo,
  canRedo,
  undo,
  redo,
  fillDown,
  paste,
  addRow,
  removeRow,
}: {
  /** shared traits that have no column here yet */
  traits: readonly TraitOfGrid[];
  bringIn: (id: string) => void;
  canUndo: boolean;
  canRedo: boolean;
  undo: () => void;
  redo: () => void;
  fillDown: () => void;
  paste: () => void;
  addRow: () => void;
  /** takes away the row in focus, where it is not stored yet */
  removeRow: (() => void) | null;
}) {
  const traitsId = useId();
  return (
    <div className={styles.tools} role="toolbar" aria-label="The grid">
      <Button onClick={undo} disabled={!canUndo} aria-keyshortcuts="Control+Z">
        Undo
      </Button>
      <Button onClick={redo} disabled={!canRedo} aria-keyshortcuts="Control+Y">
        Redo
      </Button>
      <Button onClick={fillDown} aria-keyshortcuts="Control+D">
        Fill down
      </Button>
      <Button onClick={paste}>Paste cells</Button>
      <Button onClick={addRow}>One more plant</Button>
      {removeRow ? <Button onClick={removeRow}>Take the new row away</Button> : null}
      {traits.length > 0 ? (
        <div className={styles.traits}>
          <label htmlFor={traitsId}>Score by</label>
          <select id={traitsId} value="" onChange={(event) => event.target.value && bringIn(event.target.value)}>
            <option value="">another trait</option>
            {traits.map((trait) => (
              <option key={trait.id} value={trait.id}>
                {trait.definition.name}
              </option>
            ))}
          </select>
        </div>
      ) : null}
    </div>
  );
}
