import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { Cautions } from "@/components/cautions";
import { PageHead } from "@/components/frame";
import { SeedCoat } from "@/components/seed-coat";
import type { SearchParameters } from "@/components/tables";
import { readPlanGround } from "@/lib/registry/grow-outs/read-plan-ground";
import { storedSeedCoat } from "@/lib/schemas/varieties/seed-coat";
import { current } from "../../_session/current";
import { unitsOf } from "../../lots/_words/units-of";
import { offersOf, plotOption } from "../_form/plan-offers";
import { lifeCycleInWords } from "../_words/life-words";
import { ChooseVariety } from "./choose-variety";
import { PlanForm } from "./plan-form";

export const metadata: Metadata = { title: "Plan a grow-out" };

export default async function NewGrowOut({ searchParams }: { searchParams: Promise<SearchParameters> }) {
  const { variety: varietyId, lot } = await searchParams;
  if (typeof varietyId !== "string" || varietyId === "") return <ChooseVariety />;
  const { db, settings, today } = await current();
  const ground = await readPlanGround(db, varietyId, { settings, today });
  if (!ground) notFound();
  const { variety, crop, wanted } = ground;
  const asked = lifeCycleInWords({ lifeCycle: crop.lifeCycle, vernalisation: null });
  const start = {
    name: ground.name,
    purpose: "renew",
    plantsPlanned: wanted === null ? "" : String(wanted.plants),
    seedParentsPlanned: variety.seedParentsWanted === null ? "" : String(variety.seedParentsWanted),
    "parents.0.lot": ground.lots.some(({ id }) => id === lot) ? String(lot) : "",
  };
  return (
    <div className="sheet stack">
      <PageHead
        kind={<Link href={`/varieties/${variety.id}`}>{variety.name}</Link>}
        title="Plan a grow-out"
        mark={<SeedCoat name={variety.name} crop={crop.key} coat={storedSeedCoat(variety.seedCoat)} size={56} />}
      >
        <p className="measure">
          Which lot, how many plants, and what stays in the jar. The newest lot is not always the one to sow: an old lot
          of good provenance wants its turn while it lives.{crop.lifeCycle === "annual" ? "" : ` ${asked}`}
        </p>
      </PageHead>
      <Cautions step="sow" crop={crop.key} />
      <PlanForm
        varietyId={variety.id}
        start={start}
        offers={offersOf(ground, unitsOf(settings))}
        plots={ground.plots.map(plotOption)}
      />
    </div>
  );
}
