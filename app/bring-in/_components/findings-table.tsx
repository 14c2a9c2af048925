import { counted } from "@/lib/display/plurals";
import type { Finding } from "@/lib/exchange/notebook-folder/finding";
import styles from "./bring-in.module.css";

const mostShown = 300;

/** What was found in the files, one row each: where it stands, and what would be right. */
export function FindingsTable({ findings }: { findings: readonly Finding[] }) {
  const rest = findings.length - mostShown;
  return (
    <>
      <table className={styles.faults}>
        <thead>
          <tr>
            <th scope="col">File</th>
            <th scope="col" className={styles.line}>
              Row
            </th>
            <th scope="col">Column</th>
            <th scope="col">What stands there, and what would be right</th>
          </tr>
        </thead>
        <tbody>
          {findings.slice(0, mostShown).map((each) => (
            <tr key={`${each.file}:${each.line}:${each.column}:${each.sentence}`}>
              <td className="counts">{each.file}</td>
              <td className={`counts ${styles.line}`}>{each.line ?? ""}</td>
              <td className="counts">{each.column ?? ""}</td>
              <td>{each.sentence}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {rest > 0 ? (
        <p className="quiet">And {counted(rest, "row")} more: the list that can be taken out holds them all.</p>
      ) : null}
    </>
  );
}
