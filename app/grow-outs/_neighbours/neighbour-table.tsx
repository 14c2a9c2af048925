import Link from "next/link";
import { ExplainedHere } from "@/components/numbers";
import { SimpleTable } from "@/components/tables";
import { plainNumber } from "@/lib/display/numbers";
import { counted } from "@/lib/display/plurals";
import { distance } from "@/lib/display/units";
import type { NeighbourRow } from "@/lib/registry/neighbours/read-neighbours";
import { bearingOptions, evidenceOptions, wordsOf } from "./choices";
import { verdictExplanation } from "./explain-grade";
import type { GivenNeighbours } from "./given";
import { reasonWords, verdictNames } from "./verdict-words";

const columns = [
  { key: "what", name: "What grows there" },
  { key: "verdict", name: "Verdict" },
  { key: "where", name: "Where" },
  { key: "size", name: "Size" },
  { key: "sure", name: "How it is known" },
  { key: "hand", name: "" },
] as const;

/** Each neighbour source with its verdict and why; says whether nobody looked or none was found where there is none. */
export function NeighbourTable({ read, assessment, units, at }: GivenNeighbours) {
  const { ground } = read;
  if (assessment.neighbours.length === 0) {
    return ground.neighboursLookedOn === null ? (
      <p className="quiet">
        None is on record, and nobody wrote that they looked. Ask over the fence, walk the surroundings out to the outer
        ring, and write down both what you found and that you looked.
      </p>
    ) : (
      <p className="quiet">Somebody looked and found none.</p>
    );
  }
  return (
    <SimpleTable
      columns={columns}
      rows={assessment.neighbours.map((each, index) => ({
        id: each.neighbour.id,
        cells: {
          what: (
            <>
              <span className="counts">{index + 1}</span> {each.neighbour.what}
              {namesOf(each.neighbour)}
            </>
          ),
          verdict: (
            <>
              <ExplainedHere explanation={verdictExplanation(each, assessment, ground, units)}>
                <b className={each.verdict === "too-close" ? "waits" : undefined}>{verdictNames[each.verdict]}</b>
              </ExplainedHere>{" "}
              <span className="quiet">{reasonWords(each, assessment, ground, units).join("; ")}</span>
            </>
          ),
          where: whereOf(each.neighbour, distance(each.neighbour.distanceMetres, units)),
          size: sizeOf(each.neighbour),
          sure: [
            each.neighbour.howSure === null ? "not written" : wordsOf(evidenceOptions, each.neighbour.howSure),
            each.neighbour.note,
          ]
            .filter(Boolean)
            .join("; "),
          hand: (
            <>
              <Link href={`${at}/${each.neighbour.id}`}>
                put right<span className="heard"> number {index + 1}</span>
              </Link>
              ,{" "}
              <Link href={`${at}/${each.neighbour.id}/flowering`}>
                note its flowering<span className="heard">, number {index + 1}</span>
              </Link>
            </>
          ),
        },
      }))}
    />
  );
}

function namesOf({ variety, cropName, what }: NeighbourRow): string {
  const names = [variety, cropName].filter((name): name is string => name !== null && name !== what);
  return names.length > 0 ? ` (${names.join(", ")})` : "";
}

function whereOf({ distanceMetres, bearing, plot }: NeighbourRow, far: string): string {
  const side = bearing === null ? "side unknown" : wordsOf(bearingOptions, bearing);
  const from = plot === null ? "" : `, seen from ${plot}`;
  return `${distanceMetres === null ? "distance unknown" : far}, ${side}${from}`;
}

function sizeOf({ sizeM2, plants }: NeighbourRow): string {
  const parts = [
    sizeM2 === null ? null : `${plainNumber(sizeM2, sizeM2 < 10 ? 1 : 0)}\u00a0m²`,
    plants === null ? null : counted(plants, "plant"),
  ].filter(Boolean);
  return parts.length > 0 ? parts.join(", ") : "unknown";
}
