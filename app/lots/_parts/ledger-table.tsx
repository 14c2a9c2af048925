import Link from "next/link";
import { Way } from "@/components/ui/offered";
import { dateInWords } from "@/lib/display/dates";
import { seedsCounted, wholeNumber } from "@/lib/display/numbers";
import { counted } from "@/lib/display/plurals";
import { type UnitSettings, weight } from "@/lib/display/units";
import type { LotRead } from "@/lib/registry/lots/read-lot";
import { kindInWords } from "../_words/ledger-words";
import styles from "./ledger-table.module.css";

type Step = LotRead["balance"]["steps"][number];

// Said aloud: some browsers forget what a table is once a phone lays its rows out as entries.
const table = { role: "table" } as const;
const group = { role: "rowgroup" } as const;
const row = { role: "row" } as const;
const head = { role: "columnheader" } as const;
const cell = { role: "cell" } as const;

/** The ledger in the order in which it counts, with the running balance; what counts no more stands folded below. */
export function LedgerTable({ read, units }: { read: LotRead; units: UnitSettings }) {
  const { balance, warnings, lot } = read;
  return (
    <div className={styles.frame}>
      <table className={styles.ledger} {...table}>
        <caption className="heard">Ledger of lot {lot.number}</caption>
        <thead {...group}>
          <tr {...row}>
            <th scope="col" {...head}>
              When
            </th>
            <th scope="col" {...head}>
              What
            </th>
            <th scope="col" {...head} data-kind="count">
              In or out
            </th>
            <th scope="col" {...head} data-kind="count">
              Left
            </th>
          </tr>
        </thead>
        <tbody {...group}>
          {balance.steps.map((step) => (
            <tr key={step.entry.id} {...row}>
              <td {...cell} data-part="when">
                {dateInWords(step.entry.on)}
              </td>
              <td {...cell} data-part="what">
                <What step={step} lotId={lot.id} warnings={warnings.get(step.entry.id) ?? []} />
              </td>
              <td {...cell} data-part="change" data-kind="count">
                {changeInWords(step, units)}
              </td>
              <td {...cell} data-part="left" data-kind="count">
                {step.change === null ? "" : weight(step.balance, units)}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <CountsNoMore read={read} units={units} />
    </div>
  );
}

function What({
  step: { entry },
  lotId,
  warnings,
}: {
  step: Step;
  lotId: string;
  warnings: readonly { code: string; text: string }[];
}) {
  const other = entry.other ?? entry.otherLot ?? entry.otherSteward;
  return (
    <>
      <Way href={`/lots/${lotId}/ledger/${entry.id}`} prefetch={false}>
        {kindInWords(entry.kind)}
        <span className="heard">, {dateInWords(entry.on)}: put this entry right</span>
      </Way>
      {other ? <>, {entry.otherLotId ? <Link href={`/lots/${entry.otherLotId}`}>{other}</Link> : other}</> : null}
      {entry.writtenUnder ? <span className={styles.note}>written under {entry.writtenUnder}</span> : null}
      {entry.notes ? <Note words={entry.notes} /> : null}
      {warnings.map((warning) => (
        <span key={warning.code} className={styles.odd}>
          {warning.text}
        </span>
      ))}
    </>
  );
}

/** So many letters of a note stand in the ledger; of more, the rest is folded behind them. */
const longestNote = 240;

function Note({ words }: { words: string }) {
  if (words.length <= longestNote) return <span className={styles.note}>{words}</span>;
  const end = words.lastIndexOf(" ", longestNote / 2);
  const cut = end > 0 ? end : longestNote / 2;
  return (
    <details className={`${styles.note} whole-on-paper`}>
      <summary>{words.slice(0, cut)} …</summary>
      {words.slice(cut)}
    </details>
  );
}

function CountsNoMore({ read: { entries, balance }, units }: { read: LotRead; units: UnitSettings }) {
  const standing = new Set(balance.steps.map((step) => step.entry.id));
  const replaced = entries.filter((entry) => !standing.has(entry.id) && !entry.takenBack);
  if (replaced.length === 0) return null;
  const by = new Map(entries.flatMap((entry) => (entry.replacesId ? [[entry.replacesId, entry] as const] : [])));
  return (
    <details className={styles.replaced}>
      <summary>
        {counted(replaced.length, "entry")} that {replaced.length === 1 ? "counts" : "count"} no more
      </summary>
      <ul>
        {replaced.map((entry) => (
          <li key={entry.id}>
            <s>
              {dateInWords(entry.on)}: {kindInWords(entry.kind)} {amountInWords(entry, units)}
            </s>
            {by.get(entry.id)?.takenBack ? ", taken back" : ", put right"}
          </li>
        ))}
      </ul>
    </details>
  );
}

function changeInWords({ entry, change }: Step, units: UnitSettings): string {
  if (change === null) return amountInWords(entry, units);
  if (change === 0) return entry.kind === "weighed" ? "as it was" : weight(0, units);
  const grams = change > 0 ? `+${weight(change, units)}` : weight(change, units);
  return entry.unit === "seeds" ? `${grams} (${seedsCounted(entry.amount)})` : grams;
}

function amountInWords(entry: { amount: number; unit: string }, units: UnitSettings): string {
  if (entry.unit === "g") return weight(entry.amount, units);
  return `${wholeNumber(entry.amount)} ${entry.unit}`;
}
