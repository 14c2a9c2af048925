import { type FormEvent, useState } from "react";
import controls from "./controls.module.css";
import type { Where } from "./plant-screen";

/** Where a plant stands: cell, row, and its place in the row. What the plant before had in cell and row stands here already. */
export function PlantPlace({
  where,
  onWhere,
  onLeave,
}: {
  where: Where;
  onWhere: (where: Where) => void;
  onLeave: () => void;
}) {
  const [cell, setCell] = useState(where.cell ?? "");
  const [row, setRow] = useState(where.row ?? "");
  const [position, setPosition] = useState(where.position === null ? "" : String(where.position));
  const keep = (event: FormEvent) => {
    event.preventDefault();
    const place = Number(position.replace(",", "."));
    onWhere({
      cell: cell.trim() || null,
      row: row.trim() || null,
      position: position.trim() === "" || Number.isNaN(place) ? null : place,
    });
  };
  return (
    <form onSubmit={keep}>
      <div className={controls.grid} data-columns="3">
        <label className={controls.label}>
          Cell
          <input
            className={controls.input}
            value={cell}
            maxLength={60}
            onChange={(event) => setCell(event.currentTarget.value)}
          />
        </label>
        <label className={controls.label}>
          Row
          <input
            className={controls.input}
            value={row}
            maxLength={60}
            onChange={(event) => setRow(event.currentTarget.value)}
          />
        </label>
        <label className={controls.label}>
          Plant in the row
          <input
            className={controls.input}
            inputMode="decimal"
            value={position}
            maxLength={6}
            onChange={(event) => setPosition(event.currentTarget.value.replace(/[^\d.,]/g, ""))}
          />
        </label>
      </div>
      <div className={controls.beside}>
        <button type="submit" className={controls.choice}>
          It stands here
        </button>
        <button type="button" className={controls.quietChoice} onClick={onLeave}>
          Leave as it was
        </button>
      </div>
    </form>
  );
}
