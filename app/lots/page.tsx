import type { Metadata } from "next";
import Link from "next/link";
import { Fragment } from "react";
import { EmptyState } from "@/components/empty";
import { PageHead, Parts } from "@/components/frame";
import { Icon } from "@/components/icons/icon";
import { Figure } from "@/components/numbers";
import { DataTable, type SearchParameters } from "@/components/tables";
import { ButtonLink } from "@/components/ui";
import { Way } from "@/components/ui/offered";
import { percent, wholeNumber } from "@/lib/display/numbers";
import { counted } from "@/lib/display/plurals";
import { type LotList, listLots } from "@/lib/registry/lots/list-lots";
import { addressOfLotList, type LotListQuery, LotListQuerySchema, lotFilters } from "@/lib/schemas/lots/list-query";
import { current } from "../_session/current";
import { filterFields } from "./_list/filter-words";
import { columns, lotCells } from "./_list/lot-cells";
import { Narrow } from "./_list/narrow";
import { unitsOf } from "./_words/units-of";

type Asked = { searchParams: Promise<SearchParameters> };

export async function generateMetadata({ searchParams }: Asked): Promise<Metadata> {
  const { named } = LotListQuerySchema.parse(await searchParams);
  return { title: named ? `${named}, lots` : "Lots" };
}

export default async function Lots({ searchParams }: Asked) {
  const { db, settings, today } = await current();
  const query = LotListQuerySchema.parse(await searchParams);
  const list = await listLots(db, query, settings);
  const enter = (
    <ButtonLink href="/lots/new" kind="chief">
      Enter a lot
    </ButtonLink>
  );
  if (list.all === 0) {
    return (
      <div className="sheet">
        <h1 className="heard">Lots</h1>
        <EmptyState noun="lots" action={enter}>
          No jar stands on the shelf yet. Enter the first by hand, or{" "}
          <Way href="/bring-in" otherwise="bring in a notebook">
            bring in a notebook
          </Way>
          : each jar then says what is left in it and what it can promise.
        </EmptyState>
      </div>
    );
  }
  const reading = { renewal: settings.renewalPlan, units: unitsOf(settings), today };
  return (
    <div className="sheet stack">
      <PageHead
        title={query.named ?? "Lots"}
        kind={query.named ? "Lots" : undefined}
        mark={<Icon name="jar" size={32} />}
        figure={
          <Figure value={counted(list.seed.some, "lot")}>
            <HeadSentence list={list} query={query} plan={settings.renewalPlan} />
          </Figure>
        }
        actions={
          <>
            {enter}
            {query.variety && list.seed.some > 1 ? (
              <ButtonLink href={`/lots/blend?variety=${query.variety}`}>Blend lots of this variety</ButtonLink>
            ) : null}
          </>
        }
      />
      <Narrow query={query} fields={filterFields(list.choices, settings)} />
      {list.near ? <p role="status">Nothing is written just like “{query.filter}”. These come near it.</p> : null}
      {query.sort === null && list.seed.none > 0 && list.seed.none < list.found ? (
        <p className="counts">
          What is in the jars stands first;{" "}
          <Link href={`/lots${addressOfLotList(query, { seed: "none", page: 1 })}`}>
            {counted(list.seed.none, "lot")} with nothing left
          </Link>{" "}
          {list.seed.none === 1 ? "stands" : "stand"} after it.
        </p>
      ) : null}
      <DataTable
        caption="Lots of seed"
        noun="lot"
        columns={columns}
        rows={list.rows.map((row) => lotCells(row, reading))}
        total={list.found}
        path="/lots"
        address={{ sort: query.sort, columns: query.columns, filter: query.filter ?? "" }}
        others={Object.fromEntries([...lotFilters, "named" as const].map((name) => [name, query[name] ?? undefined]))}
        by="server"
        filterLabel="Find a lot"
        csv="/lots/export"
      />
      <Parts
        part={list.page}
        parts={list.pages}
        of="the list"
        href={(page) => `/lots${addressOfLotList(query, { page })}`}
      />
      <p className="counts not-on-paper">
        <a href={`/lots/export${addressOfLotList({ ...query, page: 1 }) || "?"}&schema=yes`} download>
          What the columns of the CSV file mean
        </a>
      </p>
    </div>
  );
}

/** "hold seed. 14 of them test below 70 %; 31 were never tested; of 9 nobody knows how much is left." */
function HeadSentence({ list, query, plan }: { list: LotList; query: LotListQuery; plan: number }) {
  const { seed, below, untested } = list;
  const to = (words: string, changed: Partial<LotListQuery>) => (
    <Link href={`/lots${addressOfLotList(query, { ...changed, page: 1 })}`}>{words}</Link>
  );
  const parts = [
    below > 0
      ? to(`${wholeNumber(below)} ${below === 1 ? "tests" : "test"} below ${percent(plan, 0)}`, { test: "below" })
      : null,
    untested > 0
      ? to(`${wholeNumber(untested)} ${untested === 1 ? "was" : "were"} never tested`, { test: "never" })
      : null,
    seed.unknown > 0 ? to(`of ${wholeNumber(seed.unknown)} nobody knows how much is left`, { seed: "unknown" }) : null,
  ].filter((part) => part !== null);
  return (
    <>
      {seed.some === 1 ? "holds seed" : "hold seed"}
      {parts.map((part) => (
        <Fragment key={part.props.href}>; {part}</Fragment>
      ))}
      .
    </>
  );
}
