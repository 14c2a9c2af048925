import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { PageHead, Section } from "@/components/frame";
import { SeedCoat } from "@/components/seed-coat";
import { Notice } from "@/components/ui";
import { ownTableValues } from "@/lib/registry/tables/own-table-values";
import { storedSeedCoat } from "@/lib/schemas/varieties/seed-coat";
import { current } from "../../_session/current";
import { HistoryOf } from "../../history/_components/history-of";
import { cropParts } from "../_words/crop-words";
import { ProfilePart } from "./_components/profile-part";
import { TablePart } from "./_components/table-part";
import { cropOfPage } from "./read";

type Parameters = { params: Promise<{ key: string }> };

export async function generateMetadata({ params }: Parameters): Promise<Metadata> {
  const crop = await cropOfPage((await params).key);
  return { title: crop?.commonName ?? "A crop" };
}

export default async function CropPage({ params }: Parameters) {
  const crop = await cropOfPage((await params).key);
  if (!crop) notFound();
  const { db } = await current();
  const inTables = await ownTableValues(db);
  const own = crop.fields.flatMap((field) => field.own ?? []);
  const cautions = crop.fields.find((field) => field.field === "cautions");
  const caution = cautions?.own?.value ?? cautions?.listed;
  return (
    <div className="sheet stack">
      <PageHead title={crop.commonName} kind={crop.own ? "Crop of your own" : "Crop"}>
        <p className="measure">
          {crop.own
            ? "Nobody has described this crop yet: nothing is known of how it mates or how long its seed lives, so no verdict can follow from it. Write down what you know."
            : "Each value says where it comes from and how far that was checked. Where your place is different, write your own value and why."}
        </p>
      </PageHead>
      {crop.clonal ? (
        <Notice title="Kept by division">
          Its lots are kept and counted like others, but there is no lineage of seed: a division is the plant itself, so
          nothing is lost or mixed from one year to the next. Forecasts of seed life are off.
        </Notice>
      ) : null}
      {typeof caution === "string" ? (
        <Notice kind="caution" title="Cautions">
          <p>{caution}. Your local rules stand above this.</p>
        </Notice>
      ) : null}
      {crop.varieties.length > 0 ? (
        <Section id="varieties" title="Varieties here">
          <ul className="row">
            {crop.varieties.map((variety) => (
              <li key={variety.id} className="row">
                <SeedCoat name={variety.name} crop={crop.key} coat={storedSeedCoat(variety.seedCoat)} size={26} />
                <Link href={`/varieties/${variety.id}`}>{variety.name}</Link>
              </li>
            ))}
          </ul>
        </Section>
      ) : null}
      {cropParts.map(({ title, fields }) => (
        <ProfilePart
          key={title}
          crop={crop}
          id={title.toLowerCase().replaceAll(" ", "-")}
          title={title}
          fields={fields.flatMap((name) => crop.fields.find((field) => field.field === name) ?? [])}
        />
      ))}
      <TablePart crop={crop} own={inTables} />
      {crop.crossingGroup ? (
        <p className="measure quiet">
          It stands in the crossing group “{crop.crossingGroup}”: what of it crosses with what is read pair by pair.
        </p>
      ) : null}
      {own.length > 0 ? <HistoryOf ids={own.map((value) => value.id)} /> : null}
    </div>
  );
}
