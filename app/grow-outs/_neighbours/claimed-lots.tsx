import Link from "next/link";
import { Fragment } from "react";
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
        entries
        rows={claimedAlike(lots).map((alike) => ({
          id: alike[0].id,
          cells: {
            lot: alike.map((lot, place) => (
              <Fragment key={lot.id}>
                {place === 0 ? null : ", "}
                <Link href={`/lots/${lot.id}`}>{lot.number}</Link>
              </Fragment>
            )),
            grade:
              alike[0].isolationGrade === null ? "nothing yet" : wordsOf(isolationOptions, alike[0].isolationGrade),
            reasons: alike[0].isolationReasons,
          },
        }))}
      />
      <div className="row">
        <ButtonLink href={`${at}/claim${assessment.purpose === "home" ? "?purpose=home" : ""}`}>
          Claim this for its lots
        </ButtonLink>
      </div>
    </div>
  );
}

type Lot = GivenNeighbours["read"]["lots"][number];

/** Lots with the same claim for the same reasons, in the order of the first of each. */
function claimedAlike(lots: readonly Lot[]): [Lot, ...Lot[]][] {
  const groups = new Map<string, [Lot, ...Lot[]]>();
  for (const lot of lots) {
    const claim = JSON.stringify([lot.isolationGrade, lot.isolationReasons]);
    const group = groups.get(claim);
    if (group) group.push(lot);
    else groups.set(claim, [lot]);
  }
  return [...groups.values()];
}
