import type { Metadata } from "next";
import Link from "next/link";
import { PageHead } from "@/components/frame";
import { Figure } from "@/components/numbers";
import { counted } from "@/lib/display/plurals";
import { ownTableValues } from "@/lib/registry/tables/own-table-values";
import { publishedTables } from "@/lib/schemas/tables/published-tables";
import { current } from "../../_session/current";
import styles from "../methods.module.css";

export const metadata: Metadata = { title: "Published tables" };

export default async function Tables() {
  const { db } = await current();
  const own = await ownTableValues(db);
  return (
    <div className="sheet stack">
      <PageHead
        title="Published tables"
        kind="Methods"
        figure={
          <Figure value={counted(publishedTables.length, "table")}>
            of other people’s numbers go into the calculations.{" "}
            {own.length === 0
              ? "All of them hold as they are printed."
              : `${counted(own.length, "value")} of them ${own.length === 1 ? "is" : "are"} your own.`}
          </Figure>
        }
      >
        <p className="measure">
          Each value says where it comes from and how far that was checked. Where your place is different, write your
          own value and why: what is worked out with it then says so. Your local rules stand above every table.
        </p>
      </PageHead>
      <dl className={styles.list}>
        {publishedTables.map((table) => {
          const mine = own.filter((each) => each.table === table.key).length;
          return (
            <div key={table.key} className={styles.each}>
              <dt>
                <Link href={`/methods/tables/${table.key}`}>{table.title}</Link>
              </dt>
              <dd>
                {table.about} {counted(table.rows.length, "row")}
                {mine > 0 ? `, ${counted(mine, "own value")}` : ""}.
              </dd>
            </div>
          );
        })}
        <div className={styles.each}>
          <dt>
            <Link href="/crops">Profiles of crops</Link>
          </dt>
          <dd>
            How each mates, how many plants, how far from others, how long its seed lives: on the crop’s own page.
          </dd>
        </div>
      </dl>
    </div>
  );
}
