import Link from "next/link";
import { SimpleTable } from "@/components/tables";
import { dateInWords } from "@/lib/display/dates";
import { seedsCounted, wholeNumber } from "@/lib/display/numbers";
import { counted } from "@/lib/display/plurals";
import { type UnitSettings, weight } from "@/lib/display/units";
import type { LotRead } from "@/lib/registry/lots/read-lot";
import { kindInWords } from "../_words/ledger-words";
import styles from "./ledger-table.module.css";

type Step = LotRead["balance"]["steps"][number];

/** The ledger in the order in which it counts, with the running balance; what counts no more stands folded below. */
export function LedgerTable({ read, units }: { read: LotRead; units: UnitSettings }) {
  const { balance, entries, warnings, lot } = read;
  const standing = new Set(balance.steps.map((step) => step.entry.id));
  const replaced = entries.filter((entry) => !standing.has(entry.id) && !entry.takenBack);
  const backOf = new Map(entries.flatMap((entry) => (entry.replacesId ? [[entry.replacesId, entry] as const] : [])));
  return (
    <div className="stack">
      <SimpleTable
        columns={[
          { key: "on", name: "When" },
          { key: "what", name: "What" },
          { key: "change", name: "In or out", kind: "count" },
          { key: "left", name: "Left", kind: "count" },
        ]}
        rows={balance.steps.map((step) => ({
          id: step.entry.id,
          cells: {
            on: dateInWords(step.entry.on),
            what: <What step={step} lotId={lot.id} warnings={warnings.get(step.entry.id) ?? []} />,
            change: changeInWords(step, units),
            left: step.change === null ? "" : weight(step.balance, units),
          },
        }))}
      />
      {replaced.length > 0 ? (
        <details className={styles.replaced}>
          <summary>{counted(replaced.length, "entry")} that counts no more</summary>
          <ul>
            {replaced.map((entry) => (
              <li key={entry.id}>
                <s>
                  {dateInWords(entry.on)}: {kindInWords(entry.kind)} {amountInWords(entry, units)}
                </s>
                {backOf.get(entry.id)?.takenBack ? ", taken back" : ", put right"}
              </li>
            ))}
          </ul>
        </details>
      ) : null}
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
  return (
    <>
      <Link href={`/lots/${lotId}/ledger/${entry.id}`} title="Put this entry right" prefetch={false}>
        {kindInWords(entry.kind)}
      </Link>
      <Other entry={entry} />
      {entry.notes ? <span className={styles.note}>{entry.notes}</span> : null}
      {warnings.map((warning) => (
        <span key={warning.code} className={styles.odd}>
          {warning.text}
        </span>
      ))}
    </>
  );
}

function Other({ entry }: { entry: Step["entry"] }) {
  if (!entry.other && !entry.otherLot && !entry.otherSteward) return null;
  const words = entry.other ?? entry.otherLot ?? entry.otherSteward;
  if (entry.otherLotId) {
    return (
      <>
        , <Link href={`/lots/${entry.otherLotId}`}>{words}</Link>
      </>
    );
  }
  return <>, {words}</>;
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
