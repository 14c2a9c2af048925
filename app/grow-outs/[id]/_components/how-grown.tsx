import type { ReactNode } from "react";
import { Section } from "@/components/frame";
import { Measured } from "@/components/numbers";
import { dateInWords } from "@/lib/display/dates";
import { percent, wholeNumber } from "@/lib/display/numbers";
import type { GrowOutRead } from "@/lib/registry/grow-outs/read-grow-out";
import { sharesWords } from "../../_words/size-explanation";

/** The counts of a grow-out as they were written; what was not is unknown, never nought. */
export function HowGrown({ read: { growOut, steward, plots } }: { read: GrowOutRead }) {
  const plants = (count: number | null) => (count === null ? <Measured value={null} /> : wholeNumber(count));
  const rows = [
    ["Steward", steward ?? "not written"],
    ["Plot", plots.length === 0 ? "not written" : plots.map(plotInWords).join("; ")],
    ["Purpose", growOut.purpose ?? "not written"],
    ["Sown", growOut.sown === null ? <Measured key="sown" value={null} /> : dateInWords(growOut.sown)],
    ["Seeds sown", plants(growOut.seedsSown)],
    ...(growOut.plantsPlanned === null ? [] : [["Plants planned", plants(growOut.plantsPlanned)] as const]),
    ...(growOut.seedParentsPlanned === null
      ? []
      : [["Seed parents planned", plants(growOut.seedParentsPlanned)] as const]),
    ["Plants standing", plants(growOut.plantsStanding)],
    ...(growOut.malesStanding === null ? [] : [["Of them males", plants(growOut.malesStanding)] as const]),
    ["Rogued before pollen shed", plants(growOut.roguedBeforePollen)],
    ["Rogued after pollen shed", plants(growOut.roguedAfterPollen)],
    ["Seed parents", plants(growOut.seedParents)],
    ["Shares of the seed", sharesWords(growOut)],
    [
      "Foreign pollen",
      growOut.foreignPollen === null ? "not assessed; computed as none" : percent(growOut.foreignPollen),
    ],
    ...(growOut.endedOn === null ? [] : [["Ended", dateInWords(growOut.endedOn)] as const]),
    ["Outcome", growOut.outcome ?? "nothing written"],
  ] as const;
  return (
    <Section id="how" title="How it was grown">
      <dl className="particulars">
        {rows.map(([name, value]) => (
          <Particular key={name} name={name}>
            {value}
          </Particular>
        ))}
      </dl>
    </Section>
  );
}

/** A plot with its place and the days on it, as far as they are written. */
function plotInWords({ name, place, fromOn, toOn }: GrowOutRead["plots"][number]): string {
  const from = fromOn === null ? "" : `from ${dateInWords(fromOn)}`;
  const to = toOn === null ? "" : `until ${dateInWords(toOn)}`;
  return [name, place ?? "", [from, to].filter(Boolean).join(" ")].filter(Boolean).join(", ");
}

function Particular({ name, children }: { name: string; children: ReactNode }) {
  return (
    <>
      <dt>{name}</dt>
      <dd>{children}</dd>
    </>
  );
}
