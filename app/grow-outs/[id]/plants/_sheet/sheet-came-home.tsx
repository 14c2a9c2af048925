import Link from "next/link";
import { Button, Notice, TextField } from "@/components/ui";
import { counted } from "@/lib/display/plurals";
import { refusalSentence } from "@/lib/display/refusals";
import type { Outcome } from "@/lib/science/outcome";
import { ScanSheet } from "./scan-sheet";
import type { SheetAskedFor } from "./sheet-asked-for";
import styles from "./sheet-came-home.module.css";

/** A field sheet that is typed in: which rows stand first, or where to say which sheet came home. */
export function SheetCameHome({ growOutId, sheet }: { growOutId: string; sheet: Outcome<SheetAskedFor> | null }) {
  if (sheet?.ok) {
    const offered = sheet.value.places.filter((place) => !place.onRecord).length;
    return (
      <Notice title="A field sheet is typed in">
        <p>
          {counted(sheet.value.places.length, "row")} stand first, as they lie on the paper (
          <span className="name">{sheet.value.text}</span>). {offered > 0 ? `${notOnRecord(offered)} ` : ""}
          The day is that of the field, not today.{" "}
          <Link href={`/grow-outs/${growOutId}/plants`}>All plants as usual</Link>
        </p>
      </Notice>
    );
  }
  return (
    <details className={styles.home} open={sheet !== null}>
      <summary>A field sheet came home</summary>
      <div className={styles.ways}>
        <form action={`/grow-outs/${growOutId}/plants`} className={styles.typed}>
          <TextField
            name="sheet"
            label="Its rows"
            hint="as in the head of the page, 1:30 for tags 1 to 30; any tags, with full stops between them"
            refusals={sheet?.refusals.map(refusalSentence) ?? []}
            required
          />
          <Button type="submit">Type it in</Button>
        </form>
        <ScanSheet growOutId={growOutId} />
      </div>
    </details>
  );
}

function notOnRecord(rows: number): string {
  return rows === 1
    ? "The plant of one row is not on record: it is added with the first cell that is written into it."
    : `The plants of ${rows} rows are not on record: each is added with the first cell that is written into its row.`;
}
