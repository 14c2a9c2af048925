"use client";

import { type KeyboardEvent, useId } from "react";
import { Refusals } from "@/components/ui/field";
import { fatesOfSeed } from "@/lib/schemas/harvests/harvest-entry";
import type { FieldOf } from "../../lots/_form/use-form-answer";
import styles from "./seed-rows.module.css";
import type { RowsOf } from "./typed-harvest";

/** One row: a plant, or a bag. */
export interface SeedRow {
  readonly row: number;
  readonly name: string;
  /** tag, cell, intent of its last mark */
  readonly told: string;
  readonly plantId: string | null;
}

/**
 * Seed parents in rows, with one column for what each gave: Enter goes down it, as do the arrows. A weight typed at a plant says that its
 * seed is kept.
 */
export function SeedRows({
  rows,
  of,
  field,
  unit,
  measured,
}: {
  rows: readonly SeedRow[];
  of: RowsOf;
  field: FieldOf;
  unit: string;
  /** whether anything is known of each: else there is no column to type in */
  measured: boolean;
}) {
  const fates = of === "plants" ? fatesOfSeed : fatesOfSeed.filter((fate) => fate !== "not taken");
  return (
    <table
      className={styles.table}
      data-measured={measured || undefined}
      onKeyDown={goDown}
      onInput={keepWhatIsWeighed}
    >
      <thead>
        <tr>
          <th scope="col">{of === "plants" ? "Plant" : "Bag"}</th>
          <th scope="col" className={styles.amountHead}>
            {unit}
          </th>
          <th scope="col">Its seed</th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <SeedRowLine key={row.row} row={row} of={of} field={field} unit={unit} fates={fates} />
        ))}
      </tbody>
    </table>
  );
}

function SeedRowLine({
  row: { row, name, told, plantId },
  of,
  field,
  unit,
  fates,
}: {
  row: SeedRow;
  of: RowsOf;
  field: FieldOf;
  unit: string;
  fates: readonly string[];
}) {
  const at = `${of}.${row}`;
  const amount = field(`${at}.amount`);
  const fate = field(`${at}.fate`);
  const refusals = [...amount.refusals, ...fate.refusals, ...field(`${at}.plant`).refusals];
  const refusalId = useId();
  const described = refusals.length > 0 ? { "aria-invalid": true, "aria-describedby": refusalId } : {};
  return (
    <tr>
      <th scope="row">
        {plantId === null ? null : <input type="hidden" name={`${at}.plant`} value={plantId} />}
        {name}
        {told === "" ? null : <small> {told}</small>}
        <Refusals id={refusalId} refusals={refusals} />
      </th>
      <td>
        <input
          {...described}
          id={`field-${at}.amount`}
          name={`${at}.amount`}
          className={styles.amount}
          aria-label={`${name}, ${unit}`}
          type="text"
          inputMode="decimal"
          autoComplete="off"
          enterKeyHint="next"
          defaultValue={amount.value}
          data-amount
        />
      </td>
      <td>
        <select
          key={fate.value}
          name={`${at}.fate`}
          id={`field-${at}.fate`}
          className={styles.fate}
          aria-label={`${name}, its seed`}
          defaultValue={fate.value === "" ? fates[0] : fate.value}
        >
          {[...fates, ...(fate.value === "" || fates.includes(fate.value) ? [] : [fate.value])].map((each) => (
            <option key={each}>{each}</option>
          ))}
        </select>
      </td>
    </tr>
  );
}

/** Enter and the arrows go down the column (and up it), and stop at its ends. */
function goDown(event: KeyboardEvent<HTMLTableElement>) {
  const cell = event.target;
  if (!(cell instanceof HTMLInputElement) || !("amount" in cell.dataset)) return;
  const down = event.key === "Enter" || event.key === "ArrowDown";
  if (!down && event.key !== "ArrowUp") return;
  event.preventDefault();
  const cells = [...event.currentTarget.querySelectorAll<HTMLInputElement>("[data-amount]")];
  const next = cells[cells.indexOf(cell) + (down && !event.shiftKey ? 1 : -1)];
  next?.focus();
  next?.select();
}

function keepWhatIsWeighed(event: { target: EventTarget }) {
  const cell = event.target;
  if (!(cell instanceof HTMLInputElement) || !("amount" in cell.dataset) || cell.value.trim() === "") return;
  const fate = cell.closest("tr")?.querySelector("select");
  if (fate && fate.value === "not taken") fate.value = "kept";
}
