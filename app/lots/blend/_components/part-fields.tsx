import Link from "next/link";
import { Measured } from "@/components/numbers";
import { NumberField, Select } from "@/components/ui";
import { Way } from "@/components/ui/offered";
import { dateInWords } from "@/lib/display/dates";
import { kOfN, percent, seedsAbout, span } from "@/lib/display/numbers";
import { type UnitSettings, weight } from "@/lib/display/units";
import type { BlendCandidate } from "@/lib/registry/lots/read-blend-ground";
import type { ActFormParts } from "../../_form/act-form";
import { isForeign } from "../_mix/kept-of-mix";
import { livingOf, type PartOfForm, type ReadingOfForm, sharesOf } from "../_mix/mix-of-form";
import styles from "./blending.module.css";

/** What is known of a lot, and, where it goes in, how much of it and what that comes to. */
export function PartFields({
  lot,
  part,
  parts,
  form: { field },
  reading,
}: {
  lot: BlendCandidate;
  part: PartOfForm | null;
  parts: readonly PartOfForm[];
  form: ActFormParts;
  reading: ReadingOfForm;
}) {
  const { units } = reading;
  return (
    <>
      <p className={styles.known}>
        <Known lot={lot} reading={reading} />{" "}
        <Link href={`/lots/${lot.id}`} className="not-on-paper">
          its page<span className="heard"> (lot {lot.number})</span>
        </Link>
      </p>
      <div className={styles.amounts} hidden={part === null}>
        <div className={styles.amount}>
          <NumberField
            {...field(`amount.${lot.id}`)}
            label={
              <>
                How much<span className="heard"> of lot {lot.number}</span>
              </>
            }
            required
          />
          <Select
            {...field(`unit.${lot.id}`)}
            label={
              <>
                counted in<span className="heard"> for lot {lot.number}</span>
              </>
            }
            options={[
              { value: "g", words: units.weight === "g" ? "grams" : "ounces" },
              { value: "seeds", words: "seeds" },
            ]}
            required
          />
          {lot.test === null ? (
            <NumberField
              {...field(`living.${lot.id}`)}
              label={
                <>
                  What lives of it<span className="heard"> (lot {lot.number})</span>
                </>
              }
              hint="never tested: your own word, kept with the reason"
              unit="%"
              required
            />
          ) : null}
        </div>
        <p className={styles.comes} aria-live="polite">
          {part === null ? null : <Comes part={part} parts={parts} units={units} />}
        </p>
      </div>
    </>
  );
}

function Known({ lot, reading }: { lot: BlendCandidate; reading: ReadingOfForm }) {
  const living = livingOf(lot, {}, reading);
  const told = [
    lot.year === null ? "year not known" : dateInWords(lot.year),
    lot.holder ?? "holder not written",
    lot.grams === null ? "amount not known" : `${weight(lot.grams, reading.units)} on hand`,
    lot.test === null
      ? "never tested"
      : `${kOfN(lot.test.normal, lot.test.sown)} germinated, ${dateInWords(lot.test.date)}${living?.grade === "assumed" ? ", longer ago than its seed usually lives" : ""}`,
    lot.thousandSeedGrams === null ? "no seed weight" : "",
    isForeign(lot) ? `${percent(lot.foreignAncestry, 0)} from foreign pollen` : "",
  ];
  return <>{told.filter((each) => each !== "").join(", ")}</>;
}

/** "about 80 seeds, of them 40 living (31–52), 36 % of the mix; 60 g stay in its jar" */
function Comes({ part, parts, units }: { part: PartOfForm; parts: readonly PartOfForm[]; units: UnitSettings }) {
  const { lot, amount, live, living, left } = part;
  if (lot.thousandSeedGrams === null)
    return (
      <span className="waits">
        A blend counts seeds: <Way href={`/lots/${lot.id}/weigh`}>count and weigh some of lot {lot.number}</Way> first.
      </span>
    );
  if (amount === null) return <span className="quiet">Write how much of it goes in.</span>;
  const share = sharesOf(parts)?.[parts.indexOf(part)] ?? null;
  const ends = live && live.high - live.low > 1 ? span(Math.round(live.low), Math.round(live.high), "", 3) : null;
  return (
    <>
      {seedsAbout(amount.seeds)}, living{" "}
      <Measured value={live === null ? null : seedsAbout(live.value)} span={ends} grade={living?.grade ?? "unknown"} />
      {share === null ? "" : `, ${percent(share)} of the mix`}
      {left === null ? "" : "; "}
      {left === null ? null : left < -1e-6 ? (
        <span className="waits">the jar holds {weight(lot.grams, units)} only</span>
      ) : left < 1e-6 ? (
        <span className="waits">nothing of it stays unmixed: keep some back</span>
      ) : (
        `${weight(left, units)} stay in its jar`
      )}
    </>
  );
}
