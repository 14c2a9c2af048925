import Link from "next/link";
import { Explained } from "@/components/numbers";
import { SimpleTable } from "@/components/tables";
import { Notice } from "@/components/ui";
import { dateInWords } from "@/lib/display/dates";
import { kOfN, wholeNumber } from "@/lib/display/numbers";
import { countedInWords } from "@/lib/display/plurals";
import type { LotRead } from "@/lib/registry/lots/read-lot";
import type { LeftOut } from "@/lib/registry/reserve/good-lots";
import type { Settings } from "@/lib/schemas/settings";
import { giveExplanation, reserveExplanation } from "../_words/explain-reserve";
import { seedsInWords, seedsOfRule } from "../_words/seeds-in-words";
import styles from "./lots-counted.module.css";

const partWords = [
  ["growOuts", "one grow-out"],
  ["tests", "two germination tests of 50"],
  ["duplicates", "a sowing for another place"],
  ["archive", "never to be touched"],
] as const;

const whyLeftOut: Readonly<Record<LeftOut, string>> = {
  "no seed left": "no seed left",
  "set aside": "set aside",
  "never tested": "never tested",
  "tests too low": "tests too low",
  "tested too long ago": "tested too long ago",
};

/** The reserve opened to its parts, the lots that it is counted over, and the two rules where they collide. */
export function ReserveParts({ read, settings }: { read: LotRead; settings: Settings }) {
  const { reserve, give, lot } = read;
  const kept = reserve.reserve;
  return (
    <div className="stack">
      {give.onlyPlace && give.why === "reserve not met" ? (
        <Notice kind="waiting" title="Two rules collide">
          <p>
            Nobody else is confirmed to have {lot.variety}: a second place comes first, even if the reserve runs short.
            Keeping back says: give nothing. You choose; a fire or a flood would choose otherwise.
          </p>
        </Notice>
      ) : null}
      {kept ? (
        <>
          <Explained explanation={reserveExplanation(read, settings)}>
            {seedsOfRule(kept.seeds)} are kept back of {lot.variety}, over all good lots of{" "}
            {lot.holder ?? "this holder"}
          </Explained>
          <SimpleTable
            columns={[
              { key: "part", name: "For" },
              { key: "seeds", name: "Seeds", kind: "count" },
            ]}
            rows={partWords.map(([part, words]) => ({
              id: part,
              cells: {
                part: part === "duplicates" && kept.parts[part] === 0 ? `${words}: two places are confirmed` : words,
                seeds: wholeNumber(kept.parts[part]),
              },
            }))}
            foot={{ part: "kept back", seeds: wholeNumber(kept.seeds) }}
          />
          <Explained explanation={giveExplanation(read, settings)}>
            Free of this lot: {give.free === null ? "unknown" : seedsInWords(give.free)}
          </Explained>
        </>
      ) : (
        <Explained explanation={reserveExplanation(read, settings)}>
          unknown until{" "}
          {reserve.wanted === null
            ? "somebody says how many plants a grow-out wants"
            : "a lot is tested and found good"}
        </Explained>
      )}
      <LotsCounted read={read} />
    </div>
  );
}

function LotsCounted({ read }: { read: LotRead }) {
  const { good, leftOut } = read.reserve;
  if (good.length + leftOut.length === 0) return null;
  const name = (lot: { id: string; number: string }) =>
    lot.id === read.lot.id ? `${lot.number}, this one` : <Link href={`/lots/${lot.id}`}>{lot.number}</Link>;
  return (
    <details open={good.length + leftOut.length <= 4}>
      <summary>
        {countedInWords(good.length, "lot")} counted{leftOut.length > 0 ? `, ${wholeNumber(leftOut.length)} not` : ""}
      </summary>
      <ul className={styles.lots}>
        {good.map(({ lot, test, seeds }) => (
          <li key={lot.id}>
            {name(lot)}: {seeds === null ? "amount unknown" : seedsInWords(seeds)}; tested{" "}
            {kOfN(test.normal, test.sown)}, {dateInWords(test.date)}
          </li>
        ))}
        {leftOut.map(({ lot, why }) => (
          <li key={lot.id} className="quiet">
            {name(lot)}: not counted, {whyLeftOut[why]}
          </li>
        ))}
      </ul>
    </details>
  );
}
