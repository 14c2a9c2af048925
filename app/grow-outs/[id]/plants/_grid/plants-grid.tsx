"use client";

import { useEffect, useMemo, useState, useTransition } from "react";
import { DraftLine, useDraft } from "@/components/drafts";
import {
  type CellChange,
  CellLine,
  cellText,
  countEdits,
  filledDown,
  Grid,
  type GridRow,
  isEmpty,
  noEdits,
  PasteDialog,
  type PastePlan,
  type Place,
  pastedChanges,
  rectangle,
  refusalKey,
  refusalOf,
  type Selection,
  selected,
  useEdits,
  withoutRow,
  withRows,
} from "@/components/grid";
import { Button } from "@/components/ui";
import { Way } from "@/components/ui/offered";
import { dateInWords } from "@/lib/display/dates";
import { counted } from "@/lib/display/plurals";
import type { Hemisphere } from "@/lib/science/dates/fuzzy-date";
import { editsThatFit, readPlantsDraft } from "./draft";
import { gridColumns, nameColumn } from "./grid-columns";
import type { GridData } from "./grid-data";
import { GridTools } from "./grid-tools";
import styles from "./plants-grid.module.css";
import { rowsOfScorer } from "./rows-of-scorer";
import { SeenBy } from "./seen-by";
import { filledIn, rowsInOrder } from "./sheet-order";
import { type Stored, storePlants } from "./store";

const start: Selection = selected({ row: 0, column: 0 });
const noSheet = { places: [], on: null } as const;

