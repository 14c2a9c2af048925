import type { Metadata } from "next";
import { EmptyState } from "@/components/empty";
import { PageHead, Parts } from "@/components/frame";
import { Icon } from "@/components/icons/icon";
import { Figure } from "@/components/numbers";
import { DataTable, readTableAddress, type SearchParameters } from "@/components/tables";
import { ButtonLink } from "@/components/ui";
import { wholeNumber } from "@/lib/display/numbers";
import { counted } from "@/lib/display/plurals";
import { listGerminationTests } from "@/lib/registry/germination-tests/list-germination-tests";
import { readTestListQuery, testListAddress, testsAPage } from "@/lib/schemas/germination-test/list-query";
import { current } from "../_session/current";
import { RunningList } from "./_list/running-list";
import { columns, testRow } from "./_list/test-rows";

export const metadata: Metadata = { title: "Germination tests" };

export default async function Tests({ searchParams }: { searchParams: Promise<SearchParameters> }) {
  const { db, settings, today } = await current();
  const params = await searchParams;
  const query = readTestListQuery(params);
  const list = await listGerminationTests(db, query, today);
  const { running } = list;
  const setUp = (
    <ButtonLink href="/tests/new" kind="chief">
      Write a test down
    </ButtonLink>
  );
  if (list.all === 0) {
    return (
      <div className="sheet">
        <h1 className="heard">Germination tests</h1>
        <EmptyState noun="tests" action={setUp}>
          No seed was tested yet. Lay out twenty seeds in a damp cloth, keep them warm, and count what comes up: the jar
          then says what it can promise.
        </EmptyState>
      </div>
    );
  }
  const address = readTableAddress(params, columns);
  const due = running.filter((test) => test.isDue).length;
  return (
    <div className="sheet stack">
      <PageHead
        title="Germination tests"
        mark={<Icon name="sprout" size={32} />}
        figure={
          <Figure value={counted(due > 0 ? due : list.all, "test")} waiting={due > 0}>
            {due > 0
              ? `${due === 1 ? "waits" : "wait"} for the last count; ${wholeNumber(list.all)} in all.`
              : running.length > 0
                ? `${counted(running.length, "test")} ${running.length === 1 ? "lies" : "lie"} in the cloth now.`
                : "None lies in the cloth now."}
          </Figure>
        }
        actions={setUp}
      />
      <RunningList running={running} />
      <DataTable
        caption="Germination tests"
        noun="test"
        columns={columns}
        rows={list.tests.map((test) => testRow(test, settings.renewalPlan))}
        total={list.found}
        path="/tests"
        address={address}
        by="server"
        filterLabel="Find a test"
        csv="/tests/csv"
      />
      <Parts
        part={query.page}
        parts={Math.ceil(list.found / testsAPage)}
        of="the list"
        href={(page) => testListAddress({ ...query, page }, address.columns)}
        words={{ before: "Earlier part", next: "Next part" }}
      />
    </div>
  );
}
