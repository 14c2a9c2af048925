import type { Metadata } from "next";
import { headers } from "next/headers";
import Link from "next/link";
import { notFound } from "next/navigation";
import { cache } from "react";
import { PageHead, Section } from "@/components/frame";
import { Figure } from "@/components/numbers";
import { SeedCoat } from "@/components/seed-coat";
import { orderTree, readStemAddress, StemChart, StemLegend, type StemTree } from "@/components/stem-chart";
import type { SearchParameters } from "@/components/tables";
import { Notice } from "@/components/ui";
import { readLineage } from "@/lib/registry/lineage/read-lineage";
import { sharedByLots } from "@/lib/registry/lineage/shared-by-lots";
import { storedSeedCoat } from "@/lib/schemas/varieties/seed-coat";
import { current } from "../../../_session/current";
import { unitsOf } from "../../../lots/_words/units-of";
import { Ways } from "../_components/ways";
import { LineageTable } from "./_components/lineage-table";
import { SharedByTwo } from "./_components/shared-by-two";
import { cardsOf } from "./_words/cards";
import { headOf } from "./_words/head";
import { treeOf, wordOfAll } from "./_words/tree";
import styles from "./lineage.module.css";

interface Props {
  params: Promise<{ id: string }>;
  searchParams: Promise<SearchParameters>;
}

const lineageOf = cache(async (id: string) => readLineage((await current()).db, id));

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const read = await lineageOf((await params).id);
  return { title: read ? `Lineage of ${read.variety.name}` : "No such variety" };
}

export default async function LineagePage({ params, searchParams }: Props) {
  const { db, settings } = await current();
  const { id } = await params;
  const read = await lineageOf(id);
  if (!read) notFound();
  const { variety, lots } = read;
  const tree = treeOf(read);
  const found = (lotId: string | null) => lots.find((lot) => lot.id === lotId);
  const wanted = readStemAddress(await searchParams);
  const asked = found(wanted.lot)
    ? { ...wanted, with: found(wanted.with)?.id ?? null }
    : { ...wanted, lot: null, with: null };
  const [one, other] = [found(asked.lot), found(asked.with)];
  const phone = /Mobi/.test((await headers()).get("user-agent") ?? "");
  const seed = (
    <SeedCoat name={variety.name} crop={variety.cropKey} coat={storedSeedCoat(variety.seedCoat)} size={18} />
  );
  const head = headOf(read);
  const path = `/varieties/${id}/lineage`;
  return (
    <div className={`sheet stack ${styles.paper}`}>
      <PageHead
        title={`Where ${variety.name} comes from`}
        kind={<Link href={`/varieties/${id}`}>{variety.name}</Link>}
        mark={<SeedCoat name={variety.name} crop={variety.cropKey} coat={storedSeedCoat(variety.seedCoat)} size={56} />}
        figure={<Figure value={head.figure}>{head.sentence}</Figure>}
      />
      <Ways varietyId={id} here="lineage" />
      {variety.clonal ? (
        <p>
          {variety.crop} is kept by division: every plant is the mother again, nothing drifts, and there are no figures
          of diversity. The picture shows who had it from whom.
        </p>
      ) : null}
      {lots.length === 0 ? (
        <p>No lot of it is on record yet: where it comes from begins with the first jar that is entered.</p>
      ) : (
        <StemChart
          tree={tree}
          cards={cardsOf(read, unitsOf(settings))}
          title={`Stem chart of ${variety.name}`}
          path={path}
          asked={asked}
          width={phone ? 328 : 1120}
          withoutWord={phone ? wordOfAll(read) : undefined}
          seed={seed}
          reachHref={`${path}/csv?lot=`}
          shared={
            one && other ? (
              <SharedByTwo
                read={read}
                tree={tree}
                one={one}
                other={other}
                shared={await sharedByLots(db, variety.cropId, one.id, other.id)}
              />
            ) : null
          }
        />
      )}
      <Faults tree={tree} />
      {lots.length === 0 ? null : (
        <>
          <StemLegend tree={tree} seed={seed} />
          <Section id="table" title="The same as a table">
            <LineageTable read={read} />
          </Section>
        </>
      )}
    </div>
  );
}

/** What in the records does not fit together and is drawn as a gap. */
function Faults({ tree }: { tree: StemTree }) {
  const { faults } = orderTree(tree);
  if (faults.length === 0) return null;
  return (
    <Notice kind="caution" title="Drawn as a gap">
      <ul>
        {faults.map(({ code, path, sentence }) => (
          <li key={`${code} ${path.join(" ")}`}>{sentence}.</li>
        ))}
      </ul>
    </Notice>
  );
}