/** The grid of a grow-out's plants: typed into, kept on the device, and stored as one entry of the history. */
export function PlantsGrid({
  growOutId,
  growOut,
  data,
  hemisphere,
  today,
}: {
  growOutId: string;
  growOut: string;
  data: GridData;
  hemisphere: Hemisphere;
  /** the day to begin with; empty where it was likely another */
  today: string;
}) {
  const { places: lines, on: onSheet } = data.sheet ?? noSheet;
  // rows without a printed tag that were stored: they stand among the plants now and are not offered again
  const [done, setDone] = useState<readonly string[]>([]);
  const places = useMemo(() => lines.filter((line) => !done.includes(line.key)), [lines, done]);
  const { edits, change, begin, undo, redo, canUndo, canRedo } = useEdits();
  const draft = useDraft(`plants:${growOutId}`, readPlantsDraft);
  const [restored, setRestored] = useState(false);
  const [gone, setGone] = useState(0);
  const [on, setOn] = useState(onSheet ?? today);
  const [steward, setSteward] = useState("");
  const [brought, setBrought] = useState<readonly string[]>([]);
  const [selection, select] = useState(start);
  const [typed, setTyped] = useState<CellChange | null>(null);
  const [pasting, setPasting] = useState<{ text: string; at: Place; key: string } | null>(null);
  const [answer, setAnswer] = useState<Stored | null>(null);
  const [storing, startStoring] = useTransition();

  const columns = useMemo(
    () =>
      gridColumns(
        data.traits.filter((trait) => trait.shown || brought.includes(trait.id)),
        hemisphere,
      ),
    [data.traits, brought, hemisphere],
  );
  const plants = useMemo(() => rowsOfScorer(data, steward), [data, steward]);
  const rows = useMemo(() => rowsInOrder(plants, edits.added, places), [plants, edits.added, places]);
  const byKey = useMemo(() => new Map(rows.map((row) => [row.key, row])), [rows]);

  const { found, keep, forget } = draft;
  // biome-ignore lint/correctness/useExhaustiveDependencies: what lay on the device is taken up once
  useEffect(() => {
    if (!found?.draft) return;
    const { edits: kept, gone: lost } = editsThatFit(found.draft.edits, data.rows);
    begin(kept);
    setGone(lost);
    setOn(found.draft.on);
    setSteward(found.draft.steward);
    setBrought(found.draft.traits);
    setRestored(true);
  }, [found]);
  // What is being typed is kept as well, before it is written into its cell.
  useEffect(() => {
    if (found === null) return;
    const all = typed ? filledIn(edits, byKey, places, [typed]) : edits;
    if (isEmpty(all)) forget();
    else keep({ edits: all, on, steward, traits: brought });
  }, [found, edits, typed, on, steward, brought, byKey, places, keep, forget]);

  const fill = (changes: readonly CellChange[]) => {
    change((before) => filledIn(before, byKey, places, changes));
    setAnswer(null);
  };
  const wrong = useMemo(() => {
    const found: { row: GridRow; column: (typeof columns)[number]; sentence: string }[] = [];
    for (const row of rows) {
      const cells = edits.cells[row.key];
      if (!cells) continue;
      for (const column of columns) {
        const sentence = cells[column.key] === undefined ? null : refusalOf(column, cells[column.key] ?? "");
        if (sentence) found.push({ row, column, sentence });
      }
    }
    return found;
  }, [rows, columns, edits]);
  const refusals = useMemo(
    () =>
      new Map(
        (answer?.ok === false ? answer.refusals : []).map((each) => [refusalKey(each.row, each.column), each.sentence]),
      ),
    [answer],
  );
  const goTo = (rowKey: string, columnKey: string) => {
    const row = rows.findIndex((each) => each.key === rowKey);
    const column = columns.findIndex((each) => each.key === columnKey);
    if (row >= 0) select(selected({ row, column: Math.max(0, column) }));
  };
  const store = () => {
    const [first] = wrong;
    if (first) {
      goTo(first.row.key, first.column.key);
      return;
    }
    const sent = rows.flatMap((row) => {
      const cells = edits.cells[row.key];
      if (!cells) return [];
      const texts = Object.entries(cells).map(([column, text]) => [column, { text, was: row.stored[column] ?? "" }]);
      return [{ key: row.key, added: row.added, cells: Object.fromEntries(texts) }];
    });
    startStoring(async () => {
      const stored = await storePlants(growOutId, { on, stewardId: steward, rows: sent });
      startStoring(() => {
        setAnswer(stored);
        if (!stored.ok) return;
        setDone((before) => [...before, ...sent.flatMap((row) => (row.added ? row.key : []))]);
        begin(noEdits);
        setRestored(false);
      });
    });
  };
  const again = () => {
    begin(noEdits);
    setRestored(false);
  };
  const addRow = () => {
    change((before) => withRows(before, [newKey()]));
    select(selected({ row: rows.length, column: 0 }));
  };
  const putIn = (plan: PastePlan) => {
    change((before) => {
      const grown = withRows(before, plan.added);
      const known = new Map([
        ...byKey,
        ...plan.added.map((key) => [key, { key, added: true, stored: {}, notes: {} }] as const),
      ]);
      return filledIn(grown, known, places, pastedChanges(plan));
    });
    setAnswer(null);
  };

  const focusRow = rows[selection.focus.row] ?? null;
  const focusColumn = columns[selection.focus.column] ?? null;
  const focusText = focusRow && focusColumn ? cellText(edits, focusRow, focusColumn.key) : "";
  const area = rectangle(selection);
  const waiting = countEdits(edits);
  return (
    <div>
      <SeenBy
        key={found === null ? "before" : "after"}
        on={on}
        steward={steward}
        people={data.people}
        setOn={setOn}
        hint={data.sheet ? "the day in the head of the sheet, as 2024-08-20" : undefined}
        setSteward={setSteward}
        refusals={answer?.ok === false ? answer.refusals : []}
      />
      <GridTools
        traits={data.traits.filter((trait) => !trait.shown && !brought.includes(trait.id))}
        bringIn={(id) => setBrought((before) => [...before, id])}
        canUndo={canUndo}
        canRedo={canRedo}
        undo={undo}
        redo={redo}
        fillDown={() => fill(filledDown(selection, rows, columns, edits))}
        paste={() => setPasting({ text: "", at: { row: area.top, column: area.left }, key: newKey() })}
        addRow={addRow}
        removeRow={focusRow?.added ? () => change((before) => withoutRow(before, focusRow.key)) : null}
      />
      <Grid
        label={`Plants of grow-out ${growOut}`}
        rows={rows}
        columns={columns}
        edits={edits}
        selection={selection}
        select={select}
        fill={fill}
        undo={undo}
        redo={redo}
        paste={(text, at) => setPasting({ text, at, key: newKey() })}
        typing={setTyped}
        refusals={refusals}
        empty={
          <p>
            No plant is on record here. <Way href={`/grow-outs/${growOutId}/plants/add`}>Add a run of numbers</Way>, or
            paste tags and scores from a spreadsheet.
          </p>
        }
      />
      <CellLine
        row={focusRow}
        rowName={`Plant ${focusRow ? cellText(edits, focusRow, nameColumn) || "without a tag" : ""}`}
        column={focusColumn}
        text={focusText}
        refusal={focusRow && focusColumn ? (refusals.get(refusalKey(focusRow.key, focusColumn.key)) ?? null) : null}
        answer={(text) => {
          if (!focusRow || !focusColumn) return;
          fill([{ row: focusRow.key, column: focusColumn.key, text: text === focusText ? "" : text }]);
          if (text !== focusText && selection.focus.row < rows.length - 1)
            select(selected({ row: selection.focus.row + 1, column: selection.focus.column }));
        }}
      />
      {wrong.length > 0 ? (
        <div role="alert" className="waits">
          <p>{counted(wrong.length, "cell")} cannot be stored as typed:</p>
          <ul className={styles.wrong}>
            {wrong.slice(0, 8).map(({ row, column, sentence }) => (
              <li key={refusalKey(row.key, column.key)}>
                <Button kind="quiet" onClick={() => goTo(row.key, column.key)}>
                  Plant {cellText(edits, row, nameColumn) || "without a tag"}, {column.name}
                </Button>
                : {sentence}
              </li>
            ))}
          </ul>
        </div>
      ) : null}
      {answer?.ok === false ? (
        <div role="alert" className="waits">
          <p>Nothing was stored: {counted(answer.refusals.length, "thing")} to put right.</p>
          <ul className={styles.wrong}>
            {answer.refusals.slice(0, 20).map((each) => (
              <li key={`${each.row} ${each.column} ${each.sentence}`}>
                {byKey.has(each.row) ? (
                  <Button kind="quiet" onClick={() => goTo(each.row, each.column)}>
                    {each.sentence}
                  </Button>
                ) : (
                  each.sentence
                )}
              </li>
            ))}
          </ul>
        </div>
      ) : null}
      {restored && data.sheet && on !== (onSheet ?? "") ? (
        <p className="waits">
          What you had typed before stands here again{on === "" ? "" : `, as seen on ${dateInWords(on)}`}. Store it
          first, then write the day of this sheet.
        </p>
      ) : null}
      {gone > 0 ? (
        <p className="waits">
          What you had typed of {counted(gone, "plant")} was left out: {gone === 1 ? "it is" : "they are"} not on record
          any more.
        </p>
      ) : null}
      <div className="row">
        <Button kind="chief" onClick={store} disabled={storing || (waiting === 0 && edits.added.length === 0)}>
          {storing ? "Storing" : waiting === 0 ? "Nothing to store" : `Store ${counted(waiting, "cell")}`}
        </Button>
        {answer?.ok ? (
          <p role="status">
            Stored: {answer.words}.{" "}
            {answer.changeSetId ? <Way href={`/history/${answer.changeSetId}`}>It can be taken back</Way> : null}
          </p>
        ) : (
          <p className="quiet">All of it is one entry in the records, which History can take back.</p>
        )}
      </div>
      {waiting > 0 || restored ? <DraftLine kept={draft.kept} restored={restored} again={again} /> : null}
      {pasting ? (
        <PasteDialog
          start={pasting.text}
          ground={{ rows, columns, edits, nameColumn, at: pasting.at, newKey: (number) => `${pasting.key}-${number}` }}
          noun="plant"
          confirm={putIn}
          close={() => setPasting(null)}
        />
      ) : null}
    </div>
  );
}

function newKey(): string {
  return `new-${Date.now().toString(36)}-${Math.random().toString(36).slice(2, 8)}`;
}
