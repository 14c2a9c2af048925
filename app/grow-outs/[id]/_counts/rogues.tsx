import { Explained } from "@/components/numbers";
import { SimpleTable } from "@/components/tables";
import { Way } from "@/components/ui/offered";
import { percent, probability, wholeNumber } from "@/lib/display/numbers";
import type { FieldRead, PassOfVariety } from "@/lib/registry/grow-outs/read-field";
import type { GrowOutRead } from "@/lib/registry/grow-outs/read-grow-out";
import { offTypesPulled } from "@/lib/registry/grow-outs/walks";
import { type OffTypeYear, offTypeTrend } from "@/lib/science/off-types/off-type-trend";
import { whenSeen } from "../../_words/field-words";
import { offTypeExplanation, offTypeReading, offTypesInWords } from "../../_words/off-type-words";
import styles from "./counts.module.css";
import { OddNotes } from "./odd-notes";

const columns = [
  { key: "when", name: "Walked" },
  { key: "timing", name: "Pollen shed" },
  { key: "looked", name: "Looked at", kind: "count" },
  { key: "pulled", name: "Pulled", kind: "count" },
  { key: "left", name: "Left", kind: "count" },
  { key: "reason", name: "Why" },
  { key: "note", name: <span className="heard">Note</span> },
] as const;

/** Rogue passes line by line, the off-type share with its bound, and how it moved over the years of the variety. */
export function Rogues({ read, field }: { read: GrowOutRead; field: FieldRead }) {
  const { growOut, people } = read;
  const open = <span className={styles.open}>not written</span>;
  if (field.passes.length === 0)
    return <p className="quiet">No rogue pass is on record. Not looked is not none found.</p>;
  return (
    <>
      <SimpleTable
        caption="Rogue passes"
        columns={columns}
        entries
        rows={field.passes.map((pass) => ({
          id: pass.id,
          cells: {
            when: (
              <>
                {whenSeen(pass.on)}
                {pass.stage ? <span className={styles.under}>{pass.stage}</span> : null}
              </>
            ),
            timing: pass.timing ?? open,
            looked: pass.looked === null ? open : wholeNumber(pass.looked),
            pulled: pass.pulled === 0 ? "none found" : wholeNumber(pass.pulled),
            left: pass.left === null ? open : wholeNumber(pass.left),
            reason: pass.pulled === 0 ? "" : (pass.reason ?? open),
            note: (
              <>
                <OddNotes
                  words={[pass.note]}
                  who={
                    pass.stewardId === null || pass.stewardId === growOut.stewardId
                      ? null
                      : (people.get(pass.stewardId) ?? "a steward")
                  }
                  odd={field.warnings.get(pass.id)}
                />
                <Way className={styles.right} href={`/grow-outs/${growOut.id}/rogue/${pass.id}`}>
                  Put right<span className="heard"> the pass of {whenSeen(pass.on)}</span>
                </Way>
              </>
            ),
          },
        }))}
      />
      <OffTypes field={field} name={growOut.name} />
      <Trend passes={field.passesOfVariety} variety={read.variety.name} />
    </>
  );
}

function OffTypes({ field, name }: { field: FieldRead; name: string }) {
  const reading = offTypeReading(offTypesPulled(field.passes));
  if (!reading)
    return <p className="quiet">How many plants were looked at is not written, so there is no off-type share.</p>;
  return (
    <Explained explanation={offTypeExplanation(reading, name)}>
      <span>{offTypesInWords(reading)}.</span>
    </Explained>
  );
}

/** The years in which somebody wrote how many plants of the variety were looked at. */
export function yearsOf(passes: readonly PassOfVariety[]): OffTypeYear[] {
  const growOuts = new Map<string, PassOfVariety[]>();
  for (const pass of passes) growOuts.set(pass.growOutId, [...(growOuts.get(pass.growOutId) ?? []), pass]);
  const years = new Map<number, OffTypeYear>();
  for (const own of growOuts.values()) {
    const { looked, foundAtMost: found } = offTypesPulled(own);
    const year = Number((own[0]?.onFirst ?? own[0]?.sownFirst ?? "").slice(0, 4));
    if (!looked || !year) continue;
    const before = years.get(year) ?? { year, looked: 0, found: 0 };
    years.set(year, { year, looked: before.looked + Math.max(looked, found), found: before.found + found });
  }
  return [...years.values()].sort((one, other) => one.year - other.year);
}

/** The off-type share over the years, and whether it moves. */
export function Trend({
  passes,
  variety,
  brief = false,
}: {
  passes: readonly PassOfVariety[];
  variety: string;
  /** a table of the years stands above it */
  brief?: boolean;
}) {
  const years = yearsOf(passes);
  if (years.length < 2) return null;
  const trend = offTypeTrend({ years });
  if (!trend.ok) return null;
  const { z, pValue } = trend.value;
  const way = z === null || pValue === null ? null : pValue < 0.05 ? (z > 0 ? "more" : "fewer") : null;
  const answer =
    way === null
      ? `No trend can be told over ${years.length} years${pValue === null ? "" : ` (p ${probability(pValue)})`}`
      : `Off-types became ${way} over ${years.length} years (p ${probability(pValue)})`;
  return (
    <Explained
      brief={brief}
      explanation={{
        title: `off-types of ${variety} over the years`,
        answer,
        formula: "z = Σ x (k − n·f) / √( f (1 − f) Σ n (x − x̄)² ), two-sided normal p",
        inputs: years.map(({ year, looked, found }) => ({
          name: String(year),
          value: `${wholeNumber(found)} of ${wholeNumber(looked)} (${percent(found / looked)})`,
        })),
        assumed: [
          "The years themselves are the scores.",
          "Plants pulled for a reason in other words, or for none written, count as off-types; sick and weak ones do not.",
        ],
        unsure:
          "Other fields and other eyes from year to year make the p too small; with rare off-types it may be off two-fold.",
        sources: ["Cochran 1954, Biometrics 10:417-451", "Armitage 1955, Biometrics 11:375-386"],
        calc: `echo '${JSON.stringify({ years })}' | npm run --silent calc -- off-type-trend`,
      }}
    >
      <span>{answer}.</span>
    </Explained>
  );
}
