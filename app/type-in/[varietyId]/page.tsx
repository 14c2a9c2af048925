import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { PageHead } from "@/components/frame";
import { counted } from "@/lib/display/plurals";
import { holdersToType, varietyToGoOn } from "@/lib/registry/notebook-typing/typing-ground";
import { current } from "../../_session/current";
import { Typing } from "../_components/typing";

export const metadata: Metadata = { title: "Type notebook lines in" };

export default async function TypeInVariety({ params }: { params: Promise<{ varietyId: string }> }) {
  const { db, today, demonstration } = await current("record");
  const variety = await varietyToGoOn(db, (await params).varietyId);
  if (!variety) notFound();
  const holders = await holdersToType(db);
  return (
    <div className="sheet">
      <PageHead
        kind="From a notebook"
        title={
          <>
            More of <Link href={`/varieties/${variety.id}`}>{variety.name}</Link>
          </>
        }
      >
        <p className="lead measure">
          {variety.lots.length > 0
            ? `${counted(variety.lots.length, "lot")} of it ${variety.lots.length === 1 ? "stands" : "stand"} here already: lines go on from the youngest, or from the one that you choose.`
            : "No lot of it stands here yet: the lines make the first."}
        </p>
      </PageHead>
      <Typing
        today={today}
        draftKey={`type-in:${demonstration ? "demonstration" : "own"}:${variety.id}`}
        crops={[]}
        varieties={[]}
        holders={holders}
        variety={variety}
      />
    </div>
  );
}
