"use client";

import { Fragment, type ReactNode, useId } from "react";
import type { CountKind } from "@/lib/schemas/germination-test/counts";
import { CountCell } from "./count-cell";
import styles from "./count-sheet.module.css";
import {
  cellKey,
  dayTexts,
  isApart,
  replicateCount,
  type Sheet,
  type SheetRow,
  sheetRows,
  textAt,
  unknownDay,
  withBlock,
  withText,
} from "./sheet";
import type { SheetFault } from "./sheet-entry";
import { useSheetKeys } from "./use-sheet-keys";

/** What is said at the foot of a replicate's column: how many came up, how many are left. */
export interface ColumnFoot {
  readonly up: string;
  readonly left: string;
  readonly share: ReactNode;
}

export const kindWords: Readonly<Record<CountKind, string>> = {
  normal: "normal seedlings",
  abnormal: "abnormal",
  hard: "hard, still dry",
  fresh: "fresh, swollen, not up",
  dead: "dead or mouldy",
};

/**
 * The counting sheet: a column a replicate, a row a day and kind. Typing overwrites what stands there; arrows move; Enter goes down, at
 * the foot to the next column's head; Tab goes across; Escape puts back what stood there; a block from a spreadsheet is pasted whole.
 */
export function CountSheet({
  sheet,
  change,
  normalWords,
  faults,
  feet,
  fixed = false,
  children,
}: {
  sheet: Sheet;
  change: (sheet: Sheet) => void;
  /** what a count of `normal` is called by the basis of the test */
  normalWords: string;
  faults: readonly SheetFault[];
  feet: readonly ColumnFoot[];
  /** the seeds sown stand already and are not typed */
  fixed?: boolean;
  /** rows of what was counted before, between the seeds sown and the cells */
  children?: ReactNode;
}) {
  const faultsId = useId();
  const keys = useSheetKeys();
  const columns = Array.from({ length: replicateCount(sheet) }, (_, replicate) => replicate);
  const rows = sheetRows(sheet);
  const wrong = new Set(faults.map((fault) => fault.key));
  const days = dayTexts(sheet);
  const cell = (row: SheetRow, line: number, replicate: number) => {
    const key = row.kind === "sown" ? `sown|${replicate}` : cellKey(row.day, row.kind, replicate);
    const what =
      row.kind === "sown"
        ? "seeds sown"
        : `${dayWords(days[row.day])}, ${row.kind === "normal" ? normalWords : kindWords[row.kind]}`;
    return (
      <td key={key} className={styles.cell}>
        <CountCell
          id={`cell-${key}`}
          label={`Replicate ${replicate + 1}, ${what}`}
          text={textAt(sheet, row, replicate)}
          place={{ row: line, replicate }}
          wrong={wrong.has(key)}
          describedBy={faultsId}
          quiet={row.kind === "sown"}
          onText={(text) => change(withText(sheet, row, replicate, text))}
          onBlock={(block) => change(withBlock(sheet, { row: line, replicate }, block))}
        />
      </td>
    );
  };
  return (
    <div className={styles.frame}>
      <table className={styles.sheet} onKeyDown={keys}>
        <caption className="heard">
          Counting sheet. Arrow keys move, Enter goes down, Escape puts back what stood there.
        </caption>
        <thead>
          <tr>
            <th scope="col">Replicate</th>
            {columns.map((replicate) => (
              <th key={replicate} scope="col" className={styles.number}>
                {replicate + 1}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          <tr>
            <th scope="row">seeds sown</th>
            {columns.map((replicate) =>
              fixed ? (
                <td key={replicate} className={styles.number}>
                  {textAt(sheet, { day: -1, kind: "sown" }, replicate)}
                </td>
              ) : (
                cell({ day: -1, kind: "sown" }, 0, replicate)
              ),
            )}
          </tr>
          {children}
          {days.map((day, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a day keeps its cells by its place in the list while its number is typed
            <Fragment key={index}>
              <tr className={styles.day}>
                <th scope="rowgroup" colSpan={columns.length + 1}>
                  {dayWords(day).replace("day", "Day")}
                  <label className={styles.apart}>
                    <input
                      type="checkbox"
                      tabIndex={-1}
                      checked={isApart(sheet, index)}
                      onChange={(event) =>
                        change({ ...sheet, apart: { ...sheet.apart, [index]: event.target.checked } })
                      }
                    />
                    tell the rest apart
                  </label>
                </th>
              </tr>
              {rows.map((row, line) =>
                row.day === index ? (
                  <tr key={row.kind}>
                    <th scope="row">
                      {row.kind === "normal" ? normalWords : row.kind === "sown" ? "" : kindWords[row.kind]}
                    </th>
                    {columns.map((replicate) => cell(row, line, replicate))}
                  </tr>
                ) : null,
              )}
            </Fragment>
          ))}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row">together</th>
            {columns.map((replicate) => (
              <td key={replicate} className={styles.number}>
                {feet[replicate]?.up ?? ""}
              </td>
            ))}
          </tr>
          <tr>
            <th scope="row">left over</th>
            {columns.map((replicate) => (
              <td key={replicate} className={styles.number}>
                {feet[replicate]?.left ?? ""}
              </td>
            ))}
          </tr>
          <tr className={styles.shares}>
            <th scope="row">between</th>
            {columns.map((replicate) => (
              <td key={replicate} className={styles.number}>
                {feet[replicate]?.share ?? ""}
              </td>
            ))}
          </tr>
        </tfoot>
      </table>
      <div id={faultsId} className={styles.faults} role="status">
        {faults.map((fault) => (
          <p key={`${fault.key}:${fault.sentence}`}>
            <a href={fault.key === "days" ? "#field-days" : `#cell-${fault.key}`}>{fault.sentence}</a>
          </p>
        ))}
      </div>
    </div>
  );
}

function dayWords(day: string | undefined): string {
  return day === unknownDay ? "day not known" : `day ${day}`;
}
