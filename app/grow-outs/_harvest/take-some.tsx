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
import type { NamedAmount } from "./evenness-view";
import { type AmountUnit, amountWords } from "./evenness-words";

const read = decimal({ above: 0 });

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
  const given = typed.trim() === "" ? null : read(typed);
  const wanted = given?.ok ? (unit.unit === "g" ? gramsTyped(given.value, unit.units) : given.value) : null;
  const amounts = named.map(({ amount }) => amount);
  const taking = wanted === null ? null : cappedTaking(amounts, wanted);
  const size = taking?.ok
    ? (evennessOf(taking.value.takings, plot, detasselled)?.asGiven?.effectiveSize ?? null)
    : null;
  const refused = given && !given.ok ? given.refusals : taking && !taking.ok ? taking.refusals : [];
  return (
    <div className="stack-near" onInput={(event) => setTyped((event.target as HTMLInputElement).value)}>
      <NumberField
        name="wanted"
        id={id}
        label="How much seed is wanted in all"
        hint="then: how much of each bag, as evenly as the bags allow"
        unit={unit.unit === "g" ? unit.units.weight : "seeds"}
        refusals={refused.map(refusalSentence)}
        required
      />
      <div aria-live="polite">
        {taking?.ok ? (
          <>
            <p className="measure">
              {takeWords(taking.value, unit)}
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
                cells: {
                  name,
                  holds: amountWords(amount, unit),
                  take: amountWords(taking.value.takings[place] ?? 0, unit),
                },
              }))}
            />
          </>
        ) : null}
      </div>
    </div>
  );
}

function takeWords({ whole, cap, takings }: CappedTaking, unit: AmountUnit): string {
  if (whole === takings.length && whole > 1) return "Take every bag whole.";
  if (whole === 0) return `Take ${amountWords(cap, unit)} of each.`;
  return `Take ${counted(whole, "small bag")} whole, and ${amountWords(cap, unit)} of each other.`;
}
