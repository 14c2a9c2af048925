import Link from "next/link";
import { SeedCoat } from "@/components/seed-coat";
import { Way } from "@/components/ui/offered";
import { dateInWords } from "@/lib/display/dates";
import type { SeasonRecords } from "@/lib/registry/season/records";
import { storedSeedCoat } from "@/lib/schemas/varieties/seed-coat";
import { OfLots } from "../../_session/of-record";
import styles from "./waiting-group.module.css";

/** Exactly the records that a progress bar counts as left: lots, varieties, or a variety in a steward's hand. */
export function LeftOver({ ids, records }: { ids: readonly string[]; records: SeasonRecords }) {
  const lots = new Map(records.lots.map((lot) => [lot.id, lot]));
  return (
    <OfLots ids={ids.filter((id) => lots.has(id))}>
      <ul className={styles.items}>
        {ids.map((id) => {
          const lot = lots.get(id);
          const [varietyId = "", stewardId] = lot ? [lot.varietyId] : id.split("/");
          const variety = records.varieties.get(varietyId);
          if (!variety) return null;
          const steward = stewardId ? (records.names.get(stewardId) ?? "a steward") : null;
          return (
            <li key={id} className={styles.item}>
              <span className={styles.mark}>
                <SeedCoat
                  name={variety.name}
                  crop={variety.crop.key}
                  coat={storedSeedCoat(variety.seedCoat)}
                  size={26}
                />
              </span>
              <p className={styles.words}>
                {lot ? (
                  <>
                    <Link href={`/lots/${lot.id}`} className={styles.subject}>
                      {lot.number}
                    </Link>{" "}
                    {variety.name}, {lot.year === null ? "year unknown" : dateInWords(lot.year)}
                    {lot.lastTest ? `, last tested ${dateInWords(lot.lastTest.date)}` : ", never tested"}
                  </>
                ) : (
                  <>
                    <Link href={`/varieties/${variety.id}#holders`} className={styles.subject}>
                      {variety.name}
                    </Link>
                    {steward ? ` with ${steward}` : ""}
                  </>
                )}
              </p>
              {lot ? (
                <Way href={`/tests/new?lot=${lot.id}`} className={styles.hand}>
                  Write a test down<span className="heard">, {lot.number}</span>
                </Way>
              ) : (
                <Way
                  href={`/varieties/${variety.id}/add/word${stewardId ? `?steward=${stewardId}` : ""}`}
                  className={styles.hand}
                >
                  Write a word down<span className="heard">, {variety.name}</span>
                </Way>
              )}
            </li>
          );
        })}
      </ul>
    </OfLots>
  );
}
