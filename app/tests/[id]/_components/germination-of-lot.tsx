import { OverYears, type YearSeries } from "@/components/charts";
import { Section } from "@/components/frame";
import type { ReadTest } from "@/lib/registry/germination-tests/read-germination-test";

/** Germination of the lot through the years; nothing while there is one test alone. */
export function GerminationOfLot({
  read,
  years,
  renewal,
}: {
  read: ReadTest;
  years: readonly YearSeries[];
  renewal: number;
}) {
  const points = years.reduce((count, series) => count + series.points.length, 0);
  if (points < 2) return null;
  return (
    <Section id="years" title={`Lot ${read.lot.number} through the years`}>
      <OverYears title="Germination" series={years} lines={[{ at: renewal, name: "renew" }]} />
    </Section>
  );
}
