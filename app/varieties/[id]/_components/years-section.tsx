import Link from "next/link";
import { OverYears } from "@/components/charts";
import { Section } from "@/components/frame";
import { counted, listed } from "@/lib/display/plurals";
import type { VarietyRead } from "@/lib/registry/varieties/read-variety";
import { spanShown } from "@/lib/registry/varieties/span-shown";
import { whyNotKept } from "../../_words/kept-words";
import { diversityByYear, floorOf, germinationByYear, lotsToShow, withoutYear } from "../../_words/years";

/** Diversity kept and germination through the years, each with its doubt; and why there is no figure where there is none. */
export function YearsSection({ read, renewal }: { read: VarietyRead; renewal: number }) {
  const all = diversityByYear(read.lots);
  // A chart of unknowns alone says nothing that the sentence below does not.
  const kept = all.some((each) => each.points.some((point) => point.value !== null || point.low != null)) ? all : [];
  const shown = lotsToShow(read.lots, read.tests);
  const ids = new Set(shown.map((lot) => lot.id));
  const germination = germinationByYear(read.tests.filter((test) => ids.has(test.lotId)));
  const left = new Set(read.tests.map((test) => test.lotId)).size - shown.length;
  const why = reasons(read);
  if (read.lots.length === 0) return null;
  const founders = new Set(
    read.lots.flatMap((lot) => (lot.standing === "counted" ? (lot.figures?.founders ?? []) : [])),
  );
  const undated = withoutYear(read.lots);
  return (
    <Section id="years" title="Through the years">
      <div className="stack">
        {kept.length > 0 ? (
          <OverYears title="Diversity kept" series={kept} floor={floorOf(kept)}>
            Each lot by the year of its harvest.
            {undated > 0 ? ` ${counted(undated, "lot")} of unknown year ${undated === 1 ? "is" : "are"} left out.` : ""}
          </OverYears>
        ) : null}
        {founders.size > 1 ? (
          <p className="measure">
            Its founders, {listed([...founders])}, are counted as unrelated, for nobody wrote how they are related. If
            they are kin, less is kept than these figures say.
          </p>
        ) : null}
        {why.map((sentence) => (
          <p key={sentence} className="measure">
            {sentence}
          </p>
        ))}
        {germination.length > 0 ? (
          <OverYears title="Germination" series={germination} lines={[{ at: renewal, name: "renew" }]}>
            Every test of {left === 0 ? "its lots" : "its newest lots with seed"}, with its exact span.
          </OverYears>
        ) : read.crop.clonal ? null : (
          <p className="quiet">No lot of it was tested yet.</p>
        )}
        {left > 0 ? (
          <p>
            <Link href={`/tests?filter=${encodeURIComponent(read.variety.name)}`}>
              {counted(left, "more tested lot")} in the list of tests
            </Link>
          </p>
        ) : null}
      </div>
    </Section>
  );
}

const SPANS =
  "Where plants or shares up the line were not written down, the lot stands as a span: from the worst to the best that the records allow.";

function reasons({ lots }: VarietyRead): string[] {
  const without = lots.filter((lot) => spanShown(lot.standing, lot.figures) === null);
  const spans = without.length < lots.length ? [SPANS] : [];
  return [...new Set([...without.flatMap((lot) => whyNotKept(lot.standing) ?? []), ...spans])];
}
