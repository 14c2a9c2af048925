import Link from "next/link";
import { SpanBar } from "@/components/doubt";
import { Section } from "@/components/frame";
import { ExplainedHere, Measured } from "@/components/numbers";
import { SimpleTable } from "@/components/tables";
import { Way } from "@/components/ui/offered";
import { dateInWords } from "@/lib/display/dates";
import { kOfN, percent, percentSpan, plainNumber } from "@/lib/display/numbers";
import { counted } from "@/lib/display/plurals";
import { type UnitSettings, weight } from "@/lib/display/units";
import { pairsNotKnown } from "@/lib/registry/kinships/read-kinships";
import { mayHoldSeed } from "@/lib/registry/varieties/holders";
import type { LotOfVariety, VarietyRead } from "@/lib/registry/varieties/read-variety";
import { spanShown } from "@/lib/registry/varieties/span-shown";
import { spanExplanation } from "../../../lots/_words/span-in-words";
import { diversityExplanation } from "../../_words/explanations";
import { keptOf } from "../../_words/years";
import narrow from "./narrow-tables.module.css";

/** The lots of a variety: those that may hold seed, and behind them those that are used up. */
export function LotsSection({ read, units, renewal }: { read: VarietyRead; units: UnitSettings; renewal: number }) {
  const newestFirst = [...read.lots].sort((a, b) => ((a.yearLast ?? "") < (b.yearLast ?? "") ? 1 : -1));
  const held = newestFirst.filter(mayHoldSeed);
  const gone = newestFirst.filter((lot) => !mayHoldSeed(lot));
  const all = (
    <>
      {held.length > 1 && !read.crop.clonal ? (
        <Way href={`/lots/blend?variety=${read.variety.id}`} after=", ">
          Blend lots
        </Way>
      ) : null}
      <Link href={`/lots?variety=${read.variety.id}`}>In the list of lots</Link>
    </>
  );
  return (
    <Section id="lots" title="Lots" aside={read.lots.length > 0 ? all : undefined}>
      <div className="stack-near">
        {held.length === 0 ? (
          <p className="quiet">
            {read.lots.length === 0
              ? "No lot of it is on record yet: enter the jar that you have."
              : "No seed is left on record."}
          </p>
        ) : (
          <LotTable lots={held} read={read} units={units} renewal={renewal} />
        )}
        <FoundersLine read={read} />
        {gone.length > 0 ? (
          <details>
            <summary>{counted(gone.length, "lot")} used up</summary>
            <LotTable lots={gone} read={read} units={units} renewal={renewal} />
          </details>
        ) : null}
      </div>
    </Section>
  );
}

/** How many founders stand here, and whether somebody wrote how they are related. */
function FoundersLine({ read: { variety, crop, lots, kinships } }: { read: VarietyRead }) {
  const founders = lots.filter((lot) => lot.kind === "founder");
  if (founders.length < 2 || crop.clonal) return null;
  const open = pairsNotKnown(founders, kinships).length;
  return (
    <p className="measure">
      {open === 0
        ? `How its ${founders.length} founder lots are related is written down. `
        : `It has ${founders.length} founder lots, and of ${open === 1 ? "one pair" : `${open} pairs`} nobody has written how they are related: the span of what descends from both stays open. `}
      <Link href={`/varieties/${variety.id}/kinship`}>How its founders are related</Link>
    </p>
  );
}

const columns = [
  { key: "lot", name: "Lot" },
  { key: "year", name: "Year" },
  { key: "holder", name: "Holder" },
  { key: "grams", name: "On hand", kind: "count" },
  { key: "test", name: "Germination" },
  { key: "kept", name: "Diversity kept", kind: "count" },
  { key: "generations", name: "Generations", kind: "count" },
] as const;

function LotTable({
  lots,
  read,
  units,
  renewal,
}: {
  lots: readonly LotOfVariety[];
  read: VarietyRead;
  units: UnitSettings;
  renewal: number;
}) {
  return (
    <div className={narrow.lots}>
      <SimpleTable
        entries
        columns={columns}
        rows={lots.map((lot) => ({
          id: lot.id,
          cells: {
            lot: <Link href={`/lots/${lot.id}`}>{lot.number}</Link>,
            year: lot.year === null ? <Measured value={null} /> : dateInWords(lot.year),
            holder: lot.holderId === null ? "" : (read.people.get(lot.holderId) ?? "a steward"),
            grams: lot.gramsOnHand === null ? <Measured value={null} /> : weight(lot.gramsOnHand, units),
            test: <TestCell lot={lot} renewal={renewal} />,
            kept: <KeptCell lot={lot} />,
            generations: <Generations lot={lot} />,
          },
        }))}
      />
    </div>
  );
}

function Generations({ lot }: { lot: LotOfVariety }) {
  if (lot.standing === "clonal") return null;
  const generations = lot.figures?.generations ?? null;
  return generations === null ? <Measured value={null} /> : plainNumber(generations, 1);
}

async function KeptCell({ lot }: { lot: LotOfVariety }) {
  if (lot.standing === "clonal" || lot.standing === "uniform") return keptOf(lot);
  const shown = spanShown(lot.standing, lot.figures);
  await shown?.narrowsAtHand();
  if (shown)
    return (
      <ExplainedHere explanation={spanExplanation(lot.number, lot.figures?.founders ?? [], shown)}>
        <Measured value={null} span={keptOf(lot)} />
      </ExplainedHere>
    );
  const grade =
    lot.standing === "counted" ? ((lot.figures?.assumed.length ?? 0) > 0 ? "assumed" : "counted") : "unknown";
  const figure = <Measured value={lot.standing === "counted" ? keptOf(lot) : null} grade={grade} />;
  return lot.standing === "counted" ? (
    <ExplainedHere explanation={diversityExplanation(lot)}>{figure}</ExplainedHere>
  ) : (
    figure
  );
}

function TestCell({ lot, renewal }: { lot: LotOfVariety; renewal: number }) {
  const test = lot.lastTest;
  if (test === null) return <span className="quiet">never tested</span>;
  const { germination, low, high, normal, sown, date } = test;
  const words = `${kOfN(normal, sown)}, ${percentSpan(low, high)}, ${dateInWords(date)}`;
  return (
    <Link href={`/tests/${test.testId}`} className={narrow.germination}>
      <span>{percent(germination, 0)}</span>
      <SpanBar
        value={germination}
        low={low}
        high={high}
        grade="counted"
        label={words}
        line={renewal}
        width={92}
        height={16}
      />
    </Link>
  );
}
