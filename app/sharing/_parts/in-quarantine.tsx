import Link from "next/link";
import { SimpleTable } from "@/components/tables";
import { Way } from "@/components/ui/offered";
import { dateInWords } from "@/lib/display/dates";
import type { SharingRead } from "@/lib/registry/transfers/read-sharing";
import { handOf } from "../_list/transfer-rows";
import { kindInWords } from "../_words/transfer-words";

/** What came in and waits until it is compared. */
export function InQuarantine({ read: { quarantine, records } }: { read: SharingRead }) {
  if (quarantine.length === 0) return <p className="quiet">No lot stands in quarantine.</p>;
  return (
    <SimpleTable
      entries
      columns={[
        { key: "lot", name: "Lot" },
        { key: "came", name: "How it came" },
        { key: "why", name: "Why it is apart" },
        { key: "hand", name: <span className="heard">What to do</span> },
      ]}
      rows={quarantine.map(({ lot, came, long }) => ({
        id: lot.id,
        cells: {
          lot: (
            <>
              <Link href={`/lots/${lot.id}`}>{lot.number}</Link>
              {`, ${records.varieties.get(lot.varietyId)?.name ?? ""}`}
            </>
          ),
          came: came ? (
            <>
              <Way href={`/sharing/${came.id}`}>
                {kindInWords(came.kind)}, {dateInWords(came.on)}
              </Way>
              {handOf(came.fromStewardId, null, records.names)
                ? `, ${handOf(came.fromStewardId, null, records.names)}`
                : ""}
              {long ? <span className="waits">, two seasons ago</span> : null}
            </>
          ) : (
            "not on record"
          ),
          why: lot.statusReason ?? "nobody wrote why",
          hand: (
            <Way href={`/lots/${lot.id}/status`} className="not-on-paper">
              compare, then decide<span className="heard">: lot {lot.number}</span>
            </Way>
          ),
        },
      }))}
    />
  );
}
