import Link from "next/link";
import { SimpleTable } from "@/components/tables";
import { ButtonLink } from "@/components/ui";
import { isolationOptions } from "../../lots/_words/choices";
import { wordsOf } from "./choices";
import type { GivenNeighbours } from "./given";

const columns = [
  { key: "lot", name: "Lot" },
  { key: "grade", name: "Isolation claimed" },
  { key: "reasons", name: "Why" },
] as const;

/** What the lots of the grow-out claim now, and the way to claim what is proposed. A figure proposes; a person claims. */
export function ClaimedLots({ read: { lots }, assessment, at }: GivenNeighbours) {
  if (assessment.grade.grade === null)
    return <p className="quiet">There is nothing to claim for a crop kept by division.</p>;
  if (lots.length === 0)
    return <p className="quiet">No seed of it is on record yet. The claim belongs to the lot that is harvested.</p>;
  return (
    <div className="stack">
      <SimpleTable
        columns={columns}
        rows={lots.map((lot) => ({
          id: lot.id,
          cells: {
            lot: <Link href={`/lots/${lot.id}`}>{lot.number}</Link>,
            grade: lot.isolationGrade === null ? "nothing yet" : wordsOf(isolationOptions, lot.isolationGrade),
            reasons: lot.isolationReasons,
          },
        }))}
      />
      <div className="row">
        <ButtonLink href={`${at}/claim${assessment.purpose === "home" ? "?purpose=home" : ""}`}>
          Claim this for the lots of this grow-out
        </ButtonLink>
      </div>
    </div>
  );
}
