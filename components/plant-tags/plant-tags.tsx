import { PaperPage } from "../field-sheet/paper-page";
import { ScanCode } from "../scan-code";
import styles from "./plant-tags.module.css";
import { sizeOfNumber, type TagLayout } from "./tag-layout";

export interface PrintedTag {
  readonly id: string;
  readonly tag: string;
  readonly code: { readonly size: number; readonly path: string };
}

/** Plant tags on sheets of paper, to be cut out along the lines: number, variety, year and code. */
export function PlantTags({
  layout,
  tags,
  variety,
  growOut,
  year,
}: {
  layout: TagLayout;
  tags: readonly PrintedTag[];
  variety: string;
  growOut: string;
  year: string;
}) {
  const perPage = layout.across * layout.down;
  const pages = Array.from({ length: Math.ceil(tags.length / perPage) }, (_, page) =>
    tags.slice(page * perPage, (page + 1) * perPage),
  );
  return pages.map((own, page) => (
    <PaperPage
      key={own[0]?.id}
      paper={layout.paper}
      lie={layout.lie}
      label={`Plant tags, page ${page + 1} of ${pages.length}`}
    >
      <ul
        className={styles.tags}
        style={{
          gridTemplateColumns: `repeat(${layout.across}, ${layout.width}mm)`,
          gridAutoRows: `${layout.height}mm`,
        }}
      >
        {own.map((tag) => (
          <li key={tag.id} className={styles.tag} data-kind={layout.kind}>
            {layout.kind === "loop" ? <Slit /> : null}
            <ScanCode {...tag.code} label={`Code of tag ${tag.tag}`} />
            <div className={styles.words}>
              <p
                className={styles.number}
                style={{ fontSize: `${sizeOfNumber(tag.tag, layout.kind === "hang" ? 26 : 44, 13)}mm` }}
              >
                {tag.tag}
              </p>
              <p className={styles.variety}>{variety}</p>
              <p className={styles.small}>{growOut.includes(year) ? growOut : `${year}, ${growOut}`}</p>
            </div>
            {layout.kind === "loop" ? (
              <p className={styles.tail}>round the stem, the end through the slit, two fingers loose</p>
            ) : (
              <Hole />
            )}
          </li>
        ))}
      </ul>
    </PaperPage>
  ));
}

function Hole() {
  return (
    <svg className={styles.hole} viewBox="-3 -3 6 6" aria-hidden="true">
      <circle r="2.4" />
      <path d="M-1 0h2M0-1v2" />
    </svg>
  );
}

function Slit() {
  return (
    <svg className={styles.slit} viewBox="0 0 4 16" aria-hidden="true">
      <path d="M2 0v16" />
    </svg>
  );
}
