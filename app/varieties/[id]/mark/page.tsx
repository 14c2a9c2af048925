import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { PageHead } from "@/components/frame";
import { readVariety } from "@/lib/registry/varieties/read-variety";
import { storedSeedCoat } from "@/lib/schemas/varieties/seed-coat";
import { current } from "../../../_session/current";
import { storeSeedCoat } from "../../_actions/correct";
import { MarkPicker } from "./mark-picker";

export const metadata: Metadata = { title: "A variety’s mark" };

export default async function ChooseMark({ params }: { params: Promise<{ id: string }> }) {
  const { db, settings, today } = await current("record");
  const { id } = await params;
  const read = await readVariety(db, id, settings, today);
  if (!read) notFound();
  return (
    <div className="sheet stack">
      <PageHead title="Its seed-coat mark" kind={read.variety.name}>
        <p className="measure">
          The mark stands beside the name in every list, chart and label. Without a choice it is drawn from the name;
          choose what its seed looks like.
        </p>
      </PageHead>
      <MarkPicker
        name={read.variety.name}
        crop={read.crop.key}
        chosen={storedSeedCoat(read.variety.seedCoat)}
        action={storeSeedCoat.bind(null, id)}
        back={`/varieties/${id}`}
      />
    </div>
  );
}
