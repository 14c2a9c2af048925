import type { ReactNode } from "react";
import { ScanCode } from "@/components/scan-code";
import type { Coat } from "@/components/seed-coat";
import { SeedCoat } from "@/components/seed-coat";
import { intents } from "@/lib/schemas/plants/plant-cells";
import styles from "./field-sheet.module.css";
import { FootBoxes } from "./foot-boxes";
import { PaperPage } from "./paper-page";
import type { SheetLayout } from "./sheet-layout";
import type { TraitHead } from "./trait-head";

export interface SheetHead {
  readonly growOut: string;
  readonly variety: string;
  readonly crop: string;
  readonly cropKey: string;
  readonly seedCoat: Coat | null;
  /** the day in words, where it is known beforehand; null: to be written in */
  readonly on: string | null;
}

export type TraitOfSheet = TraitHead & { readonly id: string };

/** A line of boxes: what is printed in it. */
export interface SheetLine {
  readonly id: string;
  readonly tag: string | null;
  readonly cell: string | null;
  readonly intent: string | null;
}

/** What the code of a page says: as modules, and the rows in words for typing. */
export interface PageCode {
  readonly size: number;
  readonly path: string;
  readonly rows: string;
}

/** A field sheet on paper, page by page: head with code, plants down, traits across with their scale, boxes for a pass and counts at the foot. */
export function FieldSheet({
  head,
  layout,
  traits,
  lines,
  codes,
}: {
  head: SheetHead;
  layout: SheetLayout;
  traits: readonly TraitOfSheet[];
  lines: readonly SheetLine[];
  /** one a page */
  codes: readonly PageCode[];
}) {
  const full = traits.filter((trait) => trait.full !== null);
  return layout.pages.map(({ from, to }, page) => (
    <PaperPage
      key={from}
      paper={layout.paper}
      lie={layout.lie}
      label={`Field sheet, page ${page + 1} of ${layout.pages.length}`}
    >
      <PageHead head={head} code={codes[page]} page={page + 1} pages={layout.pages.length} />
      <SheetTable
        layout={layout}
        traits={traits}
        lines={lines.slice(from, to + 1)}
        caption={`${head.growOut}, page ${page + 1}`}
      />
      {page === layout.pages.length - 1 ? (
        <FootBoxes>
          {full.length === 0 ? null : (
            <p className={styles.full}>
              {full.map((trait) => (
                <span key={trait.id}>
                  <b>{trait.name}</b> {trait.full}
                </span>
              ))}
            </p>
          )}
        </FootBoxes>
      ) : null}
    </PaperPage>
  ));
}

function PageHead({
  head,
  code,
  page,
  pages,
}: {
  head: SheetHead;
  code: PageCode | undefined;
  page: number;
  pages: number;
}) {
  return (
    <header className={styles.head}>
      <div className={styles.name}>
        <SeedCoat name={head.variety} crop={head.cropKey} coat={head.seedCoat} size={40} />
        <div>
          <p className={styles.growOut}>{head.growOut}</p>
          <p className={styles.variety}>
            {head.variety}, <i>{head.crop}</i>
          </p>
          <p className={styles.small}>
            Field sheet, page {page} of {pages}
            {code ? <>. To type it in, scan the code or write its rows: {code.rows}</> : null}
          </p>
        </div>
      </div>
      <div className={styles.written}>
        <Blank label="Day">{head.on}</Blank>
        <Blank label="Hand" />
        <Blank label="Weather" />
      </div>
      {code ? (
        <div className={styles.code}>
          <ScanCode size={code.size} path={code.path} label={`Leads back to this page to type it in: ${code.rows}`} />
        </div>
      ) : null}
    </header>
  );
}

function Blank({ label, children }: { label: string; children?: ReactNode }) {
  return (
    <p className={styles.blank}>
      <span>{label}</span>
      <span className={styles.line}>{children}</span>
    </p>
  );
}

function SheetTable({
  layout: { columns, rowHeight },
  traits,
  lines,
  caption,
}: {
  layout: SheetLayout;
  traits: readonly TraitOfSheet[];
  lines: readonly SheetLine[];
  caption: string;
}) {
  return (
    <table className={styles.table}>
      <caption className="heard">{caption}</caption>
      <colgroup>
        <col style={{ width: `${columns.tag}mm` }} />
        {columns.cell > 0 ? <col style={{ width: `${columns.cell}mm` }} /> : null}
        <col style={{ width: `${columns.intent}mm` }} />
        {traits.map((trait) => (
          <col key={trait.id} style={{ width: `${columns.trait}mm` }} />
        ))}
        <col style={{ width: `${columns.words}mm` }} />
      </colgroup>
      <thead>
        <tr>
          <th scope="col">Tag</th>
          {columns.cell > 0 ? <th scope="col">Cell</th> : null}
          <th scope="col">
            Intent
            <span className={styles.scale}>keep watch pull</span>
          </th>
          {traits.map((trait) => (
            <th key={trait.id} scope="col">
              <span className={styles.trait}>{trait.name}</span>
              {trait.scale.map((line) => (
                <span key={line} className={styles.scale}>
                  {line}
                </span>
              ))}
            </th>
          ))}
          <th scope="col">Words, where it stands</th>
        </tr>
      </thead>
      <tbody>
        {lines.map((line) => (
          <tr key={line.id} style={{ height: `${rowHeight}mm` }}>
            <th scope="row">{line.tag ?? <span className="heard">write its tag</span>}</th>
            {columns.cell > 0 ? <td className={styles.cell}>{line.cell}</td> : null}
            <td>
              <span className={styles.intents}>
                {intents.map((intent) => (
                  <span key={intent} data-was={line.intent === intent || undefined}>
                    {intent.slice(0, 1)}
                  </span>
                ))}
              </span>
            </td>
            {traits.map((trait) => (
              <td key={trait.id} />
            ))}
            <td />
          </tr>
        ))}
      </tbody>
    </table>
  );
}
