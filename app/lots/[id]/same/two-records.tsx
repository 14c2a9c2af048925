import { Measured } from "@/components/numbers";
import { SimpleTable } from "@/components/tables";
import { Notice } from "@/components/ui";
import { dateInWords } from "@/lib/display/dates";
import { wholeNumber } from "@/lib/display/numbers";
import { type UnitSettings, weight } from "@/lib/display/units";
import type { MergeRead, SideOfMerge } from "@/lib/registry/lots/read-merge";

/** What comes together where two records are read as one lot, and in what they contradict each other. */
export function TwoRecords({ read, units }: { read: MergeRead; units: UnitSettings }) {
  const { one, other } = read;
  const columns = [
    { key: "what", name: "What" },
    { key: "one", name: one.number },
    { key: "other", name: other.number },
  ] as const;
  const grams = (value: number | null) => (value === null ? <Measured value={null} /> : weight(value, units));
  const counts: readonly (readonly [string, (side: SideOfMerge) => number])[] = [
    ["entries of the ledger", ({ entries }) => entries],
    ["germination tests", ({ tests }) => tests],
    ["containers", ({ containers }) => containers],
    ["times it changed hands", ({ transfers }) => transfers],
    ["stories", ({ stories }) => stories],
    ["notes, readings, questions", ({ notes }) => notes],
    ["sown or mixed on", ({ offspring }) => offspring],
  ];
  return (
    <div className="stack">
      <SimpleTable
        columns={columns}
        entries
        caption="What comes together"
        rows={[
          {
            id: "grams",
            cells: { what: "on hand by its own ledger", one: grams(one.grams), other: grams(other.grams) },
          },
          ...counts.map(([what, of]) => ({
            id: what,
            cells: { what, one: wholeNumber(of(one)), other: wholeNumber(of(other)) },
          })),
        ]}
      />
      <p className="measure">
        Read as one, the lot holds {read.grams === null ? "an amount that nobody knows" : weight(read.grams, units)} if{" "}
        {one.number} leads
        {read.gramsIfOther === read.grams
          ? ", and as much if the other does"
          : `, ${read.gramsIfOther === null ? "an amount that nobody knows" : weight(read.gramsIfOther, units)} if ${other.number} does`}
        .
      </p>
      {read.perhapsTwice.length > 0 ? (
        <Notice kind="caution" title="Perhaps the same seed was written in twice">
          <p>
            Both ledgers say that seed came in:{" "}
            {read.perhapsTwice.map(({ on, amount, unit }) => `${amount} ${unit}, ${dateInWords(on)}`).join("; ")}. If
            that was one handful, take one of the two entries back first.
          </p>
        </Notice>
      ) : null}
      {read.differences.length > 0 ? (
        <SimpleTable
          columns={columns}
          entries
          caption="What they say differently: the leading record holds"
          rows={read.differences.map(({ what, one: own, other: others }) => ({
            id: what,
            cells: {
              what,
              one: own ?? <Measured value={null} />,
              other: others ?? <Measured value={null} />,
            },
          }))}
        />
      ) : (
        <p>They say the same of the lot itself.</p>
      )}
    </div>
  );
}
