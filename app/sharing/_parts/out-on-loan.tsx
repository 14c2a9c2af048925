import { SimpleTable } from "@/components/tables";
import { Way } from "@/components/ui/offered";
import { dateInWords } from "@/lib/display/dates";
import type { UnitSettings } from "@/lib/display/units";
import type { SharingRead } from "@/lib/registry/transfers/read-sharing";
import { handOf } from "../_list/transfer-rows";
import { amountInWords } from "../_words/transfer-words";

/** What is out, with whom, and when to ask. */
export function OutOnLoan({ read: { loans, lots, records }, units }: { read: SharingRead; units: UnitSettings }) {
  if (loans.length === 0) return <p className="quiet">Nothing is out.</p>;
  return (
    <SimpleTable
      entries
      columns={[
        { key: "lot", name: "Lot" },
        { key: "to", name: "With" },
        { key: "since", name: "Since" },
        { key: "amount", name: "How much", kind: "count" },
        { key: "due", name: "Ask by" },
        { key: "hand", name: <span className="heard">What to do</span> },
      ]}
      rows={loans.map(({ transfer, due, late, promises }) => {
        const number = lots.get(transfer.lotId)?.number ?? "a lot";
        const variety = records.varieties.get(transfer.varietyId)?.name;
        return {
          id: transfer.id,
          cells: {
            lot: (
              <>
                <Way href={`/sharing/${transfer.id}`}>{number}</Way>
                {variety ? `, ${variety}` : ""}
              </>
            ),
            to: handOf(transfer.toStewardId, transfer.toWords, records.names) ?? "somebody",
            since: dateInWords(transfer.on),
            amount: amountInWords(transfer.amount, transfer.unit, units),
            due: (
              <>
                <span className={late ? "waits" : undefined}>{due === null ? "no day" : dateInWords(due)}</span>
                {promises.length > 0 ? (
                  <span className="told">, “{promises.map((each) => each.words).join("”, “")}”</span>
                ) : null}
              </>
            ),
            hand: (
              <Way href={`/sharing/take-in?answers=${transfer.id}`} className="not-on-paper">
                It comes back<span className="heard">: {number}</span>
              </Way>
            ),
          },
        };
      })}
    />
  );
}
