import Link from "next/link";
import { Section } from "@/components/frame";
import { SimpleTable } from "@/components/tables";
import { Way } from "@/components/ui/offered";
import { dayInWords } from "@/lib/display/dates";
import { counted } from "@/lib/display/plurals";
import { mayHoldSeed } from "@/lib/registry/varieties/holders";
import type { VarietyRead } from "@/lib/registry/varieties/read-variety";
import type { Settings } from "@/lib/schemas/settings";
import { holderName, unconfirmedWords } from "../../_words/explanations";

const columns = [
  { key: "holder", name: "Holder" },
  { key: "lots", name: "Lots with seed" },
  { key: "last", name: "Last heard or seen" },
  { key: "counts", name: "Counts as confirmed" },
  { key: "hand", name: "Ask" },
] as const;

/** Who has seed of the variety, what was last heard of them, and whether they count. */
export function HoldersSection({ read, settings }: { read: VarietyRead; settings: Settings }) {
  const { holders, people, variety } = read;
  const add = (
    <>
      <Link href={`/sharing/holders/${variety.id}`}>ask them one by one</Link>,{" "}
      <Way href={`/varieties/${variety.id}/add/word`}>Write a holder’s word down</Way>
    </>
  );
  return (
    <Section id="holders" title="Who has it" aside={add}>
      {holders.length === 0 ? (
        <p className="quiet">Nobody has seed of it on record.</p>
      ) : (
        <div className="stack-near">
          <SimpleTable
            entries
            columns={columns}
            rows={holders.map((holder) => ({
              id: holder.stewardId ?? "here",
              cells: {
                holder: holderName(holder, people),
                lots:
                  holder.lots.length === 0
                    ? "none on record"
                    : holder.lots.map((lot, index) => (
                        <span key={lot.id}>
                          {index > 0 ? ", " : ""}
                          <Link href={`/lots/${lot.id}`}>{lot.number}</Link>
                        </span>
                      )),
                last:
                  holder.last === null
                    ? "nothing"
                    : `${holder.last.how === "word" ? "word" : "seed in hand"}, ${dayInWords(holder.last.day)}`,
                counts:
                  holder.why === null ? (
                    `yes, ${counted(holder.places, "place")}`
                  ) : (
                    <span className="waits">no: {unconfirmedWords[holder.why]}</span>
                  ),
                hand:
                  holder.stewardId === null ? null : (
                    <Way
                      href={`/varieties/${variety.id}/add/word?steward=${holder.stewardId}`}
                      className="not-on-paper"
                      aria-label={`Their word: ${holderName(holder, people)}`}
                    >
                      Their word
                    </Way>
                  ),
              },
            }))}
          />
          <GiveOf read={read} />
          <p className="quiet measure">
            A word, or seed that was in hand, counts for{" "}
            <Way href="/settings">{counted(settings.confirmedYears, "year")}</Way>, and only with seed younger than its{" "}
            <Link href={`/crops/${encodeURIComponent(read.crop.key)}`}>usual life</Link>. Containers in one building are
            one place.
          </p>
        </div>
      )}
    </Section>
  );
}

const mostLots = 6;

/** The lots from which seed can go into another hand, the newest first. */
function GiveOf({ read: { lots } }: { read: VarietyRead }) {
  const holding = lots.filter((lot) => mayHoldSeed(lot));
  if (holding.length === 0) return null;
  const newest = [...holding].sort((a, b) => ((a.yearLast ?? "") < (b.yearLast ?? "") ? 1 : -1)).slice(0, mostLots);
  return (
    <p className="measure not-on-paper">
      Give, lend or deposit seed of{" "}
      {newest.map((lot, index) => (
        <span key={lot.id}>
          {index > 0 ? ", " : ""}
          <Way href={`/lots/${lot.id}/give`} aria-label={`Give, lend, deposit: lot ${lot.number}`}>
            {lot.number}
          </Way>
        </span>
      ))}
      {holding.length > newest.length ? ` or an older lot` : ""}.
    </p>
  );
}
