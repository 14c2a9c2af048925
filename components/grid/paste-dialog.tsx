"use client";

import { useEffect, useId, useMemo, useRef, useState } from "react";
import { Button } from "@/components/ui/button";
import { counted, listed } from "@/lib/display/plurals";
import styles from "./grid.module.css";
import { type PastedCell, type PasteGround, type PastePlan, planPaste } from "./paste-plan";
import { readTableText } from "./table-text";

const words = { new: "new", changed: "changed", same: "the same", empty: "empty", refused: "refused" } as const;

/**
 * Pasting from a spreadsheet: the text, then what each cell of it would do and why a cell is refused, then one confirmation. Nothing is
 * stored by it: the cells stand in the grid as if they were typed.
 */
export function PasteDialog({
  start,
  ground,
  noun,
  confirm,
  close,
}: {
  /** what was pasted; empty where it is to be pasted here */
  start: string;
  ground: Omit<PasteGround, "byName">;
  /** the word for a row: "plant" */
  noun: string;
  confirm: (plan: PastePlan) => void;
  close: () => void;
}) {
  const dialog = useRef<HTMLDialogElement>(null);
  const titleId = useId();
  const textId = useId();
  const [text, setText] = useState(start);
  const table = useMemo(() => readTableText(text), [text]);
  const first = useMemo(() => planPaste(table, { ...ground, byName: false }), [table, ground]);
  const [byName, setByName] = useState<boolean | null>(null);
  const named = first.named && (byName ?? true);
  const plan = useMemo(
    () => (named ? planPaste(table, { ...ground, byName: true }) : first),
    [named, table, ground, first],
  );
  useEffect(() => dialog.current?.showModal(), []);
  const cells = plan.cells.flat();
  const count = (state: PastedCell["state"]) => cells.filter((cell) => cell.state === state).length;
  const filling = count("new") + count("changed");
  const refusedCells = cells.filter((cell) => cell.state === "refused");
  return (
    <dialog ref={dialog} className={styles.dialog} aria-labelledby={titleId} onClose={close}>
      <div className={styles.steps}>
        <h2 id={titleId}>Paste from a spreadsheet</h2>
        {start === "" ? (
          <div>
            <label htmlFor={textId}>Copy the cells there and paste them here</label>
            <textarea
              id={textId}
              className={styles.pasted}
              value={text}
              onChange={(event) => setText(event.target.value)}
              spellCheck={false}
            />
          </div>
        ) : null}
        {table.length === 0 ? null : (
          <>
            <p role="status">
              {counted(plan.cells.length, "row")} on {listed(plan.columns.map((column) => column?.name ?? "no column"))}
              {plan.headed ? ", as the first row names them" : ""}: {summary(count)}
              {plan.added.length > 0 ? `; ${counted(plan.added.length, noun)} would be added` : ""}.
            </p>
            {first.named ? (
              <label className={styles.tick}>
                <input type="checkbox" checked={named} onChange={(event) => setByName(event.target.checked)} />
                <span>Find each {noun} by its tag, in whatever order the rows come</span>
              </label>
            ) : null}
            {refusedCells.length > 0 ? <p>A cell that is refused or empty leaves what stands there.</p> : null}
            {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls is reached by the keyboard */}
            <section className={styles.preview} aria-label="What each cell would do" tabIndex={0}>
              <Preview plan={plan} noun={noun} />
            </section>
          </>
        )}
        <div className={styles.actions}>
          <Button
            kind="chief"
            disabled={filling === 0}
            onClick={() => {
              confirm(plan);
              dialog.current?.close();
            }}
          >
            {filling === 0 ? "Nothing to put in" : `Put ${counted(filling, "cell")} in`}
          </Button>
          <Button onClick={() => dialog.current?.close()}>Leave it</Button>
        </div>
      </div>
    </dialog>
  );
}

function summary(count: (state: PastedCell["state"]) => number): string {
  const parts = (["new", "changed", "same", "empty", "refused"] as const)
    .map((state) => [state, count(state)] as const)
    .filter(([, number]) => number > 0)
    .map(([state, number]) => `${number} ${words[state]}`);
  return listed(parts);
}

function Preview({ plan, noun }: { plan: PastePlan; noun: string }) {
  return (
    <table>
      <thead>
        <tr>
          <th scope="col">{noun}</th>
          {plan.columns.map((column, place) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a pasted column is known by its place
            <th key={place} scope="col">
              {column?.name ?? "no column"}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {plan.cells.map((cells, row) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a pasted row is known by its place
          <tr key={row}>
            <th scope="row">
              {cells[0]?.rowName || "?"}
              {cells[0]?.row && plan.added.includes(cells[0].row) ? <small>, added</small> : null}
            </th>
            {cells.map((cell, place) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: as above
              <td key={place} data-state={cell.state}>
                {cell.state === "refused" ? cell.typed : cell.to}
                <small>{said(cell)}</small>
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function said({ state, from, why }: PastedCell): string {
  if (state === "refused") return `refused: ${why}`;
  if (state === "changed") return `changed, was ${from}`;
  return words[state];
}
