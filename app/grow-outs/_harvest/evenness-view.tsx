import { SharesDrawing } from "@/components/harvest";
import { ExplainedHere } from "@/components/numbers";
import { SimpleTable } from "@/components/tables";
import { effectiveSize, percent } from "@/lib/display/numbers";
import { counted } from "@/lib/display/plurals";
import { type Evenness, HEAVIEST } from "@/lib/registry/harvests/evenness-of-harvest";
import {
  type AmountUnit,
  amountWords,
  evennessSentence,
  namesOfHeaviest,
  sizeOfHarvestExplanation,
} from "./evenness-words";

/** A seed parent by name with what it gave. */
export interface NamedAmount {
  readonly name: string;
  readonly amount: number;
}

/** What each seed parent gave, what that makes of the harvest, and what equal shares would make of it. */
export function EvennessView({
  even,
  named,
  unit,
  done,
  inbreeding,
  unmeasured = 0,
}: {
  even: Evenness;
  named: readonly NamedAmount[];
  unit: AmountUnit;
  /** the seed is put together already */
  done: boolean;
  inbreeding: number | null;
  unmeasured?: number;
}) {
  const mean = even.amounts.reduce((sum, amount) => sum + amount, 0) / even.amounts.length;
  const equal = `the equal share, ${amountWords(mean, unit)}`;
  const sentence = evennessSentence(even, done);
  const { asGiven, ifEqual } = even;
  return (
    <div className="stack-near">
      <p className="measure">
        {sentence}
        {unmeasured > 0
          ? ` ${counted(unmeasured, "bag")} ${unmeasured === 1 ? "is" : "are"} not measured yet and not counted in this.`
          : ""}
      </p>
      <SharesDrawing
        amounts={even.amounts}
        unmeasured={unmeasured}
        label={`${counted(even.seedParents, "seed parent")}. ${sentence}`}
        heaviest={
          even.heaviestShare === null
            ? null
            : { plants: HEAVIEST, words: `${percent(even.heaviestShare, 0)} from three plants` }
        }
        equal={equal}
      />
      <p className="counts">{namesOfHeaviest(named, unit)}</p>
      {asGiven && ifEqual ? (
        <div className="counts">
          effective size, {done ? "as it is" : "all tipped together"}:{" "}
          <ExplainedHere explanation={sizeOfHarvestExplanation("this harvest", asGiven, "as each gave", inbreeding)}>
            {effectiveSize(asGiven.effectiveSize)}
          </ExplainedHere>
          {"; "}in equal shares:{" "}
          <ExplainedHere
            explanation={sizeOfHarvestExplanation("the same plants in equal shares", ifEqual, "equal", inbreeding)}
          >
            {effectiveSize(ifEqual.effectiveSize)}
          </ExplainedHere>
        </div>
      ) : null}
    </div>
  );
}

const columns = [
  { key: "each", name: "Take of each" },
  { key: "bags", name: "From" },
  { key: "total", name: "In all", kind: "count" },
  { key: "size", name: "Counts as", kind: "count" },
] as const;

/** How much may be taken of each bag so that all give alike; the smallest bag limits, unless it is left out. */
export function EqualTakings({ even, unit }: { even: Evenness; unit: AmountUnit }) {
  return (
    <SimpleTable
      caption="In equal shares, while the bags are apart"
      columns={columns}
      rows={even.takings.map(({ leftOut, bags, each, total, effectiveSize: size }) => ({
        id: String(leftOut),
        cells: {
          each: amountWords(each, unit),
          bags:
            leftOut === 0 ? `all ${bags}` : `${bags}, not the ${leftOut === 1 ? "smallest" : `${leftOut} smallest`}`,
          total: amountWords(total, unit),
          size: effectiveSize(size),
        },
      }))}
    />
  );
}
