import { SeedCoat } from "@/components/seed-coat";
import { dateInWords } from "@/lib/display/dates";
import { kOfN, percentSpan, seedsAbout } from "@/lib/display/numbers";
import type { UnitSettings } from "@/lib/display/units";
import type { TestOfLot } from "@/lib/registry/germination-tests/tests-of-lot";
import type { TransferRead } from "@/lib/registry/transfers/read-transfer";
import { storedSeedCoat } from "@/lib/schemas/varieties/seed-coat";
import { amountInWords } from "../../_words/transfer-words";
import styles from "./slip.module.css";
import { slipWords } from "./slip-words";

/** The slip that goes with seed, in millimetres: what it is, how much, how it tests, what was told, where it came from. */
export function Slip({ read, tests, units }: { read: TransferRead; tests: readonly TestOfLot[]; units: UnitSettings }) {
  const { transfer, lot } = read;
  const words = slipWords(read, tests);
  return (
    <article className={styles.slip} aria-label="Hand-over slip">
      <header className={styles.head}>
        <SeedCoat name={lot.variety} crop={lot.crop.cropKey} coat={storedSeedCoat(lot.seedCoat)} size={44} />
        <div>
          <p className={styles.crop}>{lot.crop.commonName}</p>
          <p className={styles.variety}>{lot.variety}</p>
        </div>
      </header>
      {words.caution ? <p className={styles.caution}>{words.caution}</p> : null}
      <dl className={styles.facts}>
        <dt>Lot</dt>
        <dd>
          {words.number}
          {words.was ? <span className={styles.small}>, part of {words.was}</span> : null}
        </dd>
        <dt>Code</dt>
        <dd className={styles.code}>{words.code}</dd>
        <dt>Harvest</dt>
        <dd>{words.harvest}</dd>
        <dt>Amount</dt>
        <dd>
          {amountInWords(transfer.amount, transfer.unit, units)}
          {words.seeds === null ? "" : `, ${seedsAbout(words.seeds)}`}
        </dd>
        <dt>Came up</dt>
        <dd>
          {words.test
            ? `${kOfN(words.test.normal, words.test.sown)}, ${dateInWords(words.test.on)}${words.test.range ? `; likely ${percentSpan(words.test.range.low, words.test.range.high)}` : ""}`
            : "never tested"}
        </dd>
        <dt>From</dt>
        <dd>{words.from}</dd>
        <dt>Handed over</dt>
        <dd>{dateInWords(transfer.on)}</dd>
      </dl>
      <div className={styles.told}>
        {words.told.length > 0 ? (
          <ul>
            {words.told.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        ) : (
          <p>Nothing was written of what was told.</p>
        )}
      </div>
      {words.promised.length > 0 ? <p className={styles.promised}>Promised: {words.promised.join("; ")}</p> : null}
      <p className={styles.line}>
        Write here if something odd turns up, and name the code: <span className={styles.blank} />
      </p>
    </article>
  );
}
