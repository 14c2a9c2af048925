import type { Metadata } from "next";
import { EmptyState } from "@/components/empty";
import { PageHead } from "@/components/frame";
import { Icon } from "@/components/icons/icon";
import { Figure } from "@/components/numbers";
import { DataTable, readTableAddress, type SearchParameters } from "@/components/tables";
import { ButtonLink } from "@/components/ui";
import { counted } from "@/lib/display/plurals";
import { listVarieties, type VarietyRow } from "@/lib/registry/varieties/list-varieties";
import { current } from "../_session/current";
import { unitsOf } from "../lots/_words/units-of";
import { columns, varietyRow } from "./_list/variety-rows";

export const metadata: Metadata = { title: "Varieties" };

export default async function Varieties({ searchParams }: { searchParams: Promise<SearchParameters> }) {
  const { db, settings, today } = await current();
  const parameters = await searchParams;
  const varieties = await listVarieties(db, settings, today);
  const actions = (
    <>
      <ButtonLink href="/type-in" kind="chief">
        Type one in from a notebook
      </ButtonLink>
      <ButtonLink href="/varieties/new">Record a variety</ButtonLink>
    </>
  );
  if (varieties.length === 0) {
    return (
      <div className="sheet">
        <h1 className="heard">Varieties</h1>
        <EmptyState noun="varieties" action={actions}>
          No variety is on record yet. Begin with the one that would be missed most, and type its years in from memory.
        </EmptyState>
      </div>
    );
  }
  const units = unitsOf(settings);
  return (
    <div className="sheet stack">
      <PageHead
        title="Varieties"
        mark={<Icon name="seed" size={32} />}
        figure={<VarietiesFigure varieties={varieties} />}
        actions={actions}
      />
      <DataTable
        caption="Varieties"
        noun="variety"
        columns={columns}
        rows={varieties.map((row) => varietyRow(row, settings.renewalPlan, units))}
        path="/varieties"
        address={readTableAddress(parameters, columns)}
        others={parameters}
        filterLabel="Find a variety"
        csv="/varieties/csv"
      />
    </div>
  );
}

function inDanger(row: VarietyRow): boolean {
  return row.places < 2 && (row.lots > 0 || row.holdersNotConfirmed > 0);
}

/** The one figure: how many varieties are in danger, else how many there are. */
function VarietiesFigure({ varieties }: { varieties: readonly VarietyRow[] }) {
  const danger = varieties.filter(inDanger).length;
  const empty = varieties.filter((row) => row.lots === 0).length;
  const gone = empty === 0 ? "" : ` Of ${empty} no seed is on record.`;
  const all = counted(varieties.length, "variety");
  if (danger === 0)
    return (
      <Figure value={all}>{`${varieties.length === 1 ? "stands" : "stand"} in two places or more.${gone}`}</Figure>
    );
  return (
    <Figure value={`${danger} of ${all}`} waiting>
      {`${danger === 1 ? "stands" : "stand"} in one place only, or in none for certain.${gone}`}
    </Figure>
  );
}
