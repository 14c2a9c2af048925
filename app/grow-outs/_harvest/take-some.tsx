"use client";

import { useId, useState } from "react";
import { SimpleTable } from "@/components/tables";
import { NumberField } from "@/components/ui";
import { effectiveSize } from "@/lib/display/numbers";
import { counted } from "@/lib/display/plurals";
import { refusalSentence } from "@/lib/display/refusals";
import { gramsTyped } from "@/lib/display/units";
import { evennessOf } from "@/lib/registry/harvests/evenness-of-harvest";
import type { PlotOfHarvest } from "@/lib/registry/harvests/size-of-harvest";
import { decimal } from "@/lib/schemas/lots/form-fields";
import { type CappedTaking, cappedTaking } from "@/lib/science/harvest/capped-taking";
import type { Outcome } from "@/lib/science/outcome";
import type { NamedAmount } from "./evenness-view";
import { type AmountUnit, amountWords } from "./evenness-words";

const read = decimal({ above: 0 });

/** What of each bag makes up an amount that was typed; null where none was. */
export function takingTyped(
  typed: string,
  named: readonly NamedAmount[],
  { unit, units }: AmountUnit,
): Outcome<CappedTaking> | null {
  if (typed.trim() === "") return null;
  const given = read(typed);
  if (!given.ok) return given;
  return cappedTaking(
    named.map(({ amount }) => amount),
    unit === "g" ? gramsTyped(given.value, units) : given.value,
  );
}

/** How much to take of each bag for an amount that is wanted: small bags whole, of the others all the same. */
export function TakeSome({
  named,
  plot,
  detasselled,
  unit,
}: {
  named: readonly NamedAmount[];
  plot: PlotOfHarvest;
  detasselled: number | null;
  unit: AmountUnit;
}) {
  const [typed, setTyped] = useState("");
  const id = useId();
  const taking = takingTyped(typed, named, unit);
  return (
    <div className="stack-near" onInput={(event) => setTyped((event.target as HTMLInputElement).value)}>
      <NumberField
        name="wanted"
        id={id}
        label="How much seed is wanted in all"
        hint="then: how much of each bag, as evenly as the bags allow"
        unit={unit.unit === "g" ? unit.units.weight : "seeds"}
        refusals={taking && !taking.ok ? taking.refusals.map(refusalSentence) : []}
        required
      />
      <div aria-live="polite">
        {taking?.ok ? (
          <TakingOfBags taking={taking.value} named={named} plot={plot} detasselled={detasselled} unit={unit} />
        ) : null}
      </div>
    </div>
  );
}

/** What to take of each bag, and what it counts as. */
export function TakingOfBags({
  taking,
  named,
  plot,
  detasselled,
  unit,
}: {
  taking: CappedTaking;
  named: readonly NamedAmount[];
  plot: PlotOfHarvest;
  detasselled: number | null;
  unit: AmountUnit;
}) {
  const size = evennessOf(taking.takings, plot, detasselled)?.asGiven?.effectiveSize ?? null;
  return (
    <>
      <p className="measure">
        {takeWords(taking, unit)}
        {size === null ? "" : ` It counts as ${effectiveSize(size)} plants.`}
      </p>
      <SimpleTable
        columns={[
          { key: "name", name: "Bag" },
          { key: "holds", name: "Holds", kind: "count" },
          { key: "take", name: "Take", kind: "count" },
        ]}
        rows={named.map(({ name, amount }, place) => ({
          id: `${place}`,
          cells: { name, holds: amountWords(amount, unit), take: amountWords(taking.takings[place] ?? 0, unit) },
        }))}
      />
    </>
  );
}

function takeWords({ whole, cap, takings }: CappedTaking, unit: AmountUnit): string {
  if (whole === takings.length && whole > 1) return "Take every bag whole.";
  if (whole === 0) return `Take ${amountWords(cap, unit)} of each.`;
  return `Take ${counted(whole, "small bag")} whole, and ${amountWords(cap, unit)} of each other.`;
}
