import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { Figure } from "@/components/numbers";
import type { SearchParameters } from "@/components/tables";
import { boxOfLot } from "@/lib/schemas/neighbours/isolation-claim";
import { current } from "../../../../_session/current";
import { isolationOptions } from "../../../../lots/_words/choices";
import { unitsOf } from "../../../../lots/_words/units-of";
import { wordsOf } from "../../../_neighbours/choices";
import { gradeExplanation } from "../../../_neighbours/explain-grade";
import { FormHead } from "../../../_neighbours/form-head";
import { gradeFigure, proposedReasons } from "../../../_neighbours/grade-words";
import { ClaimForm } from "../../../_neighbours/small-forms";
import { neighboursOfPage, purposeAsked } from "../read";

export const metadata: Metadata = { title: "Isolation of the lots of a grow-out" };

type Parameters = { params: Promise<{ id: string }>; searchParams: Promise<SearchParameters> };

/** A figure proposes, a person claims: the grade with its reasons, for the lots that are ticked. */
export default async function Claim({ params, searchParams }: Parameters) {
  const { settings } = await current("decide");
  const { id } = await params;
  const found = await neighboursOfPage(id, purposeAsked((await searchParams).purpose));
  if (!found) notFound();
  const { read, assessment } = found;
  const units = unitsOf(settings);
  // Lots that claim something already are not ticked: their claim is not overwritten unasked.
  const fresh = read.lots.filter((lot) => lot.isolationGrade === null);
  const start = {
    grade: assessment.grade.grade ?? "",
    reasons: proposedReasons(read, assessment, units),
    ...Object.fromEntries(fresh.map((lot) => [boxOfLot(lot.id), "yes"])),
  };
  const lots = read.lots.map((lot) => ({
    value: lot.id,
    words: `Lot ${lot.number}`,
    note:
      lot.isolationGrade === null
        ? "claims nothing yet"
        : `claims now: ${wordsOf(isolationOptions, lot.isolationGrade)}`,
  }));
  return (
    <div className="sheet stack">
      <FormHead ground={read.ground} title="Claim it for the lots" />
      <Figure value={gradeFigure(assessment)} explanation={gradeExplanation(read, assessment, units)}>
        is proposed by what is on record of the neighbours.
      </Figure>
      {lots.length === 0 ? (
        <p className="quiet">No lot of this grow-out is on record yet.</p>
      ) : (
        <ClaimForm growOutId={id} start={start} lots={lots} />
      )}
    </div>
  );
}
