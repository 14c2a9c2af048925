import type { Metadata } from "next";
import Link from "next/link";
import { EmptyState } from "@/components/empty";
import { PageHead, Section } from "@/components/frame";
import { Icon } from "@/components/icons/icon";
import { Figure } from "@/components/numbers";
import { ListTable, type SearchParameters } from "@/components/tables";
import { ButtonLink } from "@/components/ui";
import { counted } from "@/lib/display/plurals";
import { growOutsNow } from "@/lib/registry/grow-outs/grow-outs-now";
import { type GrowOutRow, listGrowOuts } from "@/lib/registry/grow-outs/list-grow-outs";
import { current } from "../_session/current";
import { NowSections } from "./_components/now-section";
import { columns, growOutRow } from "./_list/grow-out-rows";

export const metadata: Metadata = { title: "Grow-outs" };

export default async function GrowOuts({ searchParams }: { searchParams: Promise<SearchParameters> }) {
  const { db, today } = await current();
  const parameters = await searchParams;
  const varietyId = typeof parameters.variety === "string" ? parameters.variety : undefined;
  const growOuts = await listGrowOuts(db, varietyId);
  const now = await growOutsNow(db, today, varietyId);
  const plan = varietyId === undefined ? "/grow-outs/new" : `/grow-outs/new?variety=${varietyId}`;
  const of = varietyId === undefined ? null : (growOuts[0]?.variety ?? "this variety");
  if (growOuts.length === 0) {
    return (
      <div className="sheet">
        <h1 className="heard">Grow-outs</h1>
        <EmptyState
          noun="season"
          action={
            <>
              <ButtonLink href={plan} kind="chief">
                Plan a grow-out
              </ButtonLink>
              <ButtonLink href="/bring-in">Bring a notebook in</ButtonLink>
            </>
          }
        >
          No grow-out is on record yet. Plan the first one; earlier years come with a notebook’s files, or as they are
          typed in.
        </EmptyState>
      </div>
    );
  }
  return (
    <div className="sheet stack">
      <PageHead
        title={of === null ? "Grow-outs" : `Grow-outs of ${of}`}
        mark={<Icon name="flag" size={32} />}
        kind={of === null ? undefined : <Link href="/grow-outs">All grow-outs</Link>}
        figure={
          <Figure value={now.standing.length === 0 ? "None stands" : counted(now.standing.length, "grow-out")}>
            {nowSentence(now.standing.length, now.planned.length)} {headSentence(growOuts)}
          </Figure>
        }
        actions={
          <ButtonLink href={plan} kind="chief">
            Plan a grow-out
          </ButtonLink>
        }
      />
      <NowSections {...now} />
      <Section id="all" title={now.standing.length + now.planned.length > 0 ? "All on record" : "On record"}>
        <ListTable
          caption="Grow-outs"
          noun="grow-out"
          columns={columns}
          rows={growOuts.map(growOutRow)}
          path="/grow-outs"
          parameters={parameters}
          filterLabel="Find a grow-out"
          csv="/grow-outs/csv"
        />
      </Section>
    </div>
  );
}

function headSentence(growOuts: readonly GrowOutRow[]): string {
  const gave = growOuts.filter((row) => row.lots.length > 0 && !row.clonal);
  const narrow = gave.filter(
    (row) => row.effectiveSize !== null && row.plantsMin !== null && row.effectiveSize < row.plantsMin,
  ).length;
  const unknown = gave.filter((row) => row.effectiveSize === null).length;
  const parts = [
    narrow > 0 ? `${narrow} ${narrow === 1 ? "was" : "were"} narrower than the crop’s floor of plants` : "",
    unknown > 0 ? `of ${unknown} the plants were not all written down` : "",
  ].filter(Boolean);
  return `${counted(growOuts.length, "grow-out")} on record${parts.length > 0 ? `: ${parts.join("; ")}` : ""}.`;
}

function nowSentence(standing: number, planned: number): string {
  const stands = standing === 0 ? "at the moment" : standing === 1 ? "stands now" : "stand now";
  return planned === 0 ? `${stands}.` : `${stands}, and ${planned} ${planned === 1 ? "is" : "are"} planned.`;
}
