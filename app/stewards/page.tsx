import type { Metadata } from "next";
import { EmptyState } from "@/components/empty";
import { PageHead } from "@/components/frame";
import { Figure } from "@/components/numbers";
import { DataTable, readTableAddress, type SearchParameters } from "@/components/tables";
import { ButtonLink } from "@/components/ui";
import { roleMay } from "@/lib/access/permissions";
import { counted } from "@/lib/display/plurals";
import { listStewards } from "@/lib/registry/stewards/list-stewards";
import { current } from "../_session/current";
import { columns, stewardRow } from "./_words/steward-rows";

export const metadata: Metadata = { title: "Stewards" };

export default async function Stewards({ searchParams }: { searchParams: Promise<SearchParameters> }) {
  const { db, actor } = await current();
  const parameters = await searchParams;
  const stewards = await listStewards(db);
  const add = roleMay(actor.role, "desk") ? (
    <ButtonLink href="/stewards/new" kind="chief">
      Record a steward
    </ButtonLink>
  ) : null;
  // Who keeps seed for one steward puts their own line right; the desk, everybody's.
  const mayCorrect = (id: string) =>
    roleMay(actor.role, "correct-at-desk") && (actor.role !== "steward" || actor.stewardId === id);
  if (stewards.length === 0) {
    return (
      <div className="sheet">
        <h1 className="heard">Stewards</h1>
        <EmptyState noun="varieties" action={add}>
          Nobody is on record yet. Write down who else holds your varieties: what stands in one house alone can burn
          with it.
        </EmptyState>
      </div>
    );
  }
  const silent = stewards.filter((steward) => steward.lots > 0 && steward.lastWord === null).length;
  return (
    <div className="sheet stack">
      <PageHead
        title="Stewards"
        figure={
          <Figure value={counted(stewards.length, "steward")}>
            {silent === 0
              ? "Of each who holds a lot something was heard."
              : `Of ${silent} who ${silent === 1 ? "holds a lot" : "hold lots"} no word is written down.`}
          </Figure>
        }
        actions={add}
      />
      <DataTable
        caption="Stewards"
        noun="steward"
        columns={columns}
        rows={stewards.map((steward) => stewardRow(steward, mayCorrect(steward.id)))}
        path="/stewards"
        address={readTableAddress(parameters, columns)}
        others={parameters}
        filterLabel="Find a steward"
        csv="/stewards/csv"
      />
    </div>
  );
}
