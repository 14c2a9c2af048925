import type { ReactNode } from "react";
import { Section } from "@/components/frame";
import { Measured } from "@/components/numbers";
import { Way } from "@/components/ui/offered";
import { dateInWords } from "@/lib/display/dates";
import { percent, wholeNumber } from "@/lib/display/numbers";
import type { GrowOutRead } from "@/lib/registry/grow-outs/read-grow-out";
import { purposeInWords } from "../../_words/choices";
import { sharesWords } from "../../_words/size-explanation";

/** The counts of a grow-out as they were written; what was not is unknown, never nought. */
export function HowGrown({ read: { growOut, steward, plots }, planned }: { read: GrowOutRead; planned: boolean }) {
  const plants = (count: number | null) => (count === null ? <Measured value={null} /> : wholeNumber(count));
  type Line = readonly [string, ReactNode];
  const told = (name: string, value: ReactNode | null): Line[] => (value === null ? [] : [[name, value]]);
  const plan: Line[] = [
    ["Steward", steward ?? "not written"],
    ["Plot", plots.length === 0 ? "not written" : plots.map(plotInWords).join("; ")],
    ["Purpose", purposeInWords(growOut.purpose) ?? "not written"],
    ...told("Plants planned", growOut.plantsPlanned && wholeNumber(growOut.plantsPlanned)),
    ...told("Seed parents planned", growOut.seedParentsPlanned && wholeNumber(growOut.seedParentsPlanned)),
  ];
  const grown: Line[] = [
    ["Sown", growOut.sown === null ? <Measured key="sown" value={null} /> : dateInWords(growOut.sown)],
    ["Seeds sown", plants(growOut.seedsSown)],
    ["Plants standing", plants(growOut.plantsStanding)],
    ...told("Of them males", growOut.malesStanding === null ? null : plants(growOut.malesStanding)),
    ["Rogued before pollen shed", plants(growOut.roguedBeforePollen)],
    ["Rogued after pollen shed", plants(growOut.roguedAfterPollen)],
    ...told("Tassels taken", growOut.detasselled === null ? null : plants(growOut.detasselled)),
    ["Seed parents", plants(growOut.seedParents)],
    ["Shares of the seed", sharesWords(growOut)],
    ["Foreign pollen", <ForeignPollen key="foreign" growOut={growOut} />],
    ...told("Ended", growOut.endedOn === null ? null : dateInWords(growOut.endedOn)),
    ["Outcome", growOut.outcome ?? "nothing written"],
  ];
  // Of a plan nothing is unknown that has not happened yet.
  const rows = planned ? plan : [...plan, ...grown];
  return (
    <Section id="how" title={planned ? "The plan" : "How it was grown"}>
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

/** How much of the seed had a foreign father, how that was found, and the way to say so. */
function ForeignPollen({ growOut }: { growOut: GrowOutRead["growOut"] }) {
  const { id, foreignPollen, foreignPollenHow } = growOut;
  return (
    <>
      {foreignPollen === null ? "not assessed; computed as none" : percent(foreignPollen)}
      {foreignPollenHow ? `, ${foreignPollenHow}` : foreignPollen === null ? "" : "; how it was found nobody wrote"}
      {". "}
      <Way className="not-on-paper" href={`/grow-outs/${id}/foreign-pollen`}>
        {foreignPollen === null ? "Say what was found" : "Put it right"}
      </Way>
    </>
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
