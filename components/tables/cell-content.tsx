import Link from "next/link";
import { SpanBar } from "@/components/doubt/span-bar";
import { Measured } from "@/components/numbers/measured";
import { SeedCoat } from "@/components/seed-coat/seed-coat";
import { plainNumber } from "@/lib/display/numbers";
import type { Cell } from "./cells";
import styles from "./table.module.css";

const longestDay = "30 September 2026".length;
/** A longer name may take two lines, or one such row would push the other columns out of sight. */
const longestOnOneLine = 28;

/** A cell as it is drawn. An unknown is an open stroke, and heard as "unknown". */
export function CellContent({ cell }: { cell: Cell | undefined }) {
  if (cell === null || cell === undefined) {
    return (
      <span className={styles.unknown}>
        <span className="heard">unknown</span>
      </span>
    );
  }
  if (typeof cell === "number") return plainNumber(cell, 2);
  if (typeof cell === "string") return cell;
  if (cell.kind === "link") {
    return (
      <Link
        href={cell.href}
        className={styles.lead}
        data-long={cell.words.length > longestOnOneLine || undefined}
        prefetch={false}
      >
        {cell.mark ? <SeedCoat name={cell.mark.name} crop={cell.mark.crop} coat={cell.mark.coat} size={22} /> : null}
        <span>{cell.words}</span>
      </Link>
    );
  }
  if (cell.kind === "span") {
    return (
      <span className={styles.spanCell}>
        <span>{cell.figure}</span>
        <SpanBar
          value={cell.value}
          low={cell.low}
          high={cell.high}
          grade={cell.grade}
          label={cell.words}
          line={cell.line}
          width={92}
          height={16}
        />
      </span>
    );
  }
  // a day stays on one line; a span of years may take two
  if (cell.kind === "date" && cell.words.length <= longestDay) return <span className={styles.date}>{cell.words}</span>;
  if (cell.kind === "waits") return <span className={styles.waits}>{cell.words}</span>;
  if (cell.kind === "count" && cell.grade && cell.grade !== "counted") {
    return <Measured value={cell.words} grade={cell.grade} />;
  }
  return cell.words;
}
