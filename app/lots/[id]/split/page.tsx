import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { Cautions } from "@/components/cautions";
import { Way } from "@/components/ui/offered";
import { namesForForms } from "@/lib/registry/lots/names-for-forms";
import { readSplitGround } from "@/lib/registry/lots/read-split-ground";
import { isEmpty } from "@/lib/registry/transfers/after-giving";
import { current } from "../../../_session/current";
import { LotPageHead } from "../../_parts/lot-page-head";
import { NothingInIt } from "../../_parts/nothing-in-it";
import { unitsOf } from "../../_words/units-of";
import { Splitting } from "./splitting";

export const metadata: Metadata = { title: "Split a lot" };

export default async function SplitLot({ params }: { params: Promise<{ id: string }> }) {
  const { db, settings, today } = await current("desk");
  const { id } = await params;
  const read = await readSplitGround(db, id, { settings, today });
  if (!read) notFound();
  const { jar, objections, places } = read;
  const { lot, seeds, reserve } = jar;
  if (isEmpty(jar.figures?.gramsOnHand ?? null, lot.thousandSeedGrams)) {
    return (
      <div className="sheet stack">
        <LotPageHead lot={lot} title="Split the lot" />
        <NothingInIt lot={lot} act="split off" />
      </div>
    );
  }
  const { stewards } = await namesForForms(db);
  return (
    <div className="sheet stack">
      <LotPageHead lot={lot} title="Split the lot">
        Part of it under a number of its own: a copy in another building, or in another hand. Seed that is given, lent
        or sent back is written down where it is told what it is: <Way href={`/lots/${id}/give`}>give or lend it</Way>.
      </LotPageHead>
      <Cautions step="jar" crop={lot.crop.cropKey} treatment={lot.treatment} substance={lot.treatmentSubstance} />
      <Splitting
        lot={{
          id,
          number: lot.number,
          grams: jar.figures?.gramsOnHand ?? null,
          thousandSeedGrams: lot.thousandSeedGrams,
          holder: lot.holder,
        }}
        seeds={seeds}
        counted={reserve.good.some((good) => good.lot.id === id)}
        kept={
          reserve.reserve === null
            ? null
            : { seeds: reserve.reserve.seeds, onHand: reserve.onHand, uncounted: reserve.uncounted }
        }
        objections={objections}
        stewards={stewards}
        places={places}
        units={unitsOf(settings)}
        today={today}
      />
    </div>
  );
}
