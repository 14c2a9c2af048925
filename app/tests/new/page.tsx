import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { Cautions } from "@/components/cautions";
import { PageHead } from "@/components/frame";
import { SeedCoat } from "@/components/seed-coat";
import { ButtonLink, Notice } from "@/components/ui";
import { dateInWords } from "@/lib/display/dates";
import { lotOfTest } from "@/lib/registry/germination-tests/read-germination-test";
import { storedTestsOfLot, summedUp } from "@/lib/registry/germination-tests/tests-of-lot";
import { ownTableValues } from "@/lib/registry/tables/own-table-values";
import { storedSeedCoat } from "@/lib/schemas/varieties/seed-coat";
import { current } from "../../_session/current";
import { OfRecord } from "../../_session/of-record";
import { TestForm } from "../_forms/test-form";
import { testInWords } from "../_words/reading-in-words";
import { ChooseLot } from "./_components/choose-lot";
import { newTest } from "./_components/new-test";

export const metadata: Metadata = { title: "A germination test" };

export default async function NewTest({ searchParams }: { searchParams: Promise<{ lot?: string; find?: string }> }) {
  const { db, today } = await current("desk");
  const { lot: lotId, find = "" } = await searchParams;
  if (!lotId) return <ChooseLot db={db} find={find} />;
  const [lot, stored, ownInTables] = await Promise.all([
    lotOfTest(db, lotId),
    storedTestsOfLot(db.read, lotId),
    ownTableValues(db),
  ]);
  if (!lot) notFound();
  const { variety } = lot;
  const last = stored.map(summedUp).findLast((test) => test.germination !== null);
  const { start, hints } = newTest({ today, cropKey: variety.crop.key, lastBasis: last?.basis ?? null, ownInTables });
  return (
    <OfRecord page="/lots/[id]" id={lotId}>
      <div className="sheet">
        <PageHead
          kind={`Germination test of lot ${lot.number}`}
          title={`${variety.name}${lot.year ? `, harvest ${dateInWords(lot.year)}` : ""}`}
          mark={
            <SeedCoat name={variety.name} coat={storedSeedCoat(variety.seedCoat)} crop={variety.crop.key} size={44} />
          }
        >
          {last?.germination ? (
            <p className="quiet">
              The last test, {dateInWords(last.on)}:{" "}
              {testInWords({
                sown: last.totals.sown,
                normal: last.totals.sums.normal ?? 0,
                basis: last.basis,
                interval: last.germination,
              })}
              .
            </p>
          ) : (
            <p className="quiet">This lot was never tested. Take the seeds as they come, not the plump ones.</p>
          )}
        </PageHead>
        <div className="stack">
          <Cautions step="test" treatment={lot.treatment} substance={lot.treatmentSubstance} />
          {lot.variety.crop.dryStorage ? null : (
            <Notice title="Seed that may not dry out">
              This crop’s seed dies when it dries: test it fresh and damp.
            </Notice>
          )}
          <TestForm
            lot={{ id: lot.id, number: lot.number, thousandSeedGrams: lot.thousandSeedGrams }}
            start={start}
            hints={hints}
          />
          <p>
            <ButtonLink href="/tests/new" kind="quiet">
              Another lot
            </ButtonLink>
          </p>
        </div>
      </div>
    </OfRecord>
  );
}
