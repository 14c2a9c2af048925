import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { cache } from "react";
import { PageHead, Section } from "@/components/frame";
import { SeedCoat } from "@/components/seed-coat";
import { dateInWords } from "@/lib/display/dates";
import { mayLeaveCircle, readBiography } from "@/lib/registry/varieties/read-biography";
import { storedSeedCoat } from "@/lib/schemas/varieties/seed-coat";
import { current } from "../../../_session/current";
import { Strip } from "../../../pictures/_parts/strip";
import told from "../_components/told.module.css";
import { Ways } from "../_components/ways";
import { GerminationRecord } from "./_parts/germination-record";
import { HowTrue } from "./_parts/how-true";
import { Keepers } from "./_parts/keepers";
import { TraitChanges } from "./_parts/trait-changes";
import { YearsGrown } from "./_parts/years-grown";

type Parameters = { params: Promise<{ id: string }>; searchParams: Promise<{ for?: string; check?: string }> };

const biographyOf = cache(async (id: string, checkId: string | null) => {
  const { db, settings, today } = await current();
  return readBiography(db, id, { settings, today, checkId });
});

export async function generateMetadata({ params, searchParams }: Parameters): Promise<Metadata> {
  const found = await biographyOf((await params).id, (await searchParams).check ?? null);
  return { title: found ? `${found.read.variety.name}: its biography` : "A biography" };
}

/** A variety's history to be printed and passed on: with the names of its people for the circle, or without them. */
export default async function BiographyPage({ params, searchParams }: Parameters) {
  await current();
  const { id } = await params;
  const asked = await searchParams;
  const found = await biographyOf(id, asked.check ?? null);
  if (!found) notFound();
  const { read, keepers, villages, photos } = found;
  const { variety, crop, otherNames } = read;
  const named = asked.for !== "others";
  const check = found.checks.find(({ varietyId }) => varietyId === asked.check) ?? null;
  const stories = read.stories.filter((story) => named || mayLeaveCircle(story));
  const kept = read.stories.length - stories.length;
  const who = (stewardId: string | null) => {
    if (stewardId === null) return "not on record";
    const village = villages.get(stewardId);
    if (named) return read.people.get(stewardId) ?? "a steward";
    return village ? `a steward in ${village}` : "a steward";
  };
  return (
    <div className="sheet stack">
      <PageHead
        title={variety.name}
        kind={`Biography of a variety of ${crop.commonName.toLowerCase()}`}
        mark={<SeedCoat name={variety.name} crop={crop.key} coat={storedSeedCoat(variety.seedCoat)} size={72} />}
      >
        {otherNames.length > 0 ? (
          <p className="measure">Also called {otherNames.map((name) => name.name).join(", ")}.</p>
        ) : null}
        <p className="not-on-paper measure">
          {named ? (
            <>
              With the names of its people, for the circle.{" "}
              <Link href={addressOf(id, false, check?.varietyId)}>Without them, to give away</Link>
            </>
          ) : (
            <>
              Without names, villages only where they may be told, and of the stories those whose teller agreed that
              they leave the circle. Look through the words themselves before you give it away.{" "}
              <Link href={addressOf(id, true, check?.varietyId)}>With the names, for the circle</Link>
            </>
          )}
        </p>
      </PageHead>
      <Ways varietyId={id} here="biography" />
      <Section id="story" title="What is told of it">
        <div className={told.told}>
          {variety.story ? <blockquote className={told.words}>{variety.story}</blockquote> : null}
          {stories.map((story) => {
            const by = [
              named && story.teller ? `by ${story.teller}` : "",
              story.toldOn ? `told ${dateInWords(story.toldOn)}` : "",
              story.about ? `of ${dateInWords(story.about).replace(/^in /, "")}` : "",
            ].filter(Boolean);
            return (
              <figure key={story.id}>
                <blockquote className={told.words}>{story.words}</blockquote>
                {by.length > 0 ? <figcaption className={told.by}>{by.join(", ")}</figcaption> : null}
              </figure>
            );
          })}
        </div>
        {variety.story === null && stories.length === 0 ? (
          <p className="quiet">{kept > 0 ? "Its stories are for the circle." : "No story of it is written down."}</p>
        ) : null}
      </Section>
      <Keepers keepers={keepers} who={who} villages={named ? villages : new Map()} />
      <YearsGrown read={read} who={who} />
      <TraitChanges varietyId={id} histories={found.traits} checks={found.checks} check={check} named={named} />
      <HowTrue passes={found.passes} variety={variety.name} />
      <GerminationRecord tests={read.tests} />
      {photos.length > 0 ? (
        <Section id="pictures" title="Pictures">
          <Strip photos={named ? photos : photos.map((photo) => ({ ...photo, takenBy: null }))} of={variety.name} />
        </Section>
      ) : null}
    </div>
  );
}

/** The same page with the names or without them, beside the check that was chosen. */
function addressOf(id: string, named: boolean, check: string | undefined): string {
  const query = new URLSearchParams({ ...(named ? {} : { for: "others" }), ...(check ? { check } : {}) });
  return `/varieties/${id}/biography${query.size > 0 ? `?${query}` : ""}`;
}
