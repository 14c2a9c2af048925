import type { Metadata } from "next";
import { PageHead } from "@/components/frame";
import type { SearchParameters } from "@/components/tables";
import { ButtonLink, Notice } from "@/components/ui";
import { namesForForms } from "@/lib/registry/lots/names-for-forms";
import { current } from "../../_session/current";
import { NewLotForm } from "./new-lot-form";

export const metadata: Metadata = { title: "Enter a lot" };

export default async function NewLot({ searchParams }: { searchParams: Promise<SearchParameters> }) {
  const { db, today } = await current("desk");
  const names = await namesForForms(db);
  const { variety } = await searchParams;
  const asOption = (name: string) => ({ value: name, words: name });
  const start = {
    variety: names.varieties.find(({ id, name }) => id === variety || name === variety)?.name ?? "",
    origin: "received",
    amountKind: "weighed",
    amountOn: today,
  };
  return (
    <div className="sheet stack">
      <PageHead title="Enter a lot">
        <p className="measure">One jar, or one batch of seed with one history. What nobody knows is left empty.</p>
      </PageHead>
      {names.varieties.length === 0 ? (
        <Notice
          title="A lot is seed of a variety"
          actions={<ButtonLink href="/varieties/new">Enter a variety</ButtonLink>}
        >
          <p>No variety is on record yet. Enter the variety first; the jar comes next.</p>
        </Notice>
      ) : (
        <NewLotForm
          start={start}
          varieties={names.varieties.map(({ name }) => asOption(name))}
          stewards={names.stewards.map(asOption)}
        />
      )}
    </div>
  );
}
