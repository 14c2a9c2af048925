import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { Cautions } from "@/components/cautions";
import { PageHead } from "@/components/frame";
import { SeedCoat } from "@/components/seed-coat";
import type { SearchParameters } from "@/components/tables";
import { readPlanGround } from "@/lib/registry/grow-outs/read-plan-ground";
import { parentsAtOnce } from "@/lib/schemas/grow-outs/plan-grow-out";
import { storedSeedCoat } from "@/lib/schemas/varieties/seed-coat";
import { current } from "../../_session/current";
import { unitsOf } from "../../lots/_words/units-of";
import { offersOf, plotOption } from "../_form/plan-offers";
import { lifeCycleInWords } from "../_words/life-words";
import { ChooseVariety } from "./choose-variety";
import { PlanForm } from "./plan-form";

export const metadata: Metadata = { title: "Plan a grow-out" };

/** A number of plants that the address asks for. */
function countAsked(asked: SearchParameters[string]): string | undefined {
  return typeof asked === "string" && /^[1-9]\d{0,6}$/.test(asked) ? asked : undefined;
}

/** The lots that the address asks for, each with its share where there are several; a lot that is not of the variety is left out. */
function parentsAsked({ lot, share }: SearchParameters, lots: readonly { readonly id: string }[]) {
  const shares = [share ?? []].flat();
  const named = [lot ?? []].flat().slice(0, parentsAtOnce);
  const rows = named.flatMap((id, place) =>
    lots.some((each) => each.id === id) ? [{ id, share: shares[place] }] : [],
  );
  return Object.fromEntries(
    rows.flatMap((row, place) => [
      [`parents.${place}.lot`, row.id],
      [`parents.${place}.share`, rows.length > 1 ? (row.share ?? "") : ""],
    ]),
  );
}

export default async function NewGrowOut({ searchParams }: { searchParams: Promise<SearchParameters> }) {
  const { db, settings, today } = await current("record");
  const asked = await searchParams;
  const { variety: varietyId } = asked;
  if (typeof varietyId !== "string" || varietyId === "") return <ChooseVariety />;
  const ground = await readPlanGround(db, varietyId, { settings, today });
  if (!ground) notFound();
  const { variety, crop, wanted } = ground;
  const life = lifeCycleInWords({ lifeCycle: crop.lifeCycle, vernalisation: null });
  const start = {
    name: ground.name,
    purpose: "renew",
    plantsPlanned: countAsked(asked.plants) ?? (wanted === null ? "" : String(wanted.plants)),
    seedParentsPlanned: countAsked(asked.seedParents) ?? String(variety.seedParentsWanted ?? ""),
    "parents.0.lot": "",
    ...parentsAsked(asked, ground.lots),
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
          of good provenance wants its turn while it lives.{crop.lifeCycle === "annual" ? "" : ` ${life}`}
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
