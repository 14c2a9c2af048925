import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { PageHead } from "@/components/frame";
import { SeedCoat } from "@/components/seed-coat";
import { ButtonLink, Notice } from "@/components/ui";
import { type GroundToGrowOn, readGrownOtherwise } from "@/lib/registry/varieties/read-grown-otherwise";
import { storedSeedCoat } from "@/lib/schemas/varieties/seed-coat";
import { current } from "../../../_session/current";
import { whyNotKept } from "../../_words/kept-words";
import { Ways } from "../_components/ways";
import { GrownOtherwise } from "./_components/grown-otherwise";
import { type Asked, planOfAddress } from "./_plan/plan-of-address";

export const metadata: Metadata = { title: "Grown otherwise" };

type Parameters = { params: Promise<{ id: string }>; searchParams: Promise<Asked> };

export default async function GrownOtherwisePage({ params, searchParams }: Parameters) {
  const { db, settings, today } = await current();
  const { id } = await params;
  const ground = await readGrownOtherwise(db, id, { settings, today });
  if (!ground) notFound();
  const { variety, crop } = ground;
  const start = planOfAddress(await searchParams, ground);
  return (
    <div className="sheet stack">
      <PageHead
        title="Grown otherwise"
        kind={<Link href={`/varieties/${id}`}>{variety.name}</Link>}
        mark={<SeedCoat name={variety.name} crop={crop.key} coat={storedSeedCoat(variety.seedCoat)} size={56} />}
      >
        <p>
          What would be left in thirty years if the next grow-outs were larger, smaller, rarer, or sown from other lots?
          Nothing is written here: try it out.
        </p>
      </PageHead>
      <Ways varietyId={id} here="grown-otherwise" />
      <Body ground={ground} start={start} />
    </div>
  );
}

function Body({ ground, start }: { ground: GroundToGrowOn; start: ReturnType<typeof planOfAddress> }) {
  const { variety, crop, lots } = ground;
  if (crop.clonal) return <Notice title="No such figure">{whyNotKept("clonal")}</Notice>;
  if (lots.length === 0)
    return (
      <Notice
        title="Nothing to sow"
        actions={<ButtonLink href={`/lots/new?variety=${variety.id}`}>Enter a lot of it</ButtonLink>}
      >
        <p>No lot of it holds seed on record. Enter the jar that you have, and it can be tried out.</p>
      </Notice>
    );
  const uniform = lots.every(({ standing }) => standing === "uniform");
  if (uniform || lots.every(({ standing }) => standing === "lines not known"))
    return (
      <Notice title={uniform ? "Uniform" : "One line or many?"}>
        <p>{whyNotKept(uniform ? "uniform" : "lines not known")}</p>
      </Notice>
    );
  return <GrownOtherwise ground={ground} start={start} />;
}
