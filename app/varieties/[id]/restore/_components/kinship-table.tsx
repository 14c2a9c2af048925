import { ExplainedHere } from "@/components/numbers";
import { ScrollFrame } from "@/components/tables/scroll-frame";
import { plainNumber } from "@/lib/display/numbers";
import type { LotToRestoreWith } from "@/lib/registry/varieties/read-restore";
import type { RestoreAdvice } from "@/lib/registry/varieties/restore-advice";
import { kinshipExplanation } from "../_words/explain-advice";
import styles from "./restore.module.css";

/** So many lots stand in the table at most: more cannot be read. */
export const mostInTable = 10;

/** How near lots are to each other: a number and a tone in each square, the darker the nearer. */
export function KinshipTable({
  lots,
  among,
  near,
}: {
  lots: readonly LotToRestoreWith[];
  among: RestoreAdvice["among"];
  near: NonNullable<RestoreAdvice["near"]>;
}) {
  const places = lots.map((lot) => among.indexOf(lot));
  const theta = (i: number, j: number) => near[places[i] ?? -1]?.[places[j] ?? -1] ?? 0;
  const native = among.some(({ foreign }) => foreign);
  const most = Math.max(1e-9, ...lots.flatMap((_, i) => lots.map((__, j) => theta(i, j))));
  return (
    <ScrollFrame className={styles.scroll} label="How near the lots are to each other">
      <table className={styles.kinship}>
        <caption>
          <ExplainedHere explanation={kinshipExplanation(lots.length)}>How near they are to each other</ExplainedHere>
          <span className="quiet">
            {" "}
            coancestry{native ? " of the native genes" : ""}, the darker the nearer; paler squares add most to each
            other
          </span>
        </caption>
        <thead>
          <tr>
            <td />
            {lots.map(({ id, number }) => (
              <th key={id} scope="col">
                {number}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {lots.map(({ id, number }, i) => (
            <tr key={id}>
              <th scope="row">{number}</th>
              {lots.map((other, j) => (
                <td
                  key={other.id}
                  data-own={i === j || undefined}
                  style={{ "--tone": `${Math.round((32 * theta(i, j)) / most)}%` } as React.CSSProperties}
                >
                  {plainNumber(theta(i, j), 3, true)}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </ScrollFrame>
  );
}
