import { wholeNumber } from "@/lib/display/numbers";
import type { Tally } from "@/lib/registry/notebook/describe-difference";
import styles from "./bring-in.module.css";

/** How many records of each kind are new, changed, or in the registry already. */
export function TallyTable({ tally }: { tally: readonly Tally[] }) {
  const told = tally.filter((each) => each.added + each.changed + each.same > 0);
  return (
    <table className={`${styles.tally} counts`}>
      <thead>
        <tr>
          <th scope="col">Kind</th>
          <th scope="col">New</th>
          <th scope="col">Changed</th>
          <th scope="col">There already</th>
        </tr>
      </thead>
      <tbody>
        {told.map((each) => (
          <tr key={each.file}>
            <th scope="row">{each.noun}</th>
            <td>{wholeNumber(each.added)}</td>
            <td>{wholeNumber(each.changed)}</td>
            <td>{wholeNumber(each.same)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
