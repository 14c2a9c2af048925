"use client";

import { ExplainedHere } from "@/components/numbers";
import { Button, NumberField, type Option, Select } from "@/components/ui";
import { dateInWords } from "@/lib/display/dates";
import { percent, plainNumber, seedsCounted } from "@/lib/display/numbers";
import { counted } from "@/lib/display/plurals";
import { gramsTyped, type UnitSettings, weight } from "@/lib/display/units";
import { gramsLeft, type LotToSow, type ProposedSowing } from "@/lib/registry/grow-outs/sowing-plan";
import { FieldGroup, SideBySide } from "../../../lots/_form/lot-form";
import type { FieldOf } from "../../../lots/_form/use-form-answer";
import { amountTyped, type TypedPart } from "../../_form/typed-parts";
import { sowingExplanation } from "../../_words/explain-sowing";
import { jarInALine, noProposalInWords } from "../../_words/lot-words";
import { leftInWords } from "../../_words/reserve-words";

interface Line {
  readonly index: number;
  readonly field: FieldOf;
  readonly units: UnitSettings;
  /** writes into fields as if it had been typed */
  readonly fill: (texts: Readonly<Record<string, string>>) => void;
  readonly part: TypedPart | undefined;
}

/** A lot of the plan: how much of it is sown, and what stays. */
export function PlannedLot({
  lot,
  proposed,
  mayBeNone,
  ...line
}: Line & {
  readonly lot: LotToSow;
  readonly proposed: ProposedSowing | null;
  /** a lot of the plan may not be sown after all */
  readonly mayBeNone: boolean;
}) {
  const { index, field, units, fill } = line;
  const name = `parts.${index}`;
  return (
    <FieldGroup title={`Lot ${lot.number}${lot.year === null ? "" : `, ${dateInWords(lot.year)}`}`}>
      <p className="quiet">{jarInALine(lot, units)}</p>
      <input type="hidden" name={`${name}.lot`} value={lot.id} />
      {proposed ? <Proposal lot={lot} proposed={proposed} units={units} name={name} fill={fill} /> : null}
      <Amount {...line} lot={lot} hint={mayBeNone ? "0 where none of it was sown after all" : undefined} />
      <Refused sentences={field(`${name}.lot`).refusals} />
    </FieldGroup>
  );
}

/** A lot that was not in the plan. */
export function FurtherLot({
  lots,
  options,
  ...line
}: Line & { readonly lots: readonly LotToSow[]; readonly options: readonly Option[] }) {
  const { index, field, units, part } = line;
  const lot = lots.find(({ id }) => id === part?.lot);
  return (
    <FieldGroup title={index === 0 ? "Which lot" : "A further lot"}>
      <Select {...field(`parts.${index}.lot`)} label="Lot" options={options} empty="not chosen" />
      {lot ? <p className="quiet">{jarInALine(lot, units)}</p> : null}
      <Amount {...line} lot={lot} />
    </FieldGroup>
  );
}

function Proposal({
  lot,
  proposed,
  units,
  name,
  fill,
}: {
  lot: LotToSow;
  proposed: ProposedSowing;
  units: UnitSettings;
  name: string;
  fill: Line["fill"];
}) {
  const { sowing, grams, plants } = proposed;
  const none = noProposalInWords(lot, proposed);
  if (none !== null || !sowing) return <p className="measure">{none}</p>;
  const expected = ` ${plainNumber(sowing.expectedPlants)} are to be expected; ${counted(plants, "plant")} or more come up in ${percent(sowing.probability, 0)} of such sowings.`;
  return (
    <div>
      <div className="measure">
        For {counted(plants, "plant")}:{" "}
        <ExplainedHere explanation={sowingExplanation(lot, proposed)}>{seedsCounted(sowing.seeds)}</ExplainedHere>
        {grams === null ? "." : <>, {weight(grams, units)}.</>}
        {expected}
      </div>
      {grams === null ? null : (
        <Button
          kind="quiet"
          onClick={() => fill({ [`${name}.unit`]: "seeds", [`${name}.amount`]: String(sowing.seeds) })}
        >
          Take {seedsCounted(sowing.seeds)}
        </Button>
      )}
    </div>
  );
}

function Amount({ index, field, units, part, lot, hint }: Line & { lot: LotToSow | undefined; hint?: string }) {
  const name = `parts.${index}`;
  const seeds = lot !== undefined && lot.thousandSeedGrams !== null;
  const choices = [
    { value: "g", words: units.weight === "g" ? "grams" : "ounces" },
    ...(seeds ? [{ value: "seeds", words: "seeds" }] : []),
  ];
  const amount = amountTyped(part?.amount ?? "");
  const unit = part?.unit === "seeds" ? "seeds" : "g";
  const left =
    lot && amount !== null && amount > 0
      ? gramsLeft(lot, { amount: unit === "g" ? gramsTyped(amount, units) : amount, unit })
      : undefined;
  return (
    <>
      <SideBySide>
        <NumberField {...field(`${name}.amount`)} label="How much" hint={hint} required />
        <Select {...field(`${name}.unit`)} label="counted in" options={choices} required />
      </SideBySide>
      {left === undefined ? null : (
        <p className={left !== null && left < -0.5 ? "waits" : undefined}>{leftInWords(left, weight(left, units))}</p>
      )}
    </>
  );
}

function Refused({ sentences }: { sentences: readonly string[] }) {
  return sentences.map((sentence) => (
    <p key={sentence} className="waits">
      {sentence}
    </p>
  ));
}
