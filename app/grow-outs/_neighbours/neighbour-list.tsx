import { ExplainedHere } from "@/components/numbers";
import { Way } from "@/components/ui/offered";
import { plainNumber } from "@/lib/display/numbers";
import { counted } from "@/lib/display/plurals";
import { distance } from "@/lib/display/units";
import type { NeighbourRow } from "@/lib/registry/neighbours/read-neighbours";
import { bearingOptions, evidenceOptions, wordsOf } from "./choices";
import { verdictExplanation } from "./explain-grade";
import type { GivenNeighbours } from "./given";
import styles from "./neighbour-list.module.css";
import { reasonWords, verdictNames, windowWords } from "./verdict-words";

/** Each neighbour source with its verdict and why; where there is none, whether nobody looked or none was found. */
export function NeighbourList({ read, assessment, units, at }: GivenNeighbours) {
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
    <ol className={styles.sources}>
      {assessment.neighbours.map((each, index) => {
        const { neighbour } = each;
        const far = neighbour.distanceMetres === null ? "distance unknown" : distance(neighbour.distanceMetres, units);
        return (
          <li key={neighbour.id} className={styles.source}>
            <span className={styles.number}>{index + 1}</span>
            <div>
              <h3>
                {neighbour.what}
                <span className={styles.kind}>{namesOf(neighbour)}</span>
              </h3>
              <div>
                <ExplainedHere explanation={verdictExplanation(each, assessment, ground, units)}>
                  <b className={each.verdict === "too-close" ? "waits" : undefined}>{verdictNames[each.verdict]}:</b>
                </ExplainedHere>{" "}
                {reasonWords(each, assessment, ground, units).join("; ")}
              </div>
            </div>
            <div className={styles.facts}>
              <p>
                {far}, {whereOf(neighbour)}; {sizeOf(neighbour)}
              </p>
              <p>
                {each.window === null ? "flowering not known" : `in flower ${windowWords(each.window)}`}
                {each.window?.by === "told" ? " (told)" : ""}
              </p>
              <p>
                {neighbour.howSure === null
                  ? "nobody wrote how it is known"
                  : `known as ${wordsOf(evidenceOptions, neighbour.howSure)}`}
                {neighbour.note ? `; ${neighbour.note}` : ""}
              </p>
            </div>
            <div className={styles.hand}>
              <Way href={`${at}/${neighbour.id}/flowering`}>
                note its flowering<span className="heard">, number {index + 1}</span>
              </Way>
              <Way href={`${at}/${neighbour.id}`}>
                put right<span className="heard"> number {index + 1}</span>
              </Way>
            </div>
          </li>
        );
      })}
    </ol>
  );
}

function namesOf({ variety, cropName, what }: NeighbourRow): string {
  const names = [variety, cropName].filter((name): name is string => name !== null && name !== what);
  return names.length > 0 ? ` ${names.join(", ")}` : " crop not named";
}

function whereOf({ bearing, plot }: NeighbourRow): string {
  const side = bearing === null ? "side unknown" : wordsOf(bearingOptions, bearing);
  return plot === null ? side : `${side} of ${plot}`;
}

function sizeOf({ sizeM2, plants }: NeighbourRow): string {
  const parts = [
    sizeM2 === null ? null : `${plainNumber(sizeM2, sizeM2 < 10 ? 1 : 0)}\u00a0m²`,
    plants === null ? null : counted(plants, "plant"),
  ].filter(Boolean);
  return parts.length > 0 ? parts.join(", ") : "size unknown";
}
